/** Every rule of thumb, in the order of the page, and the habits that have no case for them. */

import { DEPTH_RULES } from '../words/en/rules/depth';
import { HOLE_RULES } from '../words/en/rules/hole';
import type { Rule } from './rule';
import { RUNNING_RULES } from '../words/en/rules/running';
import { TAP_RULES } from '../words/en/rules/tap';
import { GROUPS } from '../words/en/rules/groups';

export const RULE_GROUPS: readonly { title: string; id: string; rules: readonly Rule[] }[] = [
  { title: GROUPS.tap, id: 'tap', rules: TAP_RULES },
  { title: GROUPS.hole, id: 'hole', rules: HOLE_RULES },
  { title: GROUPS.depth, id: 'depth', rules: DEPTH_RULES },
  { title: GROUPS.running, id: 'running', rules: RUNNING_RULES },
];

export const RULES: readonly Rule[] = RULE_GROUPS.flatMap(({ rules }) => rules);
