/** What a larger hole costs the screw and saves the tap, each as a share. Lengths mm. */

import { readThread } from '../../../core';
import { externalShearArea } from '../../../core/engagement/needed';
import { externalPitchMin } from '../../../core/limits/external';
import { grooveGeometry } from '../../../core/load/torque';
import type { HoleCase } from './percent';

/** Share of the screw's own shear area that goes when the hole grows from one size to another. */
export function screwAreaLost({ designation, pitch }: HoleCase, from: number, to: number): number {
  const read = readThread(designation);
  if (!read.ok) throw new Error(`The lesson cannot read its own thread ${designation}.`);
  const screwPitchMin = externalPitchMin(read.value);
  const area = (holeMinorMax: number) => externalShearArea({ pitch, holeMinorMax, screwPitchMin });
  return 1 - area(to) / area(from);
}

/** Share of the metal the tap need not cut when the hole grows from one size to another. */
export function metalSaved({ major, pitch }: HoleCase, from: number, to: number): number {
  const metal = (hole: number) => grooveGeometry({ major, pitch, hole }).volumePerDepth;
  return 1 - metal(to) / metal(from);
}
