import { describe, expect, it } from 'vitest';
import { readThread, roomTable, threadLimits } from '../../../core';
import { RUN_OUT } from '../../../core/data/din-76-run-outs';
import { holesByEngagement } from '../../../core/hole/by-engagement';

describe('room below the thread', () => {
  it('2–3 threads and 1 pitch want 4 pitches at worst, 3.5 at the middle', () => {
    const row = roomTable(1.5, 'metric').rows.find(({ chamfer }) => chamfer.form === 'C')!;
    expect(row.synchronous).toEqual({ worst: 6, middle: 5.25 });
    expect(row.length).toEqual({ min: 3, max: 4.5 });
  });

  it('a floating holder wants two pitches more', () => {
    for (const { synchronous, floating } of roomTable(1, 'inch').rows) {
      expect(floating.worst - synchronous.worst).toBeCloseTo(2, 9);
    }
  });

  it('a hand-finished form F needs least of all', () => {
    const table = roomTable(1.5, 'metric');
    expect(table.hand!.worst).toBeCloseTo(2.625, 9);
    expect(Math.min(...table.rows.map((row) => row.synchronous.worst))).toBeGreaterThan(
      table.hand!.worst,
    );
  });
});

describe('DIN 76-1 run-out beside the chain', () => {
  it.each(Object.entries(RUN_OUT))('P %s: %d mm', (pitch, runOut) => {
    const { rows, runOut: shown } = roomTable(Number(pitch), 'metric');
    const room = (form: string) => rows.find(({ chamfer }) => chamfer.form === form)!.synchronous;
    expect(shown).toBe(runOut);
    // Its regular run-out holds the 2–3-thread chamfer with a pitch to spare, but not the longest 3.5–5.5.
    expect(room('C').worst).toBeLessThanOrEqual(runOut + 1e-9);
    expect(room('D').worst).toBeGreaterThan(runOut);
  });

  it('is silent where its table has no such pitch', () => {
    expect(roomTable(1.27, 'inch').runOut).toBeNull();
  });
});

describe("hole sizes by length of engagement (Machinery's Handbook; last row from memory)", () => {
  const of = (text: string) => {
    const thread = readThread(text);
    if (!thread.ok) throw new Error(text);
    const limits = threadLimits(thread.value);
    if (!limits.ok) throw new Error(text);
    return holesByEngagement(limits.value);
  };
  const rows = (text: string) => of(text).map(({ hole }) => [hole.min, hole.max]);

  it('1/4-20-2B', () => {
    expect(rows('1/4-20-2B')).toEqual([
      [0.196, 0.202],
      [0.199, 0.204],
      [0.202, 0.207],
      [0.204, 0.21],
    ]);
  });

  // 3B is held to four places (0.3300 to 0.3372): quarters of 0.0072, added by hand.
  it('3/8-24-3B to the ten-thousandth, as its class is', () => {
    expect(rows('3/8-24-3B')).toEqual([
      [0.33, 0.3336],
      [0.3318, 0.3354],
      [0.3336, 0.3372],
      [0.3354, 0.339],
    ]);
  });

  it('a third, two thirds, one and a half and three diameters; the last is from memory', () => {
    expect(of('1/4-20-2B').map(({ engagement, source }) => [engagement, source])).toEqual([
      [{ min: 0, max: 1 / 3 }, 'handbook-holes'],
      [{ min: 1 / 3, max: 2 / 3 }, 'handbook-holes'],
      [{ min: 2 / 3, max: 1.5 }, 'handbook-holes'],
      [{ min: 1.5, max: 3 }, 'from-memory'],
    ]);
  });

  it('speaks of inch classes only, and where the largest hole is known', () => {
    expect(rows('M8')).toEqual([]);
    expect(rows('1/4-20 UNJC-3B')).toEqual([]);
  });
});
