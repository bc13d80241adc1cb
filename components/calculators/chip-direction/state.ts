/** From what is seen of a tap, its hand and its hole to where the chips go and whether that is right. Pure. */

import { chipAdvice, CHIP_HOLES, type ChipAdvice, type ChipHole } from '../../../core/chips/advice';
import { chipCourse, type ChipCourse } from '../../../core/chips/direction';
import { faceLean } from '../../../core/chips/face';
import type { MaterialId } from '../../../core/material/material';
import { chipsShort, findMaterial } from '../../../core/material/table';
import type { Hand } from '../../../core/thread/thread';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import type { Name, Seen } from './inputs';

/** Leans that a face could be ground to, degrees. */
const LEAN = { min: -60, max: 60 };

export interface ChipAnswer {
  seen: Seen;
  hand: Hand;
  hole: ChipHole;
  material?: MaterialId;
  /** Degrees to the axis, positive as a right-hand helix leans; null where nothing cuts. */
  lean: number | null;
  course: ChipCourse;
  /** True where the material's chip comes short; long where it is not known, the harder case. */
  short: boolean;
  advice: ChipAdvice;
  /** The same tap in every kind of hole. */
  holes: { hole: ChipHole; advice: ChipAdvice }[];
}

/** Where the chips go for each way a face can lean, for both hands. */
export const RULE = ([35, 0, -35] as const).map((lean) => ({
  lean,
  right: chipCourse(lean, 'right'),
  left: chipCourse(lean, 'left'),
}));

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, ChipAnswer> {
  const reader = new Reader<Name>(values, unit);
  const seen = reader.needed('see', reader.choice<Seen>('see'));
  const angle = seen === 'angle' ? reader.needed('angle', reader.angle('angle', LEAN)) : undefined;
  const hand = reader.choice<Hand>('hand') ?? 'right';
  const hole = reader.needed('hole', reader.choice<ChipHole>('hole'));
  const material = reader.material('material');
  const { problems } = reader;
  if (problems.length > 0 || !seen || !hole) return { answer: null, problems };
  const lean = seen === 'angle' ? (angle ?? 0) : faceLean(seen, hand);
  const course = lean === null ? 'none' : chipCourse(lean, hand);
  const work = material && findMaterial(material);
  const judged = (each: ChipHole) => chipAdvice(course, each, work);
  const answer: ChipAnswer = {
    seen,
    hand,
    hole,
    material,
    lean,
    course,
    short: work !== undefined && chipsShort(work.chips),
    advice: judged(hole),
    holes: CHIP_HOLES.map((each) => ({ hole: each, advice: judged(each) })),
  };
  return { answer, problems };
}
