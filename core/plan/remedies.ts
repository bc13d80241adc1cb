/** What would make the hole possible, or safer; cheapest first. Common practice on derived numbers. */

import { FORM_F } from '../chamfer/classes';
import { HAND_FINISH_CLEARANCE, obtainableThread } from '../hole/depth';
import type { SourceId } from '../sources';
import { STYLES } from '../tap/styles';
import { shoulderLimit } from './candidates';
import type { ReasonCode, RemedyCode } from './codes';
import type { Job } from './job';
import { wantedCourse, type Judged } from './judge';
import { partRemedies } from './part-remedies';
import type { StripCheck } from './strength';
import type { Remedy } from './types';
import { SHARE_WATCH, spokenTap } from './warnings';

function remedy(
  code: RemedyCode,
  numbers: Record<string, number> = {},
  source: SourceId = 'common-practice',
): Remedy {
  return { code, numbers, source };
}

function tapFits(taps: Judged[]): boolean {
  return taps.some((tap) => tap.fits && STYLES[tap.style].process !== 'mill');
}

/** The tap this hole would get if nothing stood in its way: right course, usual chamfer. */
function wishedTap(job: Job, taps: Judged[]): Judged | undefined {
  const usual = job.request.hole.kind === 'blind' ? 'semi-bottoming' : 'plug';
  const wanted = wantedCourse(job);
  return taps.find((tap) => tap.goes === wanted && tap.chamfer.class === usual);
}

function handFinish(job: Job): Remedy[] {
  const shoulder = shoulderLimit(job, job.cutHole);
  const at = (chamferThreads: number) =>
    Math.min(
      job.fullThread,
      obtainableThread(shoulder, {
        pitch: job.pitch,
        chamferThreads,
        centre: 0,
        clearance: HAND_FINISH_CLEARANCE,
      }),
    );
  const to = at(FORM_F.threads.max);
  return to > 0
    ? [
        remedy(
          'finish-by-hand',
          { to, toNominal: at((FORM_F.threads.min + FORM_F.threads.max) / 2) },
          'common-practice',
        ),
      ]
    : [];
}

function shorterThread(job: Job, taps: Judged[], strip: StripCheck | null): Remedy[] {
  const wanted = wantedCourse(job);
  const shortest = taps
    .filter((tap) => tap.goes === wanted)
    .reduce<Judged | undefined>(
      (best, tap) => (!best || tap.depth.fullThread > best.depth.fullThread ? tap : best),
      undefined,
    );
  if (!shortest || shortest.depth.fullThread < job.pitch) return [];
  const to = shortest.depth.fullThread;
  const { min, max } = shortest.chamfer.threads;
  const ratio: Record<string, number> = strip ? { strength: to / strip.matching } : {};
  return [remedy('shorter-thread', { to, threadsMin: min, threadsMax: max, ...ratio }, 'derived')];
}

function blindRemedies(job: Job, taps: Judged[], strip: StripCheck | null): Remedy[] {
  const wished = wishedTap(job, taps);
  if (!wished || wished.short === 0) return [];
  const mill = taps.find((tap) => tap.style === 'thread-mill');
  const { point, shoulder } = wished.depth;
  const found = [
    remedy(
      'deeper-hole',
      // In the drawing's measure, which does not know of a flat.
      {
        to: wished.needed + job.datum.flat,
        by: wished.short,
        toPoint: wished.needed + job.datum.flat + point - shoulder,
      },
      'derived',
    ),
    ...shorterThread(job, taps, strip),
    ...handFinish(job),
  ];
  if (mill) {
    const { fullThread, nominal } = mill.depth;
    found.push(remedy('thread-mill', { to: fullThread, toNominal: nominal.fullThread }));
  }
  found.push(remedy('relief-groove'), remedy('through-hole'));
  return found;
}

function throughRemedies(job: Job, taps: Judged[]): Remedy[] {
  const { hole } = job.request;
  const found: Remedy[] = [];
  if (hole.kind !== 'through') return found;
  const plug = taps.find((tap) => tap.goes === wantedCourse(job) && tap.chamfer.class === 'plug');
  const shortest = taps
    .filter((tap) => tap.short > 0 && STYLES[tap.style].process === 'cut')
    .reduce<Judged | undefined>(
      (best, tap) => (!best || tap.short < best.short ? tap : best),
      undefined,
    );
  if (plug && plug.short > 0) {
    found.push(remedy('more-room-below', { by: plug.short, to: plug.beyond }, 'derived'));
  }
  if (!tapFits(taps) && shortest) {
    found.push(
      remedy(
        'shorter-thread',
        {
          to: shortest.depth.fullThread,
          threadsMin: shortest.chamfer.threads.min,
          threadsMax: shortest.chamfer.threads.max,
        },
        'derived',
      ),
    );
  }
  const mill = taps.find((tap) => tap.style === 'thread-mill');
  if (!tapFits(taps) && mill?.fits)
    found.push(remedy('thread-mill', { to: mill.depth.fullThread }));
  if (hole.chipsMayFall === false) found.push(remedy('plug-or-vacuum-chips'));
  return found;
}

/** For a tap that a worn edge brings near its strength, or over it. */
function wornRemedies(job: Job, taps: Judged[], first: Judged): Remedy[] {
  const found: Remedy[] = [];
  const { process } = STYLES[first.style];
  if (process === 'mill') return found;
  if (process === 'cut' && job.drill && job.window.max - job.drill.likely > 0.02 * job.pitch) {
    found.push(remedy('larger-hole', { diameter: job.window.max }, 'derived'));
  }
  // Changed early helps only a tap that stands the hole while it is sharp.
  if (first.share.sharp < 1) found.push(remedy('change-tap-early', { worn: first.share.worn }));
  const form = taps.find((tap) => tap.style === 'form' && tap.fits);
  if (process === 'cut' && form && form.share.worn < Math.min(1, first.share.worn)) {
    found.push(remedy('form-tap-instead', { share: form.share.worn }, 'tap-chip-model'));
  }
  const mill = taps.find((tap) => tap.style === 'thread-mill' && tap.fits);
  if (first.share.worn > 1 && mill) {
    found.push(remedy('thread-mill', { to: mill.depth.fullThread }));
  }
  return found;
}

function forceRemedies(job: Job, taps: Judged[]): Remedy[] {
  const cut = taps.filter((tap) => STYLES[tap.style].process === 'cut');
  const says = (tap: Judged, code: ReasonCode) => tap.reasons.some((each) => each.code === code);
  // A stronger spindle is no help to a tap that does not reach.
  const tooStrong = cut.filter((tap) => says(tap, 'spindle-over') && !says(tap, 'no-stock-tap'));
  const found: Remedy[] = [];
  if (tooStrong.length > 0 && !tapFits(taps)) {
    const least = Math.min(...tooStrong.map((tap) => tap.worn));
    const most = Math.max(...tooStrong.map((tap) => tap.worn));
    found.push(
      remedy('bigger-spindle', { torque: least, most }, 'tap-chip-model'),
      remedy('thread-mill'),
    );
  }
  const first = taps[0];
  if (first?.fits && first.share.worn > SHARE_WATCH.worn)
    found.push(...wornRemedies(job, taps, first));
  return found;
}

/** Beyond this many diameters more thread helps little: the first few carry most of the load. Common practice. */
const LONGEST_USEFUL = 2.5;

function strengthRemedies(job: Job, strip: StripCheck | null): Remedy[] {
  if (!strip || strip.have >= strip.wanted - 1e-9) return [];
  const { lost } = strip;
  const numbers = { to: strip.wanted + lost, matching: strip.matching + lost };
  const { hole } = job.request;
  if (hole.kind === 'through' && hole.thickness < strip.wanted + lost) {
    return [remedy('extruded-or-insert', numbers, 'shear-strength')];
  }
  const insert = remedy('softer-screw-or-insert', numbers, 'shear-strength');
  if (strip.wanted > LONGEST_USEFUL * job.thread.diameter) return [insert];
  return [remedy('longer-engagement', numbers, 'shear-strength'), insert];
}

/**
 * From what costs a thought to what costs a new drawing: the shop's own means, then a mark-up of depth, then
 * another process or machine, then another part. Common practice.
 */
const CHEAPEST_FIRST: readonly RemedyCode[] = [
  'change-tap-early',
  'larger-hole',
  'plug-or-vacuum-chips',
  'flat-first',
  'bore-or-ream',
  'tap-before-crossing',
  'tap-before-hardening',
  'longer-tap',
  'more-room-below',
  'deeper-hole',
  'shorter-thread',
  'longer-engagement',
  'finish-by-hand',
  'form-tap-instead',
  'thread-mill',
  'bigger-spindle',
  'softer-screw-or-insert',
  'extruded-or-insert',
  'relief-groove',
  'through-hole',
];

/** Remedies for a plan, cheapest first, each once. Lengths mm, torque N·m. Sources: on each. */
export function remediesFor(job: Job, taps: Judged[], strip: StripCheck | null): Remedy[] {
  const found: Remedy[] = [];
  if (!job.material.speed) found.push(remedy('tap-before-hardening'), remedy('thread-mill'));
  const noneInside = !job.drills.some(({ verdict }) => verdict === 'inside');
  if (noneInside && job.window.min <= job.window.max) {
    found.push(remedy('bore-or-ream', { min: job.window.min, max: job.window.max }, 'derived'));
  }
  if (job.request.hole.kind === 'blind' && !tapFits(taps)) {
    found.push(...blindRemedies(job, taps, strip));
  }
  found.push(
    ...partRemedies(job, spokenTap(taps)),
    ...throughRemedies(job, taps),
    ...forceRemedies(job, taps),
    ...strengthRemedies(job, strip),
  );
  const seen = new Set<string>();
  // No tap cuts hardened steel, by hand or on a stronger machine.
  const vain: RemedyCode[] = job.material.speed ? [] : ['finish-by-hand', 'bigger-spindle'];
  return found
    .filter(({ code }) => !vain.includes(code) && !seen.has(code) && seen.add(code))
    .sort((a, b) => CHEAPEST_FIRST.indexOf(a.code) - CHEAPEST_FIRST.indexOf(b.code));
}
