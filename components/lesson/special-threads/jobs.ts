/** Holes of the lesson on special threads, from the work of an invented shop. Lengths in mm. */

import type { HoleRequest } from '../../../core/plan/types';
import { inchToMm } from '../../../core/units';

/** A gland nut's link, left hand. */
const link: HoleRequest = {
  thread: 'M12x1.75-LH',
  hole: { kind: 'through', thickness: 20 },
  material: 'steel-medium',
};

/** A drain in a pump housing, parallel pipe. */
const drain: HoleRequest = {
  thread: 'G1/4',
  hole: { kind: 'through', thickness: 12 },
  material: 'iron-grey',
};

/** A gauge port, American taper pipe. */
const port: HoleRequest = {
  thread: '1/4-18 NPT',
  hole: { kind: 'through', thickness: inchToMm(0.5) },
  material: 'iron-grey',
};

/** A cover of soft aluminium that is opened every week. */
const cover: HoleRequest = {
  thread: 'EG M8x1.25-6H',
  fullThread: 12,
  hole: { kind: 'blind' },
  material: 'al-cast',
};

/** The same cover's screws on an inch drawing. */
const coverInch: HoleRequest = {
  thread: 'STI 1/4-20 UNC-2B',
  fullThread: inchToMm(0.5),
  hole: { kind: 'blind' },
  material: 'al-cast',
};

/** A zinc-plated clamp. */
const clamp: HoleRequest = {
  thread: 'M8x1.25-6G',
  hole: { kind: 'through', thickness: 12 },
  material: 'steel-low',
};

export const SPECIAL_JOBS = { link, drain, port, cover, coverInch, clamp } as const;

/** Sizes of the table: the plain thread and its insert hole. */
export const INSERT_PAIRS = [
  ['M6x1-6H', 'EG M6x1-6H'],
  ['M8x1.25-6H', 'EG M8x1.25-6H'],
  ['M10x1.5-6H', 'EG M10x1.5-6H'],
  ['1/4-20 UNC-2B', 'STI 1/4-20 UNC-2B'],
  ['3/8-16 UNC-2B', 'STI 3/8-16 UNC-2B'],
] as const;
