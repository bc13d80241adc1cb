/**
 * Words of the cycle's skeleton against the NIST RS274/NGC Interpreter, version 3, NISTIR 6556
 * (August 2000), table 4, modal groups: read in a transcription of the table. M codes from memory.
 */

import { describe, expect, test } from 'vitest';
import { cycleSkeleton, SKELETON_CODES } from '../../core/cycle/skeleton';

/** Table 4 of the report. */
const G_WORDS = {
  motion: 'G0 G1 G2 G3 G38.2 G80 G81 G82 G83 G84 G85 G86 G87 G88 G89',
  plane: 'G17 G18 G19',
  distance: 'G90 G91',
  feed: 'G93 G94',
  units: 'G20 G21',
  radius: 'G40 G41 G42',
  length: 'G43 G49',
  retract: 'G98 G99',
  system: 'G54 G55 G56 G57 G58 G59 G59.1 G59.2 G59.3',
  path: 'G61 G61.1 G64',
} as const;

const M_WORDS = [
  'M0',
  'M1',
  'M2',
  'M3',
  'M4',
  'M5',
  'M6',
  'M7',
  'M8',
  'M9',
  'M30',
  'M48',
  'M49',
  'M60',
];

const defined = new Set([
  ...Object.values(G_WORDS).flatMap((group) => group.split(' ')),
  ...M_WORDS,
]);

const questions = (['mm', 'in'] as const).flatMap((unit) =>
  (['per-minute', 'per-revolution'] as const).flatMap((mode) =>
    (['right', 'left'] as const).map((hand) => ({
      unit,
      mode,
      hand,
      rpm: 480,
      pitch: 1.25,
      tip: 27.1,
      start: 6,
    })),
  ),
);

describe('the skeleton of the cycle', () => {
  test.each(questions)('$unit, $mode, $hand hand: marks what the report defines', (question) => {
    const words = cycleSkeleton(question).flat();
    for (const { text, inNist, code } of words) {
      expect(SKELETON_CODES).toContain(code);
      if (/^[GM]\d/.test(text)) expect(inNist, text).toBe(defined.has(text));
    }
  });

  test('the report has no left-hand cycle and no feed per turn', () => {
    expect(defined.has('G74')).toBe(false);
    expect(defined.has('G95')).toBe(false);
  });

  test('M8 at 480 rev/min in mm: the block of the cycle (common practice)', () => {
    const block = cycleSkeleton(questions[0]!).find((words) =>
      words.some(({ code }) => code === 'cycle-right'),
    );
    expect(block?.map(({ text }) => text).join(' ')).toBe('G98 G84 Z-27.1 R6. F600.');
  });

  test('left hand turns the spindle the other way and says the cycle is not in the report', () => {
    const left = cycleSkeleton({ ...questions[0]!, hand: 'left' }).flat();
    expect(left.map(({ text }) => text)).toEqual(expect.arrayContaining(['M4', 'G74']));
    expect(left.map(({ text }) => text)).not.toContain('M3');
    expect(left.find(({ text }) => text === 'G74')?.inNist).toBe(false);
  });

  test('what only the shop knows stays blank: tool, offset, place, clear height', () => {
    const texts = cycleSkeleton(questions[0]!)
      .flat()
      .map(({ text }) => text);
    expect(texts).toEqual(expect.arrayContaining(['T_', 'H_', 'X_ Y_', 'Z_']));
  });
});
