/** A part of holes that were each asked for in full, planned together so that they share their tools. */

import { planHole } from '../plan/plan';
import type { HoleRequest } from '../plan/types';
import { answer } from '../outcome';
import { sharePart, verdictOf } from './plan-drawing';
import { questionsFor } from './questions';
import type { Callout, DrawingPlan, PlannedHole, Question } from './types';

export interface PartHole {
  request: HoleRequest;
  /** Holes of this kind. */
  count: number;
}

/** A request as the callout it would be. */
function calloutOf({ request, count }: PartHole): Callout {
  const { thread, fullThread, hole } = request;
  return {
    count,
    thread,
    ...(fullThread !== undefined && { fullThread }),
    through: hole.kind === 'through',
    ...(hole.kind === 'blind' && hole.limit && { hole: hole.limit }),
    read: [thread],
    harmless: [],
    notRead: [],
  };
}

/**
 * Plans holes together, as `planDrawing` does with callouts. mm, N·m; for ranges see
 * `HoleRequest`. Never throws.
 * Sources: as `planHole`.
 */
export function planPart(holes: readonly PartHole[]): DrawingPlan {
  const questions: Question[] = [];
  const planned = holes.map((hole, index): PlannedHole => {
    const { request } = hole;
    const callout = calloutOf(hole);
    const plan = planHole(request);
    const asked = questionsFor(callout, plan);
    questions.push(...asked.map((each) => ({ hole: index, ...each })));
    const thread = plan.ok ? plan.value.thread.designation : request.thread;
    const each: PlannedHole = {
      line: request.thread,
      lines: [index + 1],
      callout: answer({ ...callout, thread }),
      plan,
      request,
      verdict: 'unread',
    };
    return { ...each, verdict: verdictOf(each, asked.length) };
  });
  return sharePart(planned, questions);
}
