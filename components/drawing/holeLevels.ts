/** Left of a section: depths from the face on one running line (ISO 129-1), and limits. */

import { lengthNumber, type Unit } from '../words/format';
import { ends, type Label } from './columns';
import { arrowhead, dot } from './geometry';
import { edgeAt } from './holeChain';
import type { HoleFacts } from './holeFacts';
import { SHEET, type Frame } from './holeFrame';
import { line, path, type Mark } from './marks';
import { SECTION } from '../words/en/pictures';

const { axis, block, face, leftLane } = SHEET;
const HAIR = 0.004;

export interface Level {
  word: string;
  /** mm from the face. */
  depth: number;
  kind: 'running' | 'limit' | 'asked';
}

/** Depths from the face, shallowest first. */
export function levels(facts: HoleFacts): Level[] {
  const { tap, limit } = facts;
  const found: Level[] = [];
  const add = (word: string, depth: number, kind: Level['kind'] = 'running') =>
    found.push({ word, depth, kind });
  if (facts.short > 0) add(SECTION.asked, facts.asked, 'asked');
  if (tap) add(SECTION.tapTo, tap.tip);
  if (facts.through) {
    if (facts.fullThread < facts.shoulder - HAIR) add(SECTION.farFace, facts.shoulder);
  } else {
    add(SECTION.shoulder, facts.shoulder);
    if (facts.point - facts.shoulder > HAIR) add(SECTION.point, facts.point);
  }
  if (limit) add(SECTION.limitAt[limit.at], limit.depth, 'limit');
  return found.sort((a, b) => a.depth - b.depth);
}

function runningLine(facts: HoleFacts, frame: Frame): Mark[] {
  const depths = levels(facts)
    .filter((level) => level.kind === 'running')
    .map((level) => frame.y(level.depth));
  const deepest = depths.at(-1);
  if (deepest === undefined) return [];
  const heads = depths.map((y, i) => {
    const above = y - (depths[i - 1] ?? face);
    return above < 7 ? dot([leftLane, y]) : arrowhead([leftLane, y], [0, 1], Math.min(9, above));
  });
  return [
    path('dw-origin', dot([leftLane, face], 3.2)),
    line('dw-thin', [leftLane, face + 3.2], [leftLane, deepest]),
    line('dw-thin', [leftLane - 6, face], [block.left, face]),
    path('dw-solid', ...heads),
  ];
}

function levelLine(facts: HoleFacts, frame: Frame, { depth, kind }: Level): Mark {
  const y = frame.y(depth);
  if (kind === 'limit') return line('dw-limit', [block.right, y], [leftLane - 4, y]);
  if (kind === 'asked') {
    return line('dw-asked', [axis + frame.major + 3, y], [leftLane - 4, y]);
  }
  return line('dw-thin', [axis - edgeAt(facts, frame, depth) - 2, y], [leftLane, y]);
}

/** Room beneath a through hole, on a line of its own beside the tap; null when nothing is near. */
function clearance(facts: HoleFacts, frame: Frame): { x: number; top: number; low: number } | null {
  if (!frame.obstacle || facts.clearBelow === null) return null;
  const low = frame.y(facts.shoulder + facts.clearBelow);
  return { x: block.left + 9, top: frame.y(facts.shoulder), low };
}

export function levelLabels(facts: HoleFacts, frame: Frame, unit: Unit): Label[] {
  const labels = levels(facts).map(({ word, depth, kind }): Label => {
    const label: Label = {
      word,
      value: lengthNumber(depth, unit),
      at: frame.y(depth),
      from: leftLane - (kind === 'running' ? 0 : 4),
    };
    return kind === 'running' ? label : { ...label, tone: 'stop' };
  });
  const room = clearance(facts, frame);
  if (!room || facts.clearBelow === null) return labels;
  // Its leader starts below the running line's end where it can, so that the two do not cross.
  const tip = frame.y(facts.tap?.tip ?? 0);
  const free = tip < room.low - 4 ? Math.max(tip, room.top) : room.top;
  labels.push({
    word: SECTION.clearBelow,
    value: lengthNumber(facts.clearBelow, unit),
    at: (free + room.low) / 2,
    from: room.x,
    ...(facts.strikes > 0 ? { tone: 'stop' as const } : {}),
  });
  return labels;
}

export function levelMarks(facts: HoleFacts, frame: Frame): Mark[] {
  const room = clearance(facts, frame);
  return [
    ...levels(facts).map((level) => levelLine(facts, frame, level)),
    ...runningLine(facts, frame),
    ...(room
      ? [line('dw-thin', [room.x, room.top], [room.x, room.low]), ends(room.x, room.top, room.low)]
      : []),
  ];
}
