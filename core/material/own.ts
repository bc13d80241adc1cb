/**
 * A material the shop knows better than the handbook: its own name, its own numbers, and for everything
 * nobody measured the handbook's nearest material.
 */

import { answer, refuse, type Outcome, type Problem } from '../outcome';
import { brinell, HARDNESS_SCALES, type Hardness } from './hardness';
import { MATERIAL_IDS, type Material, type MaterialId } from './material';
import { findMaterial } from './table';

export interface OwnMaterialInput {
  /** What the shop calls it; 1 to 40 signs. */
  name: string;
  /** ISO 513 letter. */
  group: Material['group'];
  hardness?: Hardness | undefined;
  /** Specific cutting force at 1 mm of chip, N/mm² (50 to 8000), and its exponent (0 to 0.5). */
  kc11?: number | undefined;
  mc?: number | undefined;
  /** The handbook's material that lends its chips, speeds and the rest; chosen by group and hardness if left out. */
  like?: MaterialId | undefined;
}

export const OWN_PROBLEM_CODES = [
  'own-name-missing',
  'own-name-too-long',
  'own-group-unknown',
  'own-hardness-out-of-range',
  'own-kc-out-of-range',
  'own-mc-out-of-range',
  'own-mc-alone',
  'own-like-other-group',
] as const;

export type OwnProblemCode = (typeof OWN_PROBLEM_CODES)[number];

export const LONGEST_NAME = 40;
export const KC_RANGE = { min: 50, max: 8000 } as const;
export const MC_RANGE = { min: 0, max: 0.5 } as const;

/** Groups a shop may name, in ISO 513 order; O is for plastics and the like. */
export const GROUPS = ['P', 'M', 'K', 'N', 'S', 'H', 'O'] as const;

/** Steels by the hardness up to which they are met, HB. Common practice. */
const STEELS: [upTo: number, id: MaterialId][] = [
  [150, 'steel-low'],
  [210, 'steel-medium'],
  [265, 'steel-alloy'],
  [340, 'steel-alloy-30hrc'],
  [420, 'steel-40hrc'],
  [Infinity, 'steel-hard'],
];

const TYPICAL: Record<Exclude<Material['group'], 'P'>, MaterialId> = {
  M: 'stainless-austenitic',
  K: 'iron-grey',
  N: 'al-wrought',
  S: 'titanium',
  H: 'steel-hard',
  O: 'plastic',
};

/** The handbook's material nearest to a group and a hardness (HB, steels only). Source: `common-practice`. */
export function nearestMaterial(group: Material['group'], hardness?: number): MaterialId {
  if (group !== 'P') return TYPICAL[group];
  return STEELS.find(([upTo]) => (hardness ?? 200) <= upTo)?.[1] ?? 'steel-hard';
}

function inside(value: number, { min, max }: { min: number; max: number }): boolean {
  return value >= min && value <= max;
}

/** What is wrong with a material as entered; empty when it can be used. Source: derived. */
export function checkOwnMaterial(input: OwnMaterialInput): Problem[] {
  const problems: Problem[] = [];
  const say = (code: OwnProblemCode, field: string, typed: unknown) =>
    problems.push({ code, field, data: { typed: String(typed) } });
  const { name, group, hardness, kc11, mc, like } = input;
  if (name.trim() === '') say('own-name-missing', 'name', '');
  else if (name.trim().length > LONGEST_NAME) say('own-name-too-long', 'name', name);
  const known = (GROUPS as readonly string[]).includes(group);
  if (!known) say('own-group-unknown', 'group', group);
  if (hardness) {
    const scaled = HARDNESS_SCALES.includes(hardness.scale) ? brinell(hardness) : null;
    if (scaled === null) say('own-hardness-out-of-range', 'hardness', hardness.value);
  }
  if (kc11 !== undefined && !inside(kc11, KC_RANGE)) say('own-kc-out-of-range', 'kc11', kc11);
  if (mc !== undefined && !inside(mc, MC_RANGE)) say('own-mc-out-of-range', 'mc', mc);
  else if (mc !== undefined && kc11 === undefined) say('own-mc-alone', 'mc', mc);
  if (like !== undefined && known) {
    const lender = MATERIAL_IDS.includes(like) ? findMaterial(like) : undefined;
    // Hardened steel is cut like steel: the two groups may lend to each other.
    const steel = (letter?: string) => letter === 'P' || letter === 'H';
    const same = lender?.group === group || (steel(lender?.group) && steel(group));
    if (!same) say('own-like-other-group', 'like', like);
  }
  return problems;
}

/** Hardness from which no HSS tap belongs in a metal, HB: 45 HRC. Common practice; the scale from memory. */
const TOO_HARD = 421;

/** Metals other than steel are met at about this hardness; from there on they are tapped slower, HB. Common practice. */
const SLOWER = [
  { from: 340, factor: 0.5 },
  { from: 265, factor: 0.7 },
] as const;

/**
 * What a hardness on the certificate changes: too hard for HSS from 45 HRC; a steel harder than the one that lends is
 * cut as the handbook's steel of that hardness; stainless, iron and light metals are slowed. `hb` Brinell.
 */
function hardened(lender: Material, hb: number): Partial<Material> {
  if (hb >= TOO_HARD) return { speed: null, forming: 'no' };
  if (lender.group === 'P') {
    const rank = (id: MaterialId) => STEELS.findIndex(([, steel]) => steel === id);
    const harder = findMaterial(nearestMaterial('P', hb))!;
    if (rank(harder.id) <= rank(lender.id)) return {};
    const { kc11, mc, speed, forming, chips, abrasive } = harder;
    return { kc11, mc, speed, forming, chips, abrasive };
  }
  // Titanium and nickel are met hard: their rows are for that.
  const slow = SLOWER.find(({ from }) => hb >= from);
  if (!slow || !lender.speed || lender.group === 'S') return {};
  const { min, max } = lender.speed;
  return { speed: { min: min * slow.factor, max: max * slow.factor } };
}

/**
 * A material to plan with from what the shop knows. kc1.1 in N/mm²; see `OwnMaterialInput` for the ranges.
 * Refuses with `OWN_PROBLEM_CODES`. Sources: the shop's own numbers, and those of the material that lends.
 */
export function ownMaterial(input: OwnMaterialInput): Outcome<Material> {
  const [first, ...more] = checkOwnMaterial(input);
  if (first) return refuse(first, ...more);
  const { name, group, hardness, kc11, mc, like } = input;
  const hb = hardness ? (brinell(hardness) ?? undefined) : undefined;
  const lender = findMaterial(like ?? nearestMaterial(group, hb))!;
  const force = kc11 === undefined ? {} : { kc11, mc: mc ?? lender.mc };
  return answer({
    ...lender,
    ...(hb === undefined ? {} : hardened(lender, hb)),
    ...force,
    group,
    own: { name: name.trim(), ...(hb === undefined ? {} : { hardness: hb }) },
  });
}
