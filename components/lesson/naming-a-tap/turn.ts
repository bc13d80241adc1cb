/** What the turned face does, from the core's rule: the figure's model and a sentence for everyone. */

import { chipCourse } from '../../../core/chips/direction';
import type { Hand } from '../../../core/thread/thread';
import type { ChipModel } from '../../drawing/chipMarks';
import { TURN } from '../../words/en/naming';
import { fill } from '../../words/template';

export interface Turned {
  /** Degrees to the axis, positive as a right-hand helix leans; null while nothing such is typed. */
  lean: number | null;
  cut: Hand;
  chips: 'long' | 'short';
  hole: 'blind' | 'through';
}

/** How far a face can be turned in the figure, degrees: taps lean up to about 45. */
export const LEAN = { min: -45, max: 45, step: 5 } as const;

/** The picture of a turned face; upright while no angle is known. */
export function pictured({ lean, ...rest }: Turned): ChipModel {
  const angle = lean ?? 0;
  return { ...rest, lean: angle, noseOnly: false, course: chipCourse(angle, rest.cut) };
}

/** What happens to the chip, and whether that ends well. */
export function told({ lean, cut, hole }: Turned): string {
  if (lean === null) return TURN.outside;
  const course = chipCourse(lean, cut);
  const sentence = fill(TURN.told[course], { way: TURN.way[hole] }, 'mm');
  if (course === 'ahead' && hole === 'blind') return `${sentence} ${TURN.packs}`;
  if (course === 'stays') return `${sentence} ${TURN.winds}`;
  return sentence;
}
