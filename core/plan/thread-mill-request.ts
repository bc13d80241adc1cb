/** Checks what is asked of a thread mill, beyond what any hole is checked for. */

import type { Problem } from '../outcome';
import type { Job } from './job';
import type { ThreadMillRequest } from './thread-mill-types';

export const MILL_PROBLEM_CODES = [
  /** The cutter is as large as the hole or larger. data: typed, hole (mm). */
  'cutter-not-smaller',
  'cutter-out-of-range',
  'teeth-not-whole',
  /** The comb is shorter than a pitch. data: typed, pitch (mm). */
  'rows-under-pitch',
  'reach-out-of-range',
  'mill-hole-out-of-range',
  'mill-speed-out-of-range',
  'mill-feed-out-of-range',
  'passes-not-whole',
  'cut-to-out-of-range',
  'control-feed-unknown',
  'unit-unknown',
] as const;

export type MillProblemCode = (typeof MILL_PROBLEM_CODES)[number];

type Complain = (code: MillProblemCode | 'number-not-finite', field: string, data: object) => void;

function withinOf(complain: Complain) {
  return (
    value: unknown,
    field: string,
    code: MillProblemCode,
    above: number,
    most: number,
  ): void => {
    if (value === undefined) return;
    const data = { typed: String(value) };
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      complain('number-not-finite', field, data);
    } else if (value <= above || value > most) complain(code, field, data);
  };
}

/**
 * What makes no sense about the cutter and its numbers, for a hole of `hole` mm cut to `major` mm; empty where it can
 * be planned. Source: `derived`.
 */
export function checkMill(
  request: ThreadMillRequest,
  { pitch }: Job,
  hole: number,
  major: number,
): Problem[] {
  const found: Problem[] = [];
  const complain: Complain = (code, field, data) =>
    found.push({ code, field, data: data as Record<string, string> });
  const within = withinOf(complain);
  const cutter = request.cutter ?? ({} as ThreadMillRequest['cutter']);
  const { diameter, teeth, rows, reach } = cutter;
  within(diameter ?? Number.NaN, 'cutter', 'cutter-out-of-range', 0, 500);
  within(request.drill, 'drill', 'mill-hole-out-of-range', 0, major - 1e-9);
  within(request.cutTo, 'cutTo', 'cut-to-out-of-range', hole, major + pitch / 4);
  if (diameter >= hole) {
    complain('cutter-not-smaller', 'cutter', { typed: String(diameter), hole: String(hole) });
  }
  if (!Number.isInteger(teeth) || teeth < 1 || teeth > 20) {
    complain('teeth-not-whole', 'teeth', { typed: String(teeth) });
  }
  const length = rows === 'one' ? pitch : rows?.length;
  if (typeof length !== 'number' || !Number.isFinite(length)) {
    complain('number-not-finite', 'rows', { typed: String(length) });
  } else if (length < pitch - 1e-9) {
    complain('rows-under-pitch', 'rows', { typed: String(length), pitch: String(pitch) });
  }
  within(reach, 'reach', 'reach-out-of-range', 0, 1000);
  within(request.speed, 'speed', 'mill-speed-out-of-range', 0, 1000);
  within(request.feedPerTooth, 'feedPerTooth', 'mill-feed-out-of-range', 0, 1);
  const { passes, controlFeed = 'centre', unit = 'mm' } = request;
  if (passes !== undefined && (!Number.isInteger(passes) || passes < 1 || passes > 20)) {
    complain('passes-not-whole', 'passes', { typed: String(passes) });
  }
  if (controlFeed !== 'centre' && controlFeed !== 'teeth') {
    complain('control-feed-unknown', 'controlFeed', { typed: String(controlFeed) });
  }
  if (unit !== 'mm' && unit !== 'in') complain('unit-unknown', 'unit', { typed: String(unit) });
  return found;
}
