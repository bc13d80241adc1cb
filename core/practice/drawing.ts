/** Four callouts of a part, one of which cannot be made as drawn. */

import { planDrawing } from '../drawing/plan-drawing';
import type { Draw } from '../seeded';
import type { Thread } from '../thread/thread';
import { mixed } from './draw';
import { drawnDepth, drawThread } from './pools';
import type { Level, Made } from './types';

/** Pitches of room below the thread: too few for any machine tap, and enough for the usual one. */
const SHORT: Record<Level, readonly [number, number]> = {
  1: [0.5, 1],
  2: [1, 1.75],
  3: [1.5, 2.25],
};
const ENOUGH: Record<Level, readonly [number, number]> = { 1: [6, 9], 2: [5, 7], 3: [4.2, 5.5] };

const between = (draw: Draw, [low, high]: readonly [number, number]) => low + (high - low) * draw();

function number(mm: number, thread: Thread): string {
  return thread.system === 'unified'
    ? (mm / 25.4).toFixed(3).replace(/^0/, '')
    : String(Math.round(mm * 10) / 10);
}

function callout(draw: Draw, level: Level, room: readonly [number, number]): string {
  const thread = drawThread(draw, level);
  const full = drawnDepth(thread, 1 + draw());
  const hole = full + between(draw, room) * thread.pitch;
  const count = 2 + Math.floor(draw() * 6);
  return `${count}X ${thread.designation} ↧${number(full, thread)} / ↧${number(hole, thread)}`;
}

/** Four lines, exactly one impossible. mm or inches as their threads have it. Source: the plan of the part. */
export function makeDrawing(draw: Draw, level: Level): Made {
  const bad = callout(draw, level, SHORT[level]);
  const good = [0, 1, 2].map(() => callout(draw, level, ENOUGH[level]));
  const lines = mixed(draw, [bad, ...good]);
  if (new Set(lines).size < lines.length) return null;
  const { holes } = planDrawing(lines, { material: 'al-wrought' });
  const impossible = holes.filter(({ verdict }) => verdict === 'impossible');
  const readable = holes.every(({ verdict }) => verdict !== 'unread');
  if (impossible.length !== 1 || impossible[0]!.line !== bad || !readable) return null;
  const plan = impossible[0]!.plan;
  const shortest = plan?.ok
    ? plan.value.taps.find(
        ({ style, chamfer }) => style === 'spiral-flute' && chamfer.class === 'bottoming',
      )
    : undefined;
  if (!plan?.ok || !shortest) return null;
  const needs = shortest.reasons.find(({ code }) => code === 'does-not-reach')?.numbers;
  if (!needs) return null;
  return {
    variant: 'lines',
    given: {},
    working: { line: bad, needed: needs['needed'] ?? 0, have: needs['have'] ?? 0 },
    ask: {
      type: 'choice',
      answer: bad,
      options: lines.map((line) => ({ id: line, facts: { line } })),
    },
  };
}
