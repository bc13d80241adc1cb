/** Names of things: materials, tap styles, chamfer classes, drives, drill series. English. */

import type { ChamferClass } from '../../../core/chamfer/chamfer';
import type { ChipForm, MaterialId } from '../../../core/material/material';
import type { HoleRequest, SpindleDrive } from '../../../core/plan/types';
import type { TapStyle } from '../../../core/tap/tap';

export const MATERIALS: Record<MaterialId, string> = {
  'steel-free': 'Free-cutting steel (12L14, 11SMn30)',
  'steel-low': 'Low-carbon steel (1018, S235)',
  'steel-medium': 'Medium-carbon steel (1045, C45)',
  'steel-alloy': 'Alloy steel, annealed (4140, 42CrMo4)',
  'steel-alloy-30hrc': 'Alloy steel, 28–32 HRC',
  'steel-40hrc': 'Steel, about 40 HRC',
  'steel-hard': 'Hardened steel, 45 HRC and over',
  'stainless-ferritic': 'Ferritic or martensitic stainless (430, 420)',
  'stainless-free': 'Free-cutting stainless (303)',
  'stainless-austenitic': 'Austenitic stainless (304, 316)',
  'stainless-duplex': 'Duplex stainless (2205)',
  'stainless-ph': 'Precipitation-hardening stainless (17-4)',
  'iron-grey': 'Grey cast iron',
  'iron-ductile': 'Ductile cast iron',
  'al-wrought': 'Wrought aluminium (6061, 6082)',
  'al-high-strength': 'High-strength aluminium (7075, 2024)',
  'al-cast': 'Cast aluminium, up to 10 % silicon',
  'al-cast-high-si': 'Cast aluminium, over 10 % silicon',
  'brass-free': 'Free-cutting brass',
  magnesium: 'Magnesium (AZ91, AZ31)',
  zinc: 'Zinc die casting',
  bronze: 'Bronze',
  copper: 'Copper and soft brass',
  plastic: 'Plastic (acetal, nylon)',
  'plastic-filled': 'Plastic with glass or carbon fibre',
  titanium: 'Titanium (Ti-6Al-4V)',
  nickel: 'Nickel alloys (718, 625)',
};

/** Short form for the middle of a sentence. */
export const MATERIALS_SHORT: Record<MaterialId, string> = {
  'steel-free': 'free-cutting steel',
  'steel-low': 'low-carbon steel',
  'steel-medium': 'medium-carbon steel',
  'steel-alloy': 'annealed alloy steel',
  'steel-alloy-30hrc': 'alloy steel of 28–32 HRC',
  'steel-40hrc': 'steel of about 40 HRC',
  'steel-hard': 'hardened steel',
  'stainless-ferritic': 'ferritic or martensitic stainless',
  'stainless-free': 'free-cutting stainless',
  'stainless-austenitic': 'austenitic stainless',
  'stainless-duplex': 'duplex stainless',
  'stainless-ph': 'precipitation-hardening stainless',
  'iron-grey': 'grey iron',
  'iron-ductile': 'ductile iron',
  'al-wrought': 'wrought aluminium',
  'al-high-strength': 'high-strength aluminium',
  'al-cast': 'cast aluminium',
  'al-cast-high-si': 'high-silicon cast aluminium',
  'brass-free': 'free-cutting brass',
  magnesium: 'magnesium',
  zinc: 'zinc die casting',
  bronze: 'bronze',
  copper: 'copper',
  plastic: 'plastic',
  'plastic-filled': 'fibre-filled plastic',
  titanium: 'titanium',
  nickel: 'nickel alloy',
};

export const MATERIAL_GROUPS: readonly { label: string; ids: readonly MaterialId[] }[] = [
  {
    label: 'Steel',
    ids: [
      'steel-free',
      'steel-low',
      'steel-medium',
      'steel-alloy',
      'steel-alloy-30hrc',
      'steel-40hrc',
      'steel-hard',
    ],
  },
  {
    label: 'Stainless steel',
    ids: [
      'stainless-ferritic',
      'stainless-free',
      'stainless-austenitic',
      'stainless-duplex',
      'stainless-ph',
    ],
  },
  { label: 'Cast iron', ids: ['iron-grey', 'iron-ductile'] },
  { label: 'Aluminium', ids: ['al-wrought', 'al-high-strength', 'al-cast', 'al-cast-high-si'] },
  { label: 'Magnesium and zinc', ids: ['magnesium', 'zinc'] },
  { label: 'Brass, bronze and copper', ids: ['brass-free', 'bronze', 'copper'] },
  { label: 'Titanium and nickel', ids: ['titanium', 'nickel'] },
  { label: 'Plastic', ids: ['plastic', 'plastic-filled'] },
];

/** What a tap is made of. */
export const TAP_STEELS: Record<NonNullable<HoleRequest['tool']>['substrate'], string> = {
  hss: 'High-speed steel',
  'hss-e': 'High-speed steel with cobalt',
  pm: 'Powder steel',
  carbide: 'Solid carbide',
};

export const COATED = '{steel}, coated';

/** The whole name, and the form that stands before “tap” in a sentence. */
export const STYLES: Record<TapStyle, { name: string; before: string }> = {
  'spiral-point': { name: 'Spiral point', before: 'Spiral-point' },
  'spiral-flute': { name: 'Spiral flute', before: 'Spiral-flute' },
  'straight-flute': { name: 'Straight flute', before: 'Straight-flute' },
  form: { name: 'Form tap', before: 'Form' },
  'thread-mill': { name: 'Thread mill', before: 'Thread-milling' },
};

/** US words; the thread count always stands first, and the glossary has the UK words. */
export const CHAMFERS: Record<ChamferClass, string> = {
  taper: 'taper',
  plug: 'plug',
  'semi-bottoming': 'semi-bottoming',
  bottoming: 'bottoming',
};

export const DRIVES: Record<SpindleDrive, { name: string; hint: string }> = {
  synchronous: {
    name: 'Synchronous',
    hint: 'rigid tapping: the control keeps turns and feed in step',
  },
  floating: { name: 'Floating holder', hint: 'the holder gives a little, in and out' },
  'reversing-head': { name: 'Reversing head', hint: 'the head turns the tap back by itself' },
  hand: { name: 'By hand', hint: 'wrench, with a guide to keep it square' },
};

/** How the chip comes off, to follow “it” or a material: “chips long”. */
export const CHIP_FORMS: Record<ChipForm, string> = {
  long: 'makes long, stringy chips',
  medium: 'makes tough chips of middling length',
  short: 'makes short chips',
  needles: 'breaks into needles',
  powder: 'crumbles to dust',
};

export const HANDS = { right: 'right hand', left: 'left hand' } as const;

export const CHAMFER_SAID = {
  all: '{threads} threads, {name}{form}',
  /** The ISO letter, with metric threads. */
  form: ' (form {letter})',
} as const;

export const LEFT_HAND = 'Left-hand {style}';
