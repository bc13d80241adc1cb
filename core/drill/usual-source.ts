/** On what ground a thread's usual tap drill stands, so that no page gives it a stronger one. */

import { MM_PER_INCH } from '../units';
import type { SourceId } from '../sources';
import type { Thread } from '../thread/thread';
import { listedDrill } from './usual';

/**
 * Where the list that names a thread's tap drill was read, or `common-practice` where no list has it and the
 * drill nearest the usual hole is taken. Null for pipe threads, whose own notes name the ground of each drill.
 * Inch drills above 1 inch are from memory. No unit; never refuses. Source: `core/drill/listed`.
 */
export function drillSource(thread: Thread): SourceId | null {
  if (thread.system === 'pipe') return null;
  if (listedDrill(thread) === undefined) return 'common-practice';
  if (thread.system === 'metric') return 'iso-2306';
  return thread.diameter > MM_PER_INCH ? 'from-memory' : 'handbook-drills';
}
