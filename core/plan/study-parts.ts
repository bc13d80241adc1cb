/** Pieces of a tap's study: the hole as it may turn out, the web to reckon with, the stroke. */

import { EXIT_PITCHES } from '../hole/depth';
import type { CrossHole } from '../load/cross-hole';
import type { Stroke } from '../load/stroke';
import { wholeTorque, type Groove } from '../load/torque';
import type { Spread } from '../spread';
import { STYLES } from '../tap/styles';
import { measuredWeb, webSpread } from '../tap/web';
import type { Candidate } from './candidates';
import type { Job } from './job';
import type { LoadedStyle } from './tap-load';

/** How true a form tap's hole is usually kept, as a share of the thread's diameter. Common practice. */
const FORM_HOLE_TOLERANCE = 0.005;

/** The hole as it may turn out, mm. Sources: `drill-oversize`, `common-practice`. */
export function holeSpread(job: Job, tap: Candidate, formed: boolean): Spread {
  const diameter = tap.drill?.diameter ?? job.cutHole;
  if (formed) {
    const tolerance = FORM_HOLE_TOLERANCE * job.major;
    return { low: diameter - tolerance, likely: diameter, high: diameter + tolerance };
  }
  const oversize = tap.drill ? tap.drill.likely - diameter : 0;
  return { low: diameter, likely: diameter, high: diameter + 2 * oversize };
}

/** Web to reckon with, mm; null where the measured one cannot be. Source: `common-practice`. */
export function webOfTap(job: Job, style: LoadedStyle): Spread | null {
  const { tapWeb } = job.request;
  // The plan reckons a form tap's core from its thread, whatever was measured on a cutting tap.
  if (tapWeb !== undefined && style !== 'form') return measuredWeb(tapWeb, job.major);
  return webSpread(style, job.major, job.major - 1.0825 * job.pitch, job.flutes);
}

/** The stroke of a tap whose chamfer cuts with `threads` threads; `factor` on a straight-flute tap. mm. Derived. */
export function strokeOf(
  job: Job,
  tap: Candidate,
  threads: number,
  factor: number,
  cross: readonly CrossHole[],
): Stroke {
  const { major, pitch, cutHole, material, flutes } = job;
  const { process } = STYLES[tap.style];
  const { hole } = job.request;
  const { fullThread } = tap.depth;
  const through = hole.kind === 'through' && fullThread >= hole.thickness - 1e-9;
  const exit = through ? EXIT_PITCHES * pitch : 0;
  const groove: Groove = { major, pitch, hole: cutHole };
  return {
    process: process === 'form' ? 'form' : 'cut',
    groove: process === 'form' ? { ...groove, hole: tap.drill?.diameter ?? cutHole } : groove,
    whole: wholeTorque({ ...groove, material, flutes }) * factor,
    threads,
    friction: material.friction,
    fullThread,
    thickness: hole.kind === 'through' ? hole.thickness : Infinity,
    travel: fullThread + threads * pitch + exit,
    crossHoles: cross,
  };
}
