/** Short ways to ask in tests; a refusal where an answer was due fails loudly. */

import { threadLimits, type LimitsOptions } from '../../../core/limits/thread-limits';
import type { ThreadLimits } from '../../../core/limits/limits';
import type { Problem } from '../../../core/outcome';
import { readThread } from '../../../core/thread/read';
import type { Thread } from '../../../core/thread/thread';

export function read(text: string): Thread {
  const reading = readThread(text);
  if (!reading.ok) throw new Error(`${text}: ${JSON.stringify(reading.problems)}`);
  return reading.value;
}

export function noteCodes(text: string): string[] {
  const reading = readThread(text);
  return reading.ok ? reading.notes.map(({ code }) => code) : [];
}

export function noteData(text: string, code: string): Record<string, string> | undefined {
  const reading = readThread(text);
  return reading.ok ? reading.notes.find((note) => note.code === code)?.data : undefined;
}

export function problem(text: string): Problem {
  const reading = readThread(text);
  if (reading.ok) throw new Error(`${text} was read as ${reading.value.designation}`);
  const [first] = reading.problems;
  if (!first) throw new Error(`${text}: refused without a reason`);
  return first;
}

export function limitsOf(text: string, options?: LimitsOptions): ThreadLimits {
  const limits = threadLimits(read(text), options);
  if (!limits.ok) throw new Error(`${text}: ${JSON.stringify(limits.problems)}`);
  return limits.value;
}

/** The four limits of a check row as a table prints them: minor min, max, pitch min, max. */
export function printed(text: string, decimals: number): string[] {
  const { minor, pitch } = limitsOf(text);
  return [minor.min, minor.max ?? Number.NaN, pitch.min, pitch.max].map((limit) =>
    limit.toFixed(decimals),
  );
}
