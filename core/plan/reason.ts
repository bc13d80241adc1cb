/** One statement about a tap. */

import type { SourceId } from '../sources';
import type { ReasonCode } from './codes';
import type { Reason } from './types';

/** One statement about a tap: its code, its numbers (mm, N·m or shares, as the code says) and its source. */
export function reason(
  code: ReasonCode,
  numbers: Record<string, number> = {},
  source: SourceId = 'common-practice',
): Reason {
  return { code, numbers, source };
}
