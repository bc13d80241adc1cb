/** What must hold for every hole, whatever is asked. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planHole, type HolePlan, type HoleRequest } from '../../../core';
import { MATERIAL_IDS } from '../../../core/material/material';

const THREADS = [
  'M2x0.4',
  'M3',
  'M6x1-6H',
  'M8x1',
  'M10x1.5',
  'M20x2.5-5H',
  'M36x4',
  '#6-32',
  '1/4-20',
  '1/2-13-3B',
  '3/4-16',
  '1-8',
  'M12x1.75-LH',
  'MJ6x1-4H5H',
  '1/4-28 UNJF-3B',
  'STI M8',
  'G1/4',
  '1/2 NPT',
  'Rc3/4',
];

const thread = fc.constantFrom(...THREADS);
const material = fc.constantFrom(...MATERIAL_IDS);
const length = fc.double({ min: 0.5, max: 120, noNaN: true });
const spindle = fc.option(
  fc.record({
    drive: fc.constantFrom('synchronous', 'floating', 'reversing-head', 'hand'),
    torque: fc.option(fc.double({ min: 0.5, max: 400, noNaN: true }), { nil: undefined }),
    maxRpm: fc.option(fc.double({ min: 50, max: 12000, noNaN: true }), { nil: undefined }),
    acceleration: fc.option(fc.double({ min: 5, max: 400, noNaN: true }), { nil: undefined }),
  }),
  { nil: undefined },
);
const hole = fc.oneof(
  fc.record({
    kind: fc.constant('blind' as const),
    limit: fc.option(
      fc.record({ at: fc.constantFrom('shoulder' as const, 'point' as const), depth: length }),
      { nil: undefined },
    ),
  }),
  fc.record({
    kind: fc.constant('through' as const),
    thickness: length,
    clearBelow: fc.option(fc.double({ min: 0, max: 60, noNaN: true }), { nil: undefined }),
    chipsMayFall: fc.option(fc.boolean(), { nil: undefined }),
  }),
);
const request = fc.record({
  thread,
  fullThread: fc.option(length, { nil: undefined }),
  hole,
  material,
  spindle,
  drillPoint: fc.option(fc.double({ min: 60, max: 180, noNaN: true }), { nil: undefined }),
  externalCentre: fc.option(fc.double({ min: 0, max: 5, noNaN: true }), { nil: undefined }),
}) as fc.Arbitrary<HoleRequest>;

function everyNumber(value: unknown, path = 'plan'): void {
  if (typeof value === 'number') expect(Number.isFinite(value), path).toBe(true);
  else if (value && typeof value === 'object') {
    for (const [key, each] of Object.entries(value)) everyNumber(each, `${path}.${key}`);
  }
}

function planned(asked: HoleRequest): HolePlan | null {
  const outcome = planHole(asked);
  return outcome.ok ? outcome.value : null;
}

describe('every request', () => {
  it('gets a plan of finite numbers or a typed refusal, never a throw', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const outcome = planHole(asked);
        everyNumber(outcome);
        if (!outcome.ok) expect(outcome.problems.length).toBeGreaterThan(0);
        else {
          expect(outcome.value.taps.filter((tap) => tap.verdict === 'best').length).toBeLessThan(2);
          for (const tap of outcome.value.taps) {
            expect(tap.reasons.length).toBeGreaterThan(0);
            expect(tap.torque.low).toBeLessThanOrEqual(tap.torque.expected);
            expect(tap.torque.high).toBeGreaterThanOrEqual(tap.torque.expected);
            if (tap.process === 'cut')
              expect(tap.torque.high / tap.torque.low).toBeLessThanOrEqual(2.2);
          }
        }
      }),
      { numRuns: 1500 },
    );
    // Long, for a machine that is busy with other tests.
  }, 60_000);

  it('with numbers that make no sense is refused with the field named', () => {
    const nonsense = fc.constantFrom(0, -3, Number.NaN, Infinity, -Infinity, 1e9);
    fc.assert(
      fc.property(request, nonsense, (asked, bad) => {
        const outcome = planHole({ ...asked, fullThread: bad });
        expect(outcome.ok).toBe(false);
        if (!outcome.ok)
          expect(outcome.problems.some((each) => each.field === 'fullThread')).toBe(true);
      }),
    );
  });
});

describe('depth', () => {
  it('more full thread never needs less hole', () => {
    fc.assert(
      fc.property(thread, material, length, length, (name, metal, a, b) => {
        const need = (fullThread: number) =>
          planned({
            thread: name,
            fullThread,
            hole: { kind: 'blind' },
            material: metal,
          })!.taps.find(
            // A taper pipe tap comes in one kind only.
            ({ style, chamfer }) =>
              style === 'straight-flute' && ['semi-bottoming', 'plug'].includes(chamfer.class),
          )!.depth.shoulder;
        expect(need(Math.max(a, b))).toBeGreaterThanOrEqual(need(Math.min(a, b)));
      }),
    );
  });

  it('a longer chamfer never needs less hole, nor loads a tooth more', () => {
    fc.assert(
      fc.property(thread, material, length, (name, metal, fullThread) => {
        const plan = planned({
          thread: name,
          fullThread,
          hole: { kind: 'blind' },
          material: metal,
        })!;
        const order = ['bottoming', 'semi-bottoming', 'plug', 'taper'];
        const taps = order.flatMap((each) =>
          plan.taps.filter((tap) => tap.style === 'straight-flute' && tap.chamfer.class === each),
        );
        for (let index = 1; index < taps.length; index += 1) {
          expect(taps[index]!.depth.shoulder).toBeGreaterThanOrEqual(
            taps[index - 1]!.depth.shoulder,
          );
          expect(taps[index]!.toothLoad).toBeLessThanOrEqual(taps[index - 1]!.toothLoad);
        }
      }),
    );
  });

  it('a promise never passes the limit of the drawing', () => {
    fc.assert(
      fc.property(thread, material, length, length, (name, metal, fullThread, depth) => {
        const limit = { at: 'shoulder', depth } as const;
        const plan = planned({
          thread: name,
          fullThread,
          hole: { kind: 'blind', limit },
          material: metal,
        });
        for (const tap of plan?.taps ?? []) {
          expect(tap.depth.shoulder).toBeLessThanOrEqual(depth + 1e-9);
          expect(tap.depth.tip).toBeLessThanOrEqual(tap.depth.shoulder + 1e-9);
          expect(tap.depth.fullThread).toBeLessThanOrEqual(fullThread + 1e-9);
        }
      }),
    );
  });
});

describe('systems and hands', () => {
  it('an inch designation and its decimal spelling plan alike', () => {
    const blind = { kind: 'blind' } as const;
    const of = (name: string) =>
      planned({ thread: name, fullThread: 20, hole: blind, material: 'steel-low' });
    expect(of('1/4-20 UNC-2B')).toEqual(of('.250-20'.concat(' UNC-2B')));
  });

  it('a left-hand thread is planned as its mirror: the same numbers, the other hand', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('M6x1-6H', 'M10x1.5-6H', '1/4-20 UNC-2B'),
        material,
        length,
        (name, metal, depth) => {
          const of = (spelling: string) =>
            planned({
              thread: spelling,
              hole: { kind: 'through', thickness: depth },
              material: metal,
            })!;
          const right = of(name);
          const left = of(`${name}-LH`);
          expect(left.taps.every((tap) => tap.hand === 'left')).toBe(true);
          expect(left.taps.map((tap) => ({ ...tap, hand: 'right' }))).toEqual(right.taps);
        },
      ),
    );
  });
});
