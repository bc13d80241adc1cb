/** Which of the part's tools each hole is made with. */

import type { DrillChoice } from '../drill/drill';
import type { TapChoice } from '../plan/types';
import type { DrawingPlan } from './types';

export interface HoleTools {
  tap: TapChoice;
  drill: DrillChoice | null;
}

/**
 * The shared tap and drill of one hole, as that hole's own plan judges them: its depths in mm, its
 * torque in N·m, its percent of thread. Null for a hole that has none: impossible or unread.
 * `index`: 0-based among the drawing's holes. Source: derived.
 */
export function toolsFor(drawing: DrawingPlan, index: number): HoleTools | null {
  const plan = drawing.holes[index]?.plan;
  const shared = drawing.taps.find(({ holes }) => holes.includes(index))?.choice;
  if (!plan?.ok || !shared) return null;
  const tap = plan.value.taps.find(
    ({ style, chamfer }) => style === shared.style && chamfer.class === shared.chamfer.class,
  );
  if (!tap) return null;
  const name = drawing.drills.find(({ holes }) => holes.includes(index))?.drill.name;
  const judged = plan.value.drills.find((drill) => drill.name === name) ?? null;
  // A form tap's hole is judged by its own window, not by the class of a cut thread.
  return { tap, drill: tap.process === 'form' ? tap.drill : (judged ?? tap.drill) };
}
