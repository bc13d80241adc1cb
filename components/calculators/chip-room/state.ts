/** From a blind hole and its thread to whether chips pushed ahead fit below the tap. Pure. */

import type { ChamferClass } from '../../../core/chamfer/chamfer';
import type { MaterialId } from '../../../core/material/material';
import type { Problem } from '../../../core/outcome';
import { chipStudy, type ChipQuestion, type ChipStudy } from '../../../core/plan/chip-study';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';

const USUAL_POINT = 118;

/** Drill points that exist, degrees. */
const POINT = { min: 60, max: 180 };

export interface RoomAnswer {
  study: ChipStudy;
  fullThread: number;
  shoulder: number;
  material: MaterialId;
  pointAngle: number;
  pointGiven: boolean;
}

function fieldOf({ code, field }: Problem): Name {
  if (code === 'thread-deeper-than-hole') return 'hole';
  if (field === 'limit') return 'hole';
  if (field === 'fullThread') return 'full';
  return field === 'drillPoint' ? 'point' : 'thread';
}

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, RoomAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const fullThread = reader.needed('full', reader.length('full'));
  const shoulder = reader.needed('hole', reader.length('hole'));
  const chamfer = reader.choice<ChamferClass>('chamfer') ?? 'plug';
  const material = reader.needed('material', reader.material('material'));
  const point = reader.angle('point', POINT);
  const { problems } = reader;
  if (problems.length > 0 || !thread || !fullThread || !shoulder || !material) {
    return { answer: null, problems };
  }
  const pointAngle = point ?? USUAL_POINT;
  const question: ChipQuestion = {
    thread: reader.text('thread'),
    fullThread,
    shoulder,
    chamfer,
    material,
    pointAngle,
  };
  const study = chipStudy(question);
  if (!study.ok) {
    reader.lay(study.problems, fieldOf);
    return { answer: null, problems };
  }
  const pointGiven = point !== undefined;
  return {
    answer: { study: study.value, fullThread, shoulder, material, pointAngle, pointGiven },
    problems,
  };
}
