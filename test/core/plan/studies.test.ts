/** The blind hole and the chip room, asked by a thread's name. Expected depths: derived, and common practice. */
import { describe, expect, it } from 'vitest';
import { planHole } from '../../../core';
import { blindStudy, type BlindQuestion } from '../../../core/plan/blind-study';
import { chipStudy, type ChipQuestion } from '../../../core/plan/chip-study';

const FORM_C = { min: 2, max: 3 };
const base = { drive: 'synchronous', centre: 0, pointAngle: 118 } as const;

const blind = (question: Omit<BlindQuestion, keyof typeof base> & Partial<BlindQuestion>) => {
  const outcome = blindStudy({ ...base, ...question });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

describe('a blind hole', () => {
  it('M6×1, 12 full, 2–3 threads: shoulder 16.0, point 17.5 with a 5.0 drill, tap to 15.0', () => {
    const { promised, middle, drill } = blind({ thread: 'M6x1', fullThread: 12, chamfer: FORM_C });
    expect(drill?.diameter).toBe(5);
    expect(promised.shoulder).toBeCloseTo(16, 9);
    expect(promised.point).toBeCloseTo(16 + 0.3 * 5, 1);
    expect(promised.tip).toBeCloseTo(15, 9);
    expect(middle.shoulder).toBeCloseTo(15.5, 9);
    expect(middle.tip).toBeCloseTo(14.5, 9);
  });

  it('agrees with the plan for every class of a spiral-flute tap', () => {
    const plan = planHole({
      thread: '9/16-18 UNF-2B',
      fullThread: 20.32,
      hole: { kind: 'blind' },
      material: 'steel-low',
    });
    if (!plan.ok) throw new Error('not planned');
    const { classes } = blind({ thread: '9/16-18 UNF-2B', fullThread: 20.32, chamfer: FORM_C });
    expect(classes).toHaveLength(4);
    for (const { chamfer, promised, middle } of classes) {
      const { depth } = plan.value.taps.find(
        (tap) => tap.style === 'spiral-flute' && tap.chamfer.class === chamfer.class,
      )!;
      expect(promised.shoulder).toBeCloseTo(depth.shoulder, 9);
      expect(promised.point).toBeCloseTo(depth.point, 9);
      expect(promised.tip).toBeCloseTo(depth.tip, 9);
      expect(promised.roomInPitches).toBeCloseTo(depth.roomInPitches, 9);
      expect(middle.shoulder).toBeCloseTo(depth.nominal.shoulder, 9);
    }
  });

  it('M10×1.5 to a floor at 16.5: 10.5 certain with form C, 13.9 finished by hand with form F', () => {
    const cover = { thread: 'M10x1.5', shoulder: 16.5 };
    expect(blind({ ...cover, chamfer: FORM_C }).promised.fullThread).toBeCloseTo(10.5, 9);
    const hand = blind({ ...cover, chamfer: { min: 1, max: 1.5 }, drive: 'hand', finishing: true });
    expect(hand.promised.fullThread).toBeCloseTo(13.9, 1);
  });

  it('asked for the chamfer, says which classes fit for certain', () => {
    const found = blind({ thread: 'M10x1.5', fullThread: 15, shoulder: 20.25 });
    expect(found.result).toMatchObject({ asked: 'chamfer', threads: 2.5 });
    expect(found.fits.map(({ fits }) => fits)).toEqual(['no', 'no', 'some', 'sure']);
    expect(found.promised.nose).toBeCloseTo(15 + 2.5 * 1.5, 9);
    expect(found.classes).toEqual([]);
  });

  it('a floating head asks for two pitches more', () => {
    const rigid = blind({ thread: 'M8', fullThread: 16, chamfer: FORM_C });
    const floating = blind({ thread: 'M8', fullThread: 16, chamfer: FORM_C, drive: 'floating' });
    expect(floating.promised.shoulder - rigid.promised.shoulder).toBeCloseTo(2 * 1.25, 9);
  });

  it('refuses a thread it cannot read, a thread as deep as its hole, a drill point of 20°', () => {
    const code = (question: Partial<BlindQuestion>) => {
      const outcome = blindStudy({ ...base, thread: 'M8', ...question });
      return outcome.ok ? 'ok' : outcome.problems[0]!.code;
    };
    expect(code({ fullThread: 16, shoulder: 17 })).toBe('no-room');
    expect(code({ fullThread: 16, chamfer: FORM_C, pointAngle: 20 })).toBe(
      'drill-point-out-of-range',
    );
    expect(code({ thread: 'bolt', fullThread: 16, chamfer: FORM_C })).not.toBe('ok');
  });
});

describe('chip room', () => {
  const M10: ChipQuestion = {
    thread: 'M10x1.5',
    fullThread: 20,
    shoulder: 30,
    chamfer: 'plug',
    material: 'steel-medium',
    pointAngle: 118,
  };
  const chips = (question: Partial<ChipQuestion>) => {
    const outcome = chipStudy({ ...M10, ...question });
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    return outcome.value;
  };

  it('20 mm of M10×1.5 remove 177 mm³; long chips want 5.4 diameters of free hole', () => {
    const found = chips({});
    expect(found.hole).toBe(8.5);
    expect(found.tip).toBeCloseTo(20 + 5.5 * 1.5, 9);
    expect(found.fit.solid).toBeCloseTo(177, 0);
    expect(found.bulk).toBe('long');
    expect(Math.abs(found.own.needed / 10 - 5.4)).toBeLessThan(0.15);
    expect(found.own.fits).toBe(false);
    expect(chips({ shoulder: found.shoulderNeeded + 1e-6 }).own.fits).toBe(true);
  });

  it('agrees with the room the plan asks for, below the same tap', () => {
    const plan = planHole({
      thread: M10.thread,
      fullThread: 20,
      hole: { kind: 'blind', limit: { at: 'shoulder', depth: 30 } },
      material: M10.material,
    });
    if (!plan.ok) throw new Error('not planned');
    const tap = plan.value.taps.find(
      (each) => each.style === 'spiral-point' && each.chamfer.class === 'plug',
    )!;
    expect(chips({}).own.needed).toBeCloseTo(tap.chips.neededRoom, 9);
  });

  it('says when the tap itself does not reach', () => {
    expect(chips({ shoulder: 26 }).short).toBeCloseTo(28.25 - 26, 9);
    expect(chips({}).short).toBe(0);
  });

  it('iron packs short, 30 HRC steel medium', () => {
    expect(chips({ material: 'iron-grey' }).bulk).toBe('short');
    expect(chips({ material: 'steel-alloy-30hrc' }).bulk).toBe('medium');
  });

  it('refuses a thread deeper than its hole', () => {
    const outcome = chipStudy({ ...M10, shoulder: 18 });
    expect(outcome).toMatchObject({ ok: false, problems: [{ code: 'thread-deeper-than-hole' }] });
  });
});
