/** Numbers in the text of the lesson on through holes, from the plans of its jobs. */

import type { HoleRequest } from '../../../core/plan/types';
import { bothLengths, decimals, threadRange } from '../../words';
import { tapName } from '../../words/names';
import { numberOf, planned, tapOf } from '../planned';
import { THROUGH_JOBS } from './jobs';

/** In running text a number must not part from its unit at the end of a line. */
const tied = (text: string) => text.replace(/(\d) (mm|in)\b/g, '$1\u00a0$2');
const both = (mm: number) => tied(bothLengths(mm));

function thicknessOf({ hole, thread }: HoleRequest): number {
  if (hole.kind !== 'through') throw new Error(`${thread} is no through hole.`);
  return hole.thickness;
}

function best(request: HoleRequest): string {
  const plan = planned(request);
  const tap = plan.taps.find(({ verdict }) => verdict === 'best');
  if (!tap) throw new Error(`No tap suits ${request.thread}.`);
  const name = tapName(tap, plan.thread.system);
  return name.charAt(0).toLowerCase() + name.slice(1);
}

const { bracket, fixture, gallery, guard, link } = THROUGH_JOBS;
const bracketTap = tapOf(planned(bracket), 'spiral-point', 'plug');
const fixturePlan = planned(fixture);
const fixturePlug = tapOf(fixturePlan, 'spiral-point', 'plug');
const guardPlan = planned(guard);
const linkPlan = planned(link);
const linkTap = tapOf(linkPlan, 'spiral-point', 'plug');
const { pitch } = linkPlan.thread;

export const throughFacts = {
  bracket: {
    thickness: both(thicknessOf(bracket)),
    tip: both(bracketTap.depth.tip),
    past: both(bracketTap.depth.tip - thicknessOf(bracket)),
    threads: threadRange(bracketTap.chamfer.threads),
    longest: bracketTap.chamfer.threads.max,
    tap: best(bracket),
  },
  fixture: {
    have: both(numberOf(fixturePlug.reasons, 'below-clearance', 'have')),
    haveMm: numberOf(fixturePlug.reasons, 'below-clearance', 'have'),
    needed: both(numberOf(fixturePlug.reasons, 'below-clearance', 'needed')),
    by: both(numberOf(fixturePlan.remedies, 'more-room-below', 'by')),
    tap: best(fixture),
  },
  gallery: { tap: best(gallery) },
  guard: {
    thickness: both(thicknessOf(guard)),
    pitches: decimals(numberOf(guardPlan.warnings, 'thin-work', 'pitches'), 1),
    matching: both(numberOf(guardPlan.warnings, 'weak-when-stripped', 'matching')),
    wanted: both(numberOf(guardPlan.warnings, 'weak-when-stripped', 'wanted')),
  },
  link: {
    thickness: both(thicknessOf(link)),
    threads: threadRange(linkTap.chamfer.threads),
    past: linkTap.depth.tip - thicknessOf(link),
    pastText: both(linkTap.depth.tip - thicknessOf(link)),
    chamfer: linkTap.depth.tip - thicknessOf(link) - pitch,
    middle: linkTap.depth.nominal.tip - thicknessOf(link),
    tip: linkTap.depth.tip,
    pitch,
  },
} as const;
