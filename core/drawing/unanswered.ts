/** What a request asks for that its plan says nothing of: then the hole is no ready one. */

import type { HolePlan, HoleRequest } from '../plan/types';

/** The warning that a plan owes to what the request says of the part; square faces and later cuts owe none. */
function owed(request: HoleRequest): string[] {
  const { later = [], duty, entry, crossing, cored, interrupted } = request;
  return [
    ...(later.includes('harden') ? ['later-hardening'] : []),
    ...(later.includes('plate') || later.includes('anodise') ? ['later-coating'] : []),
    ...(later.includes('weld') ? ['later-welding'] : []),
    ...(duty ? ['duty-not-judged'] : []),
    ...(entry && entry.angle > 3 && !entry.flat ? ['entry-face'] : []),
    ...(crossing?.cut === 'before' ? ['crossing'] : []),
    ...(interrupted ? ['interrupted'] : []),
    ...(cored ? ['cored-hole'] : []),
  ];
}

/** Whether something said of the hole has no warning that speaks of it. Source: common practice; no unit. */
export function unanswered(request: HoleRequest, plan: HolePlan): boolean {
  const given = new Set<string>(plan.warnings.map(({ code }) => code));
  return owed(request).some((code) => !given.has(code));
}
