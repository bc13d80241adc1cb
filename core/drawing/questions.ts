/** What only the designer can settle about a hole, with the numbers the note needs. */

import type { Note, Outcome } from '../outcome';
import type { HolePlan } from '../plan/types';
import type { Callout, Question, QuestionCode } from './types';

type Asked = Omit<Question, 'hole'>;

function ask(code: QuestionCode, numbers: Record<string, number> = {}): Asked {
  return { code, numbers };
}

function numbersOf(list: { code: string; numbers: Record<string, number> }[], code: string) {
  return list.find((each) => each.code === code)?.numbers;
}

/** What is asked and what is there, in mm and in pitches. */
function roomNumbers(callout: Callout, plan: HolePlan): Record<string, number> {
  const { pitch } = plan.thread;
  const fullThread =
    callout.fullThread ?? numbersOf(plan.assumptions, 'full-thread-default')?.['depth'];
  const limit = callout.hole?.depth;
  return {
    ...(fullThread !== undefined && { fullThread, fullThreadPitches: fullThread / pitch }),
    ...(limit !== undefined && { limit }),
    ...(fullThread !== undefined &&
      limit !== undefined && {
        room: limit - fullThread,
        roomPitches: (limit - fullThread) / pitch,
      }),
  };
}

function reachQuestions(callout: Callout, plan: HolePlan): Asked[] {
  if (plan.taps.some((tap) => tap.verdict === 'best')) return [];
  const deeper = numbersOf(plan.remedies, 'deeper-hole');
  if (deeper) {
    const shorter = numbersOf(plan.remedies, 'shorter-thread');
    const by = deeper['by']!;
    return [
      ask('hole-too-shallow', {
        ...roomNumbers(callout, plan),
        needed: deeper['to']!,
        by,
        byPitches: by / plan.thread.pitch,
        ...(shorter && { obtainable: shorter['to']! }),
      }),
    ];
  }
  const room = numbersOf(plan.remedies, 'more-room-below');
  if (room) return [ask('no-room-below', room)];
  const spindle = numbersOf(plan.remedies, 'bigger-spindle');
  if (spindle) return [ask('spindle-too-small', spindle)];
  const flat = numbersOf(plan.remedies, 'flat-first');
  if (flat) return [ask('face-not-square')];
  return [ask('too-hard-to-tap')];
}

function drillQuestion(callout: Callout, plan: HolePlan): Asked[] {
  const drawn = callout.hole?.diameter;
  const { limits } = plan;
  if (drawn === undefined || !limits || limits.minor.max === undefined) return [];
  const factor = limits.unit === 'in' ? 25.4 : 1;
  const min = limits.minor.min * factor;
  const max = limits.minor.max * factor;
  // A drawing rounds its drill to two decimals; half the last one is no disagreement.
  const hair = 0.005;
  const outside = drawn < min - hair || drawn > max + hair;
  return outside ? [ask('drill-outside-class', { drawn, min, max })] : [];
}

function strengthQuestion(plan: HolePlan): Asked[] {
  // As strong as its screw, it needs no word from the designer.
  const weak = plan.warnings.filter(({ level }) => level !== 'note');
  const numbers = numbersOf(weak, 'weak-when-stripped');
  return numbers ? [ask('strip-strength', numbers)] : [];
}

/** The questions one hole raises, `notes` being what its line's reading left open. Lengths mm. Source: common practice. */
export function questionsFor(
  callout: Callout,
  plan: Outcome<HolePlan>,
  notes: readonly Note[] = [],
): Asked[] {
  const unclear = notes.some(({ code }) => code === 'depth-unclear');
  const inserted = /^(?:EG|STI)\b/.test(callout.thread);
  return [
    ...(unclear ? [ask('depth-not-clear')] : []),
    ...(inserted ? [ask('insert-which')] : []),
    ...(callout.fasteners ? [ask('tapped-or-clearance')] : []),
    ...planQuestions(callout, plan),
  ];
}

function planQuestions(callout: Callout, plan: Outcome<HolePlan>): Asked[] {
  if (!plan.ok) {
    const codes = plan.problems.map((problem) => problem.code);
    const depth = callout.hole?.depth;
    if (codes.includes('thread-deeper-than-hole')) {
      const numbers = { fullThread: callout.fullThread ?? 0, depth: depth ?? 0 };
      return [ask('thread-deeper-than-hole', numbers)];
    }
    if (codes.includes('full-thread-over-thickness')) {
      return [ask('thread-longer-than-part', { fullThread: callout.fullThread ?? 0 })];
    }
    return [];
  }
  return [
    ...reachQuestions(callout, plan.value),
    ...drillQuestion(callout, plan.value),
    ...strengthQuestion(plan.value),
  ];
}
