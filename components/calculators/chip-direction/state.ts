/** From what is seen of a tap, its hand and its hole to where the chips go and whether that is right. Pure. */

import { chipAdvice, CHIP_HOLES, type ChipAdvice, type ChipHole } from '../../../core/chips/advice';
import { chipCourse, type ChipCourse } from '../../../core/chips/direction';
import { FACES, faceLean, type Face } from '../../../core/chips/face';
import { MATERIAL_IDS, type MaterialId } from '../../../core/material/material';
import { findMaterial } from '../../../core/material/table';
import type { Hand } from '../../../core/thread/thread';
import type { Values } from '../../state/address';
import type { Unit } from '../../words';
import { UNITS_FIELD, type Attempt, type Calculator } from '../calculator';
import { Reader } from '../reader';

export type Name = 'see' | 'angle' | 'hand' | 'hole' | 'material';

/** What can be seen, and `angle`: the lean of the face, measured. */
export const SEEN = [...FACES, 'angle'] as const;

export type Seen = (typeof SEEN)[number];

export const HANDS = ['right', 'left'] as const;

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
  advice: ChipAdvice;
  /** The same tap in every kind of hole. */
  holes: { hole: ChipHole; advice: ChipAdvice }[];
}

function courseOf(lean: number | null, hand: Hand): ChipCourse {
  return lean === null ? 'none' : chipCourse(lean, hand);
}

/** Where the chips go for each way a face can lean, for both hands. */
export const RULE = ([35, 0, -35] as const).map((lean) => ({
  lean,
  right: chipCourse(lean, 'right'),
  left: chipCourse(lean, 'left'),
}));

function attempt(values: Values<Name | 'units'>, unit: Unit): Attempt<Name, ChipAnswer> {
  const reader = new Reader<Name>(values, unit);
  const seen = reader.needed('see', reader.choice<Seen>('see'));
  const angle = seen === 'angle' ? reader.needed('angle', reader.angle('angle', LEAN)) : undefined;
  const hand = reader.choice<Hand>('hand') ?? 'right';
  const hole = reader.needed('hole', reader.choice<ChipHole>('hole'));
  const id = reader.material('material');
  const { problems, notes } = reader;
  if (problems.length > 0 || !seen || !hole) return { answer: null, problems, notes };
  const lean = seen === 'angle' ? (angle ?? 0) : faceLean(seen satisfies Face, hand);
  const course = courseOf(lean, hand);
  const work = id && findMaterial(id);
  const judged = (each: ChipHole) => chipAdvice(course, each, work);
  const answer: ChipAnswer = {
    seen,
    hand,
    hole,
    ...(id ? { material: id } : {}),
    lean,
    course,
    advice: judged(hole),
    holes: CHIP_HOLES.map((each) => ({ hole: each, advice: judged(each) })),
  };
  return { answer, problems, notes };
}

export const CALCULATOR: Calculator<Name, ChipAnswer> = {
  fields: [
    { name: 'see', initial: '', choices: SEEN },
    { name: 'angle', initial: '' },
    { name: 'hand', initial: 'right', choices: HANDS },
    { name: 'hole', initial: '', choices: CHIP_HOLES },
    { name: 'material', initial: '', choices: MATERIAL_IDS },
    UNITS_FIELD,
  ],
  lengths: [],
  attempt,
};
