/** Which of the two families of taps and drills a thread belongs to. */

import type { Thread } from './thread';

/** True for Unified and American pipe threads: inch chamfer classes and inch drills first. Common practice; no unit. */
export function inchSystem({ system, form }: Pick<Thread, 'system' | 'form'>): boolean {
  return system === 'unified' || form.startsWith('NP');
}
