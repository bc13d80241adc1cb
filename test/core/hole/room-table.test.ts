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
    expect(table.hand.worst).toBeCloseTo(2.625, 9);
    expect(Math.min(...table.rows.map((row) => row.synchronous.worst))).toBeGreaterThan(
      table.hand.worst,
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
  const rows = (text: string) => {
    const thread = readThread(text);
    if (!thread.ok) throw new Error(text);
    const limits = threadLimits(thread.value);
    if (!limits.ok) throw new Error(text);
    return holesByEngagement(limits.value).map(({ hole }) => [hole.min, hole.max]);
  };

  it('1/4-20-2B', () => {
    expect(rows('1/4-20-2B')).toEqual([
      [0.196, 0.202],
      [0.199, 0.204],
      [0.202, 0.207],
      [0.204, 0.21],
    ]);
  });

  it('speaks of inch classes only', () => {
    expect(rows('M8')).toEqual([]);
  });
});
