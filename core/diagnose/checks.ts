/**
 * Checks that tell causes apart, each done at the bench in about five minutes. An answer names the causes
 * that would give it; `rest` stands for every cause that no other answer of the check names. A cause in no
 * answer of a check is not touched by it. Common practice.
 */

import type { CauseId } from './causes';

export type CheckAnswers = Readonly<Record<string, readonly CauseId[] | 'rest'>>;

export const CHECKS = {
  // The tap and its pieces.
  nose: {
    shiny: ['touches-bottom', 'too-little-room', 'overrun'],
    crushed: ['centre-not-counted'],
    clean: 'rest',
  },
  fracture: {
    helical: ['overload'],
    square: ['bending'],
    'teeth-only': ['tooth-load'],
    'nose-crushed': ['touches-bottom'],
  },
  flutes: { packed: ['chips-packed', 'recut-chips', 'overload'], empty: 'rest' },
  edges: { worn: ['dull-tap'], sharp: 'rest' },
  wedge: { wedged: ['chip-root-jammed'], none: 'rest' },
  'which-teeth': {
    first: ['tooth-load'],
    end: ['touches-bottom'],
    any: ['hard-material', 'hand-reversing'],
  },
  'by-hand': { yes: ['hand-reversing'], no: 'rest' },
  'land-compare': { uneven: ['uneven-regrind'], even: 'rest' },
  'tap-marking': { high: ['limit-high'], low: ['limit-low'], suits: 'rest' },
  rake: { other: ['rake-wrong'], right: 'rest' },
  helix: { steep: ['high-helix'], low: 'rest' },
  'tool-surface': { wrong: ['bare-tool'], suits: 'rest' },
  'fresh-tap': { right: ['dull-tap'], same: 'rest' },
  passes: { missing: ['serial-omitted'], all: 'rest' },
  // The hole.
  'shoulder-depth': { short: ['too-little-room', 'hole-shallow'], enough: 'rest' },
  'bottom-chips': { packed: ['touches-bottom'], clear: 'rest' },
  'plain-plug': {
    small: ['hole-small', 'form-hole-small'],
    large: ['form-hole-large', 'minor-large-unseen'],
    right: 'rest',
  },
  'drill-measured': { off: ['drill-off', 'wrong-drill', 'form-hole-off'], right: 'rest' },
  'drill-named': { other: ['wrong-drill'], right: 'rest' },
  'tap-kind': { form: ['form-hole-off'], cut: 'rest' },
  'crest-burr': { goes: ['burr-crest'], same: 'rest' },
  'drilled-only': {
    leans: ['drill-wandered', 'bent-hole', 'angled-entry'],
    square: ['hand-rock', 'part-moved'],
  },
  'bore-check': { bent: ['bent-hole'], straight: 'rest' },
  witness: { 'one-side': ['rough-entry', 'angled-entry'], around: 'rest' },
  'drill-wall': { glazed: ['hardened-wall'], clean: 'rest' },
  'hard-place': { same: ['hard-spot'], anywhere: 'rest' },
  // The set-up and the program.
  indicator: { 'runs-out': ['misaligned', 'bending'], true: 'rest' },
  'feed-check': { differs: ['start-feed', 'axial-miscut', 'units-error'], agrees: 'rest' },
  'unit-words': { mixed: ['units-error'], agree: 'rest' },
  'r-clearance': { inside: ['r-plane'], above: 'rest' },
  'half-depth': { 'runs-on': ['overrun'], 'stops-true': 'rest' },
  'tip-depth': { short: ['z-short'], enough: 'rest' },
  'reverse-start': {
    'at-start': ['lead-error', 'chip-root-jammed'],
    later: ['retract-fast', 'springy'],
  },
  'micro-float': { cures: ['lead-error'], same: 'rest' },
  'slower-out': { cures: ['retract-fast'], same: 'rest' },
  'start-how': {
    hand: ['hand-rock'],
    floating: ['float-pressure', 'entry-compression', 'float-setting'],
    rigid: ['misaligned'],
  },
  'float-set': { compresses: ['entry-compression', 'float-setting'], pulls: 'rest' },
  marks: { moved: ['part-moved'], still: 'rest' },
  history: { again: ['reentered'], offset: ['length-reset'], hand: ['started-twice'] },
  'load-trend': { climbs: ['dull-tap'], 'first-hole': ['torque-over', 'rpm-over', 'acceleration'] },
  'torque-plan': { over: ['torque-over'], under: 'rest' },
  'rpm-limit': { over: ['rpm-over'], within: 'rest' },
  'higher-start': { cures: ['acceleration'], same: 'rest' },
  hold: { stops: ['weak-hold'], same: 'rest' },
  collet: { round: ['no-square-drive'], square: 'rest' },
  rings: { rings: ['no-square-drive', 'oily-shank'], none: ['clutch-low'] },
  wiped: { holds: ['oily-shank'], slips: 'rest' },
  // Chips, fluid, metal.
  nozzle: { misses: ['fluid-missed'], reaches: 'rest' },
  refractometer: { weak: ['poor-lubrication'], right: 'rest' },
  'oil-stops': { stops: ['dry'], same: 'rest' },
  'speed-check': { above: ['speed-high'], below: ['rubbing'], within: 'rest' },
  'chip-bite': { thin: ['rubbing'], proper: 'rest' },
  'chip-look': { long: ['weak-flush', 'high-helix'], blue: ['chip-form'] },
  'flush-trial': { clears: ['weak-flush'], same: 'rest' },
  warm: { warm: ['heat'], cool: 'rest' },
  hardness: { hard: ['hard-material'], drawn: 'rest' },
  abrasive: { yes: ['abrasive'], no: 'rest' },
  'springy-metal': { yes: ['springy', 'closes-in'], no: 'rest' },
  // The thread and the gauges.
  'loose-where': {
    all: ['limit-high', 'uneven-regrind', 'wrong-gauge'],
    mouth: ['axial-miscut', 'misaligned'],
  },
  flanks: {
    smeared: ['built-up-edge'],
    scratched: ['recut-chips'],
    'one-side': ['axial-miscut', 'units-error', 'float-setting'],
    even: 'rest',
  },
  'second-gauge': { disagrees: ['wrong-gauge'], agrees: 'rest' },
  'clean-retry': { goes: ['burr-or-chips', 'chips-in-bottom'], same: 'rest' },
  'pitch-leaves': { off: ['pitch-error'], fits: 'rest' },
  'gauge-nose': { explains: ['gauge-chamfer'], more: 'rest' },
  seam: { open: ['form-hole-large'], flared: ['form-hole-small'], cracked: ['brittle-forming'] },
  'cut-open': { short: ['engagement-short'], hollow: ['under-formed'], full: 'rest' },
  'screw-check': { other: ['wrong-screw'], right: 'rest' },
  allowance: { none: ['no-allowance'], made: ['thick-plate'] },
  'coat-measured': { over: ['thick-plate'], ordered: 'rest' },
} as const satisfies Record<string, CheckAnswers>;

export type CheckId = keyof typeof CHECKS;

export const CHECK_IDS = Object.keys(CHECKS) as CheckId[];

/** The answers a check can have, apart from “cannot be checked”. No unit. Source: `common-practice`. */
export function answersOf(check: CheckId): readonly string[] {
  return Object.keys(CHECKS[check]);
}
