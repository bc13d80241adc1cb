/** What the tap is made of moves the speed as the speed calculator does. Factors: common practice. */
import { describe, expect, test } from 'vitest';
import { planHole, type HoleRequest } from '../../../core';
import { cycleStudy } from '../../../core/plan/cycle-study';

const HOLE: HoleRequest = {
  thread: 'M8',
  fullThread: 12,
  hole: { kind: 'blind' },
  material: 'steel-medium',
};

function planned(changes: Partial<HoleRequest>) {
  const outcome = planHole({ ...HOLE, ...changes });
  if (!outcome.ok) throw new Error(outcome.problems[0]!.code);
  return outcome.value;
}

const range = (changes: Partial<HoleRequest>) => planned(changes).cycle!.rpmRange;
const codes = (changes: Partial<HoleRequest>) => planned(changes).warnings.map(({ code }) => code);

test('a coated tap of high-speed steel runs 1.5 to 2 times as fast', () => {
  const plain = range({});
  const coated = range({ tool: { substrate: 'hss', coated: true } });
  expect(coated.min / plain.min).toBeCloseTo(1.5, 9);
  expect(coated.max / plain.max).toBeCloseTo(2, 9);
  expect(range({ tool: { substrate: 'hss' } })).toEqual(plain);
});

test('powder steel is no slower, carbide in iron on a synchronous spindle the fastest', () => {
  const iron = { material: 'iron-grey' } as const;
  const plain = range(iron);
  expect(range({ ...iron, tool: { substrate: 'pm' } }).max).toBeGreaterThan(plain.max);
  const carbide = range({ ...iron, tool: { substrate: 'carbide' } });
  expect(carbide.min / plain.min).toBeCloseTo(1.5, 9);
  expect(carbide.max / plain.max).toBeCloseTo(2.5, 9);
  expect(codes({ ...iron, tool: { substrate: 'carbide' } })).toContain('carbide-wants');
});

test.each<Partial<HoleRequest>>([
  { material: 'iron-grey', spindle: { drive: 'floating' } },
  { material: 'iron-grey', spindle: { drive: 'reversing-head' } },
  { material: 'stainless-austenitic' },
])('carbide gains no speed where it does not suit, and says so: %j', (changes) => {
  const carbide = { ...changes, tool: { substrate: 'carbide' } } as const;
  expect(range(carbide)).toEqual(range(changes));
  expect(codes(carbide)).toContain('carbide-unsuited');
});

test('by default it is a bright tap of high-speed steel, and the plan says it assumed that', () => {
  const assumed = (changes: Partial<HoleRequest>) =>
    planned(changes).assumptions.some(({ code }) => code === 'tap-hss');
  expect(assumed({})).toBe(true);
  expect(assumed({ tool: { substrate: 'pm' } })).toBe(false);
});

test('the speed calculator gives the planner’s range for the same tap', () => {
  for (const [substrate, charted] of [
    ['hss', 'hss'],
    ['hss-e', 'hss'],
    ['pm', 'hss-powder'],
  ] as const) {
    for (const coated of [false, true]) {
      const study = cycleStudy({
        thread: 'M8',
        fullThread: 12,
        material: 'steel-medium',
        substrate: charted,
        coating: coated ? 'coated' : 'plain',
        fluid: 'oil',
        drive: 'synchronous',
        unit: 'mm',
        mode: 'per-revolution',
      });
      if (!study.ok) throw new Error(study.problems[0]!.code);
      const { min, max } = range({ tool: { substrate, coated } });
      expect(study.value.range.min).toBeCloseTo(min, 6);
      expect(study.value.range.max).toBeCloseTo(max, 6);
    }
  }
});

describe('what is no tool is refused at its field', () => {
  test.each([
    { substrate: 'cobalt' },
    { substrate: 'hss', coated: 'yes' },
    { coated: true },
    null,
    'pm',
    {},
  ])('%j', (tool) => {
    const outcome = planHole({ ...HOLE, tool: tool as never });
    expect(outcome).toMatchObject({
      ok: false,
      problems: [{ code: 'tool-unknown', field: 'tool' }],
    });
  });
});
