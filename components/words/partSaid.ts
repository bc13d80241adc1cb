/** What a request says of the part around its hole, for card and set-up sheet: one short phrase each. */

import type { HolePlan, HoleRequest } from '../../core/plan/types';
import { PART_SAID } from './en/partSaid';
import { decimals, length, type Unit } from './format';
import { say } from './say';

function entrySaid({ entry }: HoleRequest): string[] {
  if (!entry || (entry.angle === 0 && !entry.flat)) return [];
  const angle = decimals(entry.angle, 1);
  return [say(entry.flat ? PART_SAID.slantFlat : PART_SAID.slant, { angle })];
}

function crossingSaid(plan: HolePlan, request: HoleRequest, unit: Unit): string[] {
  const { crossing, interrupted } = request;
  if (!crossing) return interrupted ? [PART_SAID.interrupted] : [];
  const { kind, cut, width, from } = crossing;
  const where = from === undefined ? '' : say(PART_SAID.boreFrom, { from: length(from, unit) });
  const lost = plan.lostThread
    ? ` (${say(PART_SAID.lost, { length: length(plan.lostThread, unit) })})`
    : '';
  return [say(PART_SAID[kind][cut], { width: length(width, unit) }) + where + lost];
}

/** Empty where nothing was said. */
export function partSaid(plan: HolePlan, request: HoleRequest, unit: Unit): string[] {
  const { counterbore, cored, later, duty } = request;
  const said = [...entrySaid(request)];
  if (counterbore) {
    const [diameter, depth] = [length(counterbore.diameter, unit), length(counterbore.depth, unit)];
    said.push(say(PART_SAID.counterbore, { diameter, depth }));
  }
  said.push(...crossingSaid(plan, request, unit));
  if (cored) said.push(PART_SAID.cored);
  if (later?.length) {
    const processes = later.map((each) => PART_SAID.processes[each]).join(', ');
    said.push(say(PART_SAID.later, { processes }));
  }
  if (duty) said.push(PART_SAID.duty[duty]);
  return said;
}
