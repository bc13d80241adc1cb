/** Every rule of thumb, in the order of the page, and the habits that have no case for them. */

import { DEPTH_RULES } from '../words/en/rules/depth';
import { HOLE_RULES } from '../words/en/rules/hole';
import type { NeverRule, Rule } from './rule';
import { RUNNING_RULES } from '../words/en/rules/running';
import { TAP_RULES } from '../words/en/rules/tap';

export const RULE_GROUPS: readonly { title: string; id: string; rules: readonly Rule[] }[] = [
  { title: 'Which tap', id: 'tap', rules: TAP_RULES },
  { title: 'Hole, class and gauges', id: 'hole', rules: HOLE_RULES },
  { title: 'How deep', id: 'depth', rules: DEPTH_RULES },
  { title: 'Running the tap', id: 'running', rules: RUNNING_RULES },
];

export const RULES: readonly Rule[] = RULE_GROUPS.flatMap(({ rules }) => rules);

export const NEVER: readonly NeverRule[] = [
  {
    id: 'key-as-handle',
    heard: 'Leave the key in the chuck and turn the tap with it.',
    instead:
      'Never. Isolate the machine, guide the tap with a pointed centre, and turn it with a wrench.',
    caution: 'key-left-in',
  },
  {
    id: 'blow-it-out',
    heard: 'Blow the hole out with full shop air.',
    instead: 'Never into a blind hole, and never at shop pressure. Flush, wick or vacuum.',
    caution: 'compressed-air',
  },
];
