/** Rulings an experienced setter would give, one hole at a time. Common practice; numbers derived from the plan's own chain. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planHole, REMEDY_CODES, type HolePlan, type HoleRequest } from '../../../core';
import { MATERIAL_IDS } from '../../../core/material/material';
import { peakTorque } from '../../../core/load/torque';
import { findMaterial } from '../../../core/material/table';

function plan(request: HoleRequest): HolePlan {
  const outcome = planHole(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const codes = (list: { code: string }[]) => list.map((each) => each.code);
const blind = { kind: 'blind' } as const;

describe('chips', () => {
  const hole = (clearBelow?: number) =>
    ({ kind: 'through', thickness: 20, ...(clearBelow !== undefined && { clearBelow }) }) as const;
  const best = (shape: HoleRequest['hole']) =>
    plan({ thread: 'M8', fullThread: 8, hole: shape, material: 'steel-medium' }).taps[0]!;

  it('a hole closed from below is a blind one to its chips: they are drawn back', () => {
    expect(best(hole()).style).toBe('spiral-point');
    expect(best(hole(30)).style).toBe('spiral-point');
    expect(best(hole(0)).style).toBe('spiral-flute');
  });

  it('unless there is room for them between the nose and what stands below', () => {
    const deep = { kind: 'through', thickness: 60, clearBelow: 0 } as const;
    expect(best(deep).style).toBe('spiral-point');
  });
});

describe('speed', () => {
  it('depth never slows a tap below the speed at which stainless work-hardens', () => {
    for (const fullThread of [9, 13, 17, 20, 24, 30]) {
      const { cycle } = plan({
        thread: 'M6',
        fullThread,
        hole: blind,
        material: 'stainless-austenitic',
      });
      expect((Math.PI * 6 * cycle!.rpm) / 1000).toBeGreaterThanOrEqual(3);
    }
  });

  it('what the spindle cannot turn is not asked of it', () => {
    const spindle = { drive: 'synchronous', maxRpm: 100 } as const;
    const { cycle } = plan({
      thread: 'M6',
      fullThread: 24,
      hole: blind,
      material: 'stainless-austenitic',
      spindle,
    });
    expect(cycle!.rpm).toBe(100);
  });
});

describe('remedies', () => {
  it('a tap that breaks sharp is not saved by changing it early, but by a larger hole or a mill', () => {
    const found = plan({ thread: 'M2', fullThread: 4, hole: blind, material: 'nickel' });
    expect(codes(found.warnings)).toContain('tap-will-break');
    expect(codes(found.remedies)).toEqual(['larger-hole', 'thread-mill', 'next-size-or-finer']);
  });

  it('a form tap near its strength is changed early too', () => {
    const found = plan({
      thread: 'M1.6',
      fullThread: 3,
      hole: blind,
      material: 'stainless-austenitic',
    });
    expect(found.taps[0]!.style).toBe('form');
    expect(codes(found.warnings)).toContain('tap-share-high');
    expect(codes(found.remedies)).toContain('change-tap-early');
  });

  it('the dearer never stands before the cheaper, whatever is wrong with the hole', () => {
    const found = plan({
      thread: 'M8',
      fullThread: 12,
      hole: { kind: 'blind', limit: { at: 'shoulder', depth: 13 } },
      material: 'al-cast',
      spindle: { drive: 'synchronous', torque: 0.5 },
    });
    const order = codes(found.remedies);
    const before = (cheap: string, dear: string) =>
      expect(order.indexOf(cheap)).toBeLessThan(order.indexOf(dear));
    before('deeper-hole', 'shorter-thread');
    before('finish-by-hand', 'thread-mill');
    before('bigger-spindle', 'relief-groove');
    before('longer-engagement', 'through-hole');
    expect(order.every((code) => (REMEDY_CODES as readonly string[]).includes(code))).toBe(true);
  });

  it('hardened steel is tapped before it is hardened; neither hand nor spindle helps', () => {
    const found = plan({
      thread: 'M8',
      fullThread: 12,
      hole: { kind: 'blind', limit: { at: 'shoulder', depth: 13 } },
      material: 'steel-hard',
      spindle: { drive: 'synchronous', torque: 2 },
    });
    const order = codes(found.remedies);
    expect(order.slice(0, 2)).toEqual(['tap-before-hardening', 'deeper-hole']);
    expect(order).toContain('thread-mill');
    expect(order).not.toContain('finish-by-hand');
    expect(order).not.toContain('bigger-spindle');
  });

  it('boring is offered only where no stocked drill passes, reaming where the drill may cut large', () => {
    const risky = plan({ thread: 'M12x1-4H', fullThread: 18, hole: blind, material: 'steel-low' });
    expect(risky.drill?.verdict).toBe('risk');
    expect(codes(risky.remedies)).toContain('ream-to-size');
    expect(codes(risky.remedies)).not.toContain('bore-or-ream');
    const none = plan({
      thread: '7/8-14-3B',
      fullThread: 25,
      hole: blind,
      material: 'steel-alloy',
    });
    expect(none.drill).toBeNull();
    expect(codes(none.remedies)).toContain('bore-or-ream');
    const plenty = plan({ thread: 'M6', fullThread: 9, hole: blind, material: 'steel-low' });
    expect(codes(plenty.remedies)).not.toContain('bore-or-ream');
  });
});

describe('what cannot be', () => {
  it('a coating that varies more than the class allows leaves no hole, so no tap is best', () => {
    const found = plan({
      thread: 'M6',
      fullThread: 9,
      hole: blind,
      material: 'steel-low',
      coating: { thickness: [0, 0.2] },
    });
    expect(found.drill).toBeNull();
    expect(found.taps.some(({ verdict }) => verdict === 'best')).toBe(false);
    expect(codes(found.remedies)).not.toContain('bore-or-ream');
  });

  it('a web as thick as the tap is refused', () => {
    const web = (tapWeb: number) =>
      planHole({ thread: 'M6', hole: blind, material: 'steel-low', tapWeb });
    expect(web(2.5).ok).toBe(true);
    const refused = web(6);
    expect(!refused.ok && refused.problems).toEqual([
      { code: 'web-out-of-range', field: 'tapWeb', data: { typed: '6' } },
    ]);
  });
});

it('torque is reckoned on the drill as named; the oversize it cuts lies within the band', () => {
  const found = plan({ thread: 'M10x1.5', fullThread: 15, hole: blind, material: 'steel-medium' });
  const straight = found.taps.find(
    ({ style, chamfer }) => style === 'straight-flute' && chamfer.class === 'semi-bottoming',
  )!;
  const at = (hole: number) =>
    peakTorque({
      major: 10,
      pitch: 1.5,
      hole,
      material: findMaterial('steel-medium')!,
      flutes: 4,
      threads: 2.5,
      fullThread: 15,
      thickness: Infinity,
    });
  expect(straight.torque.expected).toBeCloseTo(at(found.drill!.diameter), 9);
  expect(at(found.drill!.likely)).toBeGreaterThan(straight.torque.low);
});

it('of any two taps that fit, the rejected never stands first, and a mill is never best', () => {
  const thread = fc.constantFrom('M2', 'M5', 'M10', 'M24', '#6-32', '1/4-20', '1/2 NPT', 'G3/8');
  const hole = fc.oneof(
    fc.double({ min: 3, max: 60, noNaN: true }).map((depth) => ({
      kind: 'blind' as const,
      limit: { at: 'shoulder' as const, depth },
    })),
    fc.double({ min: 1, max: 40, noNaN: true }).map((thickness) => ({
      kind: 'through' as const,
      thickness,
      clearBelow: thickness / 3,
    })),
  );
  const torque = fc.double({ min: 0.2, max: 200, noNaN: true });
  fc.assert(
    fc.property(
      thread,
      hole,
      fc.constantFrom(...MATERIAL_IDS),
      torque,
      (name, shape, metal, at) => {
        const outcome = planHole({
          thread: name,
          hole: shape,
          material: metal,
          spindle: { drive: 'synchronous', torque: at },
        });
        if (!outcome.ok) return;
        const { taps, warnings } = outcome.value;
        const verdicts = taps.map(({ verdict }) => verdict);
        const firstNo = verdicts.indexOf('no');
        if (firstNo >= 0) expect(verdicts.slice(firstNo).every((each) => each === 'no')).toBe(true);
        for (const tap of taps) {
          if (tap.process === 'mill') expect(tap.verdict).not.toBe('best');
          else if (tap.verdict !== 'no') expect(1.65 * tap.torque.expected).toBeLessThanOrEqual(at);
          if (tap.verdict === 'best' && tap.tapShare.worn > 1) {
            expect(warnings.some(({ code }) => code === 'tap-will-break')).toBe(true);
          }
        }
      },
    ),
    { numRuns: 400 },
  );
}, 30_000);
