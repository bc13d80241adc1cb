/** A note to send to the designer: what was asked, what the hole gives, what would help. */

import type { HolePlan, HoleRequest, TapChoice } from '../../core/plan/types';
import { bestTap } from './answer';
import { remedyText } from './codes';
import { DESIGNER } from './en/designer';
import { threadRange, type Unit } from './format';
import { materialShort } from './names';
import { fill } from './template';

/** The taps that fail for depth alone, of the style that comes nearest, longest chamfer first. */
function shortOfDepth(plan: HolePlan): { tap: TapChoice; numbers: Record<string, number> }[] {
  const failing = plan.taps.flatMap((tap) => {
    const reason = tap.reasons.find(({ code }) => code === 'does-not-reach');
    const alone = tap.reasons.every(
      ({ code }) => code.startsWith('fits-if') || code === 'does-not-reach',
    );
    return reason && alone && tap.process === 'cut' ? [{ tap, numbers: reason.numbers }] : [];
  });
  const style = failing[0]?.tap.style;
  return failing
    .filter(({ tap }) => tap.style === style)
    .sort((a, b) => b.tap.chamfer.threads.max - a.tap.chamfer.threads.max);
}

/** Lines of plain text: a sentence each, the options numbered. One line when there is nothing to ask. */
export function designerNote(plan: HolePlan, request: HoleRequest, unit: Unit): string[] {
  const failing = shortOfDepth(plan);
  const usual = failing.find(({ tap }) => tap.chamfer.class === 'semi-bottoming') ?? failing[0];
  const limit = request.hole.kind === 'blind' ? request.hole.limit : undefined;
  if (bestTap(plan) || !usual || !limit || request.fullThread === undefined)
    return [DESIGNER.clear];
  const threads = threadRange(usual.tap.chamfer.threads);
  const list = failing
    .filter(({ numbers }) => (numbers['obtainable'] ?? 0) > 0)
    .map(({ tap, numbers }) =>
      fill(DESIGNER.giveOne, { ...numbers, threads: threadRange(tap.chamfer.threads) }, unit),
    )
    .join('; ');
  const asked = {
    designation: plan.thread.designation,
    material: materialShort(request.material),
    fullThread: request.fullThread,
    limit: limit.depth,
    where: DESIGNER.where[limit.at],
  };
  const options = plan.remedies.map((remedy, index) => {
    const { title, text } = remedyText(remedy, unit);
    return `${index + 1}. ${title}. ${text}`;
  });
  return [
    fill(DESIGNER.asked, asked, unit),
    fill(DESIGNER.needs, { ...usual.numbers, threads }, unit),
    list ? fill(DESIGNER.gives, { list }, unit) : DESIGNER.givesNone,
    DESIGNER.options,
    ...options,
    DESIGNER.ask,
  ];
}
