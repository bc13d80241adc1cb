/**
 * Screws that commonly go into tapped holes, by property class or grade.
 * Least tensile strengths from memory of ISO 898-1, ISO 3506-1 and SAE J429; of ISO 8.8 the value to M16 and of
 * SAE grades that to 1 inch (larger ones differ by a few per cent).
 */

import type { ThreadSystem } from '../thread/thread';

export const SCREW_GRADES = [
  '5.8',
  '8.8',
  '10.9',
  '12.9',
  'A2-70',
  'A4-80',
  'SAE 2',
  'SAE 5',
  'SAE 8',
] as const;

export type ScrewGrade = (typeof SCREW_GRADES)[number];

/** Least tensile strength, N/mm². Source: `screw-grades`. */
export const SCREW_STRENGTH: Readonly<Record<ScrewGrade, number>> = {
  '5.8': 520,
  '8.8': 800,
  '10.9': 1040,
  '12.9': 1220,
  'A2-70': 700,
  'A4-80': 800,
  'SAE 2': 510,
  'SAE 5': 827,
  'SAE 8': 1034,
};

/** Shear strength over tensile strength of screws and of common metals. Source: `shear-strength`. */
export const SHEAR_SHARE = 0.6;

/** Grades that a thread's page shows: the usual steel one, a strong one, a stainless one. Common practice; no unit. */
export function commonScrews(system: ThreadSystem): ScrewGrade[] {
  return system === 'unified' ? ['SAE 5', 'SAE 8', 'A2-70'] : ['8.8', '12.9', 'A2-70'];
}
