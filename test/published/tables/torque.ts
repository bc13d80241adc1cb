/** A tool maker's torques, by its own formula and tables, and what they are held against. */
import { peakTorque } from '../../../core/load/torque';
import type { MaterialId } from '../../../core/material/material';
import { findMaterial } from '../../../core/material/table';
import { TORQUE_BAND } from '../../../core/tap/styles';
import { round, type PublishedTable } from './table';

export interface Size {
  major: number;
  pitch: number;
  hole: number;
}

export const M6: Size = { major: 6, pitch: 1, hole: 5 };
export const M10: Size = { major: 10, pitch: 1.5, hole: 8.5 };
export const M20: Size = { major: 20, pitch: 2.5, hole: 17.5 };

/**
 * Ours: a sharp straight-flute tap in oil, five threads of chamfer, no full thread rubbing behind them,
 * since none of the formulas below has the depth in it.
 */
export function ours(size: Size, id: MaterialId): number {
  const material = findMaterial(id)!;
  const flutes = size.major <= 4 ? 3 : 4;
  return peakTorque({ ...size, material, flutes, threads: 5, fullThread: 0, thickness: Infinity });
}

/**
 * A tool maker's formula and tables, as read on its catalogue page (2016): torque in N·m =
 * kc·K·tan 30°·(D − d)²·(D + 2d)/24000, kc of that table in N/mm², K by style and pitch.
 */
export function makers({ major, hole }: Size, kc: number, k: number): number {
  return (kc * k * Math.tan(Math.PI / 6) * (major - hole) ** 2 * (major + 2 * hole)) / 24000;
}

/** Specific forces, N/mm², and K of a straight-flute five-thread tap, coarse pitch: [material, its name there, kc, K] */
export const MAKERS: [MaterialId, string, kc: number, k: number][] = [
  ['steel-low', 'C15, 141 HB', 3600, 1.35],
  ['steel-medium', 'C45, 188 HB', 3900, 1.35],
  ['steel-alloy', '42CrMo4, 193 HB', 3600, 1.35],
  ['steel-alloy-30hrc', '42CrMo4, 30 HRC', 4900, 1.35],
  ['steel-40hrc', '42CrMo4, 40 HRC', 5500, 1.35],
  ['stainless-austenitic', 'X6CrNi18-10, 209 HB', 4200, 1.35],
  ['iron-grey', 'grey iron 25, 193 HB', 2900, 1.25],
  ['al-cast', 'AlSi8Cu3', 1300, 1.25],
];

export const LOAD_TABLES: PublishedTable[] = [
  {
    id: 'torque',
    title: 'Torque of a sharp straight-flute tap, five threads of chamfer',
    source: 'makers-torque-table',
    read: `The formula, specific forces and factors of a tool maker’s catalogue page: those are printed, the torques are what they make. Here stands the middle of a band that reaches ${TORQUE_BAND} times as far up, and as far down.`,
    unit: 'N·m',
    places: 1,
    tolerance: '25 %: between its own two editions the maker differs by 15 %',
    rows: MAKERS.flatMap(([id, name, kc, k]) =>
      (
        [
          ['M6', M6],
          ['M10', M10],
          ['M20', M20],
        ] as const
      ).map(([size, of]) => {
        const printed = makers(of, kc, k);
        return {
          of: `${size}, ${name}`,
          what: '',
          printed: round(printed, 2),
          here: round(ours(of, id), 2),
          within: round(0.25 * printed, 2),
        };
      }),
    ),
  },
];
