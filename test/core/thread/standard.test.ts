import { describe, expect, test } from 'vitest';
import { ISO_261_PAIRS } from '../../../core/data/iso-261-pairs';
import { CONSTANT_PITCH, UNC, UNEF, UNF, isListedSize } from '../../../core/data/unified-series';
import { AMERICAN_PIPE, WHITWORTH_PIPE } from '../../../core/data/pipe-sizes';
import { threadLimits } from '../../../core/limits/thread-limits';
import { standardThreads } from '../../../core/thread/standard';
import { isListedPair, unifiedSeries } from '../../../core/thread/unified-series';

const list = standardThreads();
const inSeries = (series: string) => list.filter((thread) => thread.series === series);

describe('the list of standard threads', () => {
  test('holds every series once, in its usual class', () => {
    expect(new Set(list.map(({ designation }) => designation)).size).toBe(list.length);
    expect(list.every(({ standard, classGiven }) => standard && !classGiven)).toBe(true);
    const metric = [...ISO_261_PAIRS.values()];
    expect(inSeries('coarse')).toHaveLength(metric.filter(({ coarse }) => coarse).length);
    expect(inSeries('fine')).toHaveLength(metric.reduce((sum, { fine }) => sum + fine.length, 0));
    expect(inSeries('UNC')).toHaveLength(UNC.size);
    expect(inSeries('UNF')).toHaveLength(UNF.size);
    expect(inSeries('UNEF')).toHaveLength(UNEF.size);
    expect(inSeries('12-UN').map(({ inch }) => inch!.size)).toContain('15/16');
  });

  test('every one has limits; metric ones all from the tables', () => {
    for (const thread of list) {
      const limits = threadLimits(thread);
      const basis = thread.system === 'metric' ? 'tabulated' : 'computed';
      expect(limits, thread.designation).toMatchObject({ ok: true, value: { basis } });
    }
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
