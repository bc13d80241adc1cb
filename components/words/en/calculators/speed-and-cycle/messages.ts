/** Words of the form of the speed-and-cycle calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { Name } from '../../../../calculators/speed-and-cycle/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    thread: 'Thread, as on the drawing',
    full: 'Full thread',
    material: 'Material',
    program: 'The program is in',
    mode: 'Feed is given',
    rpm: 'Speed to run',
    feed: 'Feed that stands in the program',
    tip: 'Tap’s tip to (Z)',
    start: 'Start plane above the face',
    substrate: 'Tap is of',
    coating: 'Its surface',
    fluid: 'Fluid',
    drive: 'Spindle',
    acceleration: 'How fast it gathers speed',
    most: 'Highest tapping speed',
    retract: 'Speed out, times the speed in',
  },
  form: 'The cycle',
  submit: 'Work it out',
  example:
    'M8, 20 mm of full thread in 1045, 500 rev/min on a control that is set up in inches. F24 stands in the program: is that near enough?',
  missing: {
    thread: {
      ask: 'Enter the thread as the drawing gives it, like M8x1.25-6H or 1/4-20 UNC-2B.',
      need: 'the thread',
    },
    material: { ask: 'Choose the material.', need: 'the material' },
  },
  problems: {
    'not-a-number': '“{label}” must be a number, like {example}.',
    'cycle-number-out-of-range': '“{label}” is outside what a machine does. Enter another number.',
    'number-outside': '“{label}” must be more than 0, like {example}.',
  },
  refusals: {
    'no-tapping-speed': {
      title: 'No speed is known for this material',
      text: 'Material this hard is beyond HSS taps. Cut the thread before hardening, or mill it, at the speeds of the tool’s own data.',
    },
  },
};

export const CHOICES = {
  program: { mm: 'Millimetres', in: 'Inches' },
  mode: { 'per-minute': 'Per minute', 'per-revolution': 'Per turn' },
  substrate: { hss: 'HSS or HSS-E', 'hss-powder': 'Powder HSS', carbide: 'Solid carbide' },
  coating: { plain: 'Bright or steam-treated', coated: 'Hard-coated' },
  fluid: { oil: 'Oil or paste', emulsion: 'Emulsion', dry: 'Dry' },
} as const;

export const HINTS = {
  usualFull: 'empty: 1½ diameters',
  usualRpm: 'empty: the middle of the range',
  noFeed: 'empty: nothing to check',
  usualTip: 'empty: full thread and 3 pitches',
  usualStart: 'empty: 3 pitches',
  acceleration:
    'From the machine’s manual, or timed: turns a second at speed, divided by the seconds it takes. Empty: at once.',
  retract: 'Only where the control allows it. Empty: the same.',
  more: 'Tap, fluid, spindle, start plane …',
} as const;
