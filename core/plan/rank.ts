/** Puts the taps that fit in order. Common practice; each rule stands in the line that applies it. */

import { STYLES } from '../tap/styles';
import type { ChamferClass } from '../chamfer/chamfer';
import type { Job } from './job';
import { isStocked, wantedCourse, type Judged } from './judge';
import { crossingRank } from './part-judge';
import { reason } from './reason';

const BLIND_ORDER: ChamferClass[] = ['semi-bottoming', 'plug', 'bottoming', 'taper'];
const THROUGH_ORDER: ChamferClass[] = ['plug', 'semi-bottoming', 'taper', 'bottoming'];

/** How well a chip's course suits the hole: 0 as wanted; a form tap stands between right and wrong ways. */
function chipRank(job: Job, tap: Judged): number {
  const { hole } = job.request;
  const wanted = wantedCourse(job);
  if (STYLES[tap.style].process === 'form') {
    if (job.material.forming !== 'yes') return 5;
    return hole.kind === 'through' && hole.chipsMayFall === false ? -1 : 1;
  }
  if (tap.goes === wanted) return 0;
  // Chips that lie in the flute are the lesser evil where they break; drawn-back ones where they do not.
  const spare =
    wanted === 'back' ? ['stays', 'ahead'] : wanted === 'ahead' ? ['back', 'stays'] : [];
  if (wanted === 'stays') return tap.goes === (hole.kind === 'blind' ? 'back' : 'ahead') ? 2 : 3;
  return 2 + spare.indexOf(tap.goes);
}

const breaks = (tap: Judged): number => (tap.usual.share.worn > 1 ? 1 : 0);

function key(job: Job, tap: Judged, strength = true): number[] {
  const order = job.request.hole.kind === 'blind' ? BLIND_ORDER : THROUGH_ORDER;
  return [
    // A thread mill is offered, never led with.
    STYLES[tap.style].process === 'mill' ? 1 : 0,
    // What few shops keep stands behind everything they do keep.
    isStocked(tap) ? 0 : 1,
    // A style that a worn edge would break steps behind every style that stands it; of the rejected the one
    // that this hole would have had is spoken of.
    strength ? breaks(tap) : 0,
    // A gap that is there already decides over the way of the chips.
    ...crossingRank(job, tap),
    chipRank(job, tap),
    // The usual chamfer, then what room leaves. A thinner chip (`rubs`) never argues for a shorter one.
    order.indexOf(tap.chamfer.class),
  ];
}

function compare(a: number[], b: number[]): number {
  for (let index = 0; index < a.length; index += 1) {
    const difference = a[index]! - b[index]!;
    if (difference !== 0) return difference;
  }
  return 0;
}

/**
 * The tap to lead with, if any. The hole chooses; where the spindle cannot turn what it chose, the tap that
 * turns lightest takes its place, and never one that a worn edge would break where another would stand it.
 */
function chosen(ordered: Judged[]): Judged | undefined {
  const able = ordered.filter((tap) => tap.fitsHole && !tap.worksOnly);
  const wish = able[0];
  if (!wish || wish.fits) return wish;
  const turned = able.filter((tap) => tap.fits && breaks(tap) <= breaks(wish));
  const lightest = Math.min(...turned.map((tap) => tap.usual.worn));
  const light = turned.find((tap) => tap.usual.worn <= lightest + 1e-9);
  if (!light) return undefined;
  const numbers = { worn: wish.usual.worn, own: light.usual.worn };
  return {
    ...light,
    reasons: [...light.reasons, reason('turns-lightest', numbers, 'tap-chip-model')],
  };
}

/** Best first; the rejected keep the same order, after all that fit. Source: `common-practice`. */
export function rank(job: Job, taps: Judged[]): Judged[] {
  const ordered = taps
    .map((tap) => ({ tap, key: [tap.fits ? 0 : 1, ...key(job, tap, tap.fits)] }))
    .sort((a, b) => compare(a.key, b.key))
    .map(({ tap }) => tap);
  const byHole = [...ordered].sort((a, b) => compare(key(job, a), key(job, b)));
  const best = chosen(byHole);
  if (!best) return ordered;
  const same = (tap: Judged) => tap.style === best.style && tap.chamfer === best.chamfer;
  return [{ ...best, best: true }, ...ordered.filter((tap) => !same(tap))];
}
