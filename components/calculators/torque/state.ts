/** From a tap in a hole to its torque, and what that is of the tap's strength and the spindle's. Pure. */

import type { ChamferClass } from '../../../core/chamfer/chamfer';
import type { Fluid } from '../../../core/load/fluid';
import type { MaterialId } from '../../../core/material/material';
import { refuse, type Outcome, type Problem } from '../../../core/outcome';
import { torqueFactor, type TorqueRead } from '../../../core/plan/learned';
import { strokeBand, type StrokeBand } from '../../../core/plan/stroke-band';
import { classLoads } from '../../../core/plan/tap-classes';
import {
  tapLoads,
  usualChamfer,
  type LoadedStyle,
  type TapLoad,
} from '../../../core/plan/tap-load';
import { studyTap, type TapStudy } from '../../../core/plan/tap-study';
import type { HoleKind, HoleRequest } from '../../../core/plan/types';
import type { Thread } from '../../../core/thread/thread';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';
import { readingOf, readMeasured, readOwn, readTap, requestOf, type TapInHand } from './read';

export interface TorqueAnswer {
  thread: Thread;
  load: TapLoad;
  /** Every style with the same chamfer in the same hole. */
  loads: TapLoad[];
  /** This style with every class of chamfer. */
  classes: TapLoad[];
  study: TapStudy;
  /** Torque along the stroke. */
  stroke: StrokeBand;
  hole: HoleKind['kind'];
  /** mm of full thread, or of thickness. */
  depth: number;
  material: MaterialId;
  /** What was asked, without what was read on the machine: another reading can be set beside it. */
  request: HoleRequest;
  chamfer: ChamferClass;
  fluid: Fluid;
  /** What was read on the machine in this job. */
  read?: TorqueRead;
  /** Name and numbers of the shop's own material. */
  own: HoleRequest['ownMaterial'];
  chamferGiven: boolean;
  webGiven: boolean;
  noseGiven: boolean;
}

const FIELD_OF: Record<string, Name> = {
  fullThread: 'depth',
  thickness: 'depth',
  torque: 'spindle',
  tapWeb: 'web',
  material: 'material',
  like: 'material',
  name: 'own',
  kc11: 'kc',
  mc: 'mc',
  hardness: 'hardness',
  nose: 'nose',
  measured: 'measured',
};

const fieldOf = ({ field }: Problem): Name => FIELD_OF[field ?? ''] ?? 'thread';

/** What the answer is made of, once everything could be read. */
interface Job {
  request: HoleRequest;
  style: LoadedStyle;
  chamfer: ChamferClass;
  tap: TapInHand;
}

type Found = Pick<TorqueAnswer, 'load' | 'loads' | 'classes' | 'study' | 'stroke'>;

function find({ request, style, chamfer, tap }: Job): Outcome<Found> {
  const { fluid, nose, crossHoles } = tap;
  const loads = tapLoads(request, chamfer, fluid);
  if (!loads.ok) return loads;
  const load = loads.value.find((each) => each.style === style);
  if (!load) return refuse({ code: chamfer === 'taper' ? 'form-taper' : 'form-brittle' });
  const study = studyTap(request, { style, chamfer, fluid, nose, crossHoles });
  if (!study.ok) return study;
  const stroke = strokeBand(study.value);
  if (!stroke.ok) return stroke;
  const classes = classLoads(request, style, fluid);
  const value = { load, loads: loads.value, classes, study: study.value, stroke: stroke.value };
  return { ok: true, value, notes: loads.notes };
}

/** Refusals of the method; everything else the core refuses belongs to a field. */
const REFUSALS = ['too-hard', 'form-taper', 'form-brittle'];

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, TorqueAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const style = reader.needed('tap', reader.choice<LoadedStyle>('tap'));
  const depth = reader.needed('depth', reader.length('depth'));
  const material = reader.needed('material', reader.material('material'));
  const spindle = reader.torque('spindle');
  const tap = readTap(reader, depth);
  const torque = readMeasured(reader, spindle);
  const own = readOwn(reader, material);
  const { problems } = reader;
  const blank = { answer: null, problems };
  if (problems.length > 0 || !thread || !style || depth === undefined || !material) return blank;

  const request = requestOf(reader, { depth, material, spindle }, tap.web, own);
  const chamfer = tap.chamfer ?? usualChamfer(request);
  const worn = reader.text('edge') === 'worn';
  const read =
    torque === undefined ? undefined : readingOf(request, { style, chamfer }, torque, worn);
  const measured = read && { measured: { torque: read.torque, style, chamfer, worn } };
  const found = find({ request: { ...request, ...measured }, style, chamfer, tap });
  const compared = read && found.ok ? torqueFactor(read) : null;
  const refused = [found, compared].flatMap((each) => (each && !each.ok ? each.problems : []));
  const refusal = refused.find(({ code }) => REFUSALS.includes(code));
  if (refusal) return { ...blank, refusal };
  if (!found.ok || refused.length > 0) {
    reader.lay(refused, fieldOf);
    return blank;
  }
  const answer: TorqueAnswer = {
    thread,
    ...found.value,
    hole: request.hole.kind,
    depth,
    material,
    request,
    chamfer,
    fluid: tap.fluid,
    ...(read ? { read } : {}),
    own,
    chamferGiven: tap.chamfer !== undefined,
    webGiven: tap.web !== undefined && style !== 'form',
    noseGiven: tap.nose !== undefined && style !== 'form',
  };
  return { answer, problems };
}
