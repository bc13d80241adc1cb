/** Words of the form of the plating calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { Name, RULES } from '../../../../calculators/plating/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    thread: 'Thread, as on the drawing',
    least: 'Each surface grows by at least',
    most: 'Each surface grows by at most',
    rule: 'The class limits hold',
  },
  form: 'The thread and its coating',
  submit: 'What must I tap?',
  example: 'M8x1.25-6H, zinc that grows each surface by 0.005 to 0.008 mm.',
  missing: {
    thread: {
      ask: 'Enter the thread as the drawing gives it, like 1/4-20 UNC-2B or M8x1.25-6H.',
      need: 'the thread',
    },
    least: {
      ask: 'Enter the least growth of one surface, like 0.005 or 5 µm. 0 when it may be nothing.',
      need: 'the least growth of one surface',
    },
    most: {
      ask: 'Enter the most growth of one surface, like 0.008 or 8 µm.',
      need: 'the most growth of one surface',
    },
  },
  problems: {
    'plating-thickness': 'The most growth must not be below the least.',
  },
  refusals: {
    'plating-no-room': {
      title: 'The coating spreads more than the class',
      text: 'No bare thread passes both where the coating is thinnest and where it is thickest. Ask for a closer coating, a wider class, masking, or a thread tapped or gauged otherwise after coating.',
    },
    'taper-pipe': {
      title: 'A taper thread has no limits of diameter',
      text: 'What a coating does to how far its gauge goes in is not worked out here.',
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

export const RULE_LABELS: Record<(typeof RULES)[number], string> = {
  usual: 'As its standard has it',
  after: 'After coating',
  before: 'Before coating',
};

export const HINTS = {
  least: 'Growth, not thickness on a flat: hard anodise grows about half of what it measures.',
  rule: 'Unified: after, unless the drawing says otherwise. Metric: before, and a GO must still enter after.',
} as const;
