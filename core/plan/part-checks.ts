/** Checks what a request says of the part around the hole: ranges and known words, before anything is planned. */

import type { Problem } from '../outcome';
import { tapMajor } from '../tap/major';
import type { Thread } from '../thread/thread';
import type { RequestProblemCode } from './codes';
import { datumOf } from './part-fields';
import type { HoleRequest } from './types';

/** Steepest face that is planned for, degrees. */
const STEEPEST = 60;

/** Longest length a person could mean, and one so near to nothing that nobody means it, mm. */
const LONGEST = 1000;
const NOTHING = 1e-6;

export const LATER = ['harden', 'plate', 'anodise', 'weld'] as const;
export const DUTIES = ['lifting', 'pressure', 'structure', 'vehicle', 'medical'] as const;

function problem(code: RequestProblemCode, field: string, typed: unknown): Problem {
  return { code, field, data: { typed: String(typed) } };
}

/** Nothing where it is a number within [min, max]; otherwise why not. */
function outside(
  value: unknown,
  field: string,
  code: RequestProblemCode,
  min: number,
  max: number,
): Problem[] {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return [problem('number-not-finite', field, value)];
  }
  return value < min || value > max ? [problem(code, field, value)] : [];
}

function unless(right: boolean, code: RequestProblemCode, field: string, typed: unknown) {
  return right ? [] : [problem(code, field, typed)];
}

function isIn(list: readonly string[], value: unknown): boolean {
  return typeof value === 'string' && list.includes(value);
}

/** What a request may hold when it comes from a file or an address: anything. */
type Loose = Record<string, unknown>;

function entryProblems(entry: Loose): Problem[] {
  const { angle, flat } = entry;
  return [
    ...outside(angle, 'entry', 'entry-out-of-range', 0, STEEPEST),
    ...unless(flat === undefined || typeof flat === 'boolean', 'entry-out-of-range', 'entry', flat),
  ];
}

function crossingProblems({ kind, width, from, cut }: Loose): Problem[] {
  const at = (value: unknown) =>
    value === undefined ? [] : outside(value, 'crossing', 'crossing-from-out-of-range', 0, LONGEST);
  return [
    ...unless(isIn(['bore', 'slot'], kind), 'crossing-kind-unknown', 'crossing', kind),
    ...outside(width, 'crossing', 'crossing-width-out-of-range', NOTHING, LONGEST),
    ...at(from),
    ...unless(isIn(['before', 'after'], cut), 'crossing-cut-unknown', 'crossing', cut),
  ];
}

function counterboreProblems({ diameter, depth }: Loose): Problem[] {
  const [wide, deep] = ['counterbore-out-of-range', 'counterbore-depth-out-of-range'] as const;
  return [
    ...outside(diameter, 'counterbore', wide, NOTHING, LONGEST),
    ...outside(depth, 'counterbore', deep, NOTHING, LONGEST),
  ];
}

function laterProblems(later: unknown): Problem[] {
  if (!Array.isArray(later)) return [problem('later-unknown', 'later', later)];
  const odd = later.filter((each) => !isIn(LATER, each));
  return odd.length > 0 ? [problem('later-unknown', 'later', odd[0])] : [];
}

const isObject = (value: unknown): value is Loose => typeof value === 'object' && value !== null;

/** What makes no sense in what is said of the part around the hole, mm and degrees. Source: derived. */
export function partProblems(request: HoleRequest): Problem[] {
  const { entry, crossing, counterbore, cored, later, duty } = request as Loose & HoleRequest;
  const part = (
    value: unknown,
    field: string,
    code: RequestProblemCode,
    check: (given: Loose) => Problem[],
  ) => (value === undefined ? [] : isObject(value) ? check(value) : [problem(code, field, value)]);
  return [
    ...part(entry, 'entry', 'entry-out-of-range', entryProblems),
    ...part(crossing, 'crossing', 'crossing-kind-unknown', crossingProblems),
    ...part(counterbore, 'counterbore', 'counterbore-out-of-range', counterboreProblems),
    ...unless(cored === undefined || typeof cored === 'boolean', 'cored-unknown', 'cored', cored),
    ...(later === undefined ? [] : laterProblems(later)),
    ...unless(duty === undefined || isIn(DUTIES, duty), 'duty-unknown', 'duty', duty),
  ];
}

/** What does not go with the thread that was read: a counterbore narrower than it, a flat that leaves no metal. mm. */
export function fitProblems(request: HoleRequest, thread: Thread): Problem[] {
  const { counterbore, hole, entry } = request;
  const found: Problem[] = [];
  if (counterbore && counterbore.diameter < tapMajor(thread) - 1e-9) {
    found.push(problem('counterbore-narrow', 'counterbore', counterbore.diameter));
  }
  const { flat } = datumOf(request, thread);
  if (entry && hole.kind === 'through' && flat >= hole.thickness - NOTHING) {
    found.push(problem('flat-through-part', 'entry', entry.angle));
  }
  return found;
}
