/** Closer hole sizes by length of engagement, Unified threads. */

import { Scroll } from '../calculators/Scroll';
import type { EngagementHole } from '../../core/hole/by-engagement';
import { decimals } from '../words';
import { HEADINGS, HOLES } from '../words/en/reference';
import { fill } from '../words/template';
import { limitIn } from './limits';

/** Thirds read better than .33. */
function diameters(value: number): string {
  if (Math.abs(value - 1 / 3) < 1e-9) return '1/3';
  return Math.abs(value - 2 / 3) < 1e-9 ? '2/3' : decimals(value, 1);
}

function engagementText({ min, max }: EngagementHole['engagement']): string {
  const values = { from: diameters(min), to: diameters(max) };
  return fill(min === 0 ? HOLES.upTo : HOLES.between, values, 'in');
}

export function HolesTable({ rows, of }: { rows: readonly EngagementHole[]; of: string }) {
  return (
    <>
      <Scroll label={HEADINGS.holes}>
        <table class="facts">
          <thead>
            <tr>
              <th scope="col">{HOLES.engagement}</th>
              {rows.map(({ engagement }) => (
                <th scope="col" class="number" key={engagement.min}>
                  {engagementText(engagement)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">{HOLES.hole}</th>
              {rows.map(({ engagement, hole }) => (
                <td class="number" key={engagement.min}>
                  {limitIn(hole.min, 'in')}–{limitIn(hole.max, 'in')}
                </td>
              ))}
            </tr>
          </tbody>
        </table>
      </Scroll>
      <p class="small">{fill(HOLES.note, { class: of }, 'in')}</p>
    </>
  );
}
