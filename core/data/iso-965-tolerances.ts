/**
 * Tolerances of ISO metric threads, micrometres.
 * Source: ISO 965-1 (2013), tables 1 to 5. The standard itself was not read.
 * - Internal minor diameter (TD1): grade 6 checked against threadlib for every pitch; 4, 5, 7, 8 from memory.
 * - Internal pitch diameter (TD2): grade 6 checked against threadlib; grades 4 to 6 from M1 to M8 against
 *   a tap maker's catalogue; 90 to 355 mm against Machinery's Handbook; the other cells from memory.
 * - Deviation of position G: read in FreeCAD. External tolerances (Td, Td2), grade 6: from memory.
 * The tables are shipped, not their formulas: the standard smooths its cells, and formula and nearest
 * preferred number together miss one cell in ten.
 */

/** Diameter steps: over the first, up to and including the second, mm. */
export const DIAMETER_STEPS = [
  [0.99, 1.4],
  [1.4, 2.8],
  [2.8, 5.6],
  [5.6, 11.2],
  [11.2, 22.4],
  [22.4, 45],
  [45, 90],
  [90, 180],
  [180, 355],
] as const;

/** Grades 4, 5, 6, 7, 8; null where the standard has no cell. */
export type GradeRow = readonly (number | null)[];

const row = (...cells: (number | null)[]): GradeRow => cells;
const none = null;

/** Fundamental deviation of position G (internal, upwards) and g (external, downwards), by pitch. */
// prettier-ignore
export const DEVIATION_G: Readonly<Record<string, number>> = {
  0.2: 17, 0.25: 18, 0.3: 18, 0.35: 19, 0.4: 19, 0.45: 20, 0.5: 20, 0.6: 21, 0.7: 22, 0.75: 22,
  0.8: 24, 1: 26, 1.25: 28, 1.5: 32, 1.75: 34, 2: 38, 2.5: 42, 3: 48, 3.5: 53, 4: 60, 4.5: 63,
  5: 71, 5.5: 75, 6: 80, 8: 100,
};

/** Tolerance of the internal minor diameter, by pitch. */
// prettier-ignore
export const MINOR_TOLERANCE: Readonly<Record<string, GradeRow>> = {
  0.2: row(38, none, none, none, none), 0.25: row(45, 56, none, none, none),
  0.3: row(53, 67, 85, none, none), 0.35: row(63, 80, 100, none, none),
  0.4: row(71, 90, 112, none, none), 0.45: row(80, 100, 125, none, none),
  0.5: row(90, 112, 140, 180, none), 0.6: row(100, 125, 160, 200, none),
  0.7: row(112, 140, 180, 224, none), 0.75: row(118, 150, 190, 236, none),
  0.8: row(125, 160, 200, 250, 315), 1: row(150, 190, 236, 300, 375),
  1.25: row(170, 212, 265, 335, 425), 1.5: row(190, 236, 300, 375, 475),
  1.75: row(212, 265, 335, 425, 530), 2: row(236, 300, 375, 475, 600),
  2.5: row(280, 355, 450, 560, 710), 3: row(315, 400, 500, 630, 800),
  3.5: row(355, 450, 560, 710, 900), 4: row(375, 475, 600, 750, 950),
  4.5: row(425, 530, 670, 850, 1060), 5: row(450, 560, 710, 900, 1120),
  5.5: row(475, 600, 750, 950, 1180), 6: row(500, 630, 800, 1000, 1250),
  8: row(630, 800, 1000, 1250, 1600),
};

/** Tolerance of the internal pitch diameter: one table per diameter step, by pitch. */
// prettier-ignore
export const PITCH_TOLERANCE: readonly Readonly<Record<string, GradeRow>>[] = [
  { 0.2: row(40, none, none, none, none), 0.25: row(45, 56, none, none, none), 0.3: row(48, 60, 75, none, none) },
  { 0.2: row(42, none, none, none, none), 0.25: row(48, 60, none, none, none), 0.35: row(53, 67, 85, none, none),
    0.4: row(56, 71, 90, none, none), 0.45: row(60, 75, 95, none, none) },
  { 0.35: row(56, 71, 90, none, none), 0.5: row(63, 80, 100, 125, none), 0.6: row(71, 90, 112, 140, none),
    0.7: row(75, 95, 118, 150, none), 0.75: row(75, 95, 118, 150, none), 0.8: row(80, 100, 125, 160, 200) },
  { 0.75: row(85, 106, 132, 170, none), 1: row(95, 118, 150, 190, 236), 1.25: row(100, 125, 160, 200, 250),
    1.5: row(112, 140, 180, 224, 280) },
  { 1: row(100, 125, 160, 200, 250), 1.25: row(112, 140, 180, 224, 280), 1.5: row(118, 150, 190, 236, 300),
    1.75: row(125, 160, 200, 250, 315), 2: row(132, 170, 212, 265, 335), 2.5: row(140, 180, 224, 280, 355) },
  { 1: row(106, 132, 170, 212, none), 1.5: row(125, 160, 200, 250, 315), 2: row(140, 180, 224, 280, 355),
    3: row(170, 212, 265, 335, 425), 3.5: row(180, 224, 280, 355, 450), 4: row(190, 236, 300, 375, 475),
    4.5: row(200, 250, 315, 400, 500) },
  { 1.5: row(132, 170, 212, 265, 335), 2: row(150, 190, 236, 300, 375), 3: row(180, 224, 280, 355, 450),
    4: row(200, 250, 315, 400, 500), 5: row(212, 265, 335, 425, 530), 5.5: row(224, 280, 355, 450, 560),
    6: row(236, 300, 375, 475, 600) },
  { 2: row(160, 200, 250, 315, 400), 3: row(190, 236, 300, 375, 475), 4: row(212, 265, 335, 425, 530),
    6: row(250, 315, 400, 500, 630), 8: row(280, 355, 450, 560, 710) },
  { 3: row(212, 265, 335, 425, 530), 4: row(236, 300, 375, 475, 600), 6: row(265, 335, 425, 530, 670),
    8: row(300, 375, 475, 600, 750) },
];

/** Tolerance of the external major diameter, grade 6, by pitch. From memory. */
// prettier-ignore
export const EXTERNAL_MAJOR_TOLERANCE_6: Readonly<Record<string, number>> = {
  0.2: 56, 0.25: 67, 0.3: 75, 0.35: 85, 0.4: 95, 0.45: 100, 0.5: 106, 0.6: 125, 0.7: 140, 0.75: 140,
  0.8: 150, 1: 180, 1.25: 212, 1.5: 236, 1.75: 265, 2: 280, 2.5: 335, 3: 375, 3.5: 425, 4: 475,
  4.5: 500, 5: 530, 5.5: 560, 6: 600, 8: 710,
};

/** Tolerance of the external pitch diameter, grade 6: one table per diameter step, by pitch. From memory. */
// prettier-ignore
export const EXTERNAL_PITCH_TOLERANCE_6: readonly Readonly<Record<string, number>>[] = [
  { 0.2: 48, 0.25: 53, 0.3: 56 },
  { 0.2: 50, 0.25: 56, 0.35: 63, 0.4: 67, 0.45: 71 },
  { 0.35: 67, 0.5: 75, 0.6: 85, 0.7: 90, 0.75: 90, 0.8: 95 },
  { 0.75: 100, 1: 112, 1.25: 118, 1.5: 132 },
  { 1: 118, 1.25: 132, 1.5: 140, 1.75: 150, 2: 160, 2.5: 170 },
  { 1: 125, 1.5: 150, 2: 170, 3: 200, 3.5: 212, 4: 224, 4.5: 236 },
  { 1.5: 160, 2: 180, 3: 212, 4: 236, 5: 250, 5.5: 265, 6: 280 },
  { 2: 190, 3: 224, 4: 250, 6: 300, 8: 335 },
  { 3: 250, 4: 280, 6: 315, 8: 355 },
];
