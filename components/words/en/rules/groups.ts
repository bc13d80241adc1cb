/** Groups of the rules of thumb, and the habits that have no case for them. English. */

import type { NeverRule } from '../../../rules/rule';

export const GROUPS = {
  tap: 'Which tap',
  hole: 'Hole, class and gauges',
  depth: 'How deep',
  running: 'Running the tap',
} as const;

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

/** Where the case of a rule opens. */
export const OPEN_PLANNER = 'Planner';
