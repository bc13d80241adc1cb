/**
 * Names that standards give to materials, one grade a line, grouped by the row the grade is planned with.
 * A tilde stands for a space. Spaces and dashes inside a name do not count when it is looked up.
 */

import type { SourceId } from '../sources';
import type { GradeGroup, StateRule } from './grade-group';
import type { MaterialId } from './material';
import { COPPER_ALLOYS } from './designations-copper';
import { IRONS } from './designations-iron';
import { LIGHT_METALS } from './designations-light';
import { PLASTICS } from './designations-plastic';
import { STAINLESS } from './designations-stainless';
import { STEELS } from './designations-steel';
import { TITANIUM_AND_NICKEL } from './designations-titanium';
import { TOOL_STEELS } from './designations-tool';

export interface Grade {
  names: readonly string[];
  row: MaterialId;
  rule: StateRule;
  source: SourceId;
}

const GROUPS: readonly GradeGroup[] = [
  ...STEELS,
  ...TOOL_STEELS,
  ...STAINLESS,
  ...IRONS,
  ...LIGHT_METALS,
  ...COPPER_ALLOYS,
  ...TITANIUM_AND_NICKEL,
  ...PLASTICS,
];

function gradesOf({ grades, row, rule, source }: GradeGroup): Grade[] {
  return grades
    .split('\n')
    .map((line) => line.trim().split(/\s+/))
    .filter(([first]) => first)
    .map((line) => ({ names: line.map((name) => name.replaceAll('~', ' ')), row, rule, source }));
}

/** Every grade that can be read. Source: on each. */
export const GRADES: readonly Grade[] = GROUPS.flatMap(gradesOf);
