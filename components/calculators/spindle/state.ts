/** From a job and a spindle's curve to whether it has the torque, and at which speeds. Pure. */

import type { MaterialId } from '../../../core/material/material';
import type { Problem } from '../../../core/outcome';
import { spindleStudy, type SpindleStudy } from '../../../core/plan/spindle-study';
import type { LoadedStyle } from '../../../core/plan/tap-load';
import type { HoleRequest } from '../../../core/plan/types';
import type { Thread } from '../../../core/thread/thread';
import { readPlain } from '../../fields/readNumber';
import { readSpindle } from '../../fields/readSpindle';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';

export interface SpindleAnswer {
  thread: Thread;
  style: LoadedStyle;
  material: MaterialId;
  study: SpindleStudy;
  depthGiven: boolean;
}

const SPEED = { min: 1, max: 100_000 };
const SPEED_UNITS = ['rpm', 'rev/min', 'r/min', 'u/min', '1/min'];

const FIELD_OF: Record<string, Name> = {
  points: 'points',
  fullThread: 'depth',
  material: 'material',
};

const fieldOf = ({ field }: Problem): Name => FIELD_OF[field ?? ''] ?? 'thread';

function pointsOf(reader: Reader<Name>) {
  const read = readSpindle(reader.text('points'));
  if (!read) return reader.complain('points', { code: 'missing' }, true);
  if ('points' in read) return read.points;
  const problem = { code: 'not-points', field: 'points' as const, data: { typed: read.bad } };
  reader.problems.push({ field: 'points', missing: false, problem });
  return undefined;
}

function speedOf(reader: Reader<Name>): number | undefined {
  const text = reader.text('rpm');
  if (text === '') return undefined;
  const speed = readPlain(text, SPEED_UNITS);
  if (speed === null) return reader.complain('rpm', { code: 'not-a-speed' });
  const data = { min: String(SPEED.min), max: String(SPEED.max) };
  return speed < SPEED.min || speed > SPEED.max
    ? reader.complain('rpm', { code: 'speed-outside', data })
    : speed;
}

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, SpindleAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const style = reader.needed('tap', reader.choice<LoadedStyle>('tap'));
  const material = reader.needed('material', reader.material('material'));
  const points = pointsOf(reader);
  const depth = reader.length('depth');
  const rpm = speedOf(reader);
  const torque = reader.torque('torque');
  const { problems } = reader;
  if (problems.length > 0 || !thread || !style || !material || !points) {
    return { answer: null, problems };
  }
  const request: HoleRequest = {
    thread: reader.text('thread'),
    ...(depth === undefined ? {} : { fullThread: depth }),
    hole: { kind: 'blind' },
    material,
  };
  const study = spindleStudy({ request, style, points, rpm, torque });
  if (!study.ok) {
    const refusal = study.problems.find(
      ({ code }) => code === 'too-hard' || code === 'tap-not-planned',
    );
    if (refusal) return { answer: null, problems, refusal };
    reader.lay(study.problems, fieldOf);
    return { answer: null, problems };
  }
  const answer = { thread, style, material, study: study.value, depthGiven: depth !== undefined };
  return { answer, problems };
}
