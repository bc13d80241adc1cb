/** Where millimetres of a hole land on the sheet. */

import type { HoleFacts } from './holeFacts';

/** The sheet, in viewBox units: about one CSS pixel each on a phone 390 px wide. */
export const SHEET = {
  width: 360,
  face: 76,
  axis: 184,
  block: { left: 119, right: 249 },
  /** Depths from the face run down the left lane; lengths of the chain down the right. */
  leftLane: 110,
  leftText: 93,
  rightLane: 261,
  rightText: 275,
} as const;

const DEEPEST = 296;
const WIDEST = 98;
const NARROWEST = 26;
const GAP = 14;

export interface Frame {
  scale: number;
  /** Sheet y of a depth in mm. */
  y: (depth: number) => number;
  /** Half-widths on the sheet of the thread's major diameter and of the hole. */
  major: number;
  minor: number;
  /** Lower edge of what is drawn. */
  floor: number;
  /** Stretches left out of a very deep hole, on the sheet; empty when all is drawn. */
  gaps: { top: number; bottom: number }[];
  /** True when what is beneath a through hole is near enough to be drawn. */
  obstacle: boolean;
}

/** Depths at which something is drawn or dimensioned, shallowest first. */
function features(facts: HoleFacts, obstacle: boolean): number[] {
  const { tap } = facts;
  const depths = [0, facts.fullThread, facts.shoulder, facts.point, facts.asked];
  if (tap) depths.push(tap.body, tap.nose, tap.tip);
  if (facts.limit) depths.push(facts.limit.depth);
  if (obstacle) depths.push(facts.shoulder + (facts.clearBelow ?? 0));
  return [...new Set(depths)].sort((a, b) => a - b);
}

interface Cut {
  from: number;
  length: number;
}

/** What to leave out so that `excess` mm are saved: the middle of the longest plain stretches, `keep` mm of each kept. */
function cuts(depths: readonly number[], excess: number, scale: number, keep: number): Cut[] {
  const stretches = depths
    .slice(1)
    .map((to, i) => ({ from: depths[i]!, length: to - depths[i]! }))
    .sort((a, b) => b.length - a.length);
  const found: Cut[] = [];
  let left = excess;
  for (const { from, length } of stretches) {
    if (left <= 1e-9 || found.length === 3) break;
    // Each cut costs the height of its own gap.
    const saved = Math.min(left + GAP / scale, length - keep);
    if (saved <= (2 * GAP) / scale) continue;
    found.push({ from: from + (length - saved) / 2, length: saved });
    left -= saved - GAP / scale;
  }
  return [...found].sort((a, b) => a.from - b.from);
}

/** Fits the hole to the sheet, leaving out plain stretches where it would be too thin to see. */
export function holeFrame(facts: HoleFacts): Frame {
  const { major, shoulder, tap, limit } = facts;
  const reach = Math.max(facts.point, facts.asked, tap?.tip ?? 0, facts.pitch);
  const beneath = shoulder + (facts.clearBelow ?? Infinity);
  const obstacle = facts.through && beneath <= reach + 0.5 * shoulder + 2 * major;
  const deepest = Math.max(reach, limit?.depth ?? 0, obstacle ? beneath : 0);
  // A limit far below must not shrink the hole: beyond a third of its depth it is brought nearer.
  const near = Math.min(limit?.depth ?? 0, 1.35 * reach);
  const fitted = Math.max(reach, near, obstacle ? beneath : 0);
  const scale = Math.max(Math.min(DEEPEST / fitted, WIDEST / major), NARROWEST / major);
  const left = cuts(features(facts, obstacle), deepest - DEEPEST / scale, scale, 0.8 * major);
  const y = (depth: number) => {
    let at = SHEET.face + depth * scale;
    for (const { from, length } of left) {
      const share = Math.min(Math.max((depth - from) / length, 0), 1);
      at -= share * (length * scale - GAP);
    }
    return at;
  };
  const minor = (facts.hole / 2) * scale;
  return {
    scale,
    y,
    // ISO 6410-1: the two lines of a thread never come closer than twice the thick line.
    major: Math.max((major / 2) * scale, minor + 4.4),
    minor,
    floor: y(deepest) + (facts.through ? (obstacle ? 24 : 16) : 34),
    gaps: left.map(({ from, length }) => ({ top: y(from), bottom: y(from + length) })),
    obstacle,
  };
}
