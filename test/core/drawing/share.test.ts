/** Shared tools against every possible choice of tools, tried one by one. Kind: derived. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planDrawing, planHole, type HolePlan, type Shop } from '../../../core';
import { fewestTools, type Option } from '../../../core/drawing/fewest';

/** Least number of tools, and the least sum of ranks with that number: by trying all of them. */
function exhaustive(holes: readonly Option[][]): { size: number; cost: number } {
  const served = holes.filter((options) => options.length > 0);
  const keys = [...new Set(served.flatMap((options) => options.map(({ key }) => key)))];
  let best = { size: Infinity, cost: Infinity };
  for (let mask = 0; mask < 2 ** keys.length; mask += 1) {
    const chosen = keys.filter((_, bit) => mask & (1 << bit));
    const cost = served.reduce((sum, options) => {
      const ranks = options.filter(({ key }) => chosen.includes(key)).map(({ rank }) => rank);
      return sum + Math.min(...ranks);
    }, 0);
    if (cost === Infinity) continue;
    const better = chosen.length < best.size || (chosen.length === best.size && cost < best.cost);
    if (better) best = { size: chosen.length, cost };
  }
  return served.length === 0 ? { size: 0, cost: 0 } : best;
}

function costOf(chosen: readonly string[], holes: readonly Option[][]): number {
  return holes
    .filter((options) => options.length > 0)
    .reduce((sum, options) => {
      const ranks = options.filter(({ key }) => chosen.includes(key)).map(({ rank }) => rank);
      return sum + Math.min(...ranks);
    }, 0);
}

const hole = fc
  .uniqueArray(fc.constantFrom(...'abcdefghij'), { maxLength: 6 })
  .map((keys) => keys.map((key, rank): Option => ({ key, rank })));

describe('fewest tools', () => {
  test('as few, and as high in the holes’ own order, as any choice gives', () => {
    fc.assert(
      fc.property(fc.array(hole, { maxLength: 9 }), (holes) => {
        const chosen = fewestTools(holes);
        const best = exhaustive(holes);
        expect(chosen.length).toBe(best.size);
        expect(costOf(chosen, holes)).toBe(best.cost);
      }),
      { numRuns: 400, seed: 65 },
    );
  });

  test('out of patience, it still serves every hole', () => {
    fc.assert(
      fc.property(fc.array(hole, { maxLength: 9 }), (holes) => {
        const chosen = fewestTools(holes, 0);
        expect(costOf(chosen, holes)).toBeLessThan(Infinity);
      }),
      { numRuns: 200, seed: 66 },
    );
  });
});

const CALLOUTS = [
  'M6x1-6H THRU',
  'M6x1-6H ↧12',
  'M6x1-6H ↧9 / Ø5 ↧13.2',
  'M6x1-6H ↧9 / Ø5 ↧15',
  'M6x1-6H ↧18',
  '1/4-20 UNC-2B THRU',
  '1/4-28 UNF-2B ↧.50',
  'M8x1.25-6H ↧16 / Ø6.8 ↧22',
  'M8x1-6H THRU',
  'M5x0.8-6H ↧8',
  '#10-32 UNF-2B THRU',
] as const;

const SHOPS: Shop[] = [
  { material: 'al-wrought', thickness: 12 },
  { material: 'stainless-austenitic', thickness: 8 },
  { material: 'iron-grey', thickness: 20 },
];

function requestOf(line: string, shop: Shop): HolePlan {
  const { holes } = planDrawing([line], shop);
  const plan = holes[0]?.plan;
  if (!plan?.ok) throw new Error(line);
  return plan.value;
}

/** The taps that a hole may be given, in its own order, by thread, style and class. */
function tapOptions(plan: HolePlan): Option[] {
  return plan.taps
    .filter(({ verdict, process }) => verdict !== 'no' && process !== 'mill')
    .map(({ style, chamfer }, rank) => ({
      key: `${plan.thread.designation} ${style} ${chamfer.class}`,
      rank,
    }));
}

describe('taps of a part', () => {
  const part = fc.record({
    lines: fc.array(fc.constantFrom(...CALLOUTS), { minLength: 1, maxLength: 4 }),
    shop: fc.constantFrom(...SHOPS),
  });

  test('are as few as trying every set of taps finds, each hole at its best or one that works', () => {
    fc.assert(
      fc.property(part, ({ lines, shop }) => {
        const drawing = planDrawing(lines, shop);
        const workable = drawing.holes.flatMap(({ line, verdict }) =>
          verdict === 'ready' || verdict === 'caution' ? [requestOf(line, shop)] : [],
        );
        const byThread = Map.groupBy(workable, ({ thread }) => thread.designation);
        const least = [...byThread.values()]
          .map((plans) => exhaustive(plans.map(tapOptions)).size)
          .reduce((sum, size) => sum + size, 0);
        expect(drawing.taps).toHaveLength(least);
        const served = drawing.taps.flatMap(({ holes }) => holes).sort((a, b) => a - b);
        expect(served).toEqual(
          drawing.holes.flatMap(({ verdict }, index) =>
            verdict === 'ready' || verdict === 'caution' ? [index] : [],
          ),
        );
        for (const { choice } of drawing.taps) expect(choice.verdict).not.toBe('no');
      }),
      { numRuns: 60, seed: 67 },
    );
  });

  test('every shared drill lies inside the class of every hole it serves', () => {
    fc.assert(
      fc.property(part, ({ lines, shop }) => {
        const drawing = planDrawing(lines, shop);
        for (const { drill, holes } of drawing.drills) {
          for (const index of holes) {
            const plan = drawing.holes[index]?.plan;
            if (!plan?.ok) throw new Error('a drill for a hole without a plan');
            const own = plan.value.drills.find(({ name }) => name === drill.name);
            const forms = drawing.taps.some(
              (tap) => tap.choice.process === 'form' && tap.holes.includes(index),
            );
            if (forms) expect(drill.verdict).not.toBe('outside');
            else {
              const inside = plan.value.drills.some(({ verdict }) => verdict === 'inside');
              expect(own?.verdict).toBe(inside ? 'inside' : 'risk');
            }
          }
        }
      }),
      { numRuns: 60, seed: 68 },
    );
  });

  test('M6 and 1/4-28 in one part need two taps and one drill where one suits both', () => {
    const { taps, drills } = planDrawing(['M6x1-6H THRU', '1/4-28 UNF-2B THRU'], SHOPS[0]!);
    expect(taps).toHaveLength(2);
    // 6H allows M6 4.917 to 5.153 mm and 2B allows 1/4-28 5.36 to 5.59 mm: no drill serves both.
    expect(drills).toHaveLength(2);
    const shared = planDrawing(['M6x1-6H THRU', '1/4-20 UNC-2B THRU'], SHOPS[0]!);
    // 2B allows 1/4-20 4.98 to 5.26 mm: #9 to 5.1 mm lie in both.
    expect(shared.drills).toHaveLength(1);
    expect(shared.drills[0]!.drill.diameter).toBeGreaterThan(4.97);
    expect(shared.drills[0]!.drill.diameter).toBeLessThan(5.153);
  });
});

describe('verdicts', () => {
  const verdicts = (lines: string[], shop: Shop) =>
    planDrawing(lines, shop).holes.map(({ verdict }) => verdict);

  test('ready, impossible and unread, on the pump cover of Copperfell Works', () => {
    expect(
      verdicts(
        ['6× M10×1.5-6H ↧15 / Ø8.5 ↧16.5', 'M6x1-6H ↧12', 'DEBURR', 'M8x1.25-6H ↧16 / Ø6.8 ↧22'],
        { material: 'al-wrought' },
      ),
    ).toEqual(['impossible', 'ready', 'unread', 'ready']);
  });

  test('a note to the designer carries what is needed and what can be had', () => {
    const { questions } = planDrawing(['6× M10×1.5-6H ↧15 / Ø8.5 ↧16.5'], {
      material: 'al-wrought',
    });
    expect(questions).toHaveLength(1);
    const { code, numbers } = questions[0]!;
    expect(code).toBe('hole-too-shallow');
    // 15 + 3 threads of chamfer + 1 pitch of stop clearance, all of 1.5 mm. Derived.
    expect(numbers['needed']).toBeCloseTo(21, 6);
    expect(numbers['by']).toBeCloseTo(4.5, 6);
  });

  test('thread deeper than its hole, or longer than the part, is the designer’s to settle', () => {
    const deep = planDrawing(['M8 ↧20 / Ø6.8 ↧15'], { material: 'steel-low' });
    expect(deep.questions.map(({ code }) => code)).toEqual(['thread-deeper-than-hole']);
    const thick = planDrawing(['Ø6.8 THRU M8 ↧20'], { material: 'steel-low', thickness: 12 });
    expect(thick.questions.map(({ code }) => code)).toEqual(['thread-longer-than-part']);
    expect(thick.holes[0]?.verdict).toBe('impossible');
  });

  test('a drill on the drawing that the class does not allow is asked about', () => {
    // 7/16 in 1/2-13: 11.11 mm, where 2B ends at 11.02 mm (0.4340 in).
    const { questions, holes } = planDrawing(['7/16 DRILL THRU 1/2-13 UNC-2B THRU'], {
      material: 'steel-alloy-30hrc',
      thickness: 20,
    });
    expect(questions.map(({ code }) => code)).toContain('drill-outside-class');
    expect(holes[0]?.verdict).toBe('caution');
  });

  test('what differs for one hole changes that hole alone', () => {
    const lines = ['M30x3.5-6H THRU', 'M6x1-6H THRU'];
    const shop: Shop = {
      material: 'steel-medium',
      thickness: 45,
      spindle: { drive: 'synchronous', torque: 30 },
    };
    expect(verdicts(lines, shop)[0]).toBe('impossible');
    const moved: Shop = { ...shop, holes: { 0: { spindle: { drive: 'floating', torque: 320 } } } };
    expect(verdicts(lines, moved)[0]).not.toBe('impossible');
    expect(verdicts(lines, moved)[1]).toBe(verdicts(lines, shop)[1]);
  });

  test('planHole and planDrawing agree on one hole', () => {
    const { holes } = planDrawing(['M8x1.25-6H ↧16 / Ø6.8 ↧22'], { material: 'al-wrought' });
    const alone = planHole({
      thread: 'M8x1.25-6H',
      fullThread: 16,
      hole: { kind: 'blind', limit: { at: 'shoulder', depth: 22 } },
      material: 'al-wrought',
    });
    expect(holes[0]?.plan).toEqual(alone);
  });
});

test('two hundred holes are each planned, each once', () => {
  const lines = Array.from({ length: 200 }, (_, index) => CALLOUTS[index % CALLOUTS.length]!);
  const { holes, taps } = planDrawing(lines, SHOPS[0]!);
  expect(holes.map(({ line }) => line)).toEqual(lines);
  const served = taps.flatMap((tap) => tap.holes);
  expect(new Set(served).size).toBe(served.length);
});
