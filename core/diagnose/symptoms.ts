/**
 * What can be seen, its causes with the most frequent first, and the checks that separate them.
 * Order of causes: how often an experienced setter finds each. Common practice; practitioners differ.
 */

import type { CauseId } from './causes';
import type { CheckId } from './checks';

export interface Symptom {
  /** Most frequent first. */
  causes: readonly CauseId[];
  /** In the order of least trouble. */
  checks: readonly CheckId[];
}

export const SYMPTOMS = {
  'broke-bottom': {
    causes: ['touches-bottom', 'too-little-room', 'overrun', 'centre-not-counted'],
    checks: ['nose', 'bottom-chips', 'shoulder-depth', 'half-depth'],
  },
  'broke-entry': {
    causes: ['misaligned', 'hole-small', 'rough-entry', 'start-feed', 'r-plane'],
    checks: ['witness', 'indicator', 'plain-plug', 'feed-check', 'r-clearance'],
  },
  'broke-middle': {
    causes: ['chips-packed', 'dull-tap', 'hard-spot', 'fluid-missed'],
    checks: ['flutes', 'edges', 'hard-place', 'nozzle'],
  },
  'broke-reversing': {
    causes: ['chip-root-jammed', 'lead-error', 'retract-fast', 'springy'],
    checks: ['wedge', 'reverse-start', 'springy-metal', 'micro-float', 'slower-out'],
  },
  'broke-unseen': {
    causes: ['overload', 'bending', 'tooth-load', 'touches-bottom'],
    checks: ['fracture', 'which-teeth', 'flutes', 'indicator'],
  },
  'teeth-chipped': {
    causes: ['tooth-load', 'touches-bottom', 'hard-material', 'hand-reversing'],
    checks: ['which-teeth', 'by-hand', 'hardness'],
  },
  'wears-fast': {
    causes: ['poor-lubrication', 'speed-high', 'hardened-wall', 'hole-small', 'abrasive'],
    checks: ['refractometer', 'speed-check', 'drill-wall', 'plain-plug', 'abrasive'],
  },
  'not-go-goes': {
    causes: [
      'axial-miscut',
      'misaligned',
      'built-up-edge',
      'limit-high',
      'uneven-regrind',
      'wrong-gauge',
    ],
    checks: [
      'loose-where',
      'flanks',
      'second-gauge',
      'tap-marking',
      'land-compare',
      'feed-check',
      'indicator',
    ],
  },
  'go-refuses': {
    causes: [
      'dull-tap',
      'closes-in',
      'limit-low',
      'burr-or-chips',
      'serial-omitted',
      'pitch-error',
    ],
    checks: ['clean-retry', 'springy-metal', 'passes', 'tap-marking', 'pitch-leaves', 'fresh-tap'],
  },
  'go-stops': {
    causes: ['chips-in-bottom', 'z-short', 'hole-shallow', 'gauge-chamfer'],
    checks: ['clean-retry', 'gauge-nose', 'shoulder-depth', 'tip-depth'],
  },
  'bell-mouth': {
    causes: ['hand-rock', 'float-pressure', 'entry-compression', 'misaligned'],
    checks: ['start-how', 'float-set', 'indicator'],
  },
  'torn-flanks': {
    causes: ['built-up-edge', 'dull-tap', 'rake-wrong', 'hole-small', 'recut-chips'],
    checks: ['flanks', 'edges', 'plain-plug', 'rake', 'flutes'],
  },
  'thin-thread': {
    causes: ['axial-miscut', 'float-setting', 'units-error'],
    checks: ['feed-check', 'unit-words', 'float-set'],
  },
  'minor-wrong': {
    causes: ['drill-off', 'wrong-drill', 'form-hole-off', 'burr-crest'],
    checks: ['drill-measured', 'drill-named', 'tap-kind', 'crest-burr'],
  },
  'chips-wrap': {
    causes: ['weak-flush', 'high-helix', 'chip-form'],
    checks: ['chip-look', 'helix', 'flush-trial'],
  },
  galling: {
    causes: ['poor-lubrication', 'bare-tool', 'heat', 'speed-high'],
    checks: ['refractometer', 'tool-surface', 'warm', 'speed-check'],
  },
  'out-of-square': {
    causes: ['drill-wandered', 'hand-rock', 'part-moved', 'angled-entry', 'bent-hole'],
    checks: ['drilled-only', 'witness', 'bore-check', 'marks', 'start-how'],
  },
  'double-start': {
    causes: ['reentered', 'length-reset', 'started-twice'],
    checks: ['history'],
  },
  'form-incomplete': {
    causes: ['form-hole-large', 'form-hole-small', 'brittle-forming'],
    checks: ['plain-plug', 'seam'],
  },
  'spindle-alarm': {
    causes: ['torque-over', 'dull-tap', 'rpm-over', 'acceleration'],
    checks: ['load-trend', 'torque-plan', 'rpm-limit', 'higher-start'],
  },
  squeal: {
    causes: ['rubbing', 'dry', 'weak-hold'],
    checks: ['oil-stops', 'hold', 'chip-bite', 'speed-check'],
  },
  'screw-strips': {
    causes: ['engagement-short', 'minor-large-unseen', 'under-formed', 'wrong-screw'],
    checks: ['plain-plug', 'screw-check', 'cut-open'],
  },
  'tight-after-coating': {
    causes: ['no-allowance', 'thick-plate'],
    checks: ['allowance', 'coat-measured'],
  },
  'tap-slips': {
    causes: ['no-square-drive', 'oily-shank', 'clutch-low'],
    checks: ['rings', 'collet', 'wiped'],
  },
} as const satisfies Record<string, Symptom>;

export type SymptomId = keyof typeof SYMPTOMS;

export const SYMPTOM_IDS = Object.keys(SYMPTOMS) as SymptomId[];

/** Symptoms by where they are met, in the order a list shows them. */
export const SYMPTOM_GROUPS = {
  broken: ['broke-bottom', 'broke-entry', 'broke-middle', 'broke-reversing', 'broke-unseen'],
  tool: ['teeth-chipped', 'wears-fast', 'galling', 'chips-wrap', 'tap-slips'],
  gauge: ['not-go-goes', 'go-refuses', 'go-stops', 'minor-wrong', 'tight-after-coating'],
  thread: [
    'torn-flanks',
    'thin-thread',
    'bell-mouth',
    'out-of-square',
    'double-start',
    'form-incomplete',
    'screw-strips',
  ],
  machine: ['spindle-alarm', 'squeal'],
} as const satisfies Record<string, readonly SymptomId[]>;

export type SymptomGroup = keyof typeof SYMPTOM_GROUPS;
