/** Reads the form into a request the core understands; what cannot be read is a problem at its field. Pure. */

import type { ChamferClass } from '../../core/chamfer/chamfer';
import type { DrillSeries } from '../../core/drill/drill';
import { readThread } from '../../core';
import type { MaterialId } from '../../core/material/material';
import type { Outcome, Problem } from '../../core/outcome';
import type { HoleKind, HoleRequest, SpindleDrive } from '../../core/plan/types';
import type { TapStyle } from '../../core/tap/tap';
import type { Thread } from '../../core/thread/thread';
import { findMaterial } from '../../core/material/table';
import { readHardness } from '../fields/readHardness';
import { readLength } from '../fields/readLength';
import { readPlain } from '../fields/readNumber';
import { readTorque } from '../fields/readTorque';
import type { Unit } from '../words';
import { baseUnit, drillsChosen, type InputName, type Inputs } from './inputs';

/** Why a field keeps the form from an answer. `missing`: nothing was entered yet. */
export interface FieldProblem {
  field: InputName;
  problem: Problem;
  missing: boolean;
  /** True when it lies in how several inputs sit together, which typing one of them may yet mend. */
  whole?: boolean;
}

export interface Reading {
  thread: Outcome<Thread>;
  request: HoleRequest | null;
  /** What could be read so far, with stand-ins for what is missing: good for checking, not for planning. */
  draft: HoleRequest;
  problems: FieldProblem[];
}

class Reader {
  readonly problems: FieldProblem[] = [];

  constructor(
    readonly values: Inputs,
    readonly unit: Unit,
  ) {}

  complain(field: InputName, code: string, missing = false): undefined {
    const problem = { code, field, data: { typed: this.values[field] } };
    this.problems.push({ field, missing, problem });
    return undefined;
  }

  private typed<T>(name: InputName, code: string, read: (text: string) => T | null): T | undefined {
    const text = this.values[name].trim();
    return text === '' ? undefined : (read(text) ?? this.complain(name, code));
  }

  length(name: InputName): number | undefined {
    const base = baseUnit(name, this.unit);
    return this.typed(name, 'not-a-length', (text) => readLength(text, base)?.mm ?? null);
  }

  torque(name: InputName): number | undefined {
    return this.typed(name, 'not-a-torque', readTorque);
  }

  hardness(name: InputName) {
    return this.typed(name, 'not-a-hardness', readHardness);
  }

  plain(name: InputName, code: string, units: readonly string[]): number | undefined {
    return this.typed(name, code, (text) => readPlain(text, units));
  }

  needed<T>(name: InputName, value: T | undefined): T | undefined {
    if (this.values[name].trim() === '') this.complain(name, 'missing', true);
    return value;
  }

  choice<T extends string>(name: InputName): T | undefined {
    return this.needed(name, (this.values[name] || undefined) as T | undefined);
  }
}

function readHole(reader: Reader): HoleKind | undefined {
  const kind = reader.choice<HoleKind['kind']>('hole');
  if (kind === 'through') {
    const thickness = reader.needed('thickness', reader.length('thickness'));
    const clearBelow = reader.length('below');
    const chipsMayFall = reader.values.fall !== 'no';
    if (thickness === undefined) return undefined;
    return {
      kind,
      thickness,
      ...(clearBelow === undefined ? {} : { clearBelow }),
      ...(chipsMayFall ? {} : { chipsMayFall }),
    };
  }
  if (kind === undefined) return undefined;
  const depth = reader.length('limit');
  const at = reader.values.at === 'point' ? 'point' : 'shoulder';
  return depth === undefined ? { kind } : { kind, limit: { at, depth } };
}

function readSpindle(reader: Reader): Partial<HoleRequest> {
  const drive = reader.values.drive as SpindleDrive;
  if (drive === 'hand') return { spindle: { drive } };
  const torque = reader.torque('torque');
  const maxRpm = reader.plain('rpm', 'not-a-speed', ['rpm', 'rev/min', 'r/min', 'u/min', '1/min']);
  if (drive === 'synchronous' && torque === undefined && maxRpm === undefined) return {};
  return {
    spindle: {
      drive,
      ...(torque === undefined ? {} : { torque }),
      ...(maxRpm === undefined ? {} : { maxRpm }),
    },
  };
}

function readCoating(reader: Reader): Partial<HoleRequest> {
  const [min, max] = [reader.length('coat-min'), reader.length('coat-max')];
  if (min === undefined && max === undefined) return {};
  return { coating: { thickness: [min ?? max ?? 0, max ?? min ?? 0] } };
}

function readMeasured(reader: Reader): Partial<HoleRequest> {
  const torque = reader.torque('measured');
  if (torque === undefined) return {};
  const style = reader.choice<TapStyle>('measured-style');
  const chamfer = reader.choice<ChamferClass>('measured-chamfer');
  if (!style || !chamfer) return {};
  const worn = reader.values['measured-worn'] === 'yes';
  return { measured: { torque, style, chamfer, ...(worn ? { worn } : {}) } };
}

function readMore(reader: Reader): Partial<HoleRequest> {
  const drillPoint = reader.plain('point', 'not-an-angle', ['°', 'deg', 'degrees']);
  const series = drillsChosen(reader.values.drills) as DrillSeries[];
  if (series.length === 0) reader.complain('drills', 'no-drills');
  const tapWeb = reader.length('web');
  const externalCentre = reader.length('centre');
  return {
    ...(drillPoint === undefined ? {} : { drillPoint }),
    ...(reader.values.drills === '' ? {} : { stockedDrills: series }),
    ...(tapWeb === undefined ? {} : { tapWeb }),
    ...(externalCentre === undefined ? {} : { externalCentre }),
    ...(reader.values.interrupted === 'yes' ? { interrupted: true } : {}),
    ...readCoating(reader),
    ...readMeasured(reader),
  };
}

/** The shop's own numbers for the chosen material; nothing where none was entered. */
function readOwn(reader: Reader, material: MaterialId | undefined): Partial<HoleRequest> {
  const kc11 = reader.plain('kc', 'not-a-force', ['n/mm²', 'n/mm2', 'mpa']);
  const mc = reader.plain('mc', 'not-an-exponent', []);
  const hardness = reader.hardness('hardness');
  const name = reader.values.own.trim();
  const any = name !== '' || [kc11, mc, hardness].some((each) => each !== undefined);
  const lender = material && findMaterial(material);
  if (!any || !lender) return {};
  if (name === '') {
    reader.complain('own', 'missing', true);
    return {};
  }
  return { ownMaterial: { name, group: lender.group, kc11, mc, hardness } };
}

/** Reads the form: a request when every field that matters can be read, otherwise why not. */
export function readInputs(values: Inputs, unit: Unit): Reading {
  const reader = new Reader(values, unit);
  const typed = values.thread.trim();
  const thread = readThread(typed);
  if (typed === '') reader.complain('thread', 'missing', true);
  else if (!thread.ok) {
    for (const problem of thread.problems) {
      reader.problems.push({ field: 'thread', problem, missing: false });
    }
  }
  const hole = readHole(reader);
  // Kept apart, so that turning a blind hole into a through one does not carry its depth along.
  const fullThread = reader.length(values.hole === 'through' ? 'partial' : 'depth');
  const material = reader.choice<MaterialId>('material');
  const rest = {
    ...readSpindle(reader),
    ...readMore(reader),
    ...readOwn(reader, material),
  };
  const draft: HoleRequest = {
    thread: typed,
    ...(fullThread === undefined ? {} : { fullThread }),
    hole: hole ?? { kind: 'blind' },
    material: material ?? 'steel-low',
    ...rest,
  };
  const complete = reader.problems.length === 0 && hole && material;
  return { thread, request: complete ? draft : null, draft, problems: reader.problems };
}
