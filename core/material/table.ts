/**
 * Materials a shop meets, by ISO 513 group.
 *
 * kc1.1 and mc: common ISO 513 / VDI 3323 group values, from memory, cross-checked by
 * back-calculation from a published torque table (steels 1480 to 1640, 30 HRC 2010,
 * 40 HRC 2260, austenitic 1970, grey iron 1000, Al-Si 495 N/mm²).
 * Speeds, m/min, plain HSS-E: two published charts, whose whole spread is kept.
 * Friction share: `friction-share`, an assumption of the model (see `core/load/torque.ts`).
 * Shear strength: `shear-strength`, about 0.6 of the tensile strength, from memory.
 *
 * Rows marked `from-memory` are in neither chart nor cross-check; each value is recalled, its ground beside it.
 */

import type { SourceId } from '../sources';
import type { ChipForm, Formability, Material, MaterialId } from './material';

interface Row {
  id: MaterialId;
  group: Material['group'];
  kc11: number;
  mc: number;
  chips: ChipForm;
  forming: Formability;
  speed: [number, number] | null;
  friction: number;
  shear?: number;
  traits?: ('workHardens' | 'springsBack' | 'dust' | 'swarfFire' | 'waterFire' | 'abrasive')[];
  /** Where every value of the row comes from; left out: the head of this file. */
  source?: SourceId;
}

// prettier-ignore
const ROWS: Row[] = [
  // 11SMn30, 12L14. kc: the group table's line for soft unalloyed steel. Sulphur and lead break the chip, and a formed thread flakes along them. Rm 380.
  { id: 'steel-free', group: 'P', kc11: 1350, mc: 0.21, chips: 'short', forming: 'no', speed: [15, 25], friction: 0.05, shear: 230, source: 'from-memory' },
  { id: 'steel-low', group: 'P', kc11: 1500, mc: 0.25, chips: 'long', forming: 'yes', speed: [12, 18], friction: 0.05, shear: 240 },
  { id: 'steel-medium', group: 'P', kc11: 1600, mc: 0.25, chips: 'long', forming: 'yes', speed: [10, 15], friction: 0.05, shear: 380 },
  { id: 'steel-alloy', group: 'P', kc11: 1600, mc: 0.25, chips: 'long', forming: 'yes', speed: [10, 15], friction: 0.05, shear: 420 },
  { id: 'steel-alloy-30hrc', group: 'P', kc11: 2000, mc: 0.25, chips: 'medium', forming: 'marginal', speed: [5, 8], friction: 0.05, shear: 580, traits: ['abrasive'] },
  { id: 'steel-40hrc', group: 'P', kc11: 2250, mc: 0.25, chips: 'medium', forming: 'no', speed: [3, 5], friction: 0.05, shear: 750, traits: ['abrasive'] },
  { id: 'steel-hard', group: 'H', kc11: 3500, mc: 0.25, chips: 'short', forming: 'no', speed: null, friction: 0.05, traits: ['abrasive'] },
  { id: 'stainless-ferritic', group: 'M', kc11: 1800, mc: 0.21, chips: 'long', forming: 'if-ductile', speed: [6, 10], friction: 0.05, shear: 300 },
  // 303. Sulphur breaks the chip and eases the cut by about a tenth against 304; it still hardens where the tap rubs. Rm 500.
  { id: 'stainless-free', group: 'M', kc11: 1800, mc: 0.21, chips: 'medium', forming: 'rarely', speed: [6, 12], friction: 0.1, shear: 300, traits: ['workHardens'], source: 'from-memory' },
  { id: 'stainless-austenitic', group: 'M', kc11: 2000, mc: 0.21, chips: 'long', forming: 'yes', speed: [3, 8], friction: 0.1, shear: 330, traits: ['workHardens'] },
  { id: 'stainless-duplex', group: 'M', kc11: 2200, mc: 0.21, chips: 'long', forming: 'marginal', speed: [3, 5], friction: 0.1, shear: 420, traits: ['workHardens'] },
  // 17-4 PH, 15-5 PH as solution treated (about 33 HRC) or aged at 1150 °F (about 31 HRC, Rm 930). Aged at 900 °F it is 40 to 47 HRC: the band's far end and beyond.
  { id: 'stainless-ph', group: 'M', kc11: 2300, mc: 0.21, chips: 'long', forming: 'no', speed: [3, 6], friction: 0.1, shear: 560, traits: ['workHardens', 'abrasive'], source: 'from-memory' },
  { id: 'iron-grey', group: 'K', kc11: 1050, mc: 0.28, chips: 'powder', forming: 'no', speed: [8, 15], friction: 0.05, shear: 180, traits: ['dust', 'abrasive'] },
  { id: 'iron-ductile', group: 'K', kc11: 1250, mc: 0.28, chips: 'short', forming: 'rarely', speed: [6, 12], friction: 0.05, shear: 270, traits: ['dust', 'abrasive'] },
  { id: 'al-wrought', group: 'N', kc11: 500, mc: 0.25, chips: 'long', forming: 'yes', speed: [12, 30], friction: 0.1, shear: 207 },
  // 7075-T6, 2024-T4. kc: the group table's line for aged wrought aluminium. Shear 283 for 2024-T4, the lower of the two (7075-T6: 331). Elongation 11 % and 19 %.
  { id: 'al-high-strength', group: 'N', kc11: 650, mc: 0.25, chips: 'medium', forming: 'marginal', speed: [12, 25], friction: 0.1, shear: 283, source: 'from-memory' },
  { id: 'al-cast', group: 'N', kc11: 550, mc: 0.25, chips: 'medium', forming: 'yes', speed: [10, 20], friction: 0.1, shear: 140, traits: ['abrasive'] },
  { id: 'al-cast-high-si', group: 'N', kc11: 600, mc: 0.25, chips: 'short', forming: 'no', speed: [10, 20], friction: 0.1, shear: 140, traits: ['abrasive'] },
  // AZ91, AZ31. kc: the König table's line for MgAl9. Too brittle to form cold. Shear 140 for cast AZ91. Fines burn, and make hydrogen of water.
  { id: 'magnesium', group: 'N', kc11: 280, mc: 0.19, chips: 'short', forming: 'no', speed: [15, 30], friction: 0.05, shear: 140, traits: ['swarfFire', 'waterFire'], source: 'from-memory' },
  // ZP3 and ZP5 (die-casting alloys of 4 % aluminium). kc between brass and cast aluminium. Often formed. Shear 214 for the softer one.
  { id: 'zinc', group: 'N', kc11: 450, mc: 0.25, chips: 'short', forming: 'yes', speed: [15, 30], friction: 0.05, shear: 214, source: 'from-memory' },
  { id: 'brass-free', group: 'N', kc11: 550, mc: 0.25, chips: 'needles', forming: 'no', speed: [20, 35], friction: 0.05, shear: 220 },
  // Tin and aluminium bronze. kc: the group table's line for bronze, its upper end. Tin bronze grips the tap, aluminium bronze wears it. Shear for CuSn8, Rm 400.
  { id: 'bronze', group: 'N', kc11: 800, mc: 0.25, chips: 'medium', forming: 'if-ductile', speed: [8, 15], friction: 0.1, shear: 240, traits: ['abrasive'], source: 'from-memory' },
  { id: 'copper', group: 'N', kc11: 750, mc: 0.25, chips: 'long', forming: 'yes', speed: [10, 20], friction: 0.05, shear: 150 },
  { id: 'plastic', group: 'O', kc11: 125, mc: 0, chips: 'long', forming: 'no', speed: [10, 20], friction: 0.2, shear: 50, traits: ['springsBack'] },
  // Glass, carbon or mineral in nylon, PPS, PEEK. kc above the plain plastic's by a half, an estimate. The fibre wears an edge out in a few holes and flies as dust.
  { id: 'plastic-filled', group: 'O', kc11: 190, mc: 0, chips: 'powder', forming: 'no', speed: [8, 15], friction: 0.2, shear: 60, traits: ['springsBack', 'dust', 'abrasive'], source: 'from-memory' },
  { id: 'titanium', group: 'S', kc11: 1400, mc: 0.23, chips: 'long', forming: 'no', speed: [3, 6], friction: 0.25, shear: 570, traits: ['springsBack', 'swarfFire', 'workHardens'] },
  { id: 'nickel', group: 'S', kc11: 2800, mc: 0.25, chips: 'long', forming: 'rarely', speed: [2, 5], friction: 0.2, traits: ['workHardens'] },
];

function toMaterial({ traits = [], speed, source = 'kienzle', ...row }: Row): Material {
  const has = (trait: (typeof traits)[number]) => traits.includes(trait);
  return {
    ...row,
    speed: speed && { min: speed[0], max: speed[1] },
    workHardens: has('workHardens'),
    springsBack: has('springsBack'),
    dust: has('dust'),
    swarfFire: has('swarfFire'),
    waterFire: has('waterFire'),
    abrasive: has('abrasive'),
    source,
  };
}

/** Every material the handbook knows, in ISO 513 order. Source: see the head of this file. */
export const MATERIALS: readonly Material[] = ROWS.map(toMaterial);

const BY_ID = new Map<string, Material>(MATERIALS.map((material) => [material.id, material]));

/**
 * Looks a material up by its id, as text; any text may be asked; its values carry their units in `Material`.
 * Returns undefined for an id the handbook does not know. Source: `kienzle`.
 */
export function findMaterial(id: string): Material | undefined {
  return BY_ID.get(id);
}

/** True where the chip breaks by itself: short pieces, needles or dust. Source: common practice. */
export function chipsShort(chips: ChipForm): boolean {
  return chips === 'short' || chips === 'needles' || chips === 'powder';
}
