/** The wire-insert hole and the J thread of the same size, in a line each. */

import type { Relative, Relatives } from '../../core/plan/reference-relatives';
import { drillName, noteText, type Unit } from '../words';
import { RELATIVES } from '../words/en/reference';
import { fill } from '../words/template';
import { limitIn, limitsText } from './limits';

function relativeText({ limits, drill, taps, notes }: Relative, unit: Unit): string {
  const { min, max } = limits.minor;
  const least = `${limitIn(min, limits.unit, unit)} ${unit}`;
  const hole =
    max === undefined
      ? fill(RELATIVES.noMax, { min: least }, unit)
      : limitsText(limits, 'minor', unit);
  const parts = [
    fill(RELATIVES.hole, { hole }, unit),
    ...(drill ? [fill(RELATIVES.drill, { drill: drillName(drill) }, unit)] : []),
    fill(RELATIVES.pitch, { pitch: limitsText(limits, 'pitch', unit) }, unit),
    ...(taps.length > 0
      ? [fill(RELATIVES.taps, { taps: taps.map(({ name }) => name).join(', ') }, unit)]
      : []),
  ];
  return [`${parts.join('; ')}.`, ...notes.map((note) => noteText(note, unit))].join(' ');
}

export function RelativesList({ relatives, unit }: { relatives: Relatives; unit: Unit }) {
  const rows = [
    { label: RELATIVES.insert, relative: relatives.insert },
    { label: RELATIVES.j, relative: relatives.j },
  ];
  return (
    <dl class="said">
      {rows.flatMap(({ label, relative }) =>
        relative
          ? [
              <div key={label}>
                <dt>
                  {label}, {relative.thread.designation}
                </dt>
                <dd>{relativeText(relative, unit)}</dd>
              </div>,
            ]
          : [],
      )}
    </dl>
  );
}
