/** Which symptom of the matrix a finding of the gauges is. */

import type { DepthFindingCode } from '../gauge/advice';
import type { GaugeFindingCode } from '../gauge/reading';
import type { SymptomId } from './symptoms';

const SYMPTOM_OF: Partial<Record<GaugeFindingCode | DepthFindingCode, SymptomId>> = {
  'pitch-small': 'go-refuses',
  'go-stops': 'go-stops',
  'pitch-large': 'not-go-goes',
  'rules-disagree': 'not-go-goes',
  'both-wrong': 'torn-flanks',
  'minor-small': 'minor-wrong',
  'minor-large': 'minor-wrong',
  'depth-short': 'go-stops',
};

/** The symptom to look up for a finding, or null where nothing is wrong. No unit. Source: `common-practice`. */
export function symptomOf(finding: GaugeFindingCode | DepthFindingCode): SymptomId | null {
  return SYMPTOM_OF[finding] ?? null;
}
