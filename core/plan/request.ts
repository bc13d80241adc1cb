/** Checks a request for numbers that make no sense, before anything is planned from it. */

import { CHAMFER_CLASSES } from '../chamfer/chamfer';
import { DRILL_SERIES } from '../drill/drill';
import { checkOwnMaterial } from '../material/own';
import { findMaterial } from '../material/table';
import type { Problem } from '../outcome';
import { STYLES } from '../tap/styles';
import type { RequestProblemCode } from './codes';
import { partProblems } from './part-checks';
import { toolKnown } from './tool';
import type { HoleRequest } from './types';

/** Longest depth a person could mean, mm. */
const DEEPEST = 1000;

/** So near to nothing that nobody means it, and that dividing by it would leave no number: mm, N·m, rev/min. */
const NOTHING = 1e-6;

class Complaints {
  readonly list: Problem[] = [];

  add(code: RequestProblemCode, field: string, typed?: unknown): void {
    this.list.push({
      code,
      field,
      ...(typed === undefined ? {} : { data: { typed: String(typed) } }),
    });
  }

  /** A number that must be finite and within (min, max]; an absent one is left alone. */
  within(value: unknown, field: string, code: RequestProblemCode, min: number, max: number): void {
    if (value === undefined) return;
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      this.add('number-not-finite', field, value);
    } else if (value <= min || value > max) this.add(code, field, value);
  }

  depth(value: unknown, field: string, code: RequestProblemCode): void {
    this.within(value, field, code, NOTHING, Infinity);
    if (typeof value === 'number' && Number.isFinite(value) && value > DEEPEST) {
      this.add('depth-absurd', field, value);
    }
  }
}

function checkHole(request: HoleRequest, complaints: Complaints): void {
  const { hole, fullThread } = request;
  complaints.depth(fullThread, 'fullThread', 'full-thread-not-positive');
  if (hole?.kind === 'through') {
    complaints.depth(hole.thickness ?? Number.NaN, 'thickness', 'thickness-not-positive');
    complaints.within(hole.clearBelow, 'clearBelow', 'clear-below-negative', -1e-12, Infinity);
    if (fullThread !== undefined && fullThread > hole.thickness + 1e-9) {
      complaints.add('full-thread-over-thickness', 'fullThread', fullThread);
    }
  } else if (hole?.kind === 'blind') {
    if (!hole.limit) return;
    complaints.depth(hole.limit.depth ?? Number.NaN, 'limit', 'limit-not-positive');
    if (hole.limit.at !== 'shoulder' && hole.limit.at !== 'point') {
      complaints.add('hole-unknown', 'limit', hole.limit.at);
    }
    if (fullThread !== undefined && fullThread > hole.limit.depth + 1e-9) {
      complaints.add('thread-deeper-than-hole', 'fullThread', fullThread);
    }
  } else complaints.add('hole-unknown', 'hole');
}

function checkMachine(request: HoleRequest, complaints: Complaints): void {
  const { spindle, measured, learned, coating } = request;
  if (spindle) {
    const drives = ['synchronous', 'floating', 'reversing-head', 'hand'];
    if (!drives.includes(spindle.drive)) complaints.add('drive-unknown', 'drive', spindle.drive);
    complaints.within(spindle.torque, 'torque', 'spindle-out-of-range', NOTHING, 100_000);
    complaints.within(spindle.maxRpm, 'maxRpm', 'spindle-out-of-range', NOTHING, 100_000);
    complaints.within(
      spindle.acceleration,
      'acceleration',
      'spindle-out-of-range',
      NOTHING,
      100_000,
    );
  }
  if (measured) {
    complaints.within(measured.torque, 'measured', 'measured-out-of-range', NOTHING, 10_000);
    if (!(measured.style in STYLES) || !CHAMFER_CLASSES.includes(measured.chamfer)) {
      complaints.add('measured-out-of-range', 'measured', measured.style);
    }
  }
  if (learned) {
    complaints.within(learned.factor, 'learned', 'learned-out-of-range', 0.1 - 1e-12, 10);
    complaints.within(learned.band, 'learned', 'learned-out-of-range', 1 - 1e-12, 5);
  }
  if (coating) {
    const [min, max] = coating.thickness ?? [Number.NaN, Number.NaN];
    complaints.within(min, 'coating', 'coating-out-of-range', -1e-12, 1);
    complaints.within(max, 'coating', 'coating-out-of-range', -1e-12, 1);
    if (min > max) complaints.add('coating-out-of-range', 'coating', `${min}–${max}`);
  }
}

/**
 * Everything about a request that makes no sense, the thread's own reading excepted; empty when it can
 * be planned. Source: derived.
 */
export function checkRequest(request: HoleRequest): Problem[] {
  const complaints = new Complaints();
  checkHole(request, complaints);
  checkMachine(request, complaints);
  if (!findMaterial(request.material)) {
    complaints.add('material-unknown', 'material', request.material);
  }
  if (request.tool !== undefined && !toolKnown(request.tool)) {
    const { substrate } = (request.tool ?? {}) as { substrate?: unknown };
    complaints.add('tool-unknown', 'tool', substrate);
  }
  if (request.ownMaterial) {
    const own = { ...request.ownMaterial, like: request.material };
    complaints.list.push(...checkOwnMaterial(own));
  }
  complaints.within(request.drillPoint, 'drillPoint', 'drill-point-out-of-range', 59.999, 180);
  complaints.within(request.tapWeb, 'tapWeb', 'web-out-of-range', NOTHING, 500);
  const centre = request.externalCentre;
  complaints.within(centre, 'externalCentre', 'external-centre-out-of-range', -1e-12, 50);
  for (const series of request.stockedDrills ?? []) {
    if (!DRILL_SERIES.includes(series)) {
      complaints.add('drill-series-unknown', 'stockedDrills', series);
    }
  }
  return [...complaints.list, ...partProblems(request)];
}
