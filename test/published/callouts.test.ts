/**
 * Callouts in the spellings of the drawing standards, each read or refused as a person would.
 *
 * Standards and clauses are named from memory; none was read for this table:
 * ISO 129-1 (presentation of dimensions and symbols), ISO 15786 (simplified holes: depth of the
 * thread, a slash, the hole), ISO 6410-1 (threaded parts: thread ends and hole depths), ISO 965-1
 * (designation), ASME Y14.5 (dimensioning: counterbore, countersink, depth, repetitive features "X",
 * THRU) and ASME Y14.6 (screw thread representation). What stands under "common practice" belongs to
 * no standard.
 */

import { describe, expect, test } from 'vitest';
import { readCallout, type Callout } from '../../core';

type Expected = Partial<Callout> & { thread: string };

/** Lengths to a thousandth of a millimetre; everything else as it stands. */
function expectCallout(line: string, expected: Expected): void {
  const outcome = readCallout(line);
  expect(outcome.ok, `${line}: ${JSON.stringify(outcome)}`).toBe(true);
  if (!outcome.ok) return;
  const { value } = outcome;
  const { read: _read, harmless: _harmless, notRead: _notRead, ...said } = value;
  const rounded = JSON.parse(
    JSON.stringify(said, (_, each: unknown) =>
      typeof each === 'number' ? Math.round(each * 1000) / 1000 : each,
    ),
  ) as Callout;
  expect(rounded).toEqual({ count: 1, through: false, ...expected });
}

const shoulder = 'shoulder' as const;
const point = 'point' as const;

const ISO: [clause: string, line: string, expected: Expected][] = [
  ['ISO 6410-1, depth after the size', 'M12×16', { thread: 'M12x1.75-6H', fullThread: 16 }],
  [
    'ISO 6410-1, thread and hole depth',
    'M12×16/Ø10,2×20',
    { thread: 'M12x1.75-6H', fullThread: 16, hole: { diameter: 10.2, depth: 20, at: shoulder } },
  ],
  [
    'ISO 6410-1 with class',
    'M12-6H x 16 / Ø10.2 x 20',
    { thread: 'M12x1.75-6H', fullThread: 16, hole: { diameter: 10.2, depth: 20, at: shoulder } },
  ],
  [
    'ISO 15786, simplified blind hole',
    '6× M10×1.5-6H ↧15 / Ø8.5 ↧16.5',
    {
      count: 6,
      thread: 'M10x1.5-6H',
      fullThread: 15,
      hole: { diameter: 8.5, depth: 16.5, at: shoulder },
    },
  ],
  [
    'ISO 15786, hole first',
    'Ø5 ↧12 / M6-6H ↧9',
    { thread: 'M6x1-6H', fullThread: 9, hole: { diameter: 5, depth: 12, at: shoulder } },
  ],
  [
    'ISO 15786, countersink by diameter and angle',
    'M6 - 6H ⌵ Ø6.6 X 90°',
    { thread: 'M6x1-6H', through: true, countersink: { diameter: 6.6, angle: 90 } },
  ],
  [
    'ISO 15786, all on one line',
    'M16×2-6H ↧25 / Ø14 ↧32 ⌵ Ø17 × 90°',
    {
      thread: 'M16x2-6H',
      fullThread: 25,
      hole: { diameter: 14, depth: 32, at: shoulder },
      countersink: { diameter: 17, angle: 90 },
    },
  ],
  ['ISO 129-1, count', '4 × M8', { count: 4, thread: 'M8x1.25-6H', through: true }],
  ['ISO 129-1, count without a space', '4xM6', { count: 4, thread: 'M6x1-6H', through: true }],
  ['ISO 129-1, fine pitch', '2× M8×1-6H ↧12', { count: 2, thread: 'M8x1-6H', fullThread: 12 }],
  ['ISO 129-1, comma', 'M10×1,5-6H ↧22,5', { thread: 'M10x1.5-6H', fullThread: 22.5 }],
  ['ISO 129-1, no depth: through', 'M20-6H', { thread: 'M20x2.5-6H', through: true }],
  ['ISO 965-1, left hand', 'M12×1.75-LH THRU', { thread: 'M12x1.75-6H-LH', through: true }],
  ['ISO 965-1, 6G', 'M20×1.5-6G ↧30', { thread: 'M20x1.5-6G', fullThread: 30 }],
  ['ISO 5855, MJ', 'MJ6×1-4H5H THRU', { thread: 'MJ6x1-4H5H', through: true }],
  ['ISO 228-1, parallel pipe', 'G1/4 ↧12', { thread: 'G1/4', fullThread: 12 }],
  ['ISO 7-1, taper pipe', '2× Rc 1/2', { count: 2, thread: 'Rc1/2', through: true }],
];

const ASME: [clause: string, line: string, expected: Expected][] = [
  [
    'Y14.5, X for repetition',
    '4X 1/4-20 UNC-2B THRU',
    { count: 4, thread: '1/4-20 UNC-2B', through: true },
  ],
  ['Y14.5, depth symbol', '1/4-20 UNC-2B ↧.50', { thread: '1/4-20 UNC-2B', fullThread: 12.7 }],
  ['Y14.6, decimal size', '.250-20 UNC-2B ↧ .50', { thread: '1/4-20 UNC-2B', fullThread: 12.7 }],
  [
    'Y14.5, hole then thread',
    '2X Ø.201 ↧.75 1/4-20 UNC-2B ↧.50',
    {
      count: 2,
      thread: '1/4-20 UNC-2B',
      fullThread: 12.7,
      hole: { diameter: 5.105, depth: 19.05, at: shoulder },
    },
  ],
  [
    'Y14.5, stacked on two lines',
    '2X Ø .201 ↧ .75\n1/4-20 UNC-2B ↧ .50',
    {
      count: 2,
      thread: '1/4-20 UNC-2B',
      fullThread: 12.7,
      hole: { diameter: 5.105, depth: 19.05, at: shoulder },
    },
  ],
  [
    'Y14.6, number size',
    '4X #10-32 UNF-2B ↧.375',
    { count: 4, thread: '#10-32 UNF-2B', fullThread: 9.525 },
  ],
  ['Y14.6, bare number size', '10-32 UNF-2B THRU', { thread: '#10-32 UNF-2B', through: true }],
  ['Y14.6, decimal number size', '.164-32 UNC-2B THRU', { thread: '#8-32 UNC-2B', through: true }],
  [
    'Y14.5, countersink 82°',
    '.312-18 UNC-2B ↧.62 ⌵ Ø.34 X 82°',
    {
      thread: '5/16-18 UNC-2B',
      fullThread: 15.748,
      countersink: { diameter: 8.636, angle: 82 },
    },
  ],
  [
    'Y14.5, countersink both sides',
    '2X 3/8-24 UNF-2B THRU ⌵ Ø.40 X 90° BOTH SIDES',
    {
      count: 2,
      thread: '3/8-24 UNF-2B',
      through: true,
      countersink: { diameter: 10.16, angle: 90 },
    },
  ],
  [
    'Y14.5, counterbore kept apart',
    '4X M6X1 THRU ⌴ Ø11 ↧6.5',
    {
      count: 4,
      thread: 'M6x1-6H',
      through: true,
      fields: { counterbore: { diameter: 11, depth: 6.5 } },
    },
  ],
  [
    'Y14.5, counterbore first',
    '⌴ Ø11 ↧6 M6X1 ↧12',
    {
      thread: 'M6x1-6H',
      fullThread: 12,
      fields: { counterbore: { diameter: 11, depth: 6 } },
    },
  ],
  ['Y14.5, THRU ALL', '4X M8X1.25-6H THRU ALL', { count: 4, thread: 'M8x1.25-6H', through: true }],
  [
    'Y14.5M, metric hole and thread',
    '4X Ø8.5 ↧20 M10X1.5-6H ↧15',
    {
      count: 4,
      thread: 'M10x1.5-6H',
      fullThread: 15,
      hole: { diameter: 8.5, depth: 20, at: shoulder },
    },
  ],
  [
    'Y14.5M, drilled through',
    '4X Ø8.5 THRU, M10X1.5-6H',
    { count: 4, thread: 'M10x1.5-6H', through: true, hole: { diameter: 8.5, at: shoulder } },
  ],
  [
    'Y14.5, bolt circle is no hole size',
    '6X M5X0.8-6H ↧10 EQ SP ON Ø60 B.C.',
    { count: 6, thread: 'M5x0.8-6H', fullThread: 10 },
  ],
  ['Y14.6, UNJ', '1/4-28 UNJF-3B ↧.375', { thread: '1/4-28 UNJF-3B', fullThread: 9.525 }],
  ['Y14.6, eight-thread series', '1-8 UNC-2B ↧1.5', { thread: '1-8 UNC-2B', fullThread: 38.1 }],
  ['Y14.6, mixed number', '1 1/8-7 UNC-2B THRU', { thread: '1-1/8-7 UNC-2B', through: true }],
  ['B1.20.1, pipe with its threads', '1/4-18 NPT', { thread: '1/4-18 NPT', through: true }],
  ['Y14.6, left hand', '1/2-13 UNC-2B-LH ↧1.00', { thread: '1/2-13 UNC-2B-LH', fullThread: 25.4 }],
  [
    'Y14.5, after plate',
    '2X M4X0.7-6H ↧8 AFTER PLATE',
    { count: 2, thread: 'M4x0.7-6H', fullThread: 8, fields: { later: ['plate'] } },
  ],
];

const PRACTICE: [what: string, line: string, expected: Expected][] = [
  ['DEEP', '10-24 UNC X .50 DEEP', { thread: '#10-24 UNC-2B', fullThread: 12.7 }],
  ['DP run into the number', '4-M6 DP10', { count: 4, thread: 'M6x1-6H', fullThread: 10 }],
  ['DEPTH', 'M8 depth 16', { thread: 'M8x1.25-6H', fullThread: 16 }],
  ['FULL THD', '5/16-18 UNC-2B .63 FULL THD', { thread: '5/16-18 UNC-2B', fullThread: 16.002 }],
  [
    'FULL THREAD, MIN',
    '3/8-16 UNC-2B FULL THREAD .75 MIN',
    { thread: '3/8-16 UNC-2B', fullThread: 19.05 },
  ],
  ['TYP', '1/2-13 UNC-2B x 1.00 DEEP TYP', { thread: '1/2-13 UNC-2B', fullThread: 25.4 }],
  ['TYP and PLCS', 'M6 TYP 4 PLCS', { count: 4, thread: 'M6x1-6H', through: true }],
  ['PLACES', 'M8 (4 PLACES) THRU', { count: 4, thread: 'M8x1.25-6H', through: true }],
  ['OFF', 'M8 6H 15 DEEP (6 OFF)', { count: 6, thread: 'M8x1.25-6H', fullThread: 15 }],
  ['HOLES', '4 HOLES M6 EQUALLY SPACED', { count: 4, thread: 'M6x1-6H', through: true }],
  [
    'drill by number',
    '#7 DRILL .75 DEEP 1/4-20 TAP .50 DEEP',
    {
      thread: '1/4-20 UNC-2B',
      fullThread: 12.7,
      hole: { diameter: 5.105, depth: 19.05, at: shoulder },
    },
  ],
  [
    'drill by fraction',
    '31/64 DRILL 1.20 DEEP 9/16-12 UNC-2B .85 DEEP',
    {
      thread: '9/16-12 UNC-2B',
      fullThread: 21.59,
      hole: { diameter: 12.303, depth: 30.48, at: shoulder },
    },
  ],
  [
    'to the point',
    'M10 ↧15 MIN FULL THD Ø8.5 ↧21 MAX TO POINT',
    { thread: 'M10x1.5-6H', fullThread: 15, hole: { diameter: 8.5, depth: 21, at: point } },
  ],
  ['DRILL & TAP', 'DRILL & TAP M6x1 x 12 DP', { thread: 'M6x1-6H', fullThread: 12 }],
  ['pitch and depth both after x', 'M10 x 1.5 x 20 DEEP', { thread: 'M10x1.5-6H', fullThread: 20 }],
  ['STI', 'M8x1.25 STI THRU', { thread: 'EG M8x1.25-6H', through: true }],
  [
    'mm in an inch thread',
    '4X 1/4-20 UNC - 2B ↧ 12.7 mm',
    { count: 4, thread: '1/4-20 UNC-2B', fullThread: 12.7 },
  ],
  ['inch in a metric thread', 'M8 ↧ .63 in', { thread: 'M8x1.25-6H', fullThread: 16.002 }],
];

const MANGLED: [what: string, line: string, expected: Expected][] = [
  [
    'UTF-8 read as Windows-1252',
    '6Ã— M10Ã—1.5-6H â†§15 / Ã˜8.5 â†§16.5',
    {
      count: 6,
      thread: 'M10x1.5-6H',
      fullThread: 15,
      hole: { diameter: 8.5, depth: 16.5, at: shoulder },
    },
  ],
  [
    'dashes and non-breaking spaces',
    'M8\u00a0×\u00a01,25–6H ↧\u202f16',
    { thread: 'M8x1.25-6H', fullThread: 16 },
  ],
  [
    'vulgar fractions',
    '2X ¼-20 UNC-2B ↧ ½',
    { count: 2, thread: '1/4-20 UNC-2B', fullThread: 12.7 },
  ],
  ['curly inch marks', '3/8-16 UNC-2B × ¾” DEEP', { thread: '3/8-16 UNC-2B', fullThread: 19.05 }],
  [
    'CAD control codes',
    '4X %%c8.5 ↧20 M10X1.5-6H ↧15',
    {
      count: 4,
      thread: 'M10x1.5-6H',
      fullThread: 15,
      hole: { diameter: 8.5, depth: 20, at: shoulder },
    },
  ],
  ['an arrow for the depth symbol', 'M8 x 1.25 - 6H ↓16', { thread: 'M8x1.25-6H', fullThread: 16 }],
];

const REFUSED: [what: string, line: string, code: string][] = [
  ['nothing', '   ', 'empty-line'],
  ['a note', 'BREAK ALL SHARP EDGES', 'no-thread'],
  ['a plain hole', 'Ø8 H7 THRU', 'no-thread'],
  ['a countersink alone', '⌵ Ø.500 X 82°', 'no-thread'],
  ['a class for screws', '4X M6x1-6g ↧12', 'external-class'],
  ['trapezoidal', 'Tr20x4 THRU', 'not-covered'],
  ['Whitworth is not read as unified', '1/4-20 BSW', 'not-covered'],
  ['ACME is not read as unified', '1/2-10 ACME THRU', 'not-covered'],
  ['the taper thread of the pipe', 'R3/4', 'external-pipe'],
  ['no pitch', '2X 1/4 THRU', 'pitch-missing'],
  ['series and pitch disagree', '1/4-28 UNC-2B THRU', 'series-pitch-mismatch'],
  ['an absurd count', '99999X M6 THRU', 'count-absurd'],
  ['two threads, one depth', 'M6 THRU / M8x1.25 ↧16', 'two-threads'],
];

describe('ISO spellings', () => {
  test.each(ISO)('%s: %s', (_, line, expected) => expectCallout(line, expected));
});

describe('ASME spellings', () => {
  test.each(ASME)('%s: %s', (_, line, expected) => expectCallout(line, expected));
});

describe('common practice', () => {
  test.each(PRACTICE)('%s: %s', (_, line, expected) => expectCallout(line, expected));
});

describe('what keyboards, mail and word processors make of them', () => {
  test.each(MANGLED)('%s: %s', (_, line, expected) => expectCallout(line, expected));
});

describe('refused, with the reason', () => {
  test.each(REFUSED)('%s: %s', (_, line, code) => {
    const outcome = readCallout(line);
    expect(outcome.ok ? JSON.stringify(outcome) : outcome.problems[0]?.code).toBe(code);
  });

  test('at least sixty callouts stand in this file', () => {
    const count = [ISO, ASME, PRACTICE, MANGLED, REFUSED].reduce(
      (sum, list) => sum + list.length,
      0,
    );
    expect(count).toBeGreaterThanOrEqual(60);
  });
});
