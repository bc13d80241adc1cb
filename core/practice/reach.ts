/** Does the tap reach: the depth to drill for a thread, or the thread that a depth leaves. */

import type { ChamferClass } from '../chamfer/chamfer';
import { STOP_CLEARANCE } from '../hole/depth';
import { planHole } from '../plan/plan';
import type { HoleRequest, SpindleDrive } from '../plan/types';
import type { Draw } from '../seeded';
import { oneOf } from './draw';
import { drawnDepth, drawThread } from './pools';
import type { Level, Made } from './types';

/** A tenth of a millimetre: nearer nobody sets a depth. */
const TOLERANCE = 0.1;

function depthsOf(request: HoleRequest, chamfer: ChamferClass) {
  const outcome = planHole(request);
  const tap = outcome.ok
    ? outcome.value.taps.find(
        (each) => each.style === 'spiral-flute' && each.chamfer.class === chamfer,
      )
    : undefined;
  return tap && { ...tap.depth, threads: tap.chamfer.threads };
}

/** A reach to work out, mm. Source: the plan's own depths. */
export function makeReach(draw: Draw, level: Level): Made {
  const thread = drawThread(draw, level);
  const classes: ChamferClass[] =
    level === 1 ? ['semi-bottoming', 'plug'] : ['semi-bottoming', 'plug', 'bottoming'];
  const chamfer = oneOf(draw, classes);
  const drive: SpindleDrive = level > 1 && draw() < 0.5 ? 'floating' : 'synchronous';
  const fullThread = drawnDepth(thread, 1 + draw());
  const common: HoleRequest = {
    thread: thread.designation,
    fullThread,
    hole: { kind: 'blind' },
    material: 'steel-medium',
    spindle: { drive },
  };
  const free = depthsOf(common, chamfer);
  if (!free) return null;
  const { pitch } = thread;
  const stop = STOP_CLEARANCE[drive];
  const given = {
    thread: thread.designation,
    system: thread.system,
    pitch,
    fullThread,
    chamfer,
    threadsMin: free.threads.min,
    threadsMax: free.threads.max,
    drive,
    stop,
  };
  const chamferLength = free.threads.max * pitch;
  const working = { chamferLength, stopLength: stop * pitch, needed: free.shoulder };
  if (level < 3 || draw() < 0.5) {
    return {
      variant: 'drill-to',
      given,
      working,
      ask: {
        type: 'length',
        answer: free.shoulder,
        tolerance: TOLERANCE,
        slips: [
          { value: fullThread, code: 'thread-only' },
          { value: fullThread + chamferLength, code: 'no-stop' },
          { value: fullThread + free.threads.min * pitch + stop * pitch, code: 'shortest' },
          { value: fullThread + stop * pitch, code: 'no-chamfer' },
        ],
      },
    };
  }
  // One to three pitches short of what it needs.
  const limit = free.shoulder - (1 + 2 * draw()) * pitch;
  const limited = depthsOf(
    { ...common, hole: { kind: 'blind', limit: { at: 'shoulder', depth: limit } } },
    chamfer,
  );
  if (!limited || !(limited.fullThread > pitch)) return null;
  return {
    variant: 'gives',
    given: { ...given, limit },
    working: { ...working, obtainable: limited.fullThread },
    ask: {
      type: 'length',
      answer: limited.fullThread,
      tolerance: TOLERANCE,
      slips: [
        { value: limit - chamferLength, code: 'no-stop' },
        { value: limit - stop * pitch, code: 'no-chamfer' },
        { value: fullThread, code: 'asked' },
      ],
    },
  };
}
