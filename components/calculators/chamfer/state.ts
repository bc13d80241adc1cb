/** From a counted chamfer to its names, its length, and what it does in a material. Pure. */

import { CHAMFER_CLASSES, type Chamfer } from '../../../core/chamfer/chamfer';
import { chamferOf, UK_WORDS } from '../../../core/chamfer/classes';
import {
  chamferLength,
  chamferNames,
  COUNTABLE,
  type ChamferNames,
} from '../../../core/chamfer/names';
import { roomBelowThread, STOP_CLEARANCE } from '../../../core/hole/depth';
import { referenceFlutes } from '../../../core/load/torque';
import type { MaterialId } from '../../../core/material/material';
import type { Problem } from '../../../core/outcome';
import {
  chamferStudy,
  type ChamferStudy,
  type CuttingStyle,
} from '../../../core/plan/chamfer-study';
import type { HoleRequest } from '../../../core/plan/types';
import { inchSystem } from '../../../core/thread/inch-system';
import type { Thread } from '../../../core/thread/thread';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';

export interface ChamferAnswer {
  thread: Thread;
  system: 'metric' | 'inch';
  count: number;
  style: CuttingStyle;
  names: ChamferNames;
  /** mm along the tap, and mm below the full thread of a blind hole with one pitch of stop clearance. */
  length: number;
  room: number;
  flutes: number;
  /** Every class: its range, its length in mm. */
  classes: { chamfer: Chamfer; uk: string; from: number; to: number }[];
  material?: MaterialId;
  /** mm; missing for work thicker than any chamfer. */
  thickness?: number;
  /** Load and torque, where a material was said. */
  study?: ChamferStudy;
  /** Too hard for an HSS tap: names and lengths only. */
  tooHard: boolean;
}

function classesOf(system: 'metric' | 'inch', spiralPoint: boolean, pitch: number) {
  return CHAMFER_CLASSES.map((name) => {
    const chamfer = chamferOf(name, system, spiralPoint);
    const { min, max } = chamfer.threads;
    return {
      chamfer,
      uk: UK_WORDS[name],
      from: chamferLength(min, pitch),
      to: chamferLength(max, pitch),
    };
  });
}

interface Studied {
  study?: ChamferStudy;
  tooHard: boolean;
  problems: readonly Problem[];
}

function studied(request: HoleRequest | undefined, style: CuttingStyle, count: number): Studied {
  const outcome = request && chamferStudy(request, style, count);
  if (!outcome) return { tooHard: false, problems: [] };
  if (outcome.ok) return { study: outcome.value, tooHard: false, problems: [] };
  const tooHard = outcome.problems.some(({ code }) => code === 'too-hard');
  return { tooHard, problems: tooHard ? [] : outcome.problems };
}

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, ChamferAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const count = reader.needed('count', reader.threads('count', COUNTABLE));
  const style = reader.choice<CuttingStyle>('tap') ?? 'straight-flute';
  const material = reader.material('material');
  const thickness = reader.length('thickness');
  const { problems } = reader;
  if (problems.length > 0 || !thread || count === undefined) return { answer: null, problems };

  const hole: HoleRequest['hole'] =
    thickness === undefined ? { kind: 'blind' } : { kind: 'through', thickness };
  const request = material && { thread: reader.text('thread'), hole, material };
  const { study, tooHard, problems: refused } = studied(request, style, count);
  if (refused.length > 0) {
    reader.lay(refused, ({ field }) => (field === 'thickness' ? 'thickness' : 'thread'));
    return { answer: null, problems };
  }
  const { pitch } = thread;
  const system = inchSystem(thread) ? 'inch' : 'metric';
  const chain = { pitch, chamferThreads: count, centre: 0, clearance: STOP_CLEARANCE.synchronous };
  const answer: ChamferAnswer = {
    thread,
    system,
    count,
    style,
    names: chamferNames(count, style === 'spiral-point'),
    length: chamferLength(count, pitch),
    room: roomBelowThread(chain),
    flutes: referenceFlutes(thread.diameter),
    classes: classesOf(system, style === 'spiral-point', pitch),
    material,
    thickness,
    study,
    tooHard,
  };
  return { answer, problems };
}
