/**
 * One tap in one hole, all the way down: torque along the stroke, the load on every tooth, what is doubtful
 * and how much, what the tap stands, where a clutch should let go. Its torque is the plan's own for that tap.
 */

import type { ChamferClass } from '../chamfer/chamfer';
import { middleThreads } from '../chamfer/classes';
import { fluteDuty, type FluteDuty } from '../chips/duty';
import { EXIT_PITCHES } from '../hole/depth';
import type { CrossHole } from '../load/cross-hole';
import { fluidFactor, type Fluid, type FluidFactor } from '../load/fluid';
import type { Stroke } from '../load/stroke';
import { chamferTeeth, cuttingThreads, type ChamferTeeth } from '../load/teeth';
import { wholeTorque, type Groove } from '../load/torque';
import { answer, refuse, type Outcome } from '../outcome';
import type { Spread } from '../spread';
import { STYLES, WORN } from '../tap/styles';
import { torqueDoubt, type TorqueDoubt } from '../tap/torque-doubt';
import { measuredWeb, webSpread } from '../tap/web';
import { breakingBand } from '../tap/twist';
import { candidatesFor, type Candidate } from './candidates';
import type { Job } from './job';
import { jobOf } from './prepare';
import type { LoadedStyle } from './tap-load';
import type { HoleRequest } from './types';

export interface StudyOptions {
  style: LoadedStyle;
  chamfer: ChamferClass;
  fluid?: Fluid;
  /** Diameter of the tap's nose as measured, mm. */
  nose?: number | undefined;
  crossHoles?: readonly CrossHole[];
}

export interface TapStudy {
  job: Job;
  tap: Candidate;
  fluid: FluidFactor;
  /** Plan's torque with the fluid in it, N·m. */
  torque: { low: number; expected: number; high: number };
  stroke: Stroke;
  /** Null for a form tap, which has no cutting teeth. */
  teeth: ChamferTeeth | null;
  web: Spread;
  /** Torque as a share of the expected breaking torque, sharp and worn, with the fluid in it. */
  sharp: { torque: number; share: number };
  worn: { torque: number; share: number };
  breaks: { low: number; expected: number; high: number };
  doubt: TorqueDoubt;
  duty: FluteDuty | null;
}

/** How true a form tap's hole is usually kept, as a share of the thread's diameter. Common practice. */
const FORM_HOLE_TOLERANCE = 0.005;

function holeSpread(job: Job, tap: Candidate, formed: boolean): Spread {
  const diameter = tap.drill?.diameter ?? job.cutHole;
  if (formed) {
    const tolerance = FORM_HOLE_TOLERANCE * job.major;
    return { low: diameter - tolerance, likely: diameter, high: diameter + tolerance };
  }
  const oversize = tap.drill ? tap.drill.likely - diameter : 0;
  return { low: diameter, likely: diameter, high: diameter + 2 * oversize };
}

function webOfTap(job: Job, style: LoadedStyle): Spread {
  const { tapWeb } = job.request;
  const measured = tapWeb === undefined ? null : measuredWeb(tapWeb, job.major);
  // The plan reckons a form tap's core from its thread, whatever was measured on a cutting tap.
  if (measured && style !== 'form') return measured;
  return webSpread(style, job.major, job.major - 1.0825 * job.pitch, job.flutes);
}

function strokeOf(
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

/**
 * Studies one tap. `request`: lengths mm, torque N·m. Refuses as `jobOf` and `cuttingThreads` do, and with
 * `too-hard` where no HSS tap belongs, `tap-not-planned` where that style and chamfer are never made.
 * Sources: `tap-chip-model`, `makers-style-factors`, `common-practice`.
 */
export function studyTap(request: HoleRequest, options: StudyOptions): Outcome<TapStudy> {
  const reading = jobOf(request);
  if (!reading.ok) return reading;
  const job = reading.value;
  const { style, chamfer, nose, crossHoles = [] } = options;
  const { material, major, pitch, cutHole, flutes } = job;
  if (!material.speed) return refuse({ code: 'too-hard', field: 'material' });
  const { candidates, scale } = candidatesFor(job);
  const tap = candidates.find((each) => each.style === style && each.chamfer.class === chamfer);
  const formed = style === 'form';
  if (!tap || (formed && material.forming === 'no')) return refuse({ code: 'tap-not-planned' });
  const groove: Groove = { major, pitch, hole: cutHole };
  const middle = middleThreads(tap.chamfer);
  const threads = cuttingThreads(groove, {
    threads: middle,
    flutes,
    nose: formed ? undefined : nose,
  });
  if (!threads.ok) return threads;
  const teeth = formed ? null : chamferTeeth(groove, { threads: middle, flutes, nose }, material);
  if (teeth && !teeth.ok) return teeth;
  const fluid = fluidFactor(options.fluid ?? 'oil', material);
  const shop = fluid.factor * scale.factor;
  const web = webOfTap(job, style);
  const hole = holeSpread(job, tap, formed);
  const thickness = request.hole.kind === 'through' ? request.hole.thickness : Infinity;
  const cut = {
    ...groove,
    material,
    flutes,
    threads: threads.value,
    fullThread: tap.depth.fullThread,
    thickness,
  };
  const { low, expected, high } = tap.torque;
  const breaks = breakingBand(web);
  const sharp = expected * fluid.factor;
  return answer(
    {
      job,
      tap,
      fluid,
      torque: {
        low: low * fluid.factor,
        expected: expected * fluid.factor,
        high: high * fluid.factor,
      },
      stroke: strokeOf(job, tap, threads.value, STYLES[style].torque.middle * shop, crossHoles),
      teeth: teeth ? teeth.value : null,
      web,
      breaks,
      sharp: { torque: sharp, share: sharp / breaks.expected },
      worn: { torque: sharp * WORN, share: (sharp * WORN) / breaks.expected },
      doubt: torqueDoubt({ cut, style, factor: shop, hole, web }),
      duty: formed ? null : fluteDuty(groove, web.likely, material.chips),
    },
    reading.notes,
  );
}
