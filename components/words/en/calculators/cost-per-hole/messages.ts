/** Words of the form of the cost calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { Name } from '../../../../calculators/cost-per-hole/inputs';

const ASK = {
  seconds: 'Time for one hole',
  tap: 'Price of a tap',
  'tap-life': 'Holes a tap makes',
  drill: 'Price of a drill',
  'drill-life': 'Holes a drill makes',
  breaks: 'One tap breaks in',
  'break-cost': 'What a break costs',
} as const;

export const WORDS: CalculatorWords<Name> = {
  labels: {
    rate: 'Machine and operator, an hour',
    holes: 'Holes in the job',
    setup: 'Set-up',
    'gauge-seconds': 'Time for one gauging',
    'gauge-every': 'One hole is gauged in',
    'gauge-rate': 'Whoever gauges, an hour',
    ...ASK,
    'b-seconds': `${ASK.seconds}, other plan`,
    'b-tap': `${ASK.tap}, other plan`,
    'b-tap-life': `${ASK['tap-life']}, other plan`,
    'b-drill': `${ASK.drill}, other plan`,
    'b-drill-life': `${ASK['drill-life']}, other plan`,
    'b-breaks': `${ASK.breaks}, other plan`,
    'b-break-cost': `${ASK['break-cost']}, other plan`,
  },
  form: 'The plan and what it costs',
  submit: 'Work it out',
  example:
    '480 holes M6, blind, in 6061 on a machine at 75 an hour, beside the same holes in 304. Money in any currency.',
  missing: {
    rate: {
      ask: 'Enter what the machine and its operator cost an hour, like 75.',
      need: 'the hourly rate',
    },
    seconds: { ask: 'Enter how long one hole takes, like 9.5.', need: 'the time for one hole' },
    holes: { ask: 'Enter how many holes share the set-up, like 480.', need: 'how many holes' },
    tap: { ask: 'Enter the price of a tap, like 20.', need: 'the price of a tap' },
    'tap-life': {
      ask: 'Enter how many holes a tap makes, like 1000.',
      need: 'how long a tap lasts',
    },
    breaks: {
      ask: 'Enter in how many holes one tap breaks, like 3000.',
      need: 'how often a tap breaks',
    },
    'break-cost': { ask: 'Enter what one break costs, like 200.', need: 'what a break costs' },
  },
  problems: {
    'not-a-number': '“{label}” must be a number, like {example}.',
    'cost-below-zero': '“{label}” must be 0 or more.',
    'cost-not-above-zero': '“{label}” must be more than 0.',
  },
};

export const HINTS = {
  breaks: 'Holes. Your own record, or a guess: try it at half and at double.',
  'break-cost':
    'Getting it out, the share of parts scrapped for it, and the machine standing still.',
  more: 'Drill, set-up, gauging',
  other: 'Beside another plan',
  otherHint: 'Fill in only what differs.',
} as const;

export const UNITS: Partial<Record<Name, string>> = {
  setup: 'min',
  'gauge-seconds': 's',
  'gauge-every': 'holes',
  seconds: 's',
  'tap-life': 'holes',
  'drill-life': 'holes',
  breaks: 'holes',
  'b-seconds': 's',
  'b-tap-life': 'holes',
  'b-drill-life': 'holes',
  'b-breaks': 'holes',
};
