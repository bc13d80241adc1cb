/** Lines without a hole that may still touch the holes of the part: `PLATE ALL OVER`, a depth left alone. */

import { readingOf } from './callout';
import type { PlannedHole, Question } from './types';

/** A process, a coating or a duty, which holds for more than the line it stands on. */
function touchesAll(line: string): boolean {
  const { fields } = readingOf(line);
  return fields.later.size > 0 || fields.duty !== undefined || fields.cored === true;
}

/** A depth or THRU by itself, which can only belong to a hole above. */
function looseDepth(line: string): boolean {
  const reading = readingOf(line);
  const depth = reading.threadDepth ?? reading.early;
  return (
    depth !== undefined &&
    reading.holes.length === 0 &&
    /^\s*(?:↧|x|\d|\.|full|thread|min)/i.test(line)
  );
}

/** Numbers of joined lines that name a process or a duty by themselves: whether they are this hole's alone, nobody can say. */
function joinedNotes({ line, lines }: PlannedHole): number[] {
  const parts = line.split('\n');
  if (parts.length !== lines.length) return [];
  return lines.filter((_, index) => index > 0 && touchesAll(parts[index]!));
}

/**
 * What lines without a hole ask of the holes: a process or a duty of all of them, a loose depth of the one above it.
 * Source: common practice; no unit.
 */
export function partQuestions(holes: readonly PlannedHole[]): Question[] {
  const planned = holes.flatMap(({ callout }, index) => (callout.ok ? [index] : []));
  return holes.flatMap(({ callout, line, lines, apart }, index): Question[] => {
    if (callout.ok) {
      const others = planned.filter((hole) => hole !== index);
      return joinedNotes(holes[index]!).flatMap((number) =>
        others.map((hole) => ({
          hole,
          code: 'note-touches-all' as const,
          numbers: { line: number },
        })),
      );
    }
    const numbers = { line: lines[0]! };
    if (apart !== 'clearance' && touchesAll(line)) {
      return planned.map((hole) => ({ hole, code: 'note-touches-all', numbers }));
    }
    const above = holes[index - 1];
    const loose = apart === undefined && above?.callout.ok && looseDepth(line);
    return loose ? [{ hole: index - 1, code: 'depth-on-next-line', numbers }] : [];
  });
}
