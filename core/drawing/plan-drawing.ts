/** A whole part: every callout read and planned, tools shared, questions gathered. */

import { answer, refuse, type Outcome } from '../outcome';
import { planHole } from '../plan/plan';
import type { HolePlan, HoleRequest } from '../plan/types';
import { calloutOf, readingOf } from './callout';
import { readDrawer } from './drawer';
import { drawingEntries } from './entries';
import { partQuestions } from './part-notes';
import { planOne } from './plan-one';
import { questionsFor } from './questions';
import { shareDrills, shareTaps, type DrillWish } from './share';
import { sheetLine } from './sheet-patterns';
import { unanswered } from './unanswered';
import type {
  Apart,
  Callout,
  DrawingPlan,
  HoleVerdict,
  PlannedHole,
  Question,
  Shop,
} from './types';

/** How a hole stands: see `planDrawing`. `asked`: its questions to the designer. Source: common practice. */
export function verdictOf(hole: PlannedHole, asked: number): HoleVerdict {
  const { callout, plan, request } = hole;
  if (!callout.ok || !plan) return 'unread';
  if (!plan.ok) return asked > 0 ? 'impossible' : 'unread';
  if (!plan.value.taps.some((tap) => tap.verdict === 'best')) return 'impossible';
  const careful = plan.value.warnings.some(({ level }) => level !== 'note');
  const open = asked > 0 || callout.value.notRead.length > 0;
  const bent = callout.notes.some(({ code }) => code.startsWith('planned-'));
  const silent = request !== undefined && unanswered(request, plan.value);
  return open || careful || bent || silent ? 'caution' : 'ready';
}

function formsThread(index: number, taps: DrawingPlan['taps']): boolean {
  return taps.some(({ choice, holes }) => choice.process === 'form' && holes.includes(index));
}

/** The fewest tools for holes that were judged one by one. Source: derived. */
export function sharePart(
  holes: PlannedHole[],
  questions: Question[],
  drawer?: unknown,
): DrawingPlan {
  const owned = drawer === undefined ? undefined : readDrawer(drawer);
  const workable = holes.flatMap(({ plan, verdict }, index) =>
    plan?.ok && (verdict === 'ready' || verdict === 'caution') ? [{ index, plan: plan.value }] : [],
  );
  const taps = shareTaps(workable, owned);
  const drills = shareDrills(
    workable.map(({ index, plan }): DrillWish => {
      const { callout } = holes[index]!;
      const drawn = callout.ok ? callout.value.hole?.diameter : undefined;
      return { index, plan, forms: formsThread(index, taps), drawn };
    }),
    owned,
  );
  return { holes, taps, drills, questions };
}

/** What a line that gave no callout was recognised as; undefined where it may still be a hole. */
function apartOf(line: string, callout: Outcome<Callout>): Apart | undefined {
  if (callout.ok) return undefined;
  const codes = callout.problems.map(({ code }) => code);
  if (codes.includes('no-tapped-hole')) return 'clearance';
  return sheetLine(line) ?? undefined;
}

/** A line of the title block may name a thread; without class or depth it is no callout for all that. */
function readEntry(
  line: string,
  lines: readonly number[],
  shop: Shop,
): { callout: Outcome<Callout>; apart?: Apart } {
  const reading = readingOf(line);
  const saidSo = lines.some((number) => shop.tapped?.includes(number));
  if (saidSo) reading.tapped = true;
  const callout = calloutOf(line, reading);
  const sheet = sheetLine(line);
  const called = reading.threadDepth !== undefined || reading.thread?.classGiven || reading.count;
  if (sheet && callout.ok && !called && !saidSo) {
    const data = { typed: line };
    return { callout: refuse({ code: 'no-thread', field: 'line', data }), apart: sheet };
  }
  const apart = apartOf(line, callout);
  return { callout, ...(apart && { apart }) };
}

/**
 * Plans every threaded hole of a part, one callout a line or one row of a pasted table (see `tableOf`); blank
 * lines and headings are passed over. mm, N·m;
 * any text may stand on a line, and `shop` has the ranges of `HoleRequest`.
 *
 * Lines that surely are one callout are joined (`lines` has their numbers). A hole is *impossible* when no
 * tap makes it as drawn, *caution* when a question to the designer, a warning above a note or a word that was
 * not read stands against it, *ready* otherwise, *unread* when its line could not be read; a line without a
 * threaded hole is `apart` where it was recognised as such.
 * Never throws and never loses a line. `shop.thickness` serves every through hole without its own;
 * `shop.drawer` is preferred among tools that serve equally.
 * Sources: as `planHole`.
 *
 * @example
 * planDrawing(['M6-6H 12 DEEP', 'a note'], { material: 'al-wrought' }).holes.map((hole) => hole.verdict) // ['ready', 'unread']
 */
export function planDrawing(lines: string[], shop: Shop): DrawingPlan {
  const questions: Question[] = [];
  // Parts repeat themselves: what was planned once is not planned again.
  const planned = new Map<string, Outcome<HolePlan>>();
  const planOnce = (request: HoleRequest): Outcome<HolePlan> => {
    const key = JSON.stringify(request);
    const known = planned.get(key) ?? planHole(request);
    planned.set(key, known);
    return known;
  };
  const holes = drawingEntries(lines, shop).map(({ text, ...entry }, index): PlannedHole => {
    const { callout, apart } = readEntry(text, entry.lines, shop);
    if (!callout.ok) return { ...entry, callout, ...(apart && { apart }), verdict: 'unread' };
    const one = planOne(callout.value, { ...shop, ...shop.holes?.[index] }, planOnce);
    const said = answer(callout.value, [...callout.notes, ...one.notes]);
    const asked = questionsFor(callout.value, one.plan, callout.notes);
    questions.push(...asked.map((each) => ({ hole: index, ...each })));
    const { plan, request } = one;
    const hole: PlannedHole = { ...entry, callout: said, plan, request, verdict: 'unread' };
    return { ...hole, verdict: verdictOf(hole, asked.length) };
  });
  for (const question of partQuestions(holes)) {
    const hole = holes[question.hole]!;
    questions.push(question);
    if (hole.verdict === 'ready') hole.verdict = 'caution';
  }
  return sharePart(holes, questions, shop.drawer);
}
