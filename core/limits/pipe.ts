/** Limits of parallel pipe threads; a taper pipe thread has none. */

import { answer, refuse, type Outcome } from '../outcome';
import { basicDiameters } from '../thread/profile';
import type { Thread } from '../thread/thread';
import { roundHalfUp } from '../units';
import { limitsNote, limitsProblem } from './codes';
import type { ThreadLimits } from './limits';

/** Tolerances of G internal threads by threads per inch, mm: pitch and minor diameter. ISO 228-1, read in `threadlib`. */
const G_TOLERANCE: Readonly<Record<number, { pitch: number; minor: number }>> = {
  28: { pitch: 0.107, minor: 0.282 },
  19: { pitch: 0.125, minor: 0.445 },
  14: { pitch: 0.142, minor: 0.541 },
  11: { pitch: 0.18, minor: 0.64 },
};

/** Above size 2 the pitch diameter of 11 threads per inch has more room, mm. */
const G_LARGE_PITCH_TOLERANCE = 0.217;
const SIZE_TWO = 59.614;

function parallelG(thread: Thread): Outcome<ThreadLimits> {
  const tolerance = G_TOLERANCE[thread.inch?.tpi ?? 0];
  if (!tolerance) return refuse(limitsProblem('no-limits-held', thread));
  const onPitch = thread.diameter > SIZE_TWO ? G_LARGE_PITCH_TOLERANCE : tolerance.pitch;
  const basic = basicDiameters(thread);
  return answer({
    unit: 'mm',
    pitch: { min: basic.pitch, max: roundHalfUp(basic.pitch + onPitch, 0.001) },
    minor: { min: basic.minor, max: roundHalfUp(basic.minor + tolerance.minor, 0.001) },
    majorMin: basic.major,
    basis: 'tabulated',
  });
}

/**
 * Rp: ISO 7-1 lets the gauge plane of the male taper lie 1 1/4 turns off (1 1/2 above size 2);
 * on a 1:16 taper that is P/16 of diameter a turn, to either side of the basic sizes. Derived, and it
 * agrees with the tolerances as remembered.
 */
function parallelRp(thread: Thread): Outcome<ThreadLimits> {
  const turns = thread.diameter > SIZE_TWO ? 1.5 : 1.25;
  const half = roundHalfUp((turns * thread.pitch) / 16, 0.001);
  const basic = basicDiameters(thread);
  const around = (size: number) => ({
    min: roundHalfUp(size - half, 0.001),
    max: roundHalfUp(size + half, 0.001),
  });
  const limits: ThreadLimits = {
    unit: 'mm',
    pitch: around(basic.pitch),
    minor: around(basic.minor),
    majorMin: around(basic.major).min,
    basis: 'computed',
  };
  return answer(limits, [{ ...limitsNote('parallel-pipe-from-memory'), source: 'from-memory' }]);
}

/**
 * Limits of a pipe thread, mm. G by ISO 228-1; Rp derived from ISO 7-1.
 * Refuses `taper-pipe` (NPT, NPTF, Rc: how far the gauge enters decides) and `no-limits-held` (NPSM, NPSF).
 */
export function pipeLimits(thread: Thread): Outcome<ThreadLimits> {
  if (thread.form === 'G') return parallelG(thread);
  if (thread.form === 'Rp') return parallelRp(thread);
  const straight = thread.form === 'NPSM' || thread.form === 'NPSF';
  return refuse(limitsProblem(straight ? 'no-limits-held' : 'taper-pipe', thread));
}
