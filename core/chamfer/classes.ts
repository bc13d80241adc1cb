/**
 * Chamfer lengths by class, in threads.
 *
 * Inch classes: ASME B94.9 as printed in US Army TM 9-254 (taper 7 to 10, plug 3 to 5,
 * bottoming 1 to 2); semi-bottoming 2 to 3, from memory.
 * Metric forms: ISO 8830 / DIN 2197 letters as tap makers' catalogues print them (A 6 to 8; B 3.5 to 5.5
 * with spiral point, D the same without; C 2 to 3; E 1.5 to 2; F 1 to 1.5).
 */

import { CHAMFER_CLASSES, type Chamfer, type ChamferClass } from './chamfer';

export type ChamferSystem = 'inch' | 'metric';

const INCH: Record<ChamferClass, [number, number]> = {
  taper: [7, 10],
  plug: [3, 5],
  'semi-bottoming': [2, 3],
  bottoming: [1, 2],
};

const METRIC: Record<ChamferClass, [number, number]> = {
  taper: [6, 8],
  plug: [3.5, 5.5],
  'semi-bottoming': [2, 3],
  bottoming: [1.5, 2],
};

const LETTER: Record<ChamferClass, string> = {
  taper: 'A',
  plug: 'D',
  'semi-bottoming': 'C',
  bottoming: 'E',
};

/** The shortest chamfer a hand tap carries: form F, 1 to 1.5 threads. For finishing a floor by hand. */
export const FORM_F = { form: 'F', threads: { min: 1, max: 1.5 } } as const;

/** UK names of the classes in a hand set; note that `plug` there is the bottoming tap. */
export const UK_WORDS: Record<ChamferClass, string> = {
  taper: 'taper',
  plug: 'second',
  'semi-bottoming': 'second',
  bottoming: 'plug',
};

/**
 * The chamfer of a class, as the range its standard allows (in threads).
 * `spiralPoint` gives the letter B in place of D for the 3.5 to 5.5 thread form.
 * Sources: `asme-b94-9`, `tm-9-254`, `iso-8830`.
 */
export function chamferOf(
  chamferClass: ChamferClass,
  system: ChamferSystem,
  spiralPoint = false,
): Chamfer {
  const [min, max] = (system === 'inch' ? INCH : METRIC)[chamferClass];
  const form = spiralPoint && chamferClass === 'plug' ? 'B' : LETTER[chamferClass];
  return { class: chamferClass, form, threads: { min, max } };
}

/** Middle of a chamfer's range, in threads. Derived. */
export function middleThreads(chamfer: Chamfer): number {
  return (chamfer.threads.min + chamfer.threads.max) / 2;
}

/**
 * Names a chamfer from its counted threads: every class whose range holds the count,
 * or the nearest one when it falls between two classes.
 * `count` in threads, above 0. Sources: `asme-b94-9`, `iso-8830`.
 */
export function classesFor(count: number, system: ChamferSystem): ChamferClass[] {
  const holding = CHAMFER_CLASSES.filter((name) => distance(count, name, system) === 0);
  if (holding.length > 0) return [...holding];
  const sorted = [...CHAMFER_CLASSES].sort(
    (a, b) => distance(count, a, system) - distance(count, b, system),
  );
  return sorted.slice(0, 1);
}

function distance(count: number, name: ChamferClass, system: ChamferSystem): number {
  const { min, max } = chamferOf(name, system).threads;
  return Math.max(min - count, count - max, 0);
}
