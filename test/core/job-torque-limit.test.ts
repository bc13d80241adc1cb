import { describe, expect, it } from 'vitest';
import { torqueLimit } from '../../core/job/torque-limit';

const tap = (expected: number, sharp: number) => ({
  torque: { low: expected / 1.4, expected, high: expected * 1.4 },
  tapShare: { sharp, worn: 1.65 * sharp },
});

/** Common practice: let go at 1.5 to 2 times the sharp torque, never above half of what breaks the tap. */
describe('torque limit for a clutch or load monitor', () => {
  it('is 1.5 to 2 times the sharp torque when the tap is strong', () => {
    expect(torqueLimit(tap(4, 0.1))).toEqual({ low: 6, high: 8 });
  });

  it('never passes half of the breaking torque', () => {
    const limit = torqueLimit(tap(4, 0.3));
    expect(limit?.low).toBeCloseTo(6, 9);
    expect(limit?.high).toBeCloseTo(4 / 0.3 / 2, 9);
  });

  it('has nothing to offer when sharp torque is already half of what breaks the tap', () => {
    expect(torqueLimit(tap(4, 0.5))).toBeNull();
  });

  it('has nothing to offer where no torque is planned', () => {
    expect(torqueLimit(tap(0, 0))).toBeNull();
  });
});
