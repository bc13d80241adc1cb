/** The bare thread that comes right once coated: limits, taps, drills. */

import { DrillTable } from '../../reference/DrillTable';
import { limitIn, limitPair } from '../../reference/limits';
import { TapLimitTable } from '../../reference/TapLimitTable';
import { AnswerLine } from '../../result/AnswerLine';
import { LIMITS } from '../../words/en/reference';
import type { Unit } from '../../words/format';
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
} from '../../words/en/calculators/plating/sentences';
import type { PlatingAnswer } from './state';

function Windows({ answer, unit }: { answer: PlatingAnswer; unit: Unit }) {
  const { limits, before } = answer.study;
  const pair = (range: { min: number; max?: number }) =>
    limitPair(range, limits.unit, unit, LIMITS.open);
  const rows = [
    { name: TEXT.pitch, drawn: pair(limits.pitch), bare: pair(before.pitch) },
    { name: TEXT.hole, drawn: pair(limits.minor), bare: pair(before.minor) },
    {
      name: TEXT.major,
      drawn: limitIn(limits.majorMin, limits.unit, unit),
      bare: limitIn(before.majorMin, limits.unit, unit),
    },
  ];
  return (
    <section>
      <h2>{TEXT.windows}</h2>
      <Scroll label={TEXT.windows}>
        <table class="facts">
          <thead>
            <tr>
              <th scope="col">{TEXT.diameter}</th>
              <th scope="col">{fill(TEXT.drawn, { unit }, unit)}</th>
              <th scope="col">{fill(TEXT.bare, { unit }, unit)}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ name, drawn, bare }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td>{drawn}</td>
                <td>
                  <strong>{bare}</strong>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </section>
  );
}

function onward({ thread }: PlatingAnswer) {
  const named = { thread: thread.designation };
  return [
    { href: calculatorHref('thread-limits', named), label: TEXT.limits },
    { href: calculatorHref('gauging', named), label: TEXT.gauges },
    { href: plannerHref(named), label: TEXT.plan },
  ];
}

export function Result({ answer, unit, lessons }: ResultProps<PlatingAnswer>) {
  const { study, thread } = answer;
  return (
    <>
      <AnswerLine parts={answerParts(answer, unit)} />
      <p class="because">
        {becauseText(answer, unit)} <Why lesson="class-and-tap-limits" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer, unit)} />
      <Windows answer={answer} unit={unit} />
      <section>
        <h2>{TEXT.taps}</h2>
        {study.taps.length > 0 ? (
          <TapLimitTable classes={[{ class: thread.class, taps: study.taps }]} every />
        ) : (
          <p>{TEXT.noTaps}</p>
        )}
      </section>
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
      <Ground assumed={assumed()} onward={onward(answer)} />
    </>
  );
}
