/** From a thread as drawn to its limits. Pure. */

import { limitsStudy, type LimitsStudy } from '../../../core/plan/limits-study';
import type { Thread } from '../../../core/thread/thread';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';

export interface LimitsAnswer {
  thread: Thread;
  engagement: number | undefined;
  study: LimitsStudy;
}

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, LimitsAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const engagement = reader.length('engagement');
  const { problems } = reader;
  if (problems.length > 0 || !thread) return { answer: null, problems };
  const study = limitsStudy(thread, engagement);
  if (!study.ok) {
    reader.lay(study.problems, ({ field }) => (field === 'engagement' ? 'engagement' : 'thread'));
    return { answer: null, problems };
  }
  return { answer: { thread, engagement, study: study.value }, problems };
}
