/** Workpiece materials by ISO 513 group: what a tap meets in them. */

import type { SourceId } from '../sources';

export const MATERIAL_IDS = [
  'steel-free',
  'steel-low',
  'steel-medium',
  'steel-alloy',
  'steel-alloy-30hrc',
  'steel-40hrc',
  'steel-hard',
  'stainless-ferritic',
  'stainless-free',
  'stainless-austenitic',
  'stainless-duplex',
  'stainless-ph',
  'iron-grey',
  'iron-ductile',
  'al-wrought',
  'al-high-strength',
  'al-cast',
  'al-cast-high-si',
  'magnesium',
  'zinc',
  'brass-free',
  'bronze',
  'copper',
  'plastic',
  'plastic-filled',
  'titanium',
  'nickel',
] as const;

export type MaterialId = (typeof MATERIAL_IDS)[number];

/** How the chip comes off: long ribbons, pieces, needles or dust. */
export type ChipForm = 'long' | 'medium' | 'short' | 'needles' | 'powder';

export type Formability = 'yes' | 'if-ductile' | 'marginal' | 'rarely' | 'no';

export interface Material {
  id: MaterialId;
  /** ISO 513 letter. */
  group: 'P' | 'M' | 'K' | 'N' | 'S' | 'H' | 'O';
  /** Specific cutting force at 1 mm chip thickness, N/mm² (Kienzle), and its exponent. */
  kc11: number;
  mc: number;
  chips: ChipForm;
  forming: Formability;
  /** Cutting speed of a plain HSS-E tap, m/min, slow and fast end of the published charts. Null: not with HSS. */
  speed: { min: number; max: number } | null;
  /** Friction of the guiding full threads, share of the cutting torque for one diameter of thread. */
  friction: number;
  /** Shear strength of the parent metal, N/mm²; missing where it varies too much to state. */
  shear?: number;
  workHardens: boolean;
  springsBack: boolean;
  dust: boolean;
  swarfFire: boolean;
  /** Its fines make hydrogen of water, and a fire of theirs takes its oxygen from water: no water-mixed fluid. */
  waterFire: boolean;
  abrasive: boolean;
  source: SourceId;
  /** Set where a shop entered the material itself: its name, and hardness in HB. `id` is then the one that lends the rest. */
  own?: { name: string; hardness?: number };
}
