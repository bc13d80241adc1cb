/**
 * One tap in one hole, all the way down: torque along the stroke, the load on every tooth, what is doubtful
 * and how much, what the tap stands, where a clutch should let go. Its torque is the plan's own for that tap.
 */

import type { ChamferClass } from '../chamfer/chamfer';
import { middleThreads } from '../chamfer/classes';
import { fluteDuty, type FluteDuty } from '../chips/duty';
import type { CrossHole } from '../load/cross-hole';
import { fluidFactor, type Fluid, type FluidFactor } from '../load/fluid';
import type { Stroke } from '../load/stroke';
import { chamferTeeth, cuttingThreads, type ChamferTeeth } from '../load/teeth';
import type { Groove } from '../load/torque';
import { answer, refuse, type Outcome } from '../outcome';
import type { Spread } from '../spread';
import { STYLES, WORN } from '../tap/styles';
import { torqueDoubt, type TorqueDoubt } from '../tap/torque-doubt';
import { breakingBand } from '../tap/twist';
import { candidatesFor, type Candidate, type ShopScale } from './candidates';
import type { Job } from './job';
import { jobOf } from './prepare';
import { holeSpread, strokeOf, webOfTap } from './study-parts';
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
  /** What readings of the shop made of the torque; null where there were none. */
  scale: ShopScale | null;
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

/**
 * Studies one tap. `request`: lengths mm, torque N·m; for ranges see `HoleRequest`. Refuses as `jobOf` and `cuttingThreads` do, and with
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
  const read = request.measured !== undefined || request.learned !== undefined;
  const web = webOfTap(job, style);
  if (!web) {
    const data = { typed: String(request.tapWeb) };
    return refuse({ code: 'web-out-of-range', field: 'tapWeb', data });
  }
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
      scale: read ? scale : null,
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
      doubt: torqueDoubt({
        cut,
        style,
        factor: shop,
        hole,
        web,
        read: read ? scale.band : undefined,
      }),
      duty: formed ? null : fluteDuty(groove, web.likely, material.chips),
    },
    reading.notes,
  );
}
