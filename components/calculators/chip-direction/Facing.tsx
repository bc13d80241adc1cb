/** The same chips in a hole that does not point down. */

import type { ChipCourse } from '../../../core/chips/direction';
import {
  ORIENTATIONS,
  orientationNotes,
  type Orientation,
  type OrientationCode,
} from '../../../core/chips/orientation';

const TEXT = {
  heading: 'Which way the tap goes in',
  facing: 'Tap goes in',
  happens: 'What that does',
};

const WAYS: Record<Orientation, string> = {
  down: 'Downward',
  sideways: 'Sideways',
  up: 'Upward, overhead',
};

const NOTES: Record<OrientationCode, string> = {
  'fluid-stays': 'Fluid stays in the hole.',
  'fluid-runs-out': 'Fluid runs out: feed it all the time, or through the tap.',
  'fluid-falls-away': 'Fluid falls away: use paste, or feed it through the tap.',
  'chips-lie-on-low-side': 'Chips lie on the low side and are cut again: flush them out.',
  'chips-fall-out': 'Chips fall out by themselves.',
  'chips-fall-to-floor': 'Chips fall to the floor of the hole and stay there.',
  'ahead-against-gravity': 'Chips have to be pushed up and out against their weight.',
  'ahead-falls-clear': 'Chips drop out below.',
  'back-must-be-lifted': 'Chips have to be lifted out against their weight.',
  'back-falls-clear': 'Chips that come back drop out by themselves.',
  'stand-clear-below': 'Nobody stands or looks up from below; face shield.',
};

export function Facing({ course, blind }: { course: ChipCourse; blind: boolean }) {
  return (
    <section>
      <h2>{TEXT.heading}</h2>
      <table class="taps">
        <thead>
          <tr>
            <th scope="col">{TEXT.facing}</th>
            <th scope="col">{TEXT.happens}</th>
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
