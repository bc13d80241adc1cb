/** The fewest taps and drills, and which holes each serves. */

import type { DrawingPlan } from '../../core/drawing/types';
import { chamferText, drillName, handName, styleName } from '../words';
import { TEXT } from '../words/en/part';
import { holeNumber } from '../words/en/partSentences';
import { say } from '../words/say';

function holesText(drawing: DrawingPlan, holes: readonly number[]): string {
  const numbers = holes.map((index) => holeNumber(drawing, index)).join(', ');
  return say(holes.length === 1 ? TEXT.oneHole : TEXT.manyHoles, { numbers });
}

/** A tap by its thread, style and chamfer. */
export function tapText({ holes }: DrawingPlan, shared: DrawingPlan['taps'][number]): string {
  const first = holes[shared.holes[0] ?? -1]?.plan;
  if (!first?.ok) return '';
  const { thread } = first.value;
  const { style, hand, chamfer } = shared.choice;
  const left = hand === 'left' ? `, ${handName(hand)}` : '';
  return `${thread.designation}: ${styleName(style).toLowerCase()}, ${chamferText(chamfer, thread.system)}${left}`;
}

/** Whether the shop's drawer holds it; nothing where no drawer was entered. */
function Owned({ owned }: { owned?: boolean | undefined }) {
  if (owned === undefined) return null;
  return <small class="quiet">{owned ? TEXT.inDrawer : TEXT.notInDrawer}</small>;
}

export function Tools({ drawing, id }: { drawing: DrawingPlan; id: string }) {
  if (drawing.taps.length === 0) return null;
  return (
    <section aria-labelledby={`${id}tools-heading`}>
      <h2 id={`${id}tools-heading`}>{TEXT.tools}</h2>
      <p class="quiet">{TEXT.toolsRule}</p>
      <table class="part-tools">
        <thead>
          <tr>
            <th scope="col">{TEXT.taps}</th>
            <th scope="col">{TEXT.forHoles}</th>
          </tr>
        </thead>
        <tbody>
          {drawing.taps.map((shared) => (
            <tr key={shared.holes.join()}>
              <th scope="row">
                {tapText(drawing, shared)} <Owned owned={shared.owned} />
              </th>
              <td>{holesText(drawing, shared.holes)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <table class="part-tools">
        <thead>
          <tr>
            <th scope="col">{TEXT.drills}</th>
            <th scope="col">{TEXT.forHoles}</th>
          </tr>
        </thead>
        <tbody>
          {drawing.drills.map(({ drill, holes, owned }) => (
            <tr key={drill.name}>
              <th scope="row">
                {drillName(drill)} <Owned owned={owned} />
              </th>
              <td>{holesText(drawing, holes)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
