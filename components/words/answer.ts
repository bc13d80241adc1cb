/** The answer as one sentence in parts, so that a page can set the figures apart, and the reason under it. */

import { findMaterial } from '../../core/material/table';
import type { HolePlan, HoleRequest, TapChoice } from '../../core/plan/types';
import { ANSWER, BECAUSE } from './en/answer';
import { CHIP_FORMS } from './en/names';
import { drillName, length, limitRange, percent, threadRange, torque } from './format';
import { materialShort, styleBefore } from './names';
import { blockOf, type Block } from './block';
import { say } from './say';
import { fill } from './template';
import type { Unit } from './format';

/** A run of words; `strong` marks what a setter carries to the machine. */
export interface Part {
  text: string;
  strong?: boolean;
}

const plain = (text: string): Part => ({ text });
const strong = (text: string): Part => ({ text, strong: true });

/** The choice the plan puts first, when there is one. */
export function bestTap(plan: HolePlan): TapChoice | undefined {
  return plan.taps.find((tap) => tap.verdict === 'best');
}

function tapParts(tap: TapChoice, tapered: boolean): Part[] {
  // A taper tap has one chamfer, and its depth is the gauge's.
  if (tapered) {
    const name = tap.hand === 'left' ? ANSWER.taper.left : ANSWER.taper.right;
    return [strong(name), plain(ANSWER.taper.tail)];
  }
  const style = styleBefore(tap.style);
  const name = tap.hand === 'left' ? ANSWER.leftHand + style.toLowerCase() : style;
  return [
    strong(name),
    plain(ANSWER.tapTail),
    strong(fill(ANSWER.chamfer, { threads: threadRange(tap.chamfer.threads) }, 'mm')),
    plain(ANSWER.chamferTail),
  ];
}

function holeParts(plan: HolePlan, tap: TapChoice, unit: Unit): Part[] {
  const drill = tap.drill ?? plan.drill;
  const cored = plan.warnings.some(({ code }) => code === 'cored-hole');
  if (drill) return [plain(cored ? ANSWER.open : ANSWER.drill), strong(drillName(drill))];
  const { min, max } = plan.remedies.find(({ code }) => code === 'bore-or-ream')?.numbers ?? {};
  return min === undefined || max === undefined
    ? [plain(ANSWER.noDrill)]
    : [plain(ANSWER.bore), strong(limitRange(min, max, unit))];
}

function depthParts(tap: TapChoice, request: HoleRequest, unit: Unit): Part[] {
  const { tip, shoulder, fromFace } = tap.depth;
  return request.hole.kind === 'through'
    ? [plain(ANSWER.through), strong(length(tip, unit)), ...face(fromFace?.tip, unit), plain('.')]
    : [
        plain(ANSWER.shoulder),
        strong(length(shoulder, unit)),
        plain(ANSWER.deep),
        ...face(fromFace?.shoulder, unit),
        plain('.'),
      ];
}

/** The same depth from the face, where depths count from a counterbore's floor or a flat. */
function face(depth: number | undefined, unit: Unit): Part[] {
  return depth === undefined ? [] : [plain(say(ANSWER.fromFace, { depth: length(depth, unit) }))];
}

function blockedParts(block: Block, unit: Unit): Part[] {
  const words = ANSWER.none;
  const number = (name: string) => block.numbers[name] ?? 0;
  switch (block.kind) {
    case 'depth':
      return [
        plain(words.depth),
        ...(block.asked === undefined ? [] : [strong(length(block.asked, unit))]),
        plain(words.depthTail + words.depthMost),
        strong(length(number('obtainable'), unit)),
        plain(words.depthWith),
        strong(block.tap ? threadRange(block.tap.chamfer.threads) : ''),
        plain(words.depthWithTail),
      ];
    case 'spindle':
      return [
        strong(words.spindle),
        plain(words.spindleTail),
        strong(torque(number('worn'))),
        plain(words.spindleHave),
        strong(torque(number('spindle'))),
        plain('.'),
      ];
    case 'below':
      return [
        strong(words.below),
        plain(words.belowTail),
        strong(length(number('needed'), unit)),
        plain(words.belowEnd),
      ];
    case 'flat':
      return [
        strong(words.flat),
        plain(words.flatTail),
        strong(length(number('diameter'), unit)),
        plain(words.flatEnd),
      ];
    case 'breaks':
      return [
        strong(words.breaks),
        plain(words.breaksTail),
        strong(percent(number('sharp'))),
        plain(words.breaksEnd),
      ];
    case 'heavy':
      return [
        strong(words.heavy),
        plain(words.heavyTail),
        strong(torque(number('sharp'))),
        plain('.'),
      ];
    case 'synchronous':
      return [strong(words.synchronous), plain(words.synchronousTail)];
    case 'gone':
      return [strong(words.gone), plain(words.goneTail)];
    case 'reach':
      return [
        strong(words.reach),
        plain(words.reachTail),
        strong(length(number('needed'), unit)),
        plain(words.reachMost),
        strong(length(number('most'), unit)),
        plain('.'),
      ];
    case 'hard':
      return [strong(words.hard), plain(words.hardTail)];
    default:
      return [strong(words.other), plain(words.otherTail)];
  }
}

/** What to do with one tap, whichever it is: tap, chamfer, drill, depth. */
export function tapSentence(
  plan: HolePlan,
  tap: TapChoice,
  request: HoleRequest,
  unit: Unit,
): Part[] {
  return [
    ...tapParts(tap, !plan.limits),
    ...holeParts(plan, tap, unit),
    ...depthParts(tap, request, unit),
  ];
}

/** What to do, in one sentence: tap, chamfer, drill, depth; or that nothing fits, with the numbers. */
export function answerSentence(plan: HolePlan, request: HoleRequest, unit: Unit): Part[] {
  const tap = bestTap(plan);
  if (!tap) return blockedParts(blockOf(plan, request), unit);
  return tapSentence(plan, tap, request, unit);
}

function longerChamfer(plan: HolePlan, best: TapChoice, unit: Unit): string {
  const longer = plan.taps
    .filter(
      ({ style, chamfer }) =>
        style === best.style && chamfer.threads.min > best.chamfer.threads.min,
    )
    .sort((a, b) => a.chamfer.threads.max - b.chamfer.threads.max)[0];
  const reason = longer?.reasons.find(({ code }) => code === 'does-not-reach');
  if (!longer || !reason) return '';
  const threads = threadRange(longer.chamfer.threads);
  return ' ' + fill(BECAUSE.longerWouldNeed, { threads, ...reason.numbers }, unit);
}

/** Why that tap: where this hole wants its chips, and what the next longer chamfer would need. */
export function becauseSentence(plan: HolePlan, request: HoleRequest, unit: Unit): string {
  const best = bestTap(plan);
  if (!best) {
    const block = blockOf(plan, request);
    if (block.kind !== 'depth' && block.kind !== 'spindle') return '';
    return fill(BECAUSE.noneFits[block.kind], block.numbers, unit);
  }
  if (!plan.limits) return BECAUSE.taper;
  if (request.spindle?.drive === 'hand') return BECAUSE.hand;
  if (plan.warnings.some(({ code }) => code === 'crossing')) return BECAUSE.crossing;
  const material = findMaterial(request.material);
  const sentence = BECAUSE[request.hole.kind][best.chips.goes];
  const values = {
    material: materialShort(request.material),
    chips: material ? CHIP_FORMS[material.chips] : '',
  };
  return fill(sentence, values, unit) + longerChamfer(plan, best, unit);
}
