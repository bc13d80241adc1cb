/** Width of a class on the pitch diameter. */

import { limitsOf } from '../../core/thread/read-or-throw';
import { round } from './table';

export function pitchTolerance(thread: string): number {
  const { pitch } = limitsOf(thread);
  return round(pitch.max - pitch.min, 3);
}
