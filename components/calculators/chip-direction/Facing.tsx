/** The same chips in a hole that does not point down. */

import type { ChipCourse } from '../../../core/chips/direction';
import { ORIENTATIONS, orientationNotes } from '../../../core/chips/orientation';
import { FACING, NOTES, WAYS } from '../../words/en/calculators/chip-direction/facing';

export function Facing({ course, blind }: { course: ChipCourse; blind: boolean }) {
  return (
    <section>
      <h2>{FACING.heading}</h2>
      <table class="taps">
        <thead>
          <tr>
            <th scope="col">{FACING.facing}</th>
            <th scope="col">{FACING.happens}</th>
          </tr>
        </thead>
        <tbody>
          {ORIENTATIONS.map((orientation) => (
            <tr key={orientation}>
              <th scope="row">{WAYS[orientation]}</th>
              <td>
                {orientationNotes(orientation, course, blind)
                  .map((code) => NOTES[code])
                  .join(' ')}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
