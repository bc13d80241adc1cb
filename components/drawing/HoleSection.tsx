import type { JSX } from 'preact';
import type { HolePlan, HoleRequest, TapChoice } from '../../core/plan/types';
import { length, lengthNumber, type Unit } from '../words/format';
import { chain } from './holeChain';
import { levels } from './holeLevels';
import { holeFacts, shownChoice, type HoleFacts } from './holeFacts';
import { holeFrame } from './holeFrame';
import { holeSection } from './sectionMarks';
import { PictureView } from './PictureView';
import { SECTION_CAPTION } from '../words/en/pictures';
import { say } from '../words/say';

interface Props {
  plan: HolePlan;
  request: HoleRequest;
  unit: Unit;
  /** The tap to draw; otherwise the best, or the first cut tap when none is. */
  choice?: TapChoice;
  /** Leaves out the table of depths under the drawing. */
  plain?: boolean;
  id?: string;
}

function DepthTable({ facts, unit }: { facts: HoleFacts; unit: Unit }): JSX.Element {
  const rows = [
    ...chain(facts).map(({ word, from, to }) => ({ word, length: to - from, depth: to })),
    ...levels(facts).map(({ word, depth }) => ({ word, length: null, depth })),
  ];
  return (
    <details class="fig-data">
      <summary>{SECTION_CAPTION.table}</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">{SECTION_CAPTION.part}</th>
            <th scope="col">{say(SECTION_CAPTION.length, { unit })}</th>
            <th scope="col">{say(SECTION_CAPTION.depth, { unit })}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.word}>
              <th scope="row">{row.word}</th>
              <td>{row.length === null ? '' : lengthNumber(row.length, unit)}</td>
              <td>{lengthNumber(row.depth, unit)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

/** A hole in section, to scale, with the tap at its deepest. */
export function HoleSection({ plan, request, unit, choice, plain, id }: Props): JSX.Element {
  const facts = holeFacts(plan, request, unit, choice);
  const drilled = (shownChoice(plan, choice)?.drill ?? plan.drill) !== null;
  const broken = holeFrame(facts).gaps.length > 0;
  const { tap } = facts;
  return (
    <figure class="fig fig-section">
      <PictureView picture={holeSection(facts, unit, drilled)} {...(id ? { id } : {})} />
      {!plain && <DepthTable facts={facts} unit={unit} />}
      <figcaption>
        {SECTION_CAPTION.scale}{' '}
        {tap &&
          say(SECTION_CAPTION.tap, {
            tip: length(tap.tip, unit),
            middle: length(tap.middleTip, unit),
          })}
        {broken && ` ${SECTION_CAPTION.broken}`}
      </figcaption>
    </figure>
  );
}
