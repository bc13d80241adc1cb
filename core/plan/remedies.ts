/** What would make the hole possible, or safer; cheapest first. Common practice on derived numbers. */

import { FORM_F } from '../chamfer/classes';
import { HAND_FINISH_CLEARANCE, obtainableThread } from '../hole/depth';
import type { SourceId } from '../sources';
import { STYLES } from '../tap/styles';
import { shoulderLimit } from './candidates';
import type { RemedyCode } from './codes';
import type { Job } from './job';
import { wantedCourse, type Judged } from './judge';
import { partRemedies } from './part-remedies';
import type { StripCheck } from './strength';
import type { Remedy } from './types';
import { SHARE_WATCH, spokenTap } from './warnings';
import { byHand, HAND_TORQUE } from './by-hand';
import { spindleNeed, tapWantingRoom } from './needs';
import { enoughThread, otherSize } from './size-offers';
import { mostOversize, oversizeShare } from '../drill/oversize';

function remedy(
  code: RemedyCode,
  numbers: Record<string, number> = {},
  source: SourceId = 'common-practice',
): Remedy {
  return { code, numbers, source };
}

function tapFits(taps: Judged[]): boolean {
  return Boolean(taps[0]?.best);
}

/** A thread mill reaches about so many diameters of its thread before it bends. Common practice. */
const MILL_DEEPEST = 4;

function millReaches(job: Job): boolean {
  return job.fullThread <= MILL_DEEPEST * job.major + 1e-9;
}

const breaksSharp = (tap: Judged | undefined): boolean =>
  tap !== undefined && tap.reasons.some(({ code }) => code === 'breaks-sharp');

/** Hands can finish what a straight flute stands and a wrench can turn. */
function handsCan(taps: Judged[]): boolean {
  const straight = taps.find((tap) => tap.style === 'straight-flute');
  return (
    straight !== undefined && !breaksSharp(straight) && straight.asks.sharp <= HAND_TORQUE.most
  );
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
  // No depth of hole saves a tap that breaks in it.
  if (breaksSharp(wished)) return [];
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
    ...(handsCan(taps) ? handFinish(job) : []),
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
  const shortest = taps
    .filter((tap) => tap.short > 0 && STYLES[tap.style].process === 'cut')
    .reduce<Judged | undefined>(
      (best, tap) => (!best || tap.short < best.short ? tap : best),
      undefined,
    );
  const wanting = tapWantingRoom(taps);
  if (wanting) {
    found.push(remedy('more-room-below', { by: wanting.short, to: wanting.beyond }, 'derived'));
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

/**
 * The largest stocked drill that is sure to leave the hole inside the class: its limit less what a drill cuts large and
 * less how much that scatters. mm; null where none is larger than the plan's. Sources: `handbook-drills`.
 */
function largerDrill(job: Job): number | null {
  const { drill, drills, window, material } = job;
  if (!drill) return null;
  const share = oversizeShare(material);
  const held = drills.filter(
    ({ diameter }) => diameter + share * mostOversize(diameter) <= window.max + 1e-9,
  );
  const largest = held[held.length - 1]?.diameter ?? 0;
  return largest > drill.diameter + 0.02 * job.pitch ? largest : null;
}

/** Materials that a form tap may be advised for: the table says neither no nor rarely. */
function mayForm({ material }: Job): boolean {
  return material.forming !== 'no' && material.forming !== 'rarely';
}

/** For a tap that a worn edge brings near its strength, or over it. */
function wornRemedies(job: Job, taps: Judged[], spoken: Judged): Remedy[] {
  const found: Remedy[] = [];
  const { process } = STYLES[spoken.style];
  const { sharp, worn } = spoken.asks.share;
  const larger = process === 'cut' ? largerDrill(job) : null;
  if (larger !== null) found.push(remedy('larger-hole', { diameter: larger }, 'handbook-drills'));
  // Changed early helps only a tap that stands the hole while it is sharp.
  if (sharp < 1) found.push(remedy('change-tap-early', { worn }));
  const form = taps.find((tap) => tap.style === 'form' && tap.fits);
  if (process === 'cut' && form && mayForm(job) && form.asks.share.worn < Math.min(1, worn)) {
    found.push(remedy('form-tap-instead', { share: form.asks.share.worn }, 'tap-chip-model'));
  }
  const mill = taps.find((tap) => tap.style === 'thread-mill' && tap.fits);
  if (worn > 1 && mill && millReaches(job)) {
    found.push(remedy('thread-mill', { to: mill.depth.fullThread }));
  }
  const other = otherSize(job, spoken);
  if (other) found.push(remedy('next-size-or-finer', other, 'derived'));
  return found;
}

function forceRemedies(job: Job, taps: Judged[]): Remedy[] {
  const found: Remedy[] = [];
  const need = spindleNeed(taps);
  if (need && !tapFits(taps)) {
    const { worn, most } = need;
    const numbers: Record<string, number> = { torque: worn, ...(most > worn + 1e-9 && { most }) };
    found.push(remedy('bigger-spindle', numbers, 'tap-chip-model'), remedy('thread-mill'));
  }
  const spoken = spokenTap(taps);
  if (!spoken || !job.material.speed) return found;
  if (byHand(job) && spoken.asks.sharp > HAND_TORQUE.most) {
    found.push(remedy('by-machine', { torque: spoken.asks.worn }, 'tap-chip-model'));
  }
  if (spoken.asks.share.worn > SHARE_WATCH.worn) found.push(...wornRemedies(job, taps, spoken));
  return found;
}

/** Beyond this many diameters more thread helps little: the first few carry most of the load. Common practice. */
const LONGEST_USEFUL = 2.5;

/** Sheet that a rim is drawn out of or a clinch nut pressed into, mm. Common practice. */
const THICKEST_SHEET = 6;

function strengthRemedies(job: Job, strip: StripCheck | null): Remedy[] {
  if (!strip || strip.have >= strip.wanted - 1e-9) return [];
  const { lost } = strip;
  const numbers = { to: strip.wanted + lost, matching: strip.matching + lost };
  const { hole } = job.request;
  const insert = remedy('softer-screw-or-insert', numbers, 'shear-strength');
  if (hole.kind === 'through' && hole.thickness < strip.wanted + lost) {
    // A rim is drawn out of sheet that flows; thicker metal and plastics take an insert.
    const sheet = hole.thickness <= THICKEST_SHEET + 1e-9 && job.material.group !== 'O';
    return [sheet ? remedy('extruded-or-insert', numbers, 'shear-strength') : insert];
  }
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
  'less-thread',
  'plug-or-vacuum-chips',
  'flat-first',
  'ream-to-size',
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
  'by-machine',
  'thread-mill',
  'bigger-spindle',
  'softer-screw-or-insert',
  'extruded-or-insert',
  'relief-groove',
  'through-hole',
  'next-size-or-finer',
];

/** Where no stocked drill is sure to leave a cut thread's hole inside: none at all, or one that may cut large. */
function holeRemedies({ drill, drills, window }: Job, taps: Judged[]): Remedy[] {
  const formed = taps[0]?.best && taps[0].style === 'form';
  const surely = drills.some(({ verdict }) => verdict === 'inside');
  if (formed || surely || window.min > window.max) return [];
  const numbers = { min: window.min, max: window.max };
  return [remedy(drill ? 'ream-to-size' : 'bore-or-ream', numbers, 'derived')];
}

/** Remedies for a plan, cheapest first, each once. Lengths mm, torque N·m. Sources: on each. */
export function remediesFor(job: Job, taps: Judged[], strip: StripCheck | null): Remedy[] {
  const found: Remedy[] = [];
  if (!job.material.speed) found.push(remedy('tap-before-hardening'), remedy('thread-mill'));
  found.push(...holeRemedies(job, taps));
  if (job.request.hole.kind === 'blind' && !tapFits(taps)) {
    found.push(...blindRemedies(job, taps, strip));
  }
  found.push(
    ...partRemedies(job, spokenTap(taps)),
    ...throughRemedies(job, taps),
    ...forceRemedies(job, taps),
    ...strengthRemedies(job, strip),
  );
  const enough = enoughThread(job, strip);
  if (enough) found.push(remedy('less-thread', enough, 'fed-std-h28'));
  const seen = new Set<string>();
  // No tap cuts hardened steel, by hand or on a stronger machine.
  const vain: RemedyCode[] = job.material.speed ? [] : ['finish-by-hand', 'bigger-spindle'];
  return found
    .filter(({ code }) => !vain.includes(code) && !seen.has(code) && seen.add(code))
    .sort((a, b) => CHEAPEST_FIRST.indexOf(a.code) - CHEAPEST_FIRST.indexOf(b.code));
}
