import { describe, expect, test } from 'vitest';
import { ISO_261_PAIRS } from '../../../core/data/iso-261-pairs';
import { CONSTANT_PITCH, UNC, UNEF, UNF, isListedSize } from '../../../core/data/unified-series';
import { AMERICAN_PIPE, WHITWORTH_PIPE } from '../../../core/data/pipe-sizes';
import { threadLimits } from '../../../core/limits/thread-limits';
import { standardThreads } from '../../../core/thread/standard';
import { standardPipeThreads } from '../../../core/thread/standard-pipe';
import type { Thread } from '../../../core/thread/thread';
import { isListedPair, unifiedSeries } from '../../../core/thread/unified-series';

/** Every name as its standard's list prints it; the class is the reader's own business. */
const names = (threads: readonly Thread[]): string[] =>
  threads.map(({ designation, class: grade }) => designation.replace(`-${grade}`, ''));

const words = (line: string): string[] => line.trim().split(/\s+/);

describe('the list of standard threads', () => {
  const inSeries = (series: string) =>
    names(standardThreads().filter((thread) => thread.series === series));

  test('holds every series once, in its usual class', () => {
    const list = standardThreads();
    expect(new Set(list.map(({ designation }) => designation)).size).toBe(list.length);
    expect(list.every(({ standard, classGiven }) => standard && !classGiven)).toBe(true);
    const metric = [...ISO_261_PAIRS].filter(([size]) => size <= 100).map(([, pair]) => pair);
    expect(inSeries('coarse')).toHaveLength(metric.filter(({ coarse }) => coarse).length);
    expect(inSeries('fine')).toHaveLength(metric.reduce((sum, { fine }) => sum + fine.length, 0));
    expect(inSeries('UNC')).toHaveLength(UNC.size);
    expect(inSeries('UNF')).toHaveLength(UNF.size);
    expect(inSeries('UNEF')).toHaveLength(UNEF.size);
  });

  test('metric sizes run from M1 to M100 (ISO 261)', () => {
    const coarse = inSeries('coarse');
    expect(coarse.slice(0, 4)).toEqual(['M1x0.25', 'M1.1x0.25', 'M1.2x0.25', 'M1.4x0.3']);
    expect(coarse.at(-1)).toBe('M68x6');
    expect(inSeries('fine').slice(-4)).toEqual(['M100x6', 'M100x4', 'M100x3', 'M100x2']);
    expect(names(standardThreads()).slice(0, 2)).toEqual(['M1x0.25', 'M1x0.2']);
  });

  test('inch sizes are written by number below a quarter inch, as fractions from there (ASME B1.1)', () => {
    expect(inSeries('UNC')).toEqual(
      words(`#1-64 #2-56 #3-48 #4-40 #5-40 #6-32 #8-32 #10-24 #12-24 1/4-20 5/16-18 3/8-16 7/16-14 1/2-13
        9/16-12 5/8-11 3/4-10 7/8-9 1-8 1-1/8-7 1-1/4-7 1-3/8-6 1-1/2-6 1-3/4-5 2-4.5 2-1/4-4.5 2-1/2-4
        2-3/4-4 3-4 3-1/4-4 3-1/2-4 3-3/4-4 4-4`).map((name) => `${name} UNC`),
    );
    expect(inSeries('UNF')).toEqual(
      words(`#0-80 #1-72 #2-64 #3-56 #4-48 #5-44 #6-40 #8-36 #10-32 #12-28 1/4-28 5/16-24 3/8-24 7/16-20
        1/2-20 9/16-18 5/8-18 3/4-16 7/8-14 1-12 1-1/8-12 1-1/4-12 1-3/8-12 1-1/2-12`).map(
        (name) => `${name} UNF`,
      ),
    );
    expect(inSeries('UNEF').slice(0, 3)).toEqual(['#12-32 UNEF', '1/4-32 UNEF', '5/16-32 UNEF']);
  });

  test('constant pitches fill the sizes that no older series holds, in steps of the shop (ASME B1.1)', () => {
    expect(inSeries('8-UN')).toEqual(
      words('1-1/8 1-1/4 1-3/8 1-1/2 1-5/8 1-3/4 1-7/8 2').map((size) => `${size}-8 UN`),
    );
    expect(inSeries('12-UN')).toEqual(
      words('5/8 11/16 3/4 13/16 7/8 15/16 1-5/8 1-3/4 1-7/8 2').map((size) => `${size}-12 UN`),
    );
    expect(inSeries('16-UN')).toEqual(
      words(
        '7/16 1/2 9/16 5/8 11/16 13/16 7/8 15/16 1 1-1/8 1-1/4 1-3/8 1-1/2 1-5/8 1-3/4 1-7/8 2',
      ).map((size) => `${size}-16 UN`),
    );
  });

  test('every one has limits; metric ones all from the tables', () => {
    for (const thread of standardThreads()) {
      const limits = threadLimits(thread);
      const basis = thread.system === 'metric' ? 'tabulated' : 'computed';
      expect(limits, thread.designation).toMatchObject({ ok: true, value: { basis } });
    }
  });
});

describe('the list of pipe threads', () => {
  const list = () => standardPipeThreads().map(({ designation }) => designation);
  const SEALING = '1/16 1/8 1/4 3/8 1/2 3/4 1 1-1/4 1-1/2 2 2-1/2 3 4 5 6';

  test('G has every size of ISO 228-1; Rp and Rc only those of ISO 7-1', () => {
    expect(list().filter((name) => name.startsWith('G'))).toEqual(
      words(`1/16 1/8 1/4 3/8 1/2 5/8 3/4 7/8 1 1-1/8 1-1/4 1-1/2 1-3/4 2 2-1/4 2-1/2 2-3/4 3 3-1/2 4
        4-1/2 5 5-1/2 6`).map((size) => `G${size}`),
    );
    expect(list().filter((name) => name.startsWith('Rp'))).toEqual(
      words(SEALING).map((size) => `Rp${size}`),
    );
    expect(list().filter((name) => name.startsWith('Rc'))).toEqual(
      words(SEALING).map((size) => `Rc${size}`),
    );
  });

  test('NPT has the sizes of ASME B1.20.1 to six inches', () => {
    expect(list().filter((name) => name.includes('NPT'))).toEqual(
      words(`1/16-27 1/8-27 1/4-18 3/8-18 1/2-14 3/4-14 1-11.5 1-1/4-11.5 1-1/2-11.5 2-11.5 2-1/2-8 3-8
        3-1/2-8 4-8 5-8 6-8`).map((name) => `${name} NPT`),
    );
    expect(list()).toHaveLength(24 + 15 + 15 + 16);
  });
});

describe('the tables behind it', () => {
  test('sizes grow, and a coarse pitch is coarser than the fine ones, which fall', () => {
    const sizes = [...ISO_261_PAIRS.keys()];
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    for (const { coarse, fine } of ISO_261_PAIRS.values()) {
      const pitches = coarse === undefined ? [...fine] : [coarse, ...fine];
      expect(pitches).toEqual([...new Set(pitches)].sort((a, b) => b - a));
    }
  });

  test('coarse pitches never get finer as the size grows', () => {
    const coarse = [...ISO_261_PAIRS.values()].flatMap((pitches) => pitches.coarse ?? []);
    expect(coarse).toEqual([...coarse].sort((a, b) => a - b));
  });

  test('UNC, UNF and UNEF: sizes grow, counts fall, and each is finer than the one before', () => {
    for (const table of [UNC, UNF, UNEF]) {
      const sizes = [...table.keys()];
      const counts = [...table.values()];
      expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
      expect(counts).toEqual([...counts].sort((a, b) => b - a));
      expect(sizes.every(isListedSize)).toBe(true);
    }
    for (const [size, tpi] of UNF) expect(tpi).toBeGreaterThan(UNC.get(size) ?? 0);
    for (const [size, tpi] of UNEF) expect(tpi).toBeGreaterThan(UNF.get(size) ?? 0);
  });

  test('constant pitches begin and end where they are said to', () => {
    for (const { tpi, from, to } of CONSTANT_PITCH) {
      expect(unifiedSeries((from - 130) / 10000, tpi)).toBe('UNS');
      expect(unifiedSeries(from / 10000, tpi)).not.toBe('UNS');
      expect(unifiedSeries(to / 10000, tpi)).not.toBe('UNS');
      expect(unifiedSeries((to + 2500) / 10000, tpi)).toBe('UNS');
    }
    expect(isListedPair(1, 14)).toBe(true);
    expect(isListedPair(1.125, 14)).toBe(false);
    expect(unifiedSeries(1 + 1 / 32, 12)).toBe('UNS');
  });

  test('pipe sizes grow and their pitches do not get finer', () => {
    for (const table of [WHITWORTH_PIPE, AMERICAN_PIPE]) {
      const diameters = table.map(({ diameter }) => diameter);
      const counts = table.map(({ tpi }) => tpi);
      expect(diameters).toEqual([...diameters].sort((a, b) => a - b));
      expect(counts).toEqual([...counts].sort((a, b) => b - a));
      expect(new Set(table.map(({ size }) => size)).size).toBe(table.length);
    }
  });
});
