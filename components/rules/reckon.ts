/** Short ways from a rule's case to the core's answer. A case that the core refuses stops the build. */

import { minorLimitsMm, neededEngagement, readThread, threadLimits } from '../../core';
import { judgeDrill } from '../../core/drill/judge';
import type { Engagement } from '../../core/engagement/needed';
import type { ScrewGrade } from '../../core/engagement/screws';
import type { ThreadLimits } from '../../core/limits/limits';
import type { Material, MaterialId } from '../../core/material/material';
import { findMaterial } from '../../core/material/table';
import type { Outcome } from '../../core/outcome';
import type { HoleRequest } from '../../core/plan/types';
import type { Thread } from '../../core/thread/thread';
import { calculatorHref } from '../address/hrefs';
import { catalogued } from '../calculators/catalogue';
import { plannerAddress } from '../address/request';
import type { Unit } from '../words';
import { OPEN_PLANNER } from '../words/en/rules/groups';
import type { RuleCase } from './rule';

/** The answer, or the end of the build. */
export function sure<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(`A rule's case is refused: ${outcome.problems.map((p) => p.code).join(', ')}.`);
}

export const threadOf = (text: string): Thread => sure(readThread(text));
export const limitsOf = (text: string): ThreadLimits => sure(threadLimits(threadOf(text)));

export function materialOf(id: MaterialId): Material {
  const material = findMaterial(id);
  if (!material) throw new Error(`No material is called ${id}.`);
  return material;
}

/** Whether a hole lies inside its class, and still does as large as a drill likely cuts it. */
export function holeIn(text: string, hole: number) {
  const thread = threadOf(text);
  const minor = minorLimitsMm(limitsOf(text));
  if (minor.max === undefined) throw new Error(`${text} has no largest minor diameter.`);
  const window = {
    min: minor.min,
    max: minor.max,
    major: thread.diameter,
    pitch: thread.pitch,
    oversizeShare: 1,
  };
  return {
    ...judgeDrill({ name: '', series: 'metric', diameter: hole }, window),
    max: minor.max,
    min: minor.min,
  };
}

export function engagementOf(text: string, screw: ScrewGrade, material: MaterialId): Engagement {
  const request = { thread: threadOf(text), limits: limitsOf(text), screw };
  return sure(neededEngagement({ ...request, material: materialOf(material) }));
}

/** A case that opens in a calculator. */
export function inCalculator(
  slug: string,
  inputs: Readonly<Record<string, string>>,
  borneOut: boolean,
  text: string,
): RuleCase {
  return { text, borneOut, href: calculatorHref(slug, inputs), open: catalogued(slug).title };
}

/** A case that opens in the planner. */
export function inPlanner(
  request: HoleRequest,
  borneOut: boolean,
  text: string,
  unit: Unit = 'mm',
): RuleCase {
  return { text, borneOut, href: plannerAddress(request, unit), open: OPEN_PLANNER };
}
