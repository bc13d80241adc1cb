/**
 * How hard one tap works in one hole: the torque, its band, what it is of the tap and of the spindle.
 * The numbers are the plan's own for that tap, whether or not the plan would choose it.
 */

import type { ChamferClass } from '../chamfer/chamfer';
import { middleThreads } from '../chamfer/classes';
import { fluidFactor, type Fluid } from '../load/fluid';
import { engagedShare, toothGeometry, THINNEST_CHIP } from '../load/torque';
import { answer, refuse, type Outcome } from '../outcome';
import { breakingTorque } from '../tap/strength';
import { WORN } from '../tap/styles';
import type { TapStyle } from '../tap/tap';
import { candidatesFor, webOf, type Candidate } from './candidates';
import type { Job } from './job';
import { jobOf } from './prepare';
import type { HoleRequest, Warning } from './types';
import { shareWarnings, spindleWarnings } from './warnings';

/** Styles whose torque is reckoned; a thread mill's force is another matter. */
export const LOADED_STYLES = ['spiral-point', 'spiral-flute', 'straight-flute', 'form'] as const;

export type LoadedStyle = (typeof LOADED_STYLES)[number];

export interface Band {
  low: number;
  expected: number;
  high: number;
}

export interface TapLoad {
  style: LoadedStyle;
  chamfer: Candidate['chamfer'];
  /** Hole reckoned with, mm, and its drill's name where a stocked one passes. */
  hole: number;
  drill: Candidate['drill'];
  /** N·m, sharp and worn (1.65 times). */
  torque: Band;
  worn: Band;
  /** N on the heaviest tooth; mm of chip it takes; true where that is too thin to cut. 0 for a form tap. */
  toothLoad: number;
  chip: number;
  rubs: boolean;
  /** Share of the chamfer, by moment, that the work can hold at once; under 1 in thin work. */
  engaged: number;
  /** Web reckoned with, mm, and the torque that breaks it, N·m. */
  web: number;
  breaks: { expected: number; low: number };
  /** Torque as a share of the expected breaking torque; `worst`: worn, top of the band, weakest tap. */
  share: { sharp: number; worn: number; worst: number };
  /** Torque as a share of the spindle's, where that is known. */
  spindle?: { torque: number; sharp: number; worn: number; worst: number };
  /** What to watch in these shares. */
  warnings: Warning[];
}

/** The usual chamfer for a hole: plug through, semi-bottoming blind. Common practice. */
export function usualChamfer(request: Pick<HoleRequest, 'hole'>): ChamferClass {
  return request.hole.kind === 'through' ? 'plug' : 'semi-bottoming';
}

const times = (band: Band, factor: number): Band => ({
  low: band.low * factor,
  expected: band.expected * factor,
  high: band.high * factor,
});

function loadOf(job: Job, tap: Candidate, style: LoadedStyle, fluid: number): TapLoad {
  const groove = { major: job.major, pitch: job.pitch, hole: job.cutHole };
  const threads = middleThreads(tap.chamfer);
  const { hole: asked } = job.request;
  const cuts = style !== 'form';
  const chip = cuts ? toothGeometry(groove, threads, job.flutes).chip : 0;
  const torque = times(tap.torque, fluid);
  const worn = times(torque, WORN);
  const web = webOf(job, style);
  const breaks = breakingTorque(web);
  const share = { sharp: tap.share.sharp * fluid, worn: tap.share.worn * fluid };
  const { torque: available } = job.spindle;
  return {
    style,
    chamfer: tap.chamfer,
    hole: tap.drill?.diameter ?? job.cutHole,
    drill: tap.drill,
    torque,
    worn,
    toothLoad: tap.toothLoad * fluid,
    chip,
    rubs: cuts && chip < THINNEST_CHIP,
    engaged: asked.kind === 'through' ? engagedShare(groove, threads, asked.thickness) : 1,
    web,
    breaks,
    share: { ...share, worst: worn.high / breaks.low },
    warnings: [
      ...shareWarnings(share),
      ...(available === undefined
        ? []
        : spindleWarnings(torque.expected, worn.expected, available)),
    ],
    ...(available === undefined
      ? {}
      : {
          spindle: {
            torque: available,
            sharp: torque.expected / available,
            worn: worn.expected / available,
            worst: worn.high / available,
          },
        }),
  };
}

function isLoaded(style: TapStyle): style is LoadedStyle {
  return (LOADED_STYLES as readonly TapStyle[]).includes(style);
}

/**
 * The load on each style of tap with one chamfer in one hole, in the order of `LOADED_STYLES`; form taps
 * are left out where the chamfer is not made on them (`taper`) or the material is never formed.
 * `request`: lengths mm, torque N·m. `fluid`: oil unless said. Refuses as `jobOf` does, and with `too-hard`
 * where no HSS tap belongs. Sources: `tap-chip-model`, `makers-style-factors`, `common-practice`.
 */
export function tapLoads(
  request: HoleRequest,
  chamfer: ChamferClass,
  fluid: Fluid = 'oil',
): Outcome<TapLoad[]> {
  const job = jobOf(request);
  if (!job.ok) return job;
  const { material } = job.value;
  if (!material.speed) return refuse({ code: 'too-hard', field: 'material' });
  const { factor } = fluidFactor(fluid, material);
  const loads = candidatesFor(job.value).candidates.flatMap((tap) => {
    if (!isLoaded(tap.style) || tap.chamfer.class !== chamfer) return [];
    if (tap.style === 'form' && material.forming === 'no') return [];
    return [loadOf(job.value, tap, tap.style, factor)];
  });
  return answer(loads, job.notes);
}
