/** What the plating calculator asks. */

import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name = 'thread' | 'least' | 'most' | 'rule';

export const RULES = ['usual', 'after', 'before'] as const;

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'thread', initial: '' },
    { name: 'least', initial: '' },
    { name: 'most', initial: '' },
    { name: 'rule', initial: 'usual', choices: RULES },
    UNITS_FIELD,
  ],
  kinds: { thread: 'thread', least: 'length', most: 'length' },
};
