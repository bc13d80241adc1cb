/** The tolerance tables themselves: order, completeness, and where the standard's formulas miss them. */

import { describe, expect, test } from 'vitest';
import {
  DEVIATION_G,
  DIAMETER_STEPS,
  EXTERNAL_MAJOR_TOLERANCE_6,
  EXTERNAL_PITCH_TOLERANCE_6,
  MINOR_TOLERANCE,
  PITCH_TOLERANCE,
  type GradeRow,
} from '../../../core/data/iso-965-tolerances';
import { externalPitchToleranceSix } from '../../../core/limits/metric';
import { R40, roundToR40 } from '../../../core/units';

const pitchesOf = (table: Readonly<Record<string, unknown>>) =>
  Object.keys(table)
    .map(Number)
    .sort((a, b) => a - b);
const filled = (row: GradeRow) => row.filter((cell) => cell !== null);

function isRising(values: readonly number[]): boolean {
  return values.every((value, place) => place === 0 || value >= values[place - 1]!);
}

describe('order', () => {
  test('a coarser grade is wider, and grades are missing only at the ends of a row', () => {
    const rows = [
      ...Object.values(MINOR_TOLERANCE),
      ...PITCH_TOLERANCE.flatMap(Object.values<GradeRow>),
    ];
    for (const row of rows) {
      expect(row).toHaveLength(5);
      const cells = filled(row);
      expect(isRising(cells) && new Set(cells).size === cells.length).toBe(true);
      expect(row.slice(0, cells.length)).toEqual(cells);
      expect(cells.length).toBeGreaterThan(0);
    }
  });

  test('a coarser pitch is never closer', () => {
    for (const table of [MINOR_TOLERANCE, ...PITCH_TOLERANCE]) {
      for (const grade of [0, 1, 2, 3, 4]) {
        const column = pitchesOf(table).map((pitch) => table[pitch]![grade]!);
        expect(isRising(column.filter((cell) => cell !== null))).toBe(true);
      }
    }
    for (const table of [DEVIATION_G, EXTERNAL_MAJOR_TOLERANCE_6, ...EXTERNAL_PITCH_TOLERANCE_6]) {
      expect(isRising(pitchesOf(table).map((pitch) => table[pitch]!))).toBe(true);
    }
  });

  test('a larger diameter step is never closer at the same pitch', () => {
    for (const pitch of pitchesOf(MINOR_TOLERANCE)) {
      for (const grade of [0, 1, 2, 3, 4]) {
        const column = PITCH_TOLERANCE.map((table) => table[pitch]?.[grade] ?? null);
        expect(isRising(column.filter((cell) => cell !== null))).toBe(true);
      }
    }
  });

  test('steps follow on one another', () => {
    DIAMETER_STEPS.forEach(([over, to], place) => {
      expect(over).toBeLessThan(to);
      if (place > 0) expect(over).toBe(DIAMETER_STEPS[place - 1]![1]);
    });
    expect(PITCH_TOLERANCE).toHaveLength(DIAMETER_STEPS.length);
    expect(EXTERNAL_PITCH_TOLERANCE_6).toHaveLength(DIAMETER_STEPS.length);
  });

  test('every pitch has all it needs', () => {
    const pitches = pitchesOf(MINOR_TOLERANCE);
    expect(pitchesOf(DEVIATION_G)).toEqual(pitches);
    expect(pitchesOf(EXTERNAL_MAJOR_TOLERANCE_6)).toEqual(pitches);
    PITCH_TOLERANCE.forEach((table, step) => {
      expect(pitches).toEqual(expect.arrayContaining(pitchesOf(table)));
      expect(pitchesOf(EXTERNAL_PITCH_TOLERANCE_6[step]!)).toEqual(pitchesOf(table));
    });
  });

  test('tolerances are preferred numbers', () => {
    const cells = [
      ...[
        ...Object.values(MINOR_TOLERANCE),
        ...PITCH_TOLERANCE.flatMap(Object.values<GradeRow>),
      ].flatMap(filled),
      ...Object.values(EXTERNAL_MAJOR_TOLERANCE_6),
      ...EXTERNAL_PITCH_TOLERANCE_6.flatMap(Object.values<number>),
    ] as number[];
    for (const cell of cells) {
      const scaled = cell / 10 ** Math.floor(Math.log10(cell));
      const near = R40.some((preferred) => Math.abs(preferred - scaled) < 0.051);
      expect(near, String(cell)).toBe(true);
    }
  });
});

describe('ISO 965-1 formulas and the nearest preferred number miss some grade 6 cells; the table stands', () => {
  const minorFormula = (pitch: number) =>
    pitch < 1 ? 433 * pitch - 190 * pitch ** 1.22 : 230 * pitch ** 0.7;

  test.each([
    [0.5, 140, 132],
    [2.5, 450, 425],
  ])('minor diameter, pitch %d: %d in the table, %d by formula', (pitch, table, formula) => {
    expect(MINOR_TOLERANCE[pitch]![2]).toBe(table);
    expect(roundToR40(minorFormula(pitch))).toBe(formula);
  });

  test('elsewhere the minor diameter agrees', () => {
    for (const pitch of pitchesOf(MINOR_TOLERANCE)) {
      const cell = MINOR_TOLERANCE[pitch]![2] ?? null;
      if (cell === null || pitch === 0.5 || pitch === 2.5) continue;
      expect(roundToR40(minorFormula(pitch)), String(pitch)).toBe(cell);
    }
  });

  test.each([
    [2.2, 0.45, 95, 90],
    [3, 0.5, 100, 106],
    [4.5, 0.75, 118, 125],
    [10, 1.5, 180, 170],
    [12, 1.25, 180, 170],
    [16, 1.5, 190, 180],
    [42, 4.5, 315, 300],
  ])(
    'pitch diameter, M%dx%d: %d in the table, %d by formula',
    (diameter, pitch, table, formula) => {
      const step = DIAMETER_STEPS.findIndex(([over, to]) => diameter > over && diameter <= to);
      expect(PITCH_TOLERANCE[step]![pitch]![2]).toBe(table);
      expect(roundToR40(1.32 * externalPitchToleranceSix(diameter, pitch))).toBe(formula);
    },
  );

  test('no cell is further from its formula than a step and a half of the series', () => {
    PITCH_TOLERANCE.forEach((table, step) => {
      const diameter = DIAMETER_STEPS[step]![1];
      for (const pitch of pitchesOf(table)) {
        const factors = [0.85, 1.06, 1.32, 1.7, 2.12];
        table[pitch]!.forEach((cell, grade) => {
          if (cell === null) return;
          const formula = factors[grade]! * externalPitchToleranceSix(diameter, pitch);
          expect(Math.abs(cell / formula - 1), `${diameter} ${pitch} ${grade}`).toBeLessThan(0.09);
        });
      }
    });
  });
});
