/**
 * Torques read on machines, kept on this device. What cannot be read as one, from a later version or a
 * careless hand, stays where it is and is simply not used.
 */

import {
  boolean,
  literal,
  maxValue,
  minValue,
  number,
  object,
  optional,
  picklist,
  pipe,
  regex,
  safeParse,
  string,
  variant,
  type InferOutput,
} from 'valibot';
import { CHAMFER_CLASSES } from '../../core/chamfer/chamfer';
import { HARDNESS_SCALES } from '../../core/material/hardness';
import { MATERIAL_IDS } from '../../core/material/material';
import { GROUPS } from '../../core/material/own';
import type { ShopReading } from '../../core/plan/learned';
import { LOADED_STYLES } from '../../core/plan/tap-load';
import type { Kept } from './device';

const length = pipe(number(), minValue(0), maxValue(1000));

const HOLE = variant('kind', [
  object({
    kind: literal('through'),
    thickness: length,
    clearBelow: optional(length),
    chipsMayFall: optional(boolean()),
  }),
  object({
    kind: literal('blind'),
    limit: optional(object({ at: picklist(['shoulder', 'point']), depth: length })),
  }),
]);

const OWN = object({
  name: string(),
  group: picklist(GROUPS),
  hardness: optional(object({ value: number(), scale: picklist(HARDNESS_SCALES) })),
  kc11: optional(number()),
  mc: optional(number()),
});

const READING = object({
  thread: string(),
  material: picklist(MATERIAL_IDS),
  own: optional(OWN),
  machine: string(),
  taken: pipe(string(), regex(/^\d{4}-\d{2}-\d{2}$/)),
  torque: pipe(number(), minValue(1e-6), maxValue(10_000)),
  style: picklist(LOADED_STYLES),
  chamfer: picklist(CHAMFER_CLASSES),
  worn: boolean(),
  hole: HOLE,
  fullThread: length,
});

/** The shape on the device is the core's own; a change of either stops the build here. */
type Stored = InferOutput<typeof READING>;

/** A reading with its place among all that is kept. */
export interface KeptReading {
  place: number;
  reading: ShopReading;
}

function readingIn(entry: unknown): ShopReading | undefined {
  const read = safeParse(READING, entry);
  const reading: Stored | undefined = read.success ? read.output : undefined;
  return reading;
}

/** Every reading among what is kept that can be read, oldest first. */
export function readingsOf({ readings = [] }: Kept): KeptReading[] {
  return readings.flatMap((entry, place) => {
    const reading = readingIn(entry);
    return reading ? [{ place, reading }] : [];
  });
}

/** What is kept, with a reading more. */
export function withReading(kept: Kept, reading: ShopReading): Kept {
  return { ...kept, readings: [...(kept.readings ?? []), reading] };
}

/** What is kept, without the reading at a place, if it is still the one that was meant. */
export function withoutReading(kept: Kept, { place, reading }: KeptReading): Kept {
  const { readings = [] } = kept;
  // Both in the schema's own order, however the entry was written.
  const there = readingIn(readings[place]);
  if (JSON.stringify(there) !== JSON.stringify(readingIn(reading))) return kept;
  return { ...kept, readings: readings.filter((_, index) => index !== place) };
}
