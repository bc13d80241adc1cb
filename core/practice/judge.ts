/** Right or wrong, with the tolerance that was stated; and how hard the next one is. */

import type { Exercise, Level } from './types';

export interface Judged {
  right: boolean;
  /** Why a wrong length is wrong, where its cause is known. */
  slip?: string;
}

/** Judges a length, mm, within the exercise's tolerance. Source: derived. */
export function judgeLength({ ask }: Exercise, mm: number): Judged {
  if (ask.type !== 'length') return { right: false };
  const near = (value: number) => Math.abs(mm - value) <= ask.tolerance + 1e-9;
  if (near(ask.answer)) return { right: true };
  const slip = ask.slips.find(({ value }) => near(value))?.code;
  return { right: false, ...(slip === undefined ? {} : { slip }) };
}

/** Judges a choice by the id of the option. No unit. Source: derived. */
export function judgeChoice({ ask }: Exercise, id: string): Judged {
  return { right: ask.type === 'choice' && ask.answer === id };
}

/** Judges an order: only the whole row is right. No unit. Source: derived. */
export function judgeOrder({ ask }: Exercise, steps: readonly string[]): Judged {
  return { right: ask.type === 'order' && ask.answer.join() === steps.join() };
}

/** Right answers in a row that lead to the next level, and wrong ones that lead back. Common practice. */
const UP = 3;
const DOWN = 2;

/** The level after answers, newest last; see `UP` and `DOWN`. No unit. Source: common practice. */
export function levelAfter(level: Level, answers: readonly boolean[]): Level {
  const run = (wanted: boolean) => {
    let length = 0;
    while (length < answers.length && answers[answers.length - 1 - length] === wanted) length += 1;
    return length;
  };
  const [right, wrong] = [run(true), run(false)];
  if (right > 0 && right % UP === 0 && level < 3) return (level + 1) as Level;
  if (wrong > 0 && wrong % DOWN === 0 && level > 1) return (level - 1) as Level;
  return level;
}
