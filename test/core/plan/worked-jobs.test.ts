/**
 * Jobs of Copperfell Works (an invented shop) with the answer an experienced setter expects.
 * Expected values: common practice; depths derived from the chain of pitches; torque ± the model's own
 * band. Every "never" line of a job is a test.
 */
import { describe, expect, it } from 'vitest';
import { planHole, type HolePlan, type HoleRequest, type TapChoice } from '../../../core';
import { WORN } from '../../../core/tap/styles';
import { JOBS, VMC_B } from './jobs';

function plan(request: HoleRequest): HolePlan {
  const outcome = planHole(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const best = (result: HolePlan): TapChoice => {
  const found = result.taps.filter((tap) => tap.verdict === 'best');
  expect(found).toHaveLength(1);
  expect(result.taps[0]).toBe(found[0]);
  return found[0]!;
};
const fitting = (result: HolePlan) => result.taps.filter((tap) => tap.verdict !== 'no');
const codes = (list: { code: string }[]) => list.map((each) => each.code);
const judged = (result: HolePlan, name: string) => {
  const found = result.drills.find((drill) => drill.name === name);
  expect(found, `drill ${name} is judged`).toBeDefined();
  return found!;
};

function expectTorque(tap: TapChoice, expected: number) {
  expect(tap.torque.low).toBeLessThan(expected);
  expect(tap.torque.high).toBeGreaterThan(expected);
  expect(tap.torque.expected / expected).toBeGreaterThan(0.8);
  expect(tap.torque.expected / expected).toBeLessThan(1.2);
}

describe('J1: M6×1-6H, blind, 12 full, 6061, on VMC-B', () => {
  const result = plan(JOBS.J1);
  const tap = best(result);

  it('spiral flute, 2 to 3 threads of chamfer', () => {
    expect([tap.style, tap.chamfer.form, tap.chamfer.threads]).toEqual([
      'spiral-flute',
      'C',
      { min: 2, max: 3 },
    ]);
  });

  it('drill 5.0, 77 % on the shop base', () => {
    expect(result.drill?.diameter).toBeCloseTo(5, 2);
    expect(result.drill?.percent.shop).toBeCloseTo(77, 0);
    expect(judged(result, '5.1').verdict).not.toBe('outside');
  });

  it('shoulder 15.5 to 16.0, tip 14.5 to 15.0', () => {
    expect(tap.depth.nominal.shoulder).toBeCloseTo(15.5, 6);
    expect(tap.depth.shoulder).toBeCloseTo(16, 6);
    expect(tap.depth.nominal.tip).toBeCloseTo(14.5, 6);
    expect(tap.depth.tip).toBeCloseTo(15, 6);
  });

  it('speed, torque and share of the tap', () => {
    expect(result.cycle?.rpmRange.min).toBeCloseTo(640, -1);
    expect(result.cycle?.rpmRange.max).toBeCloseTo(1590, -1);
    expectTorque(tap, 0.6);
    expect(tap.tapShare.sharp).toBeCloseTo(0.09, 1);
    expect(tap.tapShare.worn).toBeCloseTo(0.15, 1);
  });

  it('a form tap in a 5.55 hole also works', () => {
    const form = fitting(result).find((each) => each.style === 'form');
    expect(form?.drill?.diameter).toBeCloseTo(5.55, 6);
  });

  it('never: spiral point, bottoming first when room is plentiful, drill 5.2', () => {
    expect(fitting(result).some((each) => each.style === 'spiral-point')).toBe(false);
    expect(tap.chamfer.class).not.toBe('bottoming');
    expect(judged(result, '5.2').verdict).toBe('outside');
  });
});

describe('J2: M5×0.8 through 3 mm of 304, on VMC-B', () => {
  const result = plan(JOBS.J2);
  const tap = best(result);

  it('spiral point B, drill 4.2, tip 7.4 to 8.2', () => {
    expect([tap.style, tap.chamfer.form]).toEqual(['spiral-point', 'B']);
    expect(result.drill?.diameter).toBeGreaterThanOrEqual(4.15);
    expect(result.drill?.diameter).toBeLessThanOrEqual(4.25);
    expect(tap.depth.nominal.tip).toBeCloseTo(7.4, 6);
    expect(tap.depth.tip).toBeCloseTo(8.2, 6);
  });

  it('190 to 510 rev/min, about 0.8 N·m in thin work', () => {
    expect(result.cycle?.rpmRange.min).toBeCloseTo(190, -1);
    expect(result.cycle?.rpmRange.max).toBeCloseTo(510, -1);
    expectTorque(tap, 0.8);
  });

  it('never without the strength line: 3 mm has no margin under an A2-70 screw', () => {
    expect(codes(result.warnings)).toEqual(
      expect.arrayContaining(['thin-work', 'weak-when-stripped', 'work-hardens']),
    );
    const weak = result.warnings.find((each) => each.code === 'weak-when-stripped')!;
    expect(weak.numbers['ratio']).toBeCloseTo(1, 1);
    expect(codes(result.remedies)).toContain('extruded-or-insert');
  });
});

describe('J3: M12×1.75, blind, 24 full, grey iron, on VMC-A', () => {
  const result = plan(JOBS.J3);
  const tap = best(result);

  it('straight flute C, drill 10.3 preferred for wear', () => {
    expect([tap.style, tap.chamfer.form]).toEqual(['straight-flute', 'C']);
    expect(result.drill?.diameter).toBeCloseTo(10.3, 6);
    expect(result.drill?.percent.shop).toBeCloseTo(74.8, 1);
  });

  it('shoulder 30.1 to 31.0, a dust pocket of about 0.4 D apart from it, tip 28.4 to 29.3', () => {
    expect(tap.depth.nominal.shoulder).toBeCloseTo(30.125, 6);
    expect(tap.depth.shoulder).toBeCloseTo(31, 6);
    expect(tap.chips.neededRoom).toBeCloseTo(4.8, 6);
    expect(tap.depth.nominal.tip).toBeCloseTo(28.375, 6);
    expect(tap.depth.tip).toBeCloseTo(29.25, 6);
  });

  it('9 N·m, 0.11 of the tap, 0.18 worn; dust is said', () => {
    expectTorque(tap, 9);
    expect(tap.tapShare.sharp).toBeCloseTo(0.11, 1);
    expect(tap.tapShare.worn).toBeCloseTo(0.18, 1);
    expect(codes(result.warnings)).toContain('dust');
  });

  it('never: form tap, or spiral point in this blind hole', () => {
    const styles = fitting(result).map((each) => each.style);
    expect(styles).not.toContain('form');
    expect(styles).not.toContain('spiral-point');
  });
});

describe('J4: 9/16-18-2B, blind, .80 in full, 4140 at 30 HRC, on VMC-B', () => {
  const request = JOBS.J4;
  const result = plan(request);
  const tap = best(result);

  it('low-helix spiral flute with 2 to 3 threads, drill 12.8 to 12.9, 81 to 76 % on the shop base', () => {
    expect([tap.style, tap.chamfer.class]).toEqual(['spiral-flute', 'semi-bottoming']);
    expect(codes(tap.reasons)).toContain('low-helix');
    expect(result.drill!.diameter).toBeGreaterThanOrEqual(12.8);
    expect(result.drill!.diameter).toBeLessThanOrEqual(12.9);
    expect(result.drill!.percent.shop).toBeGreaterThanOrEqual(75.5);
    expect(result.drill!.percent.shop).toBeLessThanOrEqual(81.5);
  });

  it('shoulder .994 to 1.022 in, tip .939 to .967 in', () => {
    expect(tap.depth.nominal.shoulder / 25.4).toBeCloseTo(0.994, 3);
    expect(tap.depth.shoulder / 25.4).toBeCloseTo(1.022, 3);
    expect(tap.depth.nominal.tip / 25.4).toBeCloseTo(0.939, 3);
    expect(tap.depth.tip / 25.4).toBeCloseTo(0.967, 3);
  });

  it('110 to 180 rev/min, 11 N·m sharp, .12 of the tap, .20 worn', () => {
    expect(result.cycle?.rpmRange.min).toBeCloseTo(110, -1);
    expect(result.cycle?.rpmRange.max).toBeCloseTo(180, -1);
    expectTorque(tap, 11);
    expect(tap.tapShare.sharp).toBeCloseTo(0.12, 1);
    expect(tap.tapShare.worn).toBeCloseTo(0.2, 1);
  });

  it('worn it takes about 19 N·m, which 30 N·m stands; a spindle of 15 does not', () => {
    expect((tap.spindleShare! * 30 * WORN) / 19).toBeGreaterThan(0.8);
    expect((tap.spindleShare! * 30 * WORN) / 19).toBeLessThan(1.2);
    expect(codes(result.warnings)).not.toContain('spindle-over');
    const weak = { ...VMC_B, torque: 15 };
    expect(codes(plan({ ...request, spindle: weak }).warnings)).toContain('spindle-over');
  });

  it('never: the chart’s 33/64, nor 13.0 without a warning', () => {
    expect(judged(result, '33/64').verdict).toBe('outside');
    expect(judged(result, '13.0').verdict).toBe('risk');
  });
});

describe('J5: M30×3.5 through 45 in 1045, on VMC-B', () => {
  const result = plan(JOBS.J5);

  it('no tap: every one is over the spindle, sharp already', () => {
    expect(result.taps.some((tap) => tap.verdict === 'best')).toBe(false);
    const plug = (style: string) =>
      result.taps.find((tap) => tap.style === style && tap.chamfer.class === 'plug')!;
    expectTorque(plug('spiral-point'), 74);
    expectTorque(plug('straight-flute'), 109);
    expect(plug('spiral-point').spindleShare).toBeCloseTo(2.5, 1);
    expect(plug('straight-flute').spindleShare).toBeCloseTo(3.6, 1);
    expect(codes(result.warnings)).toContain('spindle-over');
  });

  it('a thread mill or a bigger spindle; the drill stands', () => {
    expect(codes(result.remedies)).toEqual(
      expect.arrayContaining(['bigger-spindle', 'thread-mill']),
    );
    expect(fitting(result).map((tap) => tap.style)).toEqual(['thread-mill']);
    expect(result.drill?.diameter).toBeCloseTo(26.5, 6);
  });
});

describe('J6: M10×1.5, blind, 15 full, hole bottom at 16.5, 6061', () => {
  const result = plan(JOBS.J6);
  const flute = (name: string) =>
    result.taps.find((tap) => tap.style === 'spiral-flute' && tap.chamfer.class === name)!;

  it('not as drawn by any machine tap', () => {
    expect(result.taps.some((tap) => tap.verdict === 'best')).toBe(false);
    expect(fitting(result).every((tap) => tap.style === 'thread-mill')).toBe(true);
  });

  it('says how much full thread each chamfer yields', () => {
    expect(flute('semi-bottoming').depth.fullThread).toBeCloseTo(10.5, 6);
    expect(flute('semi-bottoming').depth.nominal.fullThread).toBeCloseTo(11.25, 6);
    expect(flute('bottoming').depth.fullThread).toBeCloseTo(12, 6);
    expect(flute('bottoming').depth.nominal.fullThread).toBeCloseTo(12.375, 6);
  });

  it('offers, cheapest first: deeper to 21.0, 12 mm, by hand, thread mill, relief groove', () => {
    expect(codes(result.remedies).slice(0, 5)).toEqual([
      'deeper-hole',
      'shorter-thread',
      'finish-by-hand',
      'thread-mill',
      'relief-groove',
    ]);
    const numbers = (code: string) => result.remedies.find((each) => each.code === code)!.numbers;
    expect(numbers('deeper-hole')['to']).toBeCloseTo(21, 6);
    expect(numbers('shorter-thread')['to']).toBeCloseTo(12, 6);
    expect(numbers('shorter-thread')['strength']).toBeCloseTo(1.15, 2);
    expect(numbers('finish-by-hand')['to']).toBeCloseTo(13.9, 1);
    expect(numbers('finish-by-hand')['toNominal']).toBeCloseTo(14.25, 1);
    expect(numbers('thread-mill')['to']).toBeCloseTo(15, 6);
  });

  it('never: a bottoming tap that "fits"', () => {
    expect(flute('bottoming').verdict).toBe('no');
  });
});

describe('J7: M12×1.75-LH through 20 in 1045, on VMC-A', () => {
  const result = plan(JOBS.J7);
  const tap = best(result);

  it('left-hand spiral point B; tip 29.6 to 31.4', () => {
    expect([tap.style, tap.chamfer.form, tap.hand]).toEqual(['spiral-point', 'B', 'left']);
    expect(tap.chips.goes).toBe('ahead');
    expect(tap.depth.nominal.tip).toBeCloseTo(29.625, 6);
    expect(tap.depth.tip).toBeCloseTo(31.375, 6);
    expectTorque(tap, 8);
    expect(codes(result.warnings)).toContain('left-hand');
  });

  it('never: a right-hand tap', () => {
    expect(fitting(result).every((each) => each.hand === 'left')).toBe(true);
  });
});
