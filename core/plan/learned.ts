/**
 * What torques read on a machine teach about the next hole there, in the same thread and material.
 * Dates come in with the readings; nothing here knows what day it is.
 */

import type { ChamferClass } from '../chamfer/chamfer';
import type { MaterialId } from '../material/material';
import { answer, refuse, type Outcome } from '../outcome';
import { readThread } from '../thread/read';
import { candidatesFor } from './candidates';
import { jobOf } from './prepare';
import { WORN } from '../tap/styles';
import type { LoadedStyle } from './tap-load';
import type { HoleKind, HoleRequest } from './types';

/** One torque read in one job. */
export interface ShopReading {
  thread: string;
  material: MaterialId;
  /** The shop's own material, where it was one. */
  own?: HoleRequest['ownMaterial'];
  machine: string;
  /** Day it was read, as 2026-03-14. */
  taken: string;
  /** N·m, highest in the stroke. */
  torque: number;
  style: LoadedStyle;
  chamfer: ChamferClass;
  worn: boolean;
  hole: HoleKind;
  /** mm */
  fullThread: number;
}

/** What a reading is kept under: it says nothing of another thread, material or machine. */
export type ReadingKey = Pick<ShopReading, 'thread' | 'material' | 'machine'> & {
  ownName?: string;
};

export interface LearnedScale {
  /** Torque read over torque planned, the geometric middle of all readings. */
  factor: number;
  /** Half-width of the band that remains, as a factor; it holds every reading. */
  band: number;
  /** Readings that went in, and the day of the newest. */
  count: number;
  newest: string;
  /** True where the readings lie further apart than the handbook's own band: something differs between them. */
  disagree: boolean;
}

/** Band that one reading leaves: one tap, one hole. And the least that any number of them leaves. Common practice. */
const BAND = { one: 1.25, least: 1.15 } as const;

/** Readings further apart than this are not of one and the same job. Source: `tap-chip-model`. */
const APART = 1.4 ** 2;

/** Factors beyond these are a slip of the decimal point or of the unit. Common practice. */
const BELIEVABLE = { min: 0.2, max: 5 } as const;

const DAY = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;

/** A reading before its machine and day are known. */
export type TorqueRead = Omit<ShopReading, 'machine' | 'taken'>;

/**
 * Torque read over the torque the handbook plans for that very job, no unit. N·m, mm. Refuses as `jobOf`
 * does, and with `reading-not-believable` (below a fifth or above five times) and `reading-tap-unknown`
 * where that tap is never planned. Source: `tap-chip-model`.
 */
export function torqueFactor(read: TorqueRead): Outcome<number> {
  const { thread, material, own, hole, fullThread, style, chamfer } = read;
  const ownMaterial = own ? { ownMaterial: own } : {};
  const job = jobOf({ thread, material, hole, fullThread, ...ownMaterial });
  if (!job.ok) return job;
  const tap = candidatesFor(job.value).candidates.find(
    (each) => each.style === style && each.chamfer.class === chamfer,
  );
  if (!tap || !(tap.torque.expected > 0)) return refuse({ code: 'reading-tap-unknown' });
  const factor = read.torque / (tap.torque.expected * (read.worn ? WORN : 1));
  if (!(factor >= BELIEVABLE.min && factor <= BELIEVABLE.max)) {
    const data = { typed: String(read.torque) };
    return refuse({ code: 'reading-not-believable', field: 'measured', data });
  }
  return answer(factor);
}

/**
 * `torqueFactor` of a reading that was kept, no unit. N·m, mm. Refuses as that does, and with
 * `reading-day-unreadable`. Source: `tap-chip-model`.
 */
export function readingFactor(reading: ShopReading): Outcome<number> {
  if (!DAY.test(reading.taken)) {
    return refuse({ code: 'reading-day-unreadable', data: { typed: reading.taken } });
  }
  return torqueFactor(reading);
}

function sizeOf(text: string): string | null {
  const thread = readThread(text);
  return thread.ok ? `${thread.value.diameter}x${thread.value.pitch}` : null;
}

/** Readings of the same thread (whatever its class), material and machine. No unit. Source: `derived`. */
export function readingsFor(readings: readonly ShopReading[], key: ReadingKey): ShopReading[] {
  const size = sizeOf(key.thread);
  return readings.filter(
    ({ thread, material, own, machine }) =>
      size !== null &&
      material === key.material &&
      own?.name === key.ownName &&
      machine.trim().toLowerCase() === key.machine.trim().toLowerCase() &&
      sizeOf(thread) === size,
  );
}

/**
 * The scale that readings under one key give, or null where none can be used. Torque in N·m, above 0; unusable readings are passed over.
 * Sources: `tap-chip-model`, `common-practice`.
 */
export function learnedScale(
  readings: readonly ShopReading[],
  key: ReadingKey,
): LearnedScale | null {
  const used = readingsFor(readings, key).flatMap((reading) => {
    const factor = readingFactor(reading);
    return factor.ok ? [{ factor: factor.value, taken: reading.taken }] : [];
  });
  if (used.length === 0) return null;
  const logs = used.map(({ factor }) => Math.log(factor));
  const factor = Math.exp(logs.reduce((sum, each) => sum + each, 0) / logs.length);
  const reach = Math.max(
    ...used.map((each) => Math.max(each.factor / factor, factor / each.factor)),
  );
  const spread = Math.exp(Math.max(...logs) - Math.min(...logs));
  return {
    factor,
    band: Math.max(used.length === 1 ? BAND.one : BAND.least, reach),
    count: used.length,
    newest: used.map(({ taken }) => taken).sort()[used.length - 1] ?? '',
    disagree: spread > APART,
  };
}
