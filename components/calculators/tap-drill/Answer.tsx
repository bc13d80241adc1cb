/** The drill, the window it must land in, and every neighbour judged. */

import { LimitBar } from '../../chart/LimitBar';
import { holeBar } from '../../reference/bars';
import { DrillTable, TrapDrills } from '../../reference/DrillTable';
import { windowText } from '../../reference/limits';
import { hasPage } from '../../reference/series';
import { AnswerLine } from '../../result/AnswerLine';
import { NumberList, type NumberRow } from '../../result/NumberList';
import { BAR } from '../../words/en/reference';
import { drillName, limitLength, threadPercent, type Unit } from '../../words/format';
import { fill } from '../../words/template';
import { threadHref } from '../../words/thread-address';
import { calculatorHref, plannerHref } from '../../address/hrefs';
import type { ResultProps } from '../calculator';
import { Asked, Ground, Why } from '../Ground';
import {
  answerParts,
  askedParts,
  assumed,
  becauseText,
  TEXT,
} from '../../words/en/calculators/tap-drill/sentences';
import type { DrillAnswer } from './state';

function rowsOf({ study, thread }: DrillAnswer, unit: Unit): NumberRow[] {
  const { drill, window } = study;
  const of = thread.class || thread.form;
  const hole = { name: fill(TEXT.hole, { class: of }, unit), value: windowText(window.hole, unit) };
  if (!drill) return [hole];
  const other = drill.series === 'metric' ? 'in' : 'mm';
  return [
    { name: TEXT.drill, value: drillName(drill), beside: [limitLength(drill.diameter, other)] },
    hole,
    { name: TEXT.likely, value: limitLength(drill.likely, unit) },
    ...(thread.system === 'pipe'
      ? []
      : [
          { name: TEXT.percent, value: threadPercent(drill.percent.shop) },
          { name: TEXT.iso, value: threadPercent(drill.percent.iso) },
        ]),
  ];
}

function onward({ thread, material }: DrillAnswer) {
  const named = { thread: thread.designation };
  return [
    ...(hasPage(thread) ? [{ href: threadHref(thread), label: TEXT.page }] : []),
    { href: calculatorHref('thread-limits', named), label: TEXT.limits },
    ...(thread.system === 'pipe'
      ? []
      : [{ href: calculatorHref('form-tap-hole', named), label: TEXT.form }]),
    { href: plannerHref({ ...named, ...(material ? { material } : {}) }), label: TEXT.plan },
  ];
}

export function Result({ answer, unit, lessons }: ResultProps<DrillAnswer>) {
  const { study, thread } = answer;
  const bar = holeBar(study, unit);
  return (
    <>
      <AnswerLine parts={answerParts(answer, unit)} stop={study.drill === null} />
      <p class="because">
        {becauseText(answer, unit)} <Why lesson="tap-drill-and-percent" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer, unit)} />
      <div class="work">
        {bar && <LimitBar bar={bar} id="hole-bar" caption={BAR.key} />}
        <NumberList rows={rowsOf(answer, unit)} />
      </div>
      <TrapDrills drills={study.drills} unit={unit} />
      {study.drills.length > 0 && (
        <section>
          <h2>{TEXT.drills}</h2>
          <DrillTable
            drills={study.drills}
            chosen={study.drill}
            unit={unit}
            percents={thread.system !== 'pipe'}
          />
        </section>
      )}
      <Ground assumed={assumed(answer)} onward={onward(answer)} />
    </>
  );
}
