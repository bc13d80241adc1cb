/** What the gauging calculator asks. */

import { PLAIN_READINGS } from '../../../core/gauge/plain';
import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name = 'thread' | 'go' | 'turns' | 'plain' | 'made' | 'full';

export const GO_READINGS = ['all', 'part', 'none'] as const;

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'thread', initial: '' },
    { name: 'go', initial: '', choices: GO_READINGS },
    { name: 'turns', initial: '' },
    { name: 'plain', initial: 'untried', choices: PLAIN_READINGS },
    { name: 'made', initial: '' },
    { name: 'full', initial: '' },
    UNITS_FIELD,
  ],
  kinds: { thread: 'thread', full: 'length' },
  callout: { full: 'full' },
};
