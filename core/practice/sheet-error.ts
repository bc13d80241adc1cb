/** A set-up sheet with one wrong line. */

import type { DrillChoice } from '../drill/drill';
import { planHole } from '../plan/plan';
import type { Draw } from '../seeded';
import { readThread } from '../thread/read';
import { oneOf } from './draw';
import { drawnDepth, drawThread } from './pools';
import type { Facts, Level, Made } from './types';

export const SHEET_LINES = ['gauge', 'drill', 'shoulder', 'tip', 'feed', 'speed'] as const;
type Line = (typeof SHEET_LINES)[number];

/** Another thread of the same diameter: the gauge that is easily taken for the right one. */
const SISTERS: Record<string, string> = {
  'M6x1-6H': 'M6x0.75-6H',
  'M8x1.25-6H': 'M8x1-6H',
  'M8x1-6H': 'M8x1.25-6H',
  'M10x1.5-6H': 'M10x1.25-6H',
  'M12x1.75-6H': 'M12x1.5-6H',
  'M12x1.25-6H': 'M12x1.75-6H',
  'M16x2-6H': 'M16x1.5-6H',
  'M20x2.5-6H': 'M20x1.5-6H',
  '1/4-20 UNC-2B': '1/4-28 UNF-2B',
  '5/16-18 UNC-2B': '5/16-24 UNF-2B',
  '3/8-16 UNC-2B': '3/8-24 UNF-2B',
  '7/16-14 UNC-2B': '7/16-20 UNF-2B',
  '1/2-13 UNC-2B': '1/2-20 UNF-2B',
  '5/8-11 UNC-2B': '5/8-18 UNF-2B',
  '#10-32 UNF-2B': '#10-24 UNC-2B',
};

function pitchOf(text: string): number {
  const read = readThread(text);
  return read.ok ? read.value.pitch : 0;
}

/** A sheet of six lines, exactly one of them wrong. mm, rev/min. Source: the plan of that hole. */
export function makeError(draw: Draw, level: Level): Made {
  const thread = drawThread(draw, level);
  const sister = SISTERS[thread.designation];
  const fullThread = drawnDepth(thread, 1 + draw());
  const outcome = planHole({
    thread: thread.designation,
    fullThread,
    hole: { kind: 'blind' },
    material: 'steel-medium',
  });
  if (!outcome.ok || !sister) return null;
  const { drills, drill, taps, cycle } = outcome.value;
  const tap = taps.find(({ verdict }) => verdict === 'best');
  const tooLarge = drills.filter(
    ({ verdict, diameter }) => verdict === 'outside' && diameter > (drill?.diameter ?? Infinity),
  );
  if (!tap || !drill || !cycle || tooLarge.length === 0) return null;
  const { pitch } = thread;
  const named = (each: DrillChoice) => `${each.series} ${each.name}`;
  const right: Record<Line, number | string> = {
    gauge: thread.designation,
    drill: named(drill),
    shoulder: tap.depth.shoulder,
    tip: tap.depth.tip,
    feed: pitch,
    speed: Math.round(cycle.rpm),
  };
  const wrong: Record<Line, number | string> = {
    gauge: sister,
    drill: named(oneOf(draw, tooLarge)),
    // The tap would touch bottom: no clearance was left.
    shoulder: tap.depth.tip,
    // The chamfer was forgotten.
    tip: fullThread,
    feed: level === 3 ? pitch * 0.95 : pitchOf(sister),
    speed: Math.round(cycle.rpmRange.max * (level === 3 ? 2 : 4)),
  };
  const line = oneOf(draw, SHEET_LINES);
  const shown: Facts = { ...right, [line]: wrong[line] };
  return {
    variant: 'sheet',
    given: {
      thread: thread.designation,
      system: thread.system,
      pitch,
      fullThread,
      threadsMax: tap.chamfer.threads.max,
      ...shown,
    },
    working: {
      ...right,
      wrong: wrong[line],
      min: cycle.rpmRange.min,
      max: cycle.rpmRange.max,
    },
    ask: {
      type: 'choice',
      answer: line,
      options: SHEET_LINES.map((id) => ({ id, facts: { value: shown[id]! } })),
    },
  };
}
