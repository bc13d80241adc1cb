/** Full thread that common screws need in common metals, with the margin, as lengths and in diameters. */

import { Scroll } from '../calculators/Scroll';
import type { EngagementRow } from '../../core/plan/reference';
import { decimals, materialShort, type Unit } from '../words';
import { ENGAGEMENT, HEADINGS } from '../words/en/reference';
import { fill } from '../words/template';
import { estimatePair } from './limits';

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export function EngagementTable({ rows, unit }: { rows: readonly EngagementRow[]; unit: Unit }) {
  const screws = rows[0]?.screws ?? [];
  return (
    <>
      <Scroll label={HEADINGS.engagement}>
        <table class="facts tight">
          <thead>
            <tr>
              <th scope="col">{ENGAGEMENT.metal}</th>
              {screws.map(({ screw }) => (
                <th scope="col" class="number" key={screw}>
                  {screw}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ material, screws: found }) => (
              <tr key={material}>
                <th scope="row">{capital(materialShort(material))}</th>
                {found.map(({ screw, needed }) => {
                  const { min, max } = needed.inDiameters.specify;
                  return (
                    <td class="number" key={screw}>
                      {estimatePair(needed.specify, unit)}{' '}
                      <span class="mark">
                        ({decimals(min, 1, 1)}–{decimals(max, 1, 1)})
                      </span>
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p class="small">
        {fill(ENGAGEMENT.note, { unit }, unit)} {ENGAGEMENT.rating}
      </p>
    </>
  );
}
