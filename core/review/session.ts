/** What to ask now: due questions before new ones, and neighbours from different lessons. */

import type { Standing } from './schedule';

/** A question that may be asked. `lesson` is only compared. */
export interface Askable {
  id: string;
  lesson: string;
}

export interface SessionLimits {
  /** Questions at most. */
  all: number;
  /** Of them, questions never asked before. */
  fresh: number;
}

/** Waiting rests, as a share of the rest that was planned: what has overrun most is nearest to lost. */
function overrun({ interval, due }: Standing, when: number): number {
  return (when - due) / interval;
}

/**
 * The questions in an order in which no two neighbours come from one lesson, as far as that can be done:
 * always the next of the lesson with most left, but not of the one just asked. Within a lesson the order
 * stays. No unit. Source: derived.
 */
export function interleaved<Each extends Askable>(questions: readonly Each[]): Each[] {
  const left = new Map<string, Each[]>();
  for (const each of questions) left.set(each.lesson, [...(left.get(each.lesson) ?? []), each]);
  const order: Each[] = [];
  while (order.length < questions.length) {
    const last = order.at(-1)?.lesson;
    const open = [...left].filter(([, rest]) => rest.length > 0);
    const others = open.filter(([lesson]) => lesson !== last);
    const [first, ...more] = others.length > 0 ? others : open;
    if (!first) break;
    const [, rest] = more.reduce(
      (most, each) => (each[1].length > most[1].length ? each : most),
      first,
    );
    order.push(rest.shift()!);
  }
  return order;
}

/**
 * The questions to ask now: those that are due, most overrun first, then new ones in the order given, both
 * within their limits, interleaved. `when` in days on the count of the standings. Common practice.
 */
export function sessionOf<Each extends Askable>(
  questions: readonly Each[],
  standings: Readonly<Record<string, Standing>>,
  when: number,
  limits: SessionLimits,
): Each[] {
  const standing = ({ id }: Askable): Standing | undefined => standings[id];
  const due = questions
    .filter((each) => (standing(each)?.due ?? Infinity) <= when)
    .sort((a, b) => overrun(standing(b)!, when) - overrun(standing(a)!, when))
    .slice(0, limits.all);
  const room = Math.min(limits.fresh, limits.all - due.length);
  const fresh = questions.filter((each) => !standing(each)).slice(0, room);
  return interleaved([...due, ...fresh]);
}
