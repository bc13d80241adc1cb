/**
 * Pipe threads: ASME B1.20.1 gauge diameters (from memory of its table 2, recomputed; what a pipe stockist prints of
 * the same table stands in tables/pipe.ts), ISO 228-1 drills in their
 * limits, ISO 7-1 gauge lengths (from memory).
 */
import { describe, expect, it } from 'vitest';
import { pipeNotes, readThread, threadLimits } from '../../core';
import { turnsToMouth } from '../../core/gauge/pipe';
import { B1_20_1, NPT_PRINTED } from './tables/pipe';

function notes(text: string) {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  const found = pipeNotes(thread.value);
  if (!found) throw new Error(text);
  return { thread: thread.value, ...found };
}

describe('NPT: pitch diameters at the small end and at the mouth, and effective length', () => {
  it.each(B1_20_1)('%s', (size, small, mouth, engagement, effective) => {
    const { sizes, gauge } = notes(`${size} NPT`);
    expect(sizes!.pitchSmallEnd / 25.4).toBeCloseTo(small, 4);
    expect(sizes!.pitchMouth / 25.4).toBeCloseTo(mouth, 4);
    expect(sizes!.effective / 25.4).toBeCloseTo(effective, 4);
    expect(gauge!.length / 25.4).toBeCloseTo(engagement, 4);
    expect(gauge!.turns).toBe(1);
  });

  it('1-1/2: the stockist prints .402 for the hand-tight length; its own diameters say .420', () => {
    const { sizes, gauge } = notes('1-1/2 NPT');
    const [, mouth] = NPT_PRINTED.find(([size]) => size === '1-1/2-11.5')!;
    // E0 = D - (0.05 D + 1.1) P with D 1.900 and 11.5 threads: 1.79609.
    expect((mouth - 1.79609) * 16).toBeCloseTo(0.42, 3);
    expect(gauge!.length / 25.4).toBeCloseTo(0.42, 9);
    expect(sizes!.pitchSmallEnd / 25.4).toBeCloseTo(1.79609, 5);
  });

  it('1/4-18: the plug makes about four turns to the mouth, give or take one', () => {
    const { gauge, thread } = notes('1/4-18 NPT');
    expect(turnsToMouth(gauge!.length, thread.pitch)).toBeCloseTo(4.1, 2);
    expect(gauge!.travel).toBeCloseTo(thread.pitch, 9);
  });

  it('every size has both drills, the reamed one the smaller', () => {
    for (const size of ['1/16', '1/8', '1/4', '3/8', '1/2', '3/4', '1', '1-1/4', '1-1/2', '2']) {
      const [reamed, straight] = notes(`${size} NPT`).drills;
      expect(reamed?.hole, size).toBe('reamed');
      expect(reamed!.diameter, size).toBeLessThan(straight!.diameter);
      expect(straight!.diameter, size).toBeLessThan(notes(`${size} NPT`).sizes!.pitchMouth);
    }
  });
});

describe('G: listed drills leave the minor diameter in its limits', () => {
  it.each(['1/16', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8', '1', '1-1/4', '1-1/2', '2'])(
    'G%s',
    (size) => {
      const { thread, drills, gauge } = notes(`G${size}`);
      const limits = threadLimits(thread);
      if (!limits.ok) throw new Error(size);
      expect(gauge).toBeNull();
      expect(drills[0]!.diameter).toBeGreaterThanOrEqual(limits.value.minor.min);
      expect(drills[0]!.diameter).toBeLessThanOrEqual(limits.value.minor.max!);
    },
  );
});

describe('Rp and Rc', () => {
  it('Rc1/2: gauge length 8.2 mm, 1 1/4 turns, straight hole 18.25', () => {
    const { gauge, drills, taper } = notes('Rc1/2');
    expect(taper).toBe(true);
    expect(gauge).toMatchObject({ length: 8.2, turns: 1.25 });
    expect(gauge!.travel).toBeCloseTo(2.27, 2);
    expect(drills).toMatchObject([{ diameter: 18.25, hole: 'straight' }]);
  });
  it('the taper takes the smaller drill', () => {
    for (const size of ['1/8', '1/4', '3/8', '1/2', '3/4', '1']) {
      expect(notes(`Rc${size}`).drills[0]!.diameter).toBeLessThan(
        notes(`Rp${size}`).drills[0]!.diameter,
      );
    }
  });
  it('holds nothing for the straight American ones', () => {
    const thread = readThread('1/4 NPSM');
    expect(thread.ok && pipeNotes(thread.value)).toBeNull();
  });
});
