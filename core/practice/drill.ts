/** The one drill of four that surely leaves the hole in its class. */

import { minorLimitsMm } from '../limits/thread-limits';
import { planHole } from '../plan/plan';
import type { Draw } from '../seeded';
import { mixed, oneOf } from './draw';
import { drawThread } from './pools';
import type { Level, Made } from './types';

/** Drills nearer to one another than this are the same to a reader, mm. */
const APART = 0.03;

/** Four drills, exactly one surely inside. mm. Source: the class limits and the likely oversize. */
export function makeDrill(draw: Draw, level: Level): Made {
  const thread = drawThread(draw, level);
  const outcome = planHole({
    thread: thread.designation,
    hole: { kind: 'blind' },
    material: 'steel-medium',
  });
  if (!outcome.ok || !outcome.value.limits) return null;
  const { drills, limits } = outcome.value;
  const { min, max } = minorLimitsMm(limits);
  if (max === undefined) return null;
  const inside = drills.filter(({ verdict }) => verdict === 'inside');
  if (inside.length === 0) return null;
  const right = oneOf(draw, inside);
  // Harder: wrong drills that lie closer to the window.
  const wrong = drills
    .filter(({ verdict }) => verdict === 'outside')
    .sort((a, b) => Math.abs(a.diameter - right.diameter) - Math.abs(b.diameter - right.diameter))
    .slice(level === 3 ? 0 : 1);
  const options = [right];
  for (const drill of wrong) {
    if (options.length === 4) break;
    const near = options.some(({ diameter }) => Math.abs(diameter - drill.diameter) < APART);
    if (!near) options.push(drill);
  }
  if (options.length < 4) return null;
  const id = (drill: (typeof options)[number]) => `${drill.series} ${drill.name}`;
  return {
    variant: 'which',
    given: { thread: thread.designation, system: thread.system, min, max },
    working: { min, max, diameter: right.diameter, likely: right.likely, shop: right.percent.shop },
    ask: {
      type: 'choice',
      answer: id(right),
      options: mixed(draw, options).map((drill) => ({
        id: id(drill),
        facts: {
          name: drill.name,
          series: drill.series,
          diameter: drill.diameter,
          likely: drill.likely,
          verdict: drill.verdict,
        },
      })),
    },
  };
}
