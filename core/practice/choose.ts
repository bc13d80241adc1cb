/** Choose a tap and defend it: one that leads the plan, three that the plan rejects. */

import { planHole } from '../plan/plan';
import type { HoleRequest, TapChoice } from '../plan/types';
import type { Draw } from '../seeded';
import { mixed, oneOf } from './draw';
import { drawnDepth, drawThread, MATERIALS } from './pools';
import type { Level, Made, Option } from './types';

const HOLES = ['blind', 'through', 'clean'] as const;

/** Reasons that reject a tap by themselves; see the plan. */
const REJECTS = [
  'chips-ahead-no-room',
  'chips-must-not-fall',
  'does-not-reach',
  'below-clearance',
  'not-formable',
  'too-hard',
  'spindle-over',
];

function optionOf(tap: TapChoice): Option {
  const why = tap.reasons.find(({ code }) => REJECTS.includes(code)) ?? tap.reasons[0];
  return {
    id: `${tap.style} ${tap.chamfer.class}`,
    facts: {
      style: tap.style,
      hand: tap.hand,
      chamfer: tap.chamfer.class,
      form: tap.chamfer.form,
      min: tap.chamfer.threads.min,
      max: tap.chamfer.threads.max,
      verdict: tap.verdict,
      why: why?.code ?? '',
      ...why?.numbers,
    },
  };
}

/** One hole, four taps, exactly one of which is the plan's first choice and the rest will not do. Source: the plan. */
export function makeChoose(draw: Draw, level: Level): Made {
  const thread = drawThread(draw, level);
  const material = oneOf(draw, MATERIALS[level]);
  const hole = oneOf(draw, HOLES);
  const depth = drawnDepth(thread, 1 + draw());
  const request: HoleRequest = {
    thread: thread.designation,
    material,
    fullThread: depth,
    hole:
      hole === 'blind'
        ? { kind: 'blind' }
        : { kind: 'through', thickness: depth, ...(hole === 'clean' && { chipsMayFall: false }) },
  };
  const outcome = planHole(request);
  if (!outcome.ok) return null;
  const taps = outcome.value.taps.filter(({ process }) => process !== 'mill');
  const best = taps.find(({ verdict }) => verdict === 'best');
  const wrong = taps.filter(({ verdict }) => verdict === 'no');
  if (!best || wrong.length < 3) return null;
  const options = [best, ...mixed(draw, wrong).slice(0, 3)];
  return {
    variant: hole,
    given: { thread: thread.designation, system: thread.system, material, depth },
    working: { tapStyle: best.style },
    ask: {
      type: 'choice',
      answer: optionOf(best).id,
      options: mixed(draw, options).map(optionOf),
    },
  };
}
