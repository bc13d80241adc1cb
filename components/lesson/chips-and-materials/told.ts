/** What a material makes of the choice of tap, in words and as a picture. */

import type { ChipCourse } from '../../../core/chips/direction';
import type { ChipForm, MaterialId } from '../../../core/material/material';
import type { ChipModel } from '../../drawing/chipMarks';
import { CHIPS } from '../../words/en/chips';
import { CHIP_FORMS, MATERIALS_SHORT } from '../../words/en/names';
import { fill } from '../../words/template';

export const HOLE_NAMES = ['blind', 'through', 'closed'] as const;

export type HoleName = (typeof HOLE_NAMES)[number];

export interface MaterialCase {
  id: MaterialId;
  chips: ChipForm;
  short: boolean;
  /** Packed chips over solid metal. */
  factor: number;
  traits: { workHardens: boolean; springsBack: boolean; dust: boolean; swarfFire: boolean };
  /** The planner's first tap for each hole; `lean` null for a form tap or a mill. */
  taps: Record<HoleName, { name: string; lean: number | null; course: ChipCourse } | null>;
}

/** The chip, the tap, and what else to watch, in sentences. */
export function told(material: MaterialCase, hole: HoleName): string {
  const { id, chips, factor, traits } = material;
  const name = MATERIALS_SHORT[id];
  const Material = name.charAt(0).toUpperCase() + name.slice(1);
  const tap = material.taps[hole];
  return [
    fill(CHIPS.told, { Material, chips: CHIP_FORMS[chips], factor }, 'mm'),
    tap
      ? fill(CHIPS.tap, { tap: tap.name.charAt(0).toLowerCase() + tap.name.slice(1) }, 'mm')
      : CHIPS.none,
    traits.workHardens ? CHIPS.hardens : '',
    traits.springsBack ? CHIPS.springs : '',
    traits.dust ? CHIPS.dusty : '',
    traits.swarfFire ? CHIPS.burns : '',
  ]
    .filter(Boolean)
    .join(' ');
}

/** The picture of that tap; null where nothing is cut with a face. */
export function pictured(material: MaterialCase, hole: HoleName): ChipModel | null {
  const tap = material.taps[hole];
  if (!tap || tap.lean === null || tap.course === 'none') return null;
  return {
    lean: tap.lean,
    cut: 'right',
    chips: material.short ? 'short' : 'long',
    hole: hole === 'blind' ? 'blind' : 'through',
    noseOnly: false,
    course: tap.course,
  };
}
