/** Words of the bars of doubt. English. */

import type { DoubtfulInput } from '../../../../core/tap/torque-doubt';

/** Each input with its spread; `{low}` and `{high}` in mm or inch for sizes, as factors otherwise. */
const INPUTS: Record<DoubtfulInput, string> = {
  reading: 'From your reading to this tap: {low}–{high} times',
  material: 'How hard the material cuts: {low}–{high} times',
  hole: 'Hole as drilled: {low}–{high} {unit}',
  style: 'Style over a straight-flute tap: {low}–{high} times',
  chamfer: 'What chamfer length does: {low}–{high} times',
  rubbing: 'Rubbing of the full threads: {low}–{high} times',
  wear: 'Worn over sharp: {low}–{high} times',
  web: 'Core of the tap: {low}–{high} {unit}',
  section: 'Shape of its section: {low}–{high} times the core',
  steel: 'Strength of its steel: {low}–{high} times',
};

/** The input that leads, inside a sentence. */
const MOST: Record<DoubtfulInput, string> = {
  reading: 'your reading',
  material: 'the material',
  hole: 'the hole',
  style: 'the style of tap',
  chamfer: 'the chamfer',
  rubbing: 'rubbing',
  wear: 'wear',
  web: 'the tap’s core',
  section: 'the shape of the tap’s section',
  steel: 'the tap’s steel',
};

export const DOUBT_BARS = {
  inputs: INPUTS,
  most: MOST,
  titles: {
    torque: '{Input} is the biggest unknown in this torque',
    share: '{Input} is the biggest unknown in how near the tap comes to breaking',
  },
  subtitle: {
    torque:
      'Torque of a sharp tap when one input alone goes to the ends of its spread: {conditions}',
    share:
      'Share of its strength that a worn tap uses when one input alone goes to the ends of its spread: {conditions}',
  },
  description:
    'One level bar for each input, the longest on top, around an upright line at the expected value. The longest is {input}.',
  rowsAre: 'Input and its spread',
  axis: {
    torque: { label: 'Torque', unit: 'N·m' },
    share: { label: 'Share of the breaking torque', unit: '%' },
  },
  reference: 'expected {value}',
  bands:
    'stated spreads of the inputs, moved one at a time. They say nothing of what the model leaves out.',
} as const;
