/** Plans a lesson's example while the page is built; a lesson whose example cannot be planned stops the build. */

import { planHole } from '../../core';
import type { ChamferClass } from '../../core/chamfer/chamfer';
import type { HolePlan, HoleRequest, TapChoice } from '../../core/plan/types';
import type { TapStyle } from '../../core/tap/tap';

export function planned(request: HoleRequest): HolePlan {
  const outcome = planHole(request);
  if (outcome.ok) return outcome.value;
  const codes = outcome.problems.map(({ code }) => code).join(', ');
  throw new Error(`The example ${request.thread} of a lesson cannot be planned: ${codes}.`);
}

/** One tap of a plan, by what a setter would ask the crib for. */
export function tapOf(plan: HolePlan, style: TapStyle, chamfer: ChamferClass): TapChoice {
  const tap = plan.taps.find((each) => each.style === style && each.chamfer.class === chamfer);
  if (!tap)
    throw new Error(`No ${style} tap with a ${chamfer} chamfer for ${plan.thread.designation}.`);
  return tap;
}

/** The number of a reason, remedy or assumption that the lesson speaks of. */
export function numberOf(
  coded: readonly { code: string; numbers: Record<string, number> }[],
  code: string,
  name: string,
): number {
  const value = coded.find((each) => each.code === code)?.numbers[name];
  if (value === undefined) throw new Error(`The plan gives no ${name} for ${code}.`);
  return value;
}
