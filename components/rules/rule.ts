/** What one rule of thumb carries: what is said, what is true, and a case for each side. */

import type { SourceId } from '../../core/sources';
import type { CautionId } from '../words';

export interface RuleCase {
  /** Job and numbers, in words. */
  text: string;
  /** Whether the core bears the rule out in this case. */
  borneOut: boolean;
  /** Where the same case stands open. */
  href: string;
  /** What the link opens. */
  open: string;
}

export interface Rule {
  id: string;
  /** As it is heard on the floor. */
  heard: string;
  /** What to say instead. */
  instead: string;
  holds: RuleCase;
  fails: RuleCase;
  sources: readonly SourceId[];
}

/** A habit that can hurt somebody: it has no case where it holds. */
export interface NeverRule {
  id: string;
  heard: string;
  instead: string;
  caution: CautionId;
}
