/** Changes of what is kept of the review. Pure; the time comes from whoever calls. */

import { reschedule, type Recalled } from '../../core/review/schedule';
import type { Progress } from './shape';

/** A clock's milliseconds as the days that standings count, to the second or so: five decimals. */
export function daysOf(milliseconds: number): number {
  return Math.round(milliseconds / 864) / 100_000;
}

/** A question was asked and remembered or forgotten. */
export function answered(
  progress: Progress,
  question: string,
  when: number,
  outcome: Recalled,
): Progress {
  const standing = reschedule(progress.standings[question] ?? null, when, outcome);
  return { ...progress, standings: { ...progress.standings, [question]: standing } };
}

/** A lesson's questions are to be asked, or no longer. Their standings stay either way. */
export function withLesson(progress: Progress, lesson: string, on: boolean): Progress {
  const others = progress.lessons.filter((each) => each !== lesson);
  return { ...progress, lessons: on ? [...others, lesson] : others };
}

/** Two devices' progress as one: of each question, what was asked last. */
export function joined(progress: Progress, more: Progress): Progress {
  const standings = { ...progress.standings };
  for (const [question, standing] of Object.entries(more.standings)) {
    const here = standings[question];
    if (!here || standing.seen > here.seen) standings[question] = standing;
  }
  const known = new Set(progress.unread.map((each) => JSON.stringify(each)));
  const unread = more.unread.filter((each) => !known.has(JSON.stringify(each)));
  return {
    lessons: [...new Set([...progress.lessons, ...more.lessons])],
    standings,
    unread: [...progress.unread, ...unread],
  };
}
