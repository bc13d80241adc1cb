/** From two of drilled depth, full thread and chamfer to the third. Pure. */

import { chamferOf, FORM_F } from '../../../core/chamfer/classes';
import type { Problem } from '../../../core/outcome';
import { blindStudy, type BlindQuestion, type BlindStudy } from '../../../core/plan/blind-study';
import type { SpindleDrive } from '../../../core/plan/types';
import { inchSystem } from '../../../core/thread/inch-system';
import type { Thread } from '../../../core/thread/thread';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { ChamferChoice, Find, Name } from './inputs';

const USUAL_POINT = 118;

/** Drill points that exist, degrees. */
const POINT = { min: 60, max: 180 };

export interface DepthAnswer {
  find: Find;
  study: BlindStudy;
  /** The chamfer that was chosen; missing where it was asked for. */
  chamfer?: { choice: ChamferChoice; threads: { min: number; max: number } };
  drive: SpindleDrive;
  centre: number;
  pointAngle: number;
  pointGiven: boolean;
}

function fieldOf({ code, field }: Problem, find: Find): Name {
  if (code === 'no-room') return find === 'hole' ? 'full' : 'hole';
  if (field === 'drillPoint') return 'point';
  return field === 'externalCentre' ? 'centre' : 'thread';
}

function threadsOf(choice: ChamferChoice, thread: Thread): { min: number; max: number } {
  if (choice === 'form-f') return { ...FORM_F.threads };
  return chamferOf(choice, inchSystem(thread) ? 'inch' : 'metric').threads;
}

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, DepthAnswer> {
  const reader = new Reader<Name>(values, unit);
  const find = reader.choice<Find>('find') ?? 'hole';
  const thread = threadOf(reader, 'thread');
  const wanted = <T>(name: Find, read: () => T | undefined) =>
    find === name ? undefined : reader.needed(name, read());
  const fullThread = wanted('full', () => reader.length('full'));
  const shoulder = wanted('hole', () => reader.length('hole'));
  const choice = wanted('chamfer', () => reader.choice<ChamferChoice>('chamfer'));
  const drive = reader.choice<SpindleDrive>('drive') ?? 'synchronous';
  const centre = reader.length('centre', 'zero') ?? 0;
  const point = reader.angle('point', POINT);
  const { problems } = reader;
  if (problems.length > 0 || !thread) return { answer: null, problems };

  const chamfer = choice && { choice, threads: threadsOf(choice, thread) };
  const question: BlindQuestion = {
    thread: reader.text('thread'),
    fullThread,
    shoulder,
    chamfer: chamfer?.threads,
    drive,
    finishing: drive === 'hand' && choice === 'form-f',
    centre,
    pointAngle: point ?? USUAL_POINT,
  };
  const study = blindStudy(question);
  if (!study.ok) {
    reader.lay(study.problems, (problem) => fieldOf(problem, find));
    return { answer: null, problems };
  }
  const { pointAngle } = question;
  const pointGiven = point !== undefined;
  return {
    answer: { find, study: study.value, chamfer, drive, centre, pointAngle, pointGiven },
    problems,
  };
}
