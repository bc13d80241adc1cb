/** Puts the taps that fit in order. Common practice; each rule stands in the line that applies it. */

import { STYLES } from '../tap/styles';
import type { ChamferClass } from '../chamfer/chamfer';
import type { Job } from './job';
import { wantedCourse, type Judged } from './judge';
import { crossingRank } from './part-judge';

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

function key(job: Job, tap: Judged): number[] {
  const order = job.request.hole.kind === 'blind' ? BLIND_ORDER : THROUGH_ORDER;
  return [
    // A thread mill is offered, never led with.
    STYLES[tap.style].process === 'mill' ? 1 : 0,
    // A tap that a worn edge would break steps behind every tap that stands it.
    tap.share.worn > 1 ? 1 : 0,
    // A gap that is there already decides over the way of the chips.
    ...crossingRank(job, tap),
    chipRank(job, tap),
    order.indexOf(tap.chamfer.class),
    // Then the stronger, lower-loaded tap.
    tap.share.sharp,
  ];
}

function compare(a: number[], b: number[]): number {
  for (let index = 0; index < a.length; index += 1) {
    const difference = a[index]! - b[index]!;
    if (difference !== 0) return difference;
  }
  return 0;
}

/** Best first; the rejected keep the same order, after all that fit. Source: `common-practice`. */
export function rank(job: Job, taps: Judged[]): Judged[] {
  return taps
    .map((tap) => ({ tap, key: [tap.fits ? 0 : 1, ...key(job, tap)] }))
    .sort((a, b) => compare(a.key, b.key))
    .map(({ tap }) => tap);
}
