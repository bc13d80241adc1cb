/** What the thread-limits calculator asks. */

import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name = 'thread' | 'engagement';

export const INPUTS: Inputs<Name> = {
  fields: [{ name: 'thread', initial: '' }, { name: 'engagement', initial: '' }, UNITS_FIELD],
  kinds: { thread: 'thread', engagement: 'length' },
};
