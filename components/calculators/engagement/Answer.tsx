/** How deep is enough, against what there is, and for the other screws in the same metal. */

import { estimatePair } from '../../reference/limits';
import { AnswerLine } from '../../result/AnswerLine';
import { NumberList, type NumberRow } from '../../result/NumberList';
import { decimals, length, significant, type Unit } from '../../words/format';
import { fill } from '../../words/template';
import { sentLength } from '../../address/exact';
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
} from '../../words/en/calculators/engagement/sentences';
import type { EngagementAnswer } from './state';
import { MEASURED } from '../../words/en/units';
import { say } from '../../words/say';

function rowsOf({ study }: EngagementAnswer, unit: Unit): NumberRow[] {
  const { needed, have, shear } = study;
  return [
    { name: TEXT.ask, value: `${estimatePair(needed.specify, unit)} ${unit}` },
    {
      name: TEXT.matching,
      value: length(needed.matching, unit),
      beside: [say(MEASURED.diameters, { count: decimals(needed.inDiameters.matching, 2) })],
    },
    ...(have ? [{ name: TEXT.have, value: length(have.length, unit) }] : []),
    { name: TEXT.governs, value: TEXT[needed.governs] },
    { name: TEXT.tensile, value: `${significant(needed.tensileArea, 3)} mm²` },
    { name: TEXT.holeArea, value: `${significant(needed.holeArea, 3)} mm²` },
    { name: TEXT.screwArea, value: `${significant(needed.screwArea, 3)} mm²` },
    { name: TEXT.shear, value: `${decimals(shear, 0)} N/mm²` },
  ];
}

function Others({ answer, unit }: { answer: EngagementAnswer; unit: Unit }) {
  return (
    <section>
      <h2>{TEXT.others}</h2>
      <Scroll label={TEXT.others}>
        <table class="facts">
          <thead>
            <tr>
              <th scope="col">{TEXT.grade}</th>
              <th scope="col" class="number">
                {fill(TEXT.lengths, { unit }, unit)}
              </th>
              <th scope="col" class="number">
                {TEXT.diameters}
              </th>
            </tr>
          </thead>
          <tbody>
            {answer.study.others.map(({ screw, needed }) => (
              <tr key={screw}>
                <th scope="row">{screw}</th>
                <td class="number">{estimatePair(needed.specify, unit)}</td>
                <td class="number">
                  {decimals(needed.inDiameters.specify.min, 1, 1)}–
                  {decimals(needed.inDiameters.specify.max, 1, 1)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </section>
  );
}

function onward({ thread, material, study }: EngagementAnswer, unit: Unit) {
  const named = { thread: thread.designation };
  const full = sentLength(study.needed.specify.min, unit);
  return [
    { href: plannerHref({ ...named, hole: 'blind', depth: full, material }), label: TEXT.plan },
    { href: calculatorHref('blind-hole-depth', { ...named, full }), label: TEXT.depth },
    { href: calculatorHref('thread-limits', named), label: TEXT.limits },
  ];
}

export function Result({ answer, unit, lessons }: ResultProps<EngagementAnswer>) {
  const strips = answer.study.have?.verdict === 'strips';
  return (
    <>
      <AnswerLine parts={answerParts(answer, unit)} stop={strips} />
      <p class="because">
        {becauseText(answer, unit)} <Why lesson="engagement" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer, unit)} />
      <div class="work">
        <NumberList rows={rowsOf(answer, unit)} />
      </div>
      <Others answer={answer} unit={unit} />
      <Ground assumed={assumed(answer)} onward={onward(answer, unit)} />
    </>
  );
}
