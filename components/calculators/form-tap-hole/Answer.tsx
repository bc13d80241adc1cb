/** The hole before a form tap: window, drills, and what a measured hole gives. */

import type { FormDrill } from '../../../core/drill/form-hole';
import { LimitBar } from '../../chart/LimitBar';
import type { BarRow, LimitBarModel } from '../../chart/limitBarMarks';
import { FormHoleList } from '../../reference/FormHoleList';
import { Verdict } from '../../reference/Verdict';
import { AnswerLine } from '../../result/AnswerLine';
import { BAR } from '../../words/en/reference';
import { decimals, drillName, limitNumber, type Unit } from '../../words/format';
import { fill } from '../../words/template';
import { calculatorHref, plannerHref } from '../../address/hrefs';
import type { ResultProps } from '../calculator';
import { Asked, Ground, Why } from '../Ground';
import { Scroll } from '../Scroll';
import {
  answerParts,
  askedParts,
  assumed,
  becauseText,
  TEXT,
} from '../../words/en/calculators/form-tap-hole/sentences';
import type { FormAnswer } from './state';

const MEASURED = { inside: 'inside', tight: 'outside', thin: 'outside' } as const;

function barOf({ study }: FormAnswer, unit: Unit): LimitBarModel {
  const { form, measured } = study;
  const rows = form.drills.map((drill): BarRow => ({
    name: drillName(drill),
    at: drill.diameter,
    to: drill.likely,
    verdict: drill.verdict,
    strong: drill === form.drill,
  }));
  const own: BarRow[] = measured
    ? [
        {
          name: TEXT.measured,
          at: measured.hole,
          to: measured.hole,
          verdict: MEASURED[measured.verdict],
          strong: true,
        },
      ]
    : [];
  const ends = {
    min: limitNumber(form.window.min, unit),
    max: `${limitNumber(form.window.max, unit)} ${unit}`,
  };
  return {
    title: TEXT.bar,
    description: fill(TEXT.barText, ends, unit),
    name: fill(TEXT.barName, { unit }, unit),
    ...form.window,
    others: [],
    rows: [...rows, ...own],
    write: (value) => limitNumber(value, unit),
  };
}

function DrillRow({ drill, chosen, unit }: { drill: FormDrill; chosen: boolean; unit: Unit }) {
  return (
    <tr class={chosen ? 'chosen' : undefined}>
      <th scope="row">{drillName(drill)}</th>
      <td>
        <Verdict verdict={drill.verdict} />
      </td>
      <td class="number">{limitNumber(drill.diameter, unit)}</td>
      <td class="number">{decimals(drill.percent, 0)}</td>
      <td class="number">{decimals(drill.likelyPercent, 0)}</td>
    </tr>
  );
}

function Drills({ answer, unit }: { answer: FormAnswer; unit: Unit }) {
  const { form } = answer.study;
  if (form.drills.length === 0) return null;
  return (
    <section>
      <h2>{TEXT.drills}</h2>
      <Scroll label={TEXT.drills}>
        <table class="facts">
          <thead>
            <tr>
              <th scope="col">{TEXT.drill}</th>
              <th scope="col">{TEXT.verdict}</th>
              <th scope="col" class="number">
                {fill(TEXT.size, { unit }, unit)}
              </th>
              <th scope="col" class="number">
                {TEXT.percent}
              </th>
              <th scope="col" class="number">
                {TEXT.likely}
              </th>
            </tr>
          </thead>
          <tbody>
            {form.drills.map((drill) => (
              <DrillRow
                key={drill.series + drill.name}
                drill={drill}
                chosen={drill === form.drill}
                unit={unit}
              />
            ))}
          </tbody>
        </table>
      </Scroll>
    </section>
  );
}

function onward({ thread, material }: FormAnswer) {
  const named = { thread: thread.designation };
  return [
    { href: calculatorHref('tap-drill', named), label: TEXT.cut },
    { href: calculatorHref('thread-limits', named), label: TEXT.limits },
    { href: plannerHref({ ...named, ...(material ? { material } : {}) }), label: TEXT.plan },
  ];
}

export function Result({ answer, unit, lessons }: ResultProps<FormAnswer>) {
  const { form, measured } = answer.study;
  const wrong = measured !== null && measured.verdict !== 'inside';
  return (
    <>
      <AnswerLine
        parts={answerParts(answer, unit)}
        stop={wrong || (measured === null && form.drill === null)}
      />
      <p class="because">
        {becauseText(answer, unit)} <Why lesson="form-taps" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer, unit)} />
      <div class="work">
        <LimitBar bar={barOf(answer, unit)} id="form-bar" caption={BAR.key} />
        <div>
          <FormHoleList form={form} unit={unit} />
        </div>
      </div>
      <Drills answer={answer} unit={unit} />
      <Ground assumed={assumed(answer)} onward={onward(answer)} />
    </>
  );
}
