/** What a counted chamfer is called: US class, ISO and DIN letter, UK word; and which chamfers a room holds. */

import { CHAMFER_CLASSES, type Chamfer, type ChamferClass } from './chamfer';
import { chamferOf, FORM_F, UK_WORDS, type ChamferSystem } from './classes';

/** A name and the range of threads it stands for. `holds`: the count lies in that range; else it is a neighbour. */
export interface ChamferName<Name extends string> {
  name: Name;
  threads: { min: number; max: number };
  holds: boolean;
}

export interface ChamferNames {
  /** US classes: two where ranges meet, and both neighbours where the count lies between two. */
  us: ChamferName<ChamferClass>[];
  /** ISO 8830 / DIN 2197 letters, F included. */
  iso: ChamferName<string>[];
  /** UK words of a hand set. Beware: `plug` there is the bottoming tap. */
  uk: string[];
}

/** Counts that any tap could carry, threads. Common practice. */
export const COUNTABLE = { min: 0.5, max: 16 } as const;

interface Named<Name extends string> {
  name: Name;
  threads: { min: number; max: number };
}

/** Those whose range holds the count; between two ranges, both neighbours. `list`: longest first. */
function named<Name extends string>(
  count: number,
  list: readonly Named<Name>[],
): ChamferName<Name>[] {
  const holding = list.filter(({ threads: { min, max } }) => count >= min && count <= max);
  if (holding.length > 0) return holding.map((each) => ({ ...each, holds: true }));
  const longer = list.filter(({ threads }) => threads.min > count).slice(-1);
  const shorter = list.filter(({ threads }) => threads.max < count).slice(0, 1);
  return [...longer, ...shorter].map((each) => ({ ...each, holds: false }));
}

/**
 * Names a chamfer of `count` threads (above 0). `spiralPoint` gives B in place of D for the 3.5 to 5.5
 * thread form. Sources: `asme-b94-9`, `iso-8830`; UK words `common-practice`.
 */
export function chamferNames(count: number, spiralPoint = false): ChamferNames {
  const inch = CHAMFER_CLASSES.map((name) => ({
    name,
    threads: chamferOf(name, 'inch').threads,
  }));
  const forms = [
    ...CHAMFER_CLASSES.map((name) => {
      const { form, threads } = chamferOf(name, 'metric', spiralPoint);
      return { name: form, threads };
    }),
    { name: FORM_F.form as string, threads: { ...FORM_F.threads } },
  ];
  const us = named(count, inch);
  return {
    us,
    iso: named(count, forms),
    uk: [...new Set(us.map(({ name }) => UK_WORDS[name]))],
  };
}

export interface ChamferThatFits {
  chamfer: Chamfer;
  /** `sure`: its longest fits; `some`: only those at the short end of the class do; `no`: none does. */
  fits: 'sure' | 'some' | 'no';
}

/**
 * Which classes fit where there is room for `threads` threads of chamfer (0 or more), longest first.
 * Sources: `asme-b94-9`, `iso-8830`, derived.
 */
export function chamfersWithin(threads: number, system: ChamferSystem): ChamferThatFits[] {
  return CHAMFER_CLASSES.map((name) => {
    const chamfer = chamferOf(name, system);
    const { min, max } = chamfer.threads;
    const fits = max <= threads + 1e-9 ? 'sure' : min <= threads + 1e-9 ? 'some' : 'no';
    return { chamfer, fits };
  });
}

/** Length of a chamfer along the tap, mm. `threads` above 0, `pitch` mm. Source: derived. */
export function chamferLength(threads: number, pitch: number): number {
  return threads * pitch;
}
