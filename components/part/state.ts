/** From what was typed to a planned part, or to what is still missing. Pure. */

import { drawingEntries, findMaterial, planDrawing, readMaterial, tableOf } from '../../core';
import type { HoleTable } from '../../core/drawing/table';
import type { DrawingPlan, Shop } from '../../core/drawing/types';
import type { MaterialId } from '../../core/material/material';
import type { Spindle, SpindleDrive } from '../../core/plan/types';
import { readLength } from '../fields/readLength';
import { readPlain } from '../fields/readNumber';
import { readTorque } from '../fields/readTorque';
import type { Unit } from '../words';
import {
  allLines,
  linesOf,
  MOST_LINES,
  readChanges,
  readColumns,
  type PartInputs,
  type PartName,
} from './inputs';
import { joinsOf, readLines, tappedOf } from './lines';

export interface PartProblem {
  field: PartName;
  code: 'missing' | 'too-many' | 'not-a-length' | 'not-a-torque' | 'not-a-speed';
}

export interface PartAttempt {
  /** The table that the lines are, or null. */
  table: HoleTable | null;
  drawing: DrawingPlan | null;
  shop: Shop | null;
  problems: PartProblem[];
}

class Reader {
  readonly problems: PartProblem[] = [];

  constructor(readonly values: PartInputs) {}

  positive(
    field: PartName,
    code: PartProblem['code'],
    read: (text: string) => number | null,
  ): number | undefined {
    const text = this.values[field].trim();
    if (text === '') return undefined;
    const value = read(text);
    if (value !== null && value > 0) return value;
    this.problems.push({ field, code });
    return undefined;
  }
}

function spindleOf(reader: Reader): Spindle {
  const drive = reader.values.drive as SpindleDrive;
  if (drive === 'hand') return { drive };
  const torque = reader.positive('torque', 'not-a-torque', readTorque);
  const maxRpm = reader.positive('rpm', 'not-a-speed', (text) =>
    readPlain(text, ['rpm', 'rev/min', 'r/min', 'u/min', '1/min']),
  );
  return {
    drive,
    ...(torque === undefined ? {} : { torque }),
    ...(maxRpm === undefined ? {} : { maxRpm }),
  };
}

/** What differs for single holes; a change that cannot be read changes nothing. `places`: each hole's lines. */
function holesOf(
  values: PartInputs,
  unit: Unit,
  spindle: Spindle,
  places: readonly (readonly number[])[],
): NonNullable<Shop['holes']> {
  const holes: Record<number, Partial<Omit<Shop, 'holes'>>> = {};
  for (const [number, { material, thickness, torque }] of Object.entries(
    readChanges(values.changes),
  )) {
    const index = places.findIndex((lines) => lines.includes(Number(number)));
    const length = thickness === undefined ? null : readLength(thickness, unit);
    const typed = torque === undefined ? null : readTorque(torque);
    if (index < 0) continue;
    holes[index] = {
      ...(material && findMaterial(material) ? { material: material as MaterialId } : {}),
      ...(length && length.mm > 0 ? { thickness: length.mm } : {}),
      ...(typed !== null && typed > 0 ? { spindle: { ...spindle, torque: typed } } : {}),
    };
  }
  return holes;
}

/** Reads the form and plans every hole of it. */
export function attempt(values: PartInputs, unit: Unit, drawer?: unknown): PartAttempt {
  const reader = new Reader(values);
  const lines = linesOf(values.holes);
  const columns = readColumns(values.columns);
  const table = lines.length > MOST_LINES ? null : tableOf(allLines(values.holes), columns);
  if (lines.length === 0) reader.problems.push({ field: 'holes', code: 'missing' });
  if (lines.length > MOST_LINES) reader.problems.push({ field: 'holes', code: 'too-many' });
  const written = values.material === '' ? readMaterial(values.designation) : null;
  const material = written?.ok ? written.value.id : values.material;
  if (material === '') reader.problems.push({ field: 'material', code: 'missing' });
  const thickness = reader.positive(
    'thickness',
    'not-a-length',
    (text) => readLength(text, unit)?.mm ?? null,
  );
  const spindle = spindleOf(reader);
  const { problems } = reader;
  if (problems.length > 0) return { table, drawing: null, shop: null, problems };
  const said = readLines(values.lines);
  const all = allLines(values.holes);
  const joins = joinsOf(said);
  const places =
    values.changes === '' ? [] : drawingEntries(all, { columns, joins }).map(({ lines: at }) => at);
  const shop: Shop = {
    material: material as MaterialId,
    spindle,
    ...(thickness === undefined ? {} : { thickness }),
    ...(drawer === undefined ? {} : { drawer }),
    columns,
    joins,
    tapped: tappedOf(said),
    holes: holesOf(values, unit, spindle, places),
  };
  return { table, drawing: planDrawing(all, shop), shop, problems };
}
