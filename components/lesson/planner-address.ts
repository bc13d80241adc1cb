/** The planner's address with a lesson's example filled in, so that the reader can play on with it. */

import type { HoleRequest } from '../../core/plan/types';
import { FIELDS, type InputName } from '../planner/inputs';
import { initialValues, writeAddress } from '../state/address';
import { decimals } from '../words/format';
import { inchToMm, mmToInch } from '../../core/units';
import type { Unit } from '../words/format';

/** A length as somebody would type it in `unit`; in mm after all where inches would not be exact. */
function typedLength(mm: number, unit: Unit): string {
  if (unit === 'mm') return decimals(mm, 3);
  const inches = decimals(mmToInch(mm), 4);
  return Math.abs(inchToMm(Number(inches)) - mm) < 1e-6 ? inches : `${decimals(mm, 3)} mm`;
}

/** Lengths are written for `unit`, which the address also carries. */
export function plannerAddress(request: HoleRequest, unit: Unit = 'mm'): string {
  const typed = (mm: number) => typedLength(mm, unit);
  const values = initialValues<InputName>(FIELDS);
  const { hole, fullThread, spindle } = request;
  values.thread = request.thread;
  values.hole = hole.kind;
  values.material = request.material;
  values.units = unit;
  if (fullThread !== undefined)
    values[hole.kind === 'blind' ? 'depth' : 'partial'] = typed(fullThread);
  if (hole.kind === 'blind' && hole.limit) {
    values.limit = typed(hole.limit.depth);
    values.at = hole.limit.at;
  }
  if (hole.kind === 'through') {
    values.thickness = typed(hole.thickness);
    if (hole.clearBelow !== undefined) values.below = typed(hole.clearBelow);
    if (hole.chipsMayFall === false) values.fall = 'no';
  }
  if (spindle) values.drive = spindle.drive;
  if (spindle?.torque !== undefined) values.torque = decimals(spindle.torque, 2);
  return `/plan/${writeAddress(values, FIELDS)}`;
}
