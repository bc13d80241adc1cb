/** What must rise when something rises, and in which units: by trial over many threads, and by scaling. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planHole, type HoleRequest } from '../../../core';
import { formHoleFactor } from '../../../core/load/forming';
import {
  grooveGeometry,
  heaviestToothLoad,
  peakTorque,
  THINNEST_CHIP,
  toothGeometry,
  type CuttingTorqueInput,
} from '../../../core/load/torque';
import { fluteDuty } from '../../../core/chips/duty';
import { MATERIALS } from '../../../core/material/table';
import { twistOff } from '../../../core/tap/twist';

const material = fc.constantFrom(...MATERIALS);
/** Pitch as a share of the diameter, and height of thread as a share of the pitch, as threads have them. */
const job = fc
  .record({
    major: fc.double({ min: 1.6, max: 64, noNaN: true }),
    coarse: fc.double({ min: 0.06, max: 0.24, noNaN: true }),
    height: fc.double({ min: 0.4, max: 0.6, noNaN: true }),
    threads: fc.double({ min: 1.25, max: 9, noNaN: true }),
    depth: fc.double({ min: 0.3, max: 3, noNaN: true }),
    flutes: fc.integer({ min: 2, max: 5 }),
    material,
  })
  .map(({ coarse, height, depth, ...rest }): CuttingTorqueInput => {
    const pitch = coarse * rest.major;
    const fullThread = depth * rest.major;
    const hole = rest.major - 2 * height * pitch;
    return { ...rest, pitch, hole, fullThread, thickness: fullThread };
  });

const atLeast = (more: number, less: number) =>
  expect(more).toBeGreaterThanOrEqual(less * (1 - 1e-12));

describe('torque rises with what makes it rise', () => {
  it('with the metal, the thread’s height, its depth and its thickness; never with a larger hole', () => {
    fc.assert(
      fc.property(job, fc.double({ min: 1.001, max: 1.5, noNaN: true }), (input, more) => {
        const torque = peakTorque(input);
        expect(torque).toBeGreaterThan(0);
        const tougher = { ...input.material, kc11: input.material.kc11 * more };
        expect(peakTorque({ ...input, material: tougher }) / torque).toBeCloseTo(more, 9);
        const hole = input.hole + (input.major - input.hole) * (1 - 1 / more);
        atLeast(torque, peakTorque({ ...input, hole }));
        atLeast(peakTorque({ ...input, fullThread: input.fullThread * more }), torque);
        atLeast(peakTorque({ ...input, thickness: input.thickness * more }), torque);
      }),
    );
  });

  it('a plan’s worn torque is above its sharp one, and its band holds both sides, for every tap', () => {
    const request = fc.record({
      thread: fc.constantFrom('M3', 'M6', 'M10', 'M20', '#6-32', '1/4-20', '1/2-13'),
      fullThread: fc.double({ min: 1, max: 40, noNaN: true }),
      material: fc.constantFrom(...MATERIALS.map(({ id }) => id)),
    });
    fc.assert(
      fc.property(request, (asked) => {
        const plan = planHole({ ...asked, hole: { kind: 'blind' } } as HoleRequest);
        if (!plan.ok) return;
        for (const { torque, tapShare, process } of plan.value.taps) {
          if (process === 'mill') continue;
          expect(torque.low).toBeLessThanOrEqual(torque.expected);
          expect(torque.high).toBeGreaterThanOrEqual(torque.expected);
          expect(tapShare.worn / tapShare.sharp).toBeCloseTo(1.65, 6);
          if (process === 'cut') expect(torque.high / torque.low).toBeLessThanOrEqual(2.2);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('a form tap’s smaller hole is never easier', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.8, max: 0.99, noNaN: true }),
        fc.double({ min: 0.8, max: 0.99, noNaN: true }),
        (a, b) => {
          const factor = (share: number) =>
            formHoleFactor({ major: 10, pitch: 1.5, hole: 10 * share }, 9.35);
          atLeast(factor(Math.min(a, b)), factor(Math.max(a, b)));
        },
      ),
    );
  });
});

describe('units: everything twice as large', () => {
  // N/mm² × mm³ = N·mm; chips twice as thick cost 2^−mc of the force for their size.
  const cut = job.filter((input) => {
    const small = toothGeometry(input, 5, input.flutes).chip;
    const own = toothGeometry(input, input.threads, input.flutes).chip;
    return Math.min(small, own) > THINNEST_CHIP;
  });

  const twice = (input: CuttingTorqueInput): CuttingTorqueInput => ({
    ...input,
    major: 2 * input.major,
    pitch: 2 * input.pitch,
    hole: 2 * input.hole,
    fullThread: 2 * input.fullThread,
    thickness: 2 * input.thickness,
  });

  it('torque goes with the third power (less chip thinning), force with the second, V′ with the second', () => {
    fc.assert(
      fc.property(cut, (input) => {
        const large = twice(input);
        const thinning = 2 ** -input.material.mc;
        expect(peakTorque(large) / peakTorque(input)).toBeCloseTo(8 * thinning, 9);
        const force = (each: CuttingTorqueInput) =>
          heaviestToothLoad(each, each.threads, each.flutes, each.material);
        expect(force(large) / force(input)).toBeCloseTo(4 * thinning, 9);
        const volume = (each: CuttingTorqueInput) => grooveGeometry(each).volumePerDepth;
        expect(volume(large) / volume(input)).toBeCloseTo(4, 9);
      }),
    );
  });

  it('strength goes with the third power; flute duty and form factor are bare numbers', () => {
    expect(twistOff(10, 1.5, 1) / twistOff(5, 1.5, 1)).toBeCloseTo(8, 9);
    const groove = { major: 10, pitch: 1.5, hole: 8.5 };
    const large = { major: 20, pitch: 3, hole: 17 };
    expect(fluteDuty(large, 9.7, 'long').duty).toBeCloseTo(
      fluteDuty(groove, 4.85, 'long').duty!,
      9,
    );
    expect(formHoleFactor({ ...large, hole: 18.6 }, 18.7)).toBeCloseTo(
      formHoleFactor({ ...groove, hole: 9.3 }, 9.35),
      9,
    );
  });
});
