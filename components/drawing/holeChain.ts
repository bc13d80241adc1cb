/** Right of a section: the lengths that follow one another from the face down. */

import { lengthNumber, type Unit } from '../words/format';
import { ends, type Label } from './columns';
import type { HoleFacts } from './holeFacts';
import { SHEET, type Frame } from './holeFrame';
import { noseRadius } from './holeMetal';
import { line, type Mark } from './marks';
import { SECTION } from '../words/en/pictures';

const { axis, block, rightLane } = SHEET;
const HAIR = 0.004;

export interface Link {
  word: string;
  /** mm from the face. */
  from: number;
  to: number;
}

function blindChain(facts: HoleFacts): Link[] {
  const { tap } = facts;
  return [
    { word: SECTION.fullThread, from: 0, to: facts.fullThread },
    ...(tap
      ? [
          { word: SECTION.chamfer, from: tap.body, to: tap.nose },
          { word: SECTION.centre, from: tap.nose, to: tap.tip },
          { word: SECTION.clearance, from: tap.tip, to: facts.shoulder },
        ]
      : []),
    { word: SECTION.cone, from: facts.shoulder, to: facts.point },
  ];
}

function throughChain(facts: HoleFacts): Link[] {
  const { tap } = facts;
  const whole = facts.fullThread >= facts.shoulder - HAIR;
  return [
    whole
      ? { word: SECTION.thickness, from: 0, to: facts.shoulder }
      : { word: SECTION.fullThread, from: 0, to: facts.fullThread },
    ...(tap
      ? [
          { word: SECTION.runPast, from: whole ? facts.shoulder : facts.fullThread, to: tap.body },
          { word: SECTION.chamfer, from: tap.body, to: tap.nose },
          { word: SECTION.centre, from: tap.nose, to: tap.tip },
        ]
      : []),
  ];
}

/** The chain of lengths of a hole; links of no length are left out. */
export function chain(facts: HoleFacts): Link[] {
  const links = facts.through ? throughChain(facts) : blindChain(facts);
  return links.filter((link) => link.to - link.from > HAIR);
}

/** Half-width of whatever an extension line at this depth leaves from. */
export function edgeAt(facts: HoleFacts, frame: Frame, depth: number): number {
  const at = (other: number | undefined) => other !== undefined && Math.abs(depth - other) < 1e-6;
  if (depth <= 0) return block.right - axis;
  if (facts.through && at(facts.shoulder)) return block.right - axis;
  if (!facts.through && at(facts.point) && !at(facts.shoulder)) return 0;
  if (!facts.through && at(facts.shoulder)) return frame.minor;
  if (at(facts.tap?.body) || depth <= Math.min(facts.fullThread, facts.shoulder))
    return frame.major;
  return noseRadius(facts, frame);
}

export function chainLabels(facts: HoleFacts, frame: Frame, unit: Unit): Label[] {
  return chain(facts).map(({ word, from, to }) => ({
    word,
    value: lengthNumber(to - from, unit),
    at: (frame.y(from) + frame.y(to)) / 2,
    from: rightLane + 1,
  }));
}

export function chainMarks(facts: HoleFacts, frame: Frame): Mark[] {
  const links = chain(facts);
  const depths = [...new Set(links.flatMap(({ from, to }) => [from, to]))];
  const extensions = depths.map((depth) => {
    const y = frame.y(depth);
    return line('dw-thin', [axis + edgeAt(facts, frame, depth) + 2, y], [rightLane + 5, y]);
  });
  const spans = links.flatMap(({ from, to }) => {
    const [top, bottom] = [frame.y(from), frame.y(to)];
    return [line('dw-thin', [rightLane, top], [rightLane, bottom]), ends(rightLane, top, bottom)];
  });
  return [...extensions, ...spans];
}
