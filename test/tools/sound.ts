/** What every answer of the core owes: no throw, no number that is none, no line lost. */
import { planDrawing, planHole, readCallout, readThread, threadLimits } from '../../core/index.ts';
import type { HoleRequest } from '../../core/plan/types.ts';

/** Where in an answer a number is not finite; null where all are. */
export function unsound(value: unknown, path = '', depth = 0): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : `${path} is ${value}`;
  if (typeof value !== 'object' || value === null || depth > 12) return null;
  for (const [key, inner] of Object.entries(value)) {
    const found = unsound(inner, `${path}.${key}`, depth + 1);
    if (found) return found;
  }
  return null;
}

function answered<T>(ask: () => T, judge: (answer: T) => string | null): string | null {
  try {
    return judge(ask());
  } catch (error) {
    return `threw ${error instanceof Error ? error.message : String(error)}`;
  }
}

/** Reads a designation, again from its own canonical spelling, and its limits. */
export function faultOfThread(text: string): string | null {
  return answered(
    () => readThread(text),
    (read) => {
      if (!read.ok) return read.problems.length > 0 ? null : 'refused without a reason';
      const again = readThread(read.value.designation);
      if (!again.ok || again.value.designation !== read.value.designation) {
        return `${read.value.designation} does not read as itself`;
      }
      return unsound(read.value) ?? unsound(threadLimits(read.value));
    },
  );
}

export function faultOfCallout(line: string): string | null {
  return answered(
    () => [readCallout(line), planDrawing([line], { material: 'steel-low' })] as const,
    ([read, drawing]) => {
      const lines = line.trim() === '' ? 0 : 1;
      if (drawing.holes.length !== lines) return `${drawing.holes.length} holes of one line`;
      if (lines === 1 && drawing.holes[0]?.line !== line) return 'the line was changed';
      return unsound(read) ?? unsound(drawing.holes.map(({ plan }) => plan));
    },
  );
}

export function faultOfRequest(request: HoleRequest): string | null {
  return answered(
    () => planHole(request),
    (plan) => {
      if (!plan.ok) return plan.problems.length > 0 ? null : 'refused without a reason';
      return unsound(plan.value);
    },
  );
}
