/** How far a tap goes through. M5×0.8 in 3 mm of sheet with form B: mechanics' own worked case, 8.2 mm at the longest. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PAST_PITCHES, throughReach } from '../../../core/hole/through';

const M5 = { pitch: 0.8, chamferThreads: 5.5, centre: 0 };
const sheet = (clearBelow: number, centre = 0) =>
  throughReach({ thickness: 3, clearBelow }, { ...M5, centre });

describe('a tap through the work', () => {
  it('goes its whole chamfer and a pitch past the far face', () => {
    const { tip, past, short, fullThread } = sheet(Infinity);
    expect(tip).toBeCloseTo(8.2, 9);
    expect(past).toBeCloseTo((5.5 + PAST_PITCHES) * 0.8, 9);
    expect([short, fullThread]).toEqual([0, 3]);
  });

  it('a male centre goes ahead of it', () => {
    expect(sheet(Infinity, 2).tip).toBeCloseTo(10.2, 9);
  });

  it.each([
    ['room to spare', 6, 0, 3],
    ['just enough', 5.2, 0, 3],
    ['a millimetre too little costs a millimetre of thread', 4.2, 1, 2],
    ['no room at all, and the sheet thinner than the chamfer', 0, 5.2, 0],
  ])('%s', (_, clearBelow, short, fullThread) => {
    const reach = sheet(clearBelow);
    expect(reach.short).toBeCloseTo(short, 9);
    expect(reach.fullThread).toBeCloseTo(fullThread, 9);
  });

  it('thread lost and room missing are one length, as long as any thread is left', () => {
    const work = fc.record({
      thickness: fc.double({ min: 1, max: 80, noNaN: true }),
      clearBelow: fc.double({ min: 0, max: 30, noNaN: true }),
    });
    fc.assert(
      fc.property(work, (hole) => {
        const { short, fullThread } = throughReach(hole, M5);
        expect(fullThread).toBeCloseTo(Math.max(0, hole.thickness - short), 9);
        expect(fullThread).toBeLessThanOrEqual(hole.thickness);
      }),
    );
  });
});
