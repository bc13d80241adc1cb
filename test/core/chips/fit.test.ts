import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bulkCurve, bulkOf, chipFit, type ChipFitInput } from '../../../core/chips/fit';
import { FILL_LIMIT, LOOSE_BULKING, PACKED_BULKING } from '../../../core/chips/room';

const M10: ChipFitInput = {
  major: 10,
  pitch: 1.5,
  hole: 8.5,
  fullThread: 20,
  free: 1.5,
  pointAngle: 118,
};

describe('M10×1.5, hole 8.5, 20 mm of full thread [derived; bulking an estimate]', () => {
  const found = chipFit(M10);
  const of = (bulk: string) => found.packed.find((each) => each.bulk === bulk)!;

  it('177 mm³ of metal become about 1400 mm³ of medium chips', () => {
    expect(found.solid).toBeCloseTo(177, 0);
    expect(of('medium').volume / 1400).toBeCloseTo(1, 1);
  });

  it('short, medium and long chips want 1.8, 3.6 and 5.4 diameters of free hole', () => {
    // Printed to one decimal; the cone's room, counted here, is worth 0.085 of a diameter.
    const diameters = (bulk: string) => of(bulk).needed / 10;
    expect(Math.abs(diameters('short') - 1.8)).toBeLessThan(0.15);
    expect(Math.abs(diameters('medium') - 3.6)).toBeLessThan(0.15);
    expect(Math.abs(diameters('long') - 5.4)).toBeLessThan(0.15);
  });

  it('a tap that stops a pitch short of the shoulder has room for none of them', () => {
    expect(found.packed.map(({ fits }) => fits)).toEqual([false, false, false]);
    for (const { deeper, needed } of found.packed) expect(deeper).toBeCloseTo(needed - 1.5, 9);
  });

  it('room is the bore and a third of its cone: 85.1 + 48.3 mm³', () => {
    expect(found.room).toBeCloseTo(((Math.PI * 8.5 ** 2) / 4) * (1.5 + 2.5537 / 3), 1);
  });
});

const input = fc.record({
  major: fc.double({ min: 2, max: 60, noNaN: true }),
  share: fc.double({ min: 0.04, max: 0.2, noNaN: true }),
  depth: fc.double({ min: 0.5, max: 4, noNaN: true }),
  free: fc.double({ min: -2, max: 8, noNaN: true }),
  pointAngle: fc.double({ min: 60, max: 180, noNaN: true }),
});

const toInput = ({
  major,
  share,
  depth,
  free,
  pointAngle,
}: Record<string, number>): ChipFitInput => ({
  major: major!,
  pitch: share! * major!,
  hole: major! * (1 - share!),
  fullThread: depth! * major!,
  free: free! * major!,
  pointAngle: pointAngle!,
});

describe('the limit', () => {
  it('free bore of just what the chips want is enough', () => {
    for (const { bulk, needed } of chipFit(M10).packed) {
      const after = chipFit({ ...M10, free: needed }).packed.find((each) => each.bulk === bulk)!;
      expect([after.fits, after.deeper]).toEqual([true, 0]);
      const short = chipFit({ ...M10, free: needed - 0.01 }).packed;
      expect(short.find((each) => each.bulk === bulk)!.fits).toBe(false);
    }
  });

  it('a nose below the shoulder is short of its own depth too', () => {
    const [short] = chipFit({ ...M10, free: -2 }).packed;
    expect(short!.deeper).toBeCloseTo(short!.needed + 2, 9);
  });
});

describe('any hole', () => {
  it('drilled as much deeper as it says, the chips just fit', () => {
    fc.assert(
      fc.property(input, (each) => {
        const asked = toInput(each);
        for (const { bulk, deeper, volume } of chipFit(asked).packed) {
          const after = chipFit({ ...asked, free: asked.free + deeper });
          const then = after.packed.find((one) => one.bulk === bulk)!;
          expect(volume).toBeLessThanOrEqual(FILL_LIMIT * after.room * (1 + 1e-6));
          expect(then.deeper).toBeLessThan(1e-6 * asked.major);
        }
      }),
    );
  });

  it('the tighter the chips pack, the less they want; numbers stay finite', () => {
    fc.assert(
      fc.property(input, (each) => {
        const { packed, solid, room } = chipFit(toInput(each));
        expect([solid, room].every(Number.isFinite)).toBe(true);
        const needs = packed.map(({ needed }) => needed);
        expect(needs.every(Number.isFinite)).toBe(true);
        expect([...needs].sort((a, b) => a - b)).toEqual(needs);
      }),
    );
  });
});

describe('materials', () => {
  it('dust and needles pack like short chips', () => {
    expect([bulkOf('powder'), bulkOf('needles'), bulkOf('short')]).toEqual(Array(3).fill('short'));
    expect([bulkOf('medium'), bulkOf('long')]).toEqual(['medium', 'long']);
  });
});

describe('the curve of need against bulk', () => {
  it('passes through the packed values and rises evenly', () => {
    const curve = bulkCurve(M10, 4, 12, 2);
    const needs = chipFit(M10).packed.map(({ needed }) => needed);
    expect(curve.map(({ factor }) => factor)).toEqual([4, 8, 12]);
    curve.forEach(({ needed }, index) => expect(needed).toBeCloseTo(needs[index]!, 9));
  });

  it('packed factors lie at or below those of loose chips (chip-conveyor guide)', () => {
    expect(PACKED_BULKING.short).toBeGreaterThanOrEqual(LOOSE_BULKING.fine.min);
    expect(PACKED_BULKING.medium).toBeLessThanOrEqual(LOOSE_BULKING.broken.max);
    expect(PACKED_BULKING.long).toBeLessThanOrEqual(LOOSE_BULKING.coils.max);
  });
});
