/** A whole part: every callout read and planned, tools shared, questions gathered. */

import { planHole } from '../plan/plan';
import type { Outcome } from '../outcome';
import type { HolePlan, HoleRequest } from '../plan/types';
import { readThread } from '../thread/read';
import { readCallout } from './callout';
import { readDrawer } from './drawer';
import { questionsFor } from './questions';
import { tableOf } from './table';
import { shareDrills, shareTaps, type DrillWish } from './share';
import type { Callout, DrawingPlan, HoleVerdict, PlannedHole, Question, Shop } from './types';

/** Diameters of thickness that a through hole is given when neither line nor part says. Common practice. */
const USUAL_THICKNESS = 1.5;

function diameterOf(thread: string): number {
  const read = readThread(thread);
  return read.ok ? read.value.diameter : 10;
}

function requestFor(callout: Callout, shop: Shop): HoleRequest {
  const { thread, fullThread, hole } = callout;
  const common = {
    thread,
    material: shop.material,
    ...(shop.spindle && { spindle: shop.spindle }),
    ...(fullThread !== undefined && { fullThread }),
  };
  if (callout.through) {
    const usual = USUAL_THICKNESS * diameterOf(thread);
    const thickness = shop.thickness ?? Math.max(fullThread ?? 0, usual);
    return { ...common, hole: { kind: 'through', thickness } };
  }
  const depth = hole?.depth;
  const limit = depth === undefined ? {} : { limit: { at: hole!.at, depth } };
  return { ...common, hole: { kind: 'blind', ...limit } };
}

/** How a hole stands: see `planDrawing`. `asked`: its questions to the designer. Source: common practice. */
export function verdictOf(hole: PlannedHole, asked: number): HoleVerdict {
  const { callout, plan } = hole;
  if (!callout.ok || !plan) return 'unread';
  if (!plan.ok) return asked > 0 ? 'impossible' : 'unread';
  if (!plan.value.taps.some((tap) => tap.verdict === 'best')) return 'impossible';
  const careful = plan.value.warnings.some(({ level }) => level !== 'note');
  return asked > 0 || careful ? 'caution' : 'ready';
}

/** The lines that hold anything, each with the callout it is read as: a table's rows are put in plain order. */
function entriesOf(lines: string[], { columns }: Shop): { line: string; text: string }[] {
  const table = tableOf(lines, columns);
  if (table) return table.entries;
  return lines.filter((line) => line.trim() !== '').map((line) => ({ line, text: line }));
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

/**
 * Plans every threaded hole of a part, one callout a line or one row of a pasted table (see `tableOf`); blank
 * lines and headings are passed over. mm, N·m;
 * any text may stand on a line, and `shop` has the ranges of `HoleRequest`.
 *
 * A hole is *impossible* when no tap makes it as drawn, *caution* when a question to the designer or a
 * grave warning stands against it, *ready* otherwise, *unread* when its line could not be read.
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
  const holes = entriesOf(lines, shop).map(({ line, text }, index): PlannedHole => {
    const callout = readCallout(text);
    if (!callout.ok) return { line, callout, verdict: 'unread' };
    const request = requestFor(callout.value, { ...shop, ...shop.holes?.[index] });
    const plan = planOnce(request);
    const asked = questionsFor(callout.value, plan, callout.notes);
    questions.push(...asked.map((each) => ({ hole: index, ...each })));
    const hole: PlannedHole = { line, callout, plan, request, verdict: 'unread' };
    return { ...hole, verdict: verdictOf(hole, asked.length) };
  });
  return sharePart(holes, questions, shop.drawer);
}
