/**
 * Each part of a request and the fields it is typed in: how they are read, and how they are written. One
 * table, so that nothing can be read that is not written. A new part is one entry, and its names in
 * `inputs.ts`.
 */

import { readMaterial } from '../../core/material/read-material';
import type { ChamferClass } from '../../core/chamfer/chamfer';
import type { DrillSeries } from '../../core/drill/drill';
import { findMaterial } from '../../core/material/table';
import type { MaterialId } from '../../core/material/material';
import type { Crossing, Duty, HoleKind, HoleRequest, SpindleDrive } from '../../core/plan/types';
import type { TapStyle } from '../../core/tap/tap';
import { exactLength, exactNumber, tidyNumber } from '../address/exact';
import type { Unit } from '../words';
import {
  baseUnit,
  drillsChosen,
  drillsText,
  laterChosen,
  type InputName,
  type Inputs,
} from './inputs';
import type { Reader } from './reader';

/** Writes a length into a field; nothing for none. */
export type LengthWriter = (
  name: InputName,
  mm: number | undefined,
) => Partial<Record<InputName, string>>;

export interface RequestPart {
  read: (reader: Reader) => Partial<HoleRequest>;
  write: (request: HoleRequest, length: LengthWriter) => Partial<Inputs>;
}

export function lengthWriter(unit: Unit): LengthWriter {
  return (name, mm) => (mm === undefined ? {} : { [name]: exactLength(mm, baseUnit(name, unit)) });
}

/** The fields whose values are there. */
function only<Fields extends object>(
  fields: Fields,
): {
  [Name in keyof Fields]?: Exclude<Fields[Name], undefined>;
} {
  const there = Object.entries(fields).filter(([, value]) => value !== undefined);
  return Object.fromEntries(there) as { [Name in keyof Fields]?: Exclude<Fields[Name], undefined> };
}

const plain = (value: number | undefined): string | undefined =>
  value === undefined ? undefined : exactNumber(value);
const torqueText = (value: number | undefined): string | undefined =>
  value === undefined ? undefined : tidyNumber(value, 2);
const yes = (value: boolean | undefined): 'yes' | undefined => (value ? 'yes' : undefined);

const RPM_UNITS = ['rpm', 'rev/min', 'r/min', 'u/min', '1/min'];
const DEGREES = ['°', 'deg', 'degrees'];

const hole: RequestPart = {
  read(reader) {
    const kind = reader.choice<HoleKind['kind']>('hole');
    if (kind === 'through') {
      const thickness = reader.needed('thickness', reader.length('thickness'));
      const clearBelow = reader.length('below');
      const chipsMayFall = reader.values.fall === 'no' ? false : undefined;
      if (thickness === undefined) return {};
      return { hole: { kind, thickness, ...only({ clearBelow, chipsMayFall }) } };
    }
    if (kind === undefined) return {};
    const depth = reader.length('limit');
    const at = reader.values.at === 'point' ? 'point' : 'shoulder';
    return { hole: depth === undefined ? { kind } : { kind, limit: { at, depth } } };
  },
  write({ hole: asked }, length) {
    if (asked.kind === 'blind') {
      const { limit } = asked;
      return { hole: 'blind', ...length('limit', limit?.depth), ...only({ at: limit?.at }) };
    }
    return {
      hole: 'through',
      ...length('thickness', asked.thickness),
      ...length('below', asked.clearBelow),
      ...(asked.chipsMayFall === false ? { fall: 'no' } : {}),
    };
  },
};

const fullThread: RequestPart = {
  // Kept apart, so that turning a blind hole into a through one does not carry its depth along.
  read: (reader) =>
    only({ fullThread: reader.length(reader.values.hole === 'through' ? 'partial' : 'depth') }),
  write: (request, length) =>
    length(request.hole.kind === 'through' ? 'partial' : 'depth', request.fullThread),
};

/** The group that the written name belongs to, where none was chosen from the list. */
function namedGroup({ values }: Reader): MaterialId | undefined {
  if (values.material !== '' || values.designation.trim() === '') return undefined;
  const read = readMaterial(values.designation);
  return read.ok ? read.value.id : undefined;
}

const material: RequestPart = {
  read: (reader) => {
    const group = namedGroup(reader) ?? reader.choice<MaterialId>('material');
    return only({ material: group });
  },
  write: (request) => ({ material: request.material }),
};

const spindle: RequestPart = {
  read(reader) {
    const drive = reader.values.drive as SpindleDrive;
    if (drive === 'hand') return { spindle: { drive } };
    const torque = reader.torque('torque');
    const maxRpm = reader.plain('rpm', 'not-a-speed', RPM_UNITS);
    const acceleration = reader.plain('acceleration', 'not-an-acceleration', ['rev/s²', 'rev/s2']);
    const known = only({ torque, maxRpm, acceleration });
    if (drive === 'synchronous' && Object.keys(known).length === 0) return {};
    return { spindle: { drive, ...known } };
  },
  write: ({ spindle: asked }) =>
    only({
      drive: asked?.drive,
      torque: torqueText(asked?.torque),
      rpm: plain(asked?.maxRpm),
      acceleration: plain(asked?.acceleration),
    }),
};

const drills: RequestPart = {
  read(reader) {
    const series = drillsChosen(reader.values.drills) as DrillSeries[];
    if (series.length === 0) reader.complain('drills', 'no-drills');
    return reader.values.drills === '' ? {} : { stockedDrills: series };
  },
  write: ({ stockedDrills }) => (stockedDrills ? { drills: drillsText(stockedDrills) } : {}),
};

const tools: RequestPart = {
  read: (reader) =>
    only({
      drillPoint: reader.plain('point', 'not-an-angle', DEGREES),
      tapWeb: reader.length('web'),
      externalCentre: reader.length('centre'),
    }),
  write: ({ drillPoint, tapWeb, externalCentre }, length) => ({
    ...only({ point: plain(drillPoint) }),
    ...length('web', tapWeb),
    ...length('centre', externalCentre),
  }),
};

const interrupted: RequestPart = {
  read: (reader) => (reader.yes('interrupted') ? { interrupted: true } : {}),
  write: (request) => only({ interrupted: yes(request.interrupted) }),
};

const entry: RequestPart = {
  read(reader) {
    const angle = reader.plain('entry', 'not-an-angle', DEGREES);
    if (angle === undefined) return {};
    return { entry: { angle, ...(reader.yes('entry-flat') ? { flat: true } : {}) } };
  },
  write: ({ entry: asked }) => only({ entry: plain(asked?.angle), 'entry-flat': yes(asked?.flat) }),
};

const crossing: RequestPart = {
  read(reader) {
    const kind = reader.chosen<Crossing['kind']>('crossing');
    if (kind === undefined) return {};
    const width = reader.needed('crossing-width', reader.length('crossing-width'));
    const from = reader.length('crossing-from');
    const cut = reader.values['crossing-cut'] === 'after' ? 'after' : 'before';
    return width === undefined ? {} : { crossing: { kind, width, cut, ...only({ from }) } };
  },
  write: ({ crossing: asked }, length) => ({
    ...only({ crossing: asked?.kind, 'crossing-cut': asked?.cut }),
    ...length('crossing-width', asked?.width),
    ...length('crossing-from', asked?.from),
  }),
};

const counterbore: RequestPart = {
  read(reader) {
    const [diameter, depth] = [reader.length('bore-diameter'), reader.length('bore-depth')];
    if (diameter === undefined && depth === undefined) return {};
    reader.needed('bore-diameter', diameter);
    reader.needed('bore-depth', depth);
    return diameter === undefined || depth === undefined
      ? {}
      : { counterbore: { diameter, depth } };
  },
  write: ({ counterbore: asked }, length) => ({
    ...length('bore-diameter', asked?.diameter),
    ...length('bore-depth', asked?.depth),
  }),
};

const part: RequestPart = {
  read(reader) {
    const later = laterChosen(reader.values.later);
    return {
      ...(reader.yes('cored') ? { cored: true } : {}),
      ...(later.length === 0 ? {} : { later }),
      ...only({ duty: reader.chosen<Duty>('duty') }),
    };
  },
  write: ({ cored, later, duty }) =>
    only({ cored: yes(cored), later: later?.length ? later.join(',') : undefined, duty }),
};

const tool: RequestPart = {
  read(reader) {
    const substrate = reader.chosen<NonNullable<HoleRequest['tool']>['substrate']>('substrate');
    const coated = reader.yes('coated');
    if (substrate === undefined && !coated) return {};
    return { tool: { substrate: substrate ?? 'hss', ...(coated ? { coated } : {}) } };
  },
  write: ({ tool: asked }) => only({ substrate: asked?.substrate, coated: yes(asked?.coated) }),
};

const coating: RequestPart = {
  read(reader) {
    const [min, max] = [reader.length('coat-min'), reader.length('coat-max')];
    if (min === undefined && max === undefined) return {};
    return { coating: { thickness: [min ?? max ?? 0, max ?? min ?? 0] } };
  },
  write: ({ coating: asked }, length) => ({
    ...length('coat-min', asked?.thickness[0]),
    ...length('coat-max', asked?.thickness[1]),
  }),
};

const measured: RequestPart = {
  read(reader) {
    const torque = reader.torque('measured');
    if (torque === undefined) return {};
    const style = reader.choice<TapStyle>('measured-style');
    const chamfer = reader.choice<ChamferClass>('measured-chamfer');
    if (!style || !chamfer) return {};
    const worn = reader.yes('measured-worn');
    return { measured: { torque, style, chamfer, ...(worn ? { worn } : {}) } };
  },
  write: ({ measured: asked }) =>
    only({
      measured: torqueText(asked?.torque),
      'measured-style': asked?.style,
      'measured-chamfer': asked?.chamfer,
      'measured-worn': yes(asked?.worn),
    }),
};

const learned: RequestPart = {
  read(reader) {
    const factor = reader.plain('learned', 'not-a-factor', []);
    if (factor === undefined) return {};
    return { learned: { factor, band: reader.plain('learned-band', 'not-a-factor', []) ?? 1 } };
  },
  write: ({ learned: asked }) =>
    only({ learned: plain(asked?.factor), 'learned-band': plain(asked?.band) }),
};

/** The shop's own numbers for the chosen material; nothing where none was entered. */
const ownMaterial: RequestPart = {
  read(reader) {
    const kc11 = reader.plain('kc', 'not-a-force', ['n/mm²', 'n/mm2', 'mpa']);
    const mc = reader.plain('mc', 'not-an-exponent', []);
    const hardness = reader.hardness('hardness');
    const name = reader.values.own.trim();
    const any = name !== '' || [kc11, mc, hardness].some((each) => each !== undefined);
    const lender = findMaterial(namedGroup(reader) ?? reader.values.material);
    if (!any || !lender) return {};
    if (name === '') {
      reader.complain('own', 'missing', true);
      return {};
    }
    return { ownMaterial: { name, group: lender.group, kc11, mc, hardness } };
  },
  write({ ownMaterial: asked }) {
    const { name, kc11, mc, hardness } = asked ?? {};
    return only({
      own: name,
      kc: plain(kc11),
      mc: plain(mc),
      hardness: hardness && `${exactNumber(hardness.value)} ${hardness.scale}`,
    });
  },
};

/** In the order in which they are complained of. */
export const REQUEST_PARTS: readonly RequestPart[] = [
  hole,
  fullThread,
  material,
  spindle,
  tools,
  drills,
  interrupted,
  entry,
  crossing,
  counterbore,
  part,
  tool,
  coating,
  measured,
  learned,
  ownMaterial,
];
