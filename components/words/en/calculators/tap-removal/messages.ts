/** Words of the form about a tap stuck in its hole. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { HOLDS, Name, STUBS } from '../../../../calculators/tap-removal/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    size: 'Thread of the tap',
    tap: 'Kind of tap',
    material: 'The part is of',
    stub: 'What is left of it',
    hold: 'How it sits',
    machine: 'A rigid machine can reach it on its axis',
    boss: 'Room round the hole to cut a larger one',
    steel: 'Steel parts fitted that cannot come out',
    value: 'What the part is worth',
    cost: 'What sparking it out would cost',
  },
  form: 'The broken tap',
  submit: 'What can be done?',
  example:
    'M8, straight flutes, broken below the face of an aluminium pump cover; it rocks a little, and VMC-A can hold the part.',
  missing: {
    size: { ask: 'Enter the thread of the tap, like M8 or 1/4-20.', need: 'the thread' },
    tap: { ask: 'Choose the kind of tap.', need: 'the kind of tap' },
    material: { ask: 'Choose the material of the part.', need: 'the material' },
    stub: { ask: 'Choose what is left of the tap.', need: 'what is left of it' },
    hold: { ask: 'Choose whether it moves.', need: 'whether it moves' },
    machine: { ask: 'Choose yes or no.', need: 'whether a machine can reach it' },
    boss: { ask: 'Choose yes or no.', need: 'whether there is room round it' },
  },
  problems: { 'not-money': '“{label}” must be a number, like 250.' },
};

export const STUB_LABELS: Record<(typeof STUBS)[number], string> = {
  proud: 'Enough stands out to grip',
  flush: 'Broken at the face',
  deep: 'Broken below the face',
};

export const HOLD_LABELS: Record<(typeof HOLDS)[number], string> = {
  loose: 'It rocks, or turns a little',
  wedged: 'It does not move at all',
};

export const YES_NO_LABELS = { yes: 'Yes', no: 'No' } as const;

export const HINTS = {
  hold: 'Flush the chips out first, then try with a finger-tight grip. Spindle stopped and locked out.',
  steel: 'Dowels, wire inserts, bushes.',
  value:
    'In your own money. Give both, and the ways are put in order of time and risk. Leave both empty if you do not want to weigh it.',
  more: 'Is it worth it?',
} as const;
