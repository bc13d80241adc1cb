/**
 * Pipe threads planned. Drills: the lists of the trade (1/4 NPT without a reamer 7/16, ISO 228 G1/4 11.8, ISO 7 Rc1/4
 * 11.2: common practice, from memory of handbook pages). Depths derived from the gauge: ASME B1.20.1 L1 and L3,
 * ISO 7-1 gauge length, from memory.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planHole, type HolePlan, type HoleRequest } from '../../../core';
import { MATERIAL_IDS } from '../../../core/material/material';
import { taperFactor, taperPipe } from '../../../core/plan/taper';
import { readThread } from '../../../core';

function plan(request: HoleRequest): HolePlan {
  const outcome = planHole(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const blind = { kind: 'blind' } as const;
const codes = (list: { code: string }[]) => list.map((each) => each.code);
const of = (thread: string, more: Partial<HoleRequest> = {}) =>
  plan({ thread, hole: blind, material: 'iron-grey', ...more });

describe('taper pipe threads', () => {
  it.each([
    ['1/16 NPT', 'D'],
    ['1/8 NPT', 'R'],
    ['1/4 NPT', '7/16'],
    ['3/8-18 NPTF', '37/64'],
    ['1/2 NPT', '23/32'],
    ['3/4 NPT', '59/64'],
    ['1 NPT', '1-5/32'],
    ['2 NPT', '2-7/32'],
    ['Rc1/8', '8.4'],
    ['Rc1/4', '11.2'],
    ['Rc1', '30.0'],
  ])('%s is drilled as the list has it, %s, without limits and with the warning', (name, drill) => {
    const found = of(name);
    expect(found.limits).toBeNull();
    expect(found.drill?.name).toBe(drill);
    expect(codes(found.warnings)).toContain('taper-pipe');
    expect(codes(found.assumptions)).toContain('pipe-hole-straight');
    expect(codes(found.warnings)).not.toContain('minor-limit-unknown');
  });

  it('a drill one turn of the gauge away serves; two do not', () => {
    const metric = of('1/4 NPT', { stockedDrills: ['metric'] });
    expect(metric.drill?.name).toBe('11.1');
    const letters = of('1/4 NPT', { stockedDrills: ['letter'] });
    expect(letters.drill).toBeNull();
    expect(codes(letters.remedies)).toContain('bore-or-ream');
    const bore = letters.remedies.find(({ code }) => code === 'bore-or-ream')!;
    expect((bore.numbers['min']! + bore.numbers['max']!) / 2).toBeCloseTo((7 / 16) * 25.4, 6);
  });

  it('is as deep as the gauge and the wrench want: L1 and three turns', () => {
    const spot = of('1/4 NPT').taps[0]!.depth.fullThread / 25.4;
    expect(spot).toBeCloseTo(0.2278 + 3 / 18, 4);
    // L2 = (0.80 D + 6.8) P, the effective thread of the pipe, is near to it: 0.4018 in.
    expect(spot).toBeCloseTo((0.8 * 0.54 + 6.8) / 18, 1);
    expect(of('Rc1/2').taps[0]!.depth.fullThread).toBeCloseTo(8.2 + 3 * (25.4 / 14), 3);
  });

  it('never runs a taper tap through: it stops at its gauge, whatever is below', () => {
    const hole = { kind: 'through', thickness: 30, clearBelow: 0 } as const;
    const found = of('1/2 NPT', { hole });
    const best = found.taps[0]!;
    expect(best.verdict).toBe('best');
    expect(best.depth.tip).toBeLessThan(30);
    expect(found.taps.every(({ depth }) => depth.fullThread < 15)).toBe(true);
    expect(codes(found.warnings)).not.toContain('below-clearance');
  });

  it('neither forms one nor points it', () => {
    for (const material of MATERIAL_IDS) {
      const { taps } = of('3/8 NPT', { material });
      const wrong = taps.filter(({ style }) => style === 'form' || style === 'spiral-point');
      expect(wrong.every(({ verdict }) => verdict === 'no')).toBe(true);
    }
  });

  it('turns harder than the parallel model: the threads behind the chamfer go on cutting', () => {
    const groove = { major: 13.6, pitch: 25.4 / 18, hole: 11.36 };
    const steel = { kc11: 1600, mc: 0.25 };
    expect(taperFactor(groove, steel, 4, 0)).toBeCloseTo(1, 6);
    expect(taperFactor(groove, steel, 4, 10)).toBeGreaterThan(1.1);
    expect(taperFactor(groove, steel, 4, 10)).toBeLessThan(1.5);
  });

  it('sizes at the mouth follow ASME B1.20.1: E1 of 1/4 is .49163 in', () => {
    const read = readThread('1/4 NPT');
    const taper = read.ok ? taperPipe(read.value)! : null;
    expect((taper!.major + taper!.minor) / 2 / 25.4).toBeCloseTo(0.49163, 4);
  });
});

describe('parallel pipe threads', () => {
  it.each([
    ['G1/8', '8.7'],
    ['G1/4', '11.75'],
    ['G3/8', '15.25'],
    ['G1/2', '19.0'],
    ['G3/4', '24.25'],
    ['G1', '30.75'],
    ['Rp1/4', '11.4'],
    ['Rp1/2', '18.5'],
  ])('%s: %s, the listed drill or the nearest that is sure to stay inside', (name, drill) => {
    for (const material of ['al-wrought', 'iron-grey', 'stainless-austenitic'] as const) {
      const found = of(name, { material });
      expect(found.drill?.name).toBe(drill);
      const { min, max } = found.limits!.minor;
      expect(found.drill!.diameter).toBeGreaterThanOrEqual(min);
      expect(found.drill!.diameter).toBeLessThanOrEqual(max!);
      if (found.drill!.verdict === 'risk') {
        expect(codes(found.warnings)).toContain('drill-at-risk');
        expect(codes(found.remedies)).not.toContain('bore-or-ream');
      }
    }
  });

  it('Rp is as deep as its gauge and the wrench want; the straight NPSM is not held', () => {
    expect(of('Rp1/4').taps[0]!.depth.fullThread).toBeCloseTo(6 + 3 * (25.4 / 19), 3);
    const refused = planHole({ thread: '1/4 NPSM', hole: blind, material: 'brass-free' });
    expect(!refused.ok && codes(refused.problems)).toEqual(['no-limits-held']);
  });
});

function everyNumber(value: unknown): void {
  if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
  else if (value && typeof value === 'object') Object.values(value).forEach(everyNumber);
}

it('any pipe thread, material and hole: finite numbers, promises kept', () => {
  const sizes = [
    '1/16',
    '1/8',
    '1/4',
    '3/8',
    '1/2',
    '3/4',
    '1',
    '1-1/4',
    '1-1/2',
    '2',
    '2-1/2',
    '4',
  ];
  const thread = fc
    .tuple(fc.constantFrom('G', 'Rp', 'Rc', 'NPT', 'NPTF'), fc.constantFrom(...sizes))
    .map(([form, size]) => (form.startsWith('N') ? `${size} ${form}` : `${form}${size}`));
  const depth = fc.double({ min: 2, max: 80, noNaN: true });
  const hole = fc.oneof(
    fc.constant(blind),
    depth.map((at) => ({ kind: 'blind', limit: { at: 'shoulder', depth: at } }) as const),
    fc
      .tuple(depth, fc.option(depth, { nil: undefined }))
      .map(([thickness, clearBelow]) => ({ kind: 'through', thickness, clearBelow }) as const),
  );
  fc.assert(
    fc.property(thread, hole, fc.constantFrom(...MATERIAL_IDS), (name, shape, material) => {
      const outcome = planHole({ thread: name, hole: shape as HoleRequest['hole'], material });
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
      everyNumber(outcome);
      for (const { depth: reach, torque, process } of outcome.value.taps) {
        const floor =
          shape.kind === 'through'
            ? shape.thickness + (shape.clearBelow ?? Infinity)
            : 'limit' in shape
              ? shape.limit.depth
              : Infinity;
        expect(reach.tip).toBeLessThanOrEqual(floor + 1e-9);
        if (process === 'cut') expect(torque.high / torque.low).toBeLessThanOrEqual(2.2);
      }
    }),
    { numRuns: 300 },
  );
}, 30_000);
