/** What is said about each hole of a part, and about the part as a whole. */

import { toolsFor, type HoleTools } from '../../../core';
import type { DrawingPlan, HoleVerdict, PlannedHole } from '../../../core/drawing/types';
import type { HolePlan, HoleRequest, TapChoice } from '../../../core/plan/types';
import { worded } from '../../planner/PlanNotices';
import { spoken } from '../../result/AnswerLine';
import { answerSentence, bestTap, problemText, tapName, type Part, type Unit } from '..';
import { tapSentence } from '../answer';
import { questionShort } from '../drawing';

/** A hole that can be made: everything that a row of the sheet is written from. */
export interface MadeHole {
  plan: HolePlan;
  request: HoleRequest;
  tap: TapChoice;
}

/** The hole with the part's shared tools, or null where nothing makes it as drawn. */
export function madeHole(drawing: DrawingPlan, index: number): MadeHole | null {
  const { plan, request } = drawing.holes[index] ?? {};
  const tools: HoleTools | null = toolsFor(drawing, index);
  if (!plan?.ok || !request || !tools) return null;
  return { plan: plan.value, request, tap: { ...tools.tap, drill: tools.drill } };
}

/** Which tap and drill, how deep, and what it would get alone; empty where nothing makes the hole. */
export function toolText(drawing: DrawingPlan, index: number, unit: Unit): string {
  const made = madeHole(drawing, index);
  if (!made) return '';
  const said = spoken(tapSentence(made.plan, made.tap, made.request, unit));
  const best = bestTap(made.plan);
  if (made.tap.verdict === 'best' || !best) return said;
  const alone = tapName(best, made.plan.thread.system);
  return `${said} It shares this tap; alone it would get: ${alone.charAt(0).toLowerCase()}${alone.slice(1)}.`;
}

function refused({ plan, callout }: PlannedHole, unit: Unit): string[] {
  if (!callout.ok) return callout.problems.map((problem) => problemText(problem, unit));
  return plan && !plan.ok ? plan.problems.map((problem) => problemText(problem, unit)) : [];
}

/** How a hole is called on the page and the sheet: lines that were set apart are not counted. */
export function holeNumber({ holes }: DrawingPlan, index: number): number {
  return holes.slice(0, index + 1).filter(({ apart }) => !apart).length;
}

/** Words of the hole's lines that nobody understood, in words; empty where there are none. */
export function notReadText({ callout }: PlannedHole): string {
  const words = callout.ok ? callout.value.notRead : [];
  return words.length === 0 ? '' : `Not understood: “${words.join(' ')}”.`;
}

/** Why a hole is not simply ready: its questions first, then what to watch. Empty for a ready one. */
export function reasons(drawing: DrawingPlan, index: number, unit: Unit): string[] {
  const hole = drawing.holes[index]!;
  if (hole.verdict === 'ready') return [];
  const asked = drawing.questions
    .filter((question) => question.hole === index)
    .map((question) => questionShort(question, unit));
  if (hole.verdict === 'caution' && hole.plan?.ok) {
    const strips = drawing.questions.some(
      ({ hole: at, code }) => at === index && code === 'strip-strength',
    );
    const watched = worded(hole.plan.value, unit)
      .filter(({ level, code }) => level !== 'note' && !(strips && code === 'weak-when-stripped'))
      .map(({ title }) => `${title}.`);
    return [...asked, notReadText(hole), ...watched].filter((text) => text !== '');
  }
  if (asked.length > 0) return asked;
  const said = refused(hole, unit);
  if (said.length > 0 || !hole.plan?.ok || !hole.request) return said;
  return [spoken(answerSentence(hole.plan.value, hole.request, unit))];
}

export const VERDICT_ORDER: readonly HoleVerdict[] = ['ready', 'caution', 'impossible', 'unread'];

/** How many callouts have a verdict. */
export function countOf(drawing: DrawingPlan, verdict: HoleVerdict): number {
  return drawing.holes.filter((hole) => !hole.apart && hole.verdict === verdict).length;
}

const TAILS: Record<HoleVerdict, [one: string, many: string]> = {
  ready: ['is ready', 'are ready'],
  caution: ['needs care', 'need care'],
  impossible: ['cannot be made as drawn', 'cannot be made as drawn'],
  unread: ['could not be read', 'could not be read'],
};

const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

const NO_HOLE = 'No threaded hole stands in these lines.';

/** The answer in one sentence: how the callouts stand, and how few tools make them. */
export function answerParts(drawing: DrawingPlan): Part[] {
  const all = drawing.holes.filter(({ apart }) => !apart).length;
  const apart = drawing.holes.length - all;
  const counted = VERDICT_ORDER.flatMap((verdict): { count: number; tail: string }[] => {
    const count = countOf(drawing, verdict);
    return count === 0 ? [] : [{ count, tail: TAILS[verdict][count === 1 ? 0 : 1] }];
  });
  if (all === 0) return [{ text: NO_HOLE }];
  const parts = counted.flatMap(({ count, tail }, at): Part[] => [
    { text: at === 0 ? '' : at === counted.length - 1 ? ' and ' : ', ' },
    { text: at === 0 && counted.length > 1 ? `${count} of ${all}` : String(count), strong: true },
    { text: ` ${tail}` },
  ]);
  const [taps, drills] = [drawing.taps.length, drawing.drills.length];
  const kept = apart === 0 ? '' : ` ${plural(apart, 'line was', 'lines were')} set apart.`;
  if (taps === 0) return [...parts, { text: `.${kept}` }];
  return [
    ...parts,
    { text: '. ' },
    { text: plural(taps, 'tap', 'taps'), strong: true },
    { text: ' and ' },
    { text: plural(drills, 'drill', 'drills'), strong: true },
    { text: ` make what can be made.${kept}` },
  ];
}
