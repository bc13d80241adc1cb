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
  /** The stretch of plain full thread left out of a very deep hole, on the sheet; null when all is drawn. */
  gap: { top: number; bottom: number } | null;
  /** True when what is beneath a through hole is near enough to be drawn. */
  obstacle: boolean;
}

function extent(facts: HoleFacts): { deepest: number; obstacle: boolean } {
  const tip = facts.tap?.tip ?? 0;
  if (!facts.through) {
    return {
      deepest: Math.max(facts.point, facts.asked, tip, facts.limit?.depth ?? 0),
      obstacle: false,
    };
  }
  const end = Math.max(tip, facts.shoulder);
  const beneath = facts.shoulder + (facts.clearBelow ?? Infinity);
  const obstacle = beneath <= end + 0.5 * facts.shoulder + 2 * facts.major;
  return { deepest: obstacle ? Math.max(end, beneath) : end, obstacle };
}

/** Fits the hole to the sheet, leaving out part of the thread where it would be too thin to see. */
export function holeFrame(facts: HoleFacts): Frame {
  const { deepest, obstacle } = extent(facts);
  const whole = Math.min(DEEPEST / deepest, WIDEST / facts.major);
  const scale = Math.max(whole, NARROWEST / facts.major);
  const excess = deepest - (DEEPEST - GAP) / scale;
  const room = Math.min(facts.fullThread, facts.shoulder);
  const cut = scale > whole && excess > 0 ? Math.min(excess, 0.8 * room) : 0;
  const from = cut > 0 ? (room - cut) / 2 : Infinity;
  const top = SHEET.face + from * scale;
  const y = (depth: number) => {
    if (depth <= from) return SHEET.face + depth * scale;
    if (depth < from + cut) return top + (GAP * (depth - from)) / cut;
    return top + GAP + (depth - from - cut) * scale;
  };
  const minor = (facts.hole / 2) * scale;
  return {
    scale,
    y,
    // ISO 6410-1: the two lines of a thread never come closer than twice the thick line.
    major: Math.max((facts.major / 2) * scale, minor + 4.4),
    minor,
    floor: y(deepest) + (facts.through ? (obstacle ? 24 : 16) : 34),
    gap: cut > 0 ? { top, bottom: top + GAP } : null,
    obstacle,
  };
}
