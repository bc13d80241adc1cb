/** Reads what the torque calculator asks beyond the plain job: the tap in hand, the fluid, what was read. Pure. */

import { torqueFromMeter } from '../../../core/cycle/load-meter';
import type { ChamferClass } from '../../../core/chamfer/chamfer';
import type { CrossHole } from '../../../core/load/cross-hole';
import type { Fluid } from '../../../core/load/fluid';
import type { MaterialId } from '../../../core/material/material';
import { findMaterial } from '../../../core/material/table';
import type { LoadedStyle } from '../../../core/plan/tap-load';
import type { HoleRequest } from '../../../core/plan/types';
import { readHardness } from '../../fields/readHardness';
import { readMeter } from '../../fields/readMeter';
import { readPlain } from '../../fields/readNumber';
import type { Reader } from '../reader';
import type { Name } from './inputs';

export interface TapInHand {
  chamfer?: ChamferClass | undefined;
  web?: number | undefined;
  nose?: number | undefined;
  fluid: Fluid;
  crossHoles: CrossHole[];
}

/** A typed number of a quantity with its own words for a bad one. */
function plain(reader: Reader<Name>, name: Name, code: string, units: readonly string[]) {
  const text = reader.text(name);
  if (text === '') return undefined;
  return readPlain(text, units) ?? reader.complain(name, { code });
}

function crossOf(reader: Reader<Name>, depth: number | undefined): CrossHole[] {
  const diameter = reader.length('cross');
  if (diameter === undefined) return [];
  const at = reader.needed('crossAt', reader.length('crossAt', 'zero'));
  if (at === undefined) return [];
  if (depth !== undefined && at - diameter / 2 >= depth) {
    reader.complain('crossAt', { code: 'cross-outside' });
    return [];
  }
  return [{ depth: at, diameter, bothSides: reader.text('crossSides') !== 'one' }];
}

/** The tap and its circumstances. Lengths mm. */
export function readTap(reader: Reader<Name>, depth: number | undefined): TapInHand {
  return {
    chamfer: reader.choice<ChamferClass>('chamfer'),
    web: reader.length('web'),
    nose: reader.length('nose'),
    fluid: reader.choice<Fluid>('fluid') ?? 'oil',
    crossHoles: crossOf(reader, depth),
  };
}

/** The torque that was read, N·m: typed as such, or as a share of the spindle's. */
export function readMeasured(
  reader: Reader<Name>,
  spindle: number | undefined,
): number | undefined {
  const text = reader.text('measured');
  if (text === '') return undefined;
  const read = readMeter(text);
  if (!read) return reader.complain('measured', { code: 'not-a-reading' });
  if ('torque' in read) {
    return read.torque > 0 ? read.torque : reader.complain('measured', { code: 'not-above-zero' });
  }
  if (spindle === undefined) return reader.complain('measured', { code: 'percent-needs-spindle' });
  // One point is enough: the torque was typed for the speed that the load was read at.
  const curve = { points: [{ rpm: 1, torque: spindle }] };
  const torque = torqueFromMeter({ percent: read.percent, idle: 0, rpm: 1 }, curve);
  return torque.ok ? torque.value : reader.complain('measured', torque.problems[0]!);
}

/** The shop's own numbers for the chosen material; nothing where no number was entered. */
export function readOwn(
  reader: Reader<Name>,
  material: MaterialId | undefined,
): HoleRequest['ownMaterial'] {
  const kc11 = plain(reader, 'kc', 'not-a-force', ['n/mm²', 'n/mm2', 'mpa']);
  const mc = plain(reader, 'mc', 'not-an-exponent', []);
  const typed = reader.text('hardness');
  const hardness =
    typed === ''
      ? undefined
      : (readHardness(typed) ?? reader.complain('hardness', { code: 'not-a-hardness' }));
  const name = reader.text('own');
  const any = name !== '' || [kc11, mc, hardness].some((each) => each !== undefined);
  if (!any || !material) return undefined;
  if (name === '') return reader.complain('own', { code: 'missing' }, true);
  const { group } = findMaterial(material)!;
  return { name, group, kc11, mc, hardness };
}

/** What `planHole` and its like are asked. */
export function requestOf(
  reader: Reader<Name>,
  job: { depth: number; material: MaterialId; spindle: number | undefined },
  web: number | undefined,
  own: HoleRequest['ownMaterial'],
): HoleRequest {
  const { depth, material, spindle } = job;
  const through = reader.text('hole') === 'through';
  return {
    thread: reader.text('thread'),
    fullThread: depth,
    hole: through ? { kind: 'through', thickness: depth } : { kind: 'blind' },
    material,
    spindle: { drive: 'synchronous', torque: spindle },
    tapWeb: web,
    ...(own ? { ownMaterial: own } : {}),
  };
}

/** A reading ready to be set against the plan, or kept. */
export function readingOf(
  request: HoleRequest,
  tap: { style: LoadedStyle; chamfer: ChamferClass },
  torque: number,
  worn: boolean,
) {
  const { thread, material, hole, fullThread = 0, ownMaterial: own } = request;
  return { thread, material, hole, fullThread, own, torque, worn, ...tap };
}
