/** From a tap in a hole to its torque, and what that is of the tap's strength and the spindle's. Pure. */

import type { ChamferClass } from '../../../core/chamfer/chamfer';
import type { MaterialId } from '../../../core/material/material';
import type { Problem } from '../../../core/outcome';
import {
  tapLoads,
  usualChamfer,
  type LoadedStyle,
  type TapLoad,
} from '../../../core/plan/tap-load';
import { strokeBand, type StrokeBand } from '../../../core/plan/stroke-band';
import { studyTap } from '../../../core/plan/tap-study';
import type { HoleKind, HoleRequest } from '../../../core/plan/types';
import type { Thread } from '../../../core/thread/thread';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';

export interface TorqueAnswer {
  thread: Thread;
  load: TapLoad;
  /** Every style with the same chamfer in the same hole. */
  loads: TapLoad[];
  /** Torque along the stroke; null where it cannot be followed. */
  stroke: StrokeBand | null;
  hole: HoleKind['kind'];
  /** mm of full thread, or of thickness. */
  depth: number;
  material: MaterialId;
  chamferGiven: boolean;
  webGiven: boolean;
}

const FIELD_OF: Record<string, Name> = {
  fullThread: 'depth',
  thickness: 'depth',
  torque: 'spindle',
  tapWeb: 'web',
  material: 'material',
};

const fieldOf = ({ field }: Problem): Name => FIELD_OF[field ?? ''] ?? 'thread';

function requestOf(
  reader: Reader<Name>,
  depth: number,
  material: MaterialId,
  rest: { spindle?: number; web?: number },
): HoleRequest {
  const through = reader.text('hole') === 'through';
  return {
    thread: reader.text('thread'),
    fullThread: depth,
    hole: through ? { kind: 'through', thickness: depth } : { kind: 'blind' },
    material,
    spindle: { drive: 'synchronous', torque: rest.spindle },
    tapWeb: rest.web,
  };
}

function strokeOf(
  request: HoleRequest,
  style: LoadedStyle,
  chamfer: ChamferClass,
): StrokeBand | null {
  const study = studyTap(request, { style, chamfer });
  const band = study.ok ? strokeBand(study.value) : study;
  return band.ok ? band.value : null;
}

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, TorqueAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const style = reader.needed('tap', reader.choice<LoadedStyle>('tap'));
  const depth = reader.needed('depth', reader.length('depth'));
  const material = reader.needed('material', reader.material('material'));
  const rest = { spindle: reader.torque('spindle'), web: reader.length('web') };
  const chosen = reader.choice<ChamferClass>('chamfer');
  const { problems } = reader;
  if (problems.length > 0 || !thread || !style || depth === undefined || !material) {
    return { answer: null, problems };
  }
  const request = requestOf(reader, depth, material, rest);
  const chamfer = chosen ?? usualChamfer(request);
  const loads = tapLoads(request, chamfer);
  if (!loads.ok) {
    const hard = loads.problems.find(({ code }) => code === 'too-hard');
    if (hard) return { answer: null, problems, refusal: hard };
    reader.lay(loads.problems, fieldOf);
    return { answer: null, problems };
  }
  const load = loads.value.find((each) => each.style === style);
  if (!load) {
    const code = chosen === 'taper' ? 'form-taper' : 'form-brittle';
    return { answer: null, problems, refusal: { code } };
  }
  const answer: TorqueAnswer = {
    thread,
    load,
    loads: loads.value,
    stroke: strokeOf(request, style, chamfer),
    hole: request.hole.kind,
    depth,
    material,
    chamferGiven: chosen !== undefined,
    webGiven: rest.web !== undefined && style !== 'form',
  };
  return { answer, problems };
}
