/** Tap limits that suit a class: the recommended ones with what they leave, and which numbers do at all. */

import { Scroll } from '../calculators/Scroll';
import type { TapLimitChoice } from '../../core/tap/limits-judge';
import { LIKELY_OVERCUT } from '../../core/tap/limits-judge';
import { decimals } from '../words';
import { HEADINGS, TAPS } from '../words/en/reference';
import { fill } from '../words/template';
import { limitIn } from './limits';
import { Verdict } from './Verdict';

export interface TapsOfClass {
  class: string;
  taps: readonly TapLimitChoice[];
}

const PLACES = { in: 4, mm: 3 } as const;

const small = (value: number, unit: 'in' | 'mm') =>
  `${decimals(value, PLACES[unit], PLACES[unit])} ${unit}`;

/** The ones worth a row: in a list, or one of the three ISO 2857 classes; every one where asked. */
function rowsOf(taps: readonly TapLimitChoice[], every: boolean): readonly TapLimitChoice[] {
  return every ? taps : taps.filter(({ listed, system }) => listed !== null || system === 'ISO');
}

/** Which numbers of a system suit: `Of the H numbers, H1 to H8 suit class 2B …`. */
function rangeText(
  taps: readonly TapLimitChoice[],
  system: 'H' | 'D',
  name: string,
): string | null {
  const suiting = taps.filter((each) => each.system === system && each.verdict === 'inside');
  const [first, last] = [suiting[0], suiting.at(-1)];
  if (!first || !last) return null;
  const step = small(LIKELY_OVERCUT[first.unit], first.unit);
  const values = { system, from: first.name, to: last.name, class: name, step };
  return fill(first === last ? TAPS.one : TAPS.range, values, 'mm');
}

interface RowProps {
  tap: TapLimitChoice;
  of: string | null;
  /** What a limit is called that stands in a list. */
  listed: string;
}

function TapRow({ tap, of, listed }: RowProps) {
  return (
    <tr>
      {of !== null && <td>{of}</td>}
      <th scope="row">
        {tap.name}
        {tap.listed && <span class="mark"> {listed}</span>}
      </th>
      <td class="number">
        {limitIn(tap.pitch.min, tap.unit)}–{limitIn(tap.pitch.max, tap.unit)} {tap.unit}
      </td>
      <td class="number">{tap.wear < 0 ? '–' : small(tap.wear, tap.unit)}</td>
      <td class="number">{tap.spare < 0 ? '–' : small(tap.spare, tap.unit)}</td>
      <td>
        <Verdict verdict={tap.verdict} />
      </td>
    </tr>
  );
}

interface Props {
  classes: readonly TapsOfClass[];
  /** Shows every limit near the zone, not only those that lists name. */
  every?: boolean;
}

export function TapLimitTable({ classes, every = false }: Props) {
  const several = classes.length > 1;
  const sentences = classes.flatMap(({ class: name, taps }) =>
    (['H', 'D'] as const).map((system) => rangeText(taps, system, name)),
  );
  return (
    <>
      <Scroll label={HEADINGS.taps}>
        <table class="facts">
          <thead>
            <tr>
              {several && <th scope="col">{TAPS.class}</th>}
              <th scope="col">{TAPS.limit}</th>
              <th scope="col" class="number">
                {TAPS.pitch}
              </th>
              <th scope="col" class="number">
                {TAPS.wear}
              </th>
              <th scope="col" class="number">
                {TAPS.spare}
              </th>
              <th scope="col">{TAPS.verdict}</th>
            </tr>
          </thead>
          <tbody>
            {classes.flatMap(({ class: name, taps }) =>
              rowsOf(taps, every).map((tap) => (
                <TapRow
                  key={name + tap.name}
                  tap={tap}
                  of={several ? name : null}
                  listed={every ? TAPS.listedBare : TAPS.listed}
                />
              )),
            )}
          </tbody>
        </table>
      </Scroll>
      <p class="small">
        {sentences.filter((text) => text !== null).join(' ')} {TAPS.wearNote}
      </p>
    </>
  );
}
