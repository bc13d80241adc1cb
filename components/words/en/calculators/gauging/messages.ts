/** Words of the form of the gauging calculator. English. */

import type { PlainReading } from '../../../../../core/gauge/plain';
import type { CalculatorWords } from '../../../../calculators/calculator';
import type { GO_READINGS, Name } from '../../../../calculators/gauging/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    thread: 'Thread, as on the drawing',
    go: 'The GO thread plug went in',
    turns: 'Turns the NOT GO thread plug made',
    plain: 'The plain plugs',
    made: 'Turns the GO made until it stopped',
    full: 'Full thread on the drawing',
  },
  form: 'The gauges in the hole',
  submit: 'What do they say?',
  example:
    'M10x1.5-6H, 14 mm full thread: GO all the way in 10 turns, NOT GO stopped after 2.5, plain plugs as they should.',
  missing: {
    thread: {
      ask: 'Enter the thread as the drawing gives it, like M10x1.5-6H or 3/8-16 UNC-2B.',
      need: 'the thread',
    },
    go: { ask: 'Choose how far the GO went in.', need: 'how far the GO went in' },
    turns: {
      ask: 'Enter the turns the NOT GO made by hand, like 0 or 1.5.',
      need: 'the turns of the NOT GO',
    },
  },
  problems: {
    'not-a-count': '“{label}” must be a number of turns, like 0 or 1.5.',
    'count-outside': '“{label}” must be between {min} and {max} turns.',
    'turns-negative': 'Turns cannot be below 0.',
  },
  refusals: {
    'gauge-taper': {
      title: 'A taper thread is gauged otherwise',
      text: 'One plug, turned in by hand, must come flush with the mouth within a turn or so either way. Ask for the thread’s limits to see its gauge. Whether the joint holds pressure is for the responsible engineer.',
    },
    'gauge-pipe': {
      title: 'The gauging rules of parallel pipe threads are not held here',
      text: 'Their standard (ISO 228-2) has rules of its own. Take them from it. The limits of the thread are known here.',
    },
    'no-limits-held': {
      title: 'No limits are held here for this thread',
      text: 'Take them from the thread’s own standard.',
    },
    'outside-tolerances': {
      title: 'Beyond the tables of its standard',
      text: 'Take the limits from the drawing.',
    },
  },
};

export const GO_LABELS: Record<(typeof GO_READINGS)[number], string> = {
  all: 'All the way, by hand',
  part: 'Part of the way',
  none: 'Not at all',
};

export const PLAIN_LABELS: Record<PlainReading, string> = {
  untried: 'Not tried',
  right: 'GO goes in, NOT GO does not',
  'go-refused': 'GO will not go in',
  'not-go-enters': 'NOT GO goes in',
};

export const HINTS = {
  turns: 'By hand, never forced, until it stopped by itself. 0 when it would not start.',
  more: 'How deep the thread is',
  made: 'Count them as it goes in. Empty: not counted.',
  full: 'Empty: not asked.',
} as const;
