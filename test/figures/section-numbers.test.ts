import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holeFacts } from '../../components/drawing/holeFacts';
import { holeFrame, SHEET } from '../../components/drawing/holeFrame';
import { holeSection } from '../../components/drawing/sectionMarks';
import { lengthNumber } from '../../components/words/format';
import { planHole, type HolePlan, type HoleRequest, type TapChoice } from '../../core';
import { boxOf, labels, overlapping, strokes, struck, texts } from './readings';

function planned(request: HoleRequest): HolePlan {
  const plan = planHole(request);
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return plan.value;
}

/** A printed number may differ from the core's by half its last digit. */
function printed(words: string | undefined, mm: number, unit: 'mm' | 'in' = 'mm'): void {
  expect(words).toBeDefined();
  const value = Number(words) * (unit === 'in' ? 25.4 : 1);
  expect(Math.abs(value - mm)).toBeLessThanOrEqual(unit === 'in' ? 0.0005 * 25.4 : 0.005 + 1e-9);
}

const M8: HoleRequest = {
  thread: 'M8x1.25-6H',
  fullThread: 16,
  hole: { kind: 'blind', limit: { at: 'shoulder', depth: 22 } },
  material: 'stainless-austenitic',
};

describe('numbers on the hole section', () => {
  it('are the plan’s own, every tap of it, in a blind hole', () => {
    const plan = planned(M8);
    for (const choice of plan.taps.filter((tap) => tap.process !== 'mill')) {
      const read = labels(holeSection(holeFacts(plan, M8, 'mm', choice), 'mm'));
      printed(read.get('tap to'), choice.depth.tip);
      printed(read.get('shoulder'), choice.depth.shoulder);
      printed(read.get('drill point'), choice.depth.point);
      printed(read.get('max shoulder'), 22);
      printed(read.get('chamfer'), choice.chamfer.threads.max * plan.thread.pitch);
      if (choice.depth.fullThread > 0) printed(read.get('full thread'), choice.depth.fullThread);
    }
  });

  it('follow the plan into inches', () => {
    const request: HoleRequest = {
      ...M8,
      thread: '9/16-12',
      fullThread: 21.59,
      hole: { kind: 'blind' },
    };
    const plan = planned(request);
    const read = labels(holeSection(holeFacts(plan, request, 'in'), 'in'));
    printed(read.get('tap to'), plan.taps[0]!.depth.tip, 'in');
    printed(read.get('full thread'), 21.59, 'in');
  });

  it('say what is asked for and what is missing when no tap reaches', () => {
    const request: HoleRequest = {
      thread: 'M10x1.5',
      fullThread: 15,
      hole: { kind: 'blind', limit: { at: 'shoulder', depth: 16.5 } },
      material: 'al-wrought',
    };
    const plan = planned(request);
    const facts = holeFacts(plan, request, 'mm');
    const picture = holeSection(facts, 'mm');
    const read = labels(picture);
    printed(read.get('asked for'), 15);
    printed(read.get('full thread'), facts.fullThread);
    const note = texts(picture).find((mark) => mark.text.startsWith('×'));
    expect(note?.text).toContain(lengthNumber(15 - facts.fullThread, 'mm'));
    expect(picture.description).toContain('short of the 15.0 mm asked for');
  });

  it('are those of the through hole, its clear room and its obstacle', () => {
    const request: HoleRequest = {
      thread: 'M8x1.25',
      hole: { kind: 'through', thickness: 12, clearBelow: 5 },
      material: 'steel-medium',
    };
    const plan = planned(request);
    const read = labels(holeSection(holeFacts(plan, request, 'mm'), 'mm'));
    printed(read.get('clear below'), 5);
    printed(read.get('tap to'), plan.taps[0]!.depth.tip);
    // The same tap driven right through would strike what is beneath: that is shown, not hidden.
    const choice: TapChoice = {
      ...plan.taps[0]!,
      depth: { ...plan.taps[0]!.depth, fullThread: 12, tip: 20 },
    };
    const facts = holeFacts(plan, request, 'mm', choice);
    const picture = holeSection(facts, 'mm');
    printed(labels(picture).get('thickness'), 12);
    expect(facts.strikes).toBeCloseTo(3, 9);
    expect(texts(picture).map((mark) => mark.text)).toContain('× 3.0 mm too little room below');
  });
});

describe('the hole section is to scale', () => {
  it('draws depth and width with one scale', () => {
    const plan = planned(M8);
    const facts = holeFacts(plan, M8, 'mm');
    const frame = holeFrame(facts);
    const walls = strokes(holeSection(facts, 'mm'), ['dw-thick']).find(
      (line) => line.length === 5,
    )!;
    const [top, shoulder, point] = walls;
    // Coordinates are drawn to a tenth, so a length between two of them may be a tenth off.
    const off = (drawn: number, real: number) => Math.abs(drawn - real * frame.scale);
    expect(off(shoulder![1] - top![1], facts.shoulder)).toBeLessThan(0.1001);
    expect(off(point![1] - top![1], facts.point)).toBeLessThan(0.1001);
    expect(off(2 * (SHEET.axis - shoulder![0]), 6.8)).toBeLessThan(0.1001);
  });
});

const THREADS = [
  'M1x0.25',
  'M1.6x0.35',
  'M3x0.5',
  'M5x0.8',
  'M8x1.25',
  'M8x1',
  'M12x1.75-LH',
  'M20x2.5',
  'M30x3.5',
  'M30x1.5',
  'M48x5',
  'M64x6',
  'M64x4',
  '#4-40',
  '#10-32',
  '1/4-20',
  '1/2-13',
  '1-8',
  '1 1/2-6',
  '1 1/8-7 UNC-2B-LH',
];
const DIAMETER = [
  1, 1.6, 3, 5, 8, 8, 12, 20, 30, 30, 48, 64, 64, 2.8, 4.8, 6.35, 12.7, 25.4, 38.1, 28.6,
];

const anyRequest = fc
  .record({
    index: fc.nat({ max: THREADS.length - 1 }),
    deep: fc.double({ min: 0.25, max: 20, noNaN: true }),
    through: fc.boolean(),
    limit: fc.option(
      fc.record({
        at: fc.constantFrom('shoulder' as const, 'point' as const),
        over: fc.double({ min: 0, max: 3, noNaN: true }),
      }),
      { nil: undefined },
    ),
    clear: fc.option(fc.double({ min: 0, max: 6, noNaN: true }), { nil: undefined }),
    part: fc.double({ min: 0.2, max: 1, noNaN: true }),
    centre: fc.constantFrom(0, 0, 1.5),
    point: fc.constantFrom(90, 118, 140, 180),
  })
  .map(({ index, deep, through, limit, clear, part, centre, point }): HoleRequest => {
    const diameter = DIAMETER[index]!;
    const depth = Math.min(deep * diameter, 700);
    const rest = {
      thread: THREADS[index]!,
      material: 'steel-medium' as const,
      drillPoint: point,
      ...(centre ? { externalCentre: centre } : {}),
    };
    return through
      ? {
          ...rest,
          fullThread: part > 0.7 ? depth : part * depth,
          hole: {
            kind: 'through',
            thickness: depth,
            ...(clear === undefined ? {} : { clearBelow: clear * diameter }),
          },
        }
      : {
          ...rest,
          fullThread: depth,
          hole: {
            kind: 'blind',
            ...(limit ? { limit: { at: limit.at, depth: depth + limit.over * diameter } } : {}),
          },
        };
  });

describe('the hole section, whatever is asked', () => {
  it('never stacks words, runs a line through them or leaves the sheet', () => {
    fc.assert(
      fc.property(anyRequest, fc.constantFrom('mm' as const, 'in' as const), (request, unit) => {
        const plan = planned(request);
        const facts = holeFacts(plan, request, unit);
        const picture = holeSection(facts, unit);
        const boxes = texts(picture).map(boxOf);
        expect(overlapping(boxes)).toEqual([]);
        const lines = strokes(picture, [
          'dw-thin',
          'dw-leader',
          'dw-limit',
          'dw-asked',
          'dw-thick',
        ]);
        expect(struck(boxes, lines)).toEqual([]);
        for (const box of boxes) {
          expect(box.left, box.words).toBeGreaterThan(-6);
          expect(box.right, box.words).toBeLessThan(SHEET.width + 10);
          expect(box.bottom, box.words).toBeLessThan(picture.height);
        }
        expect(picture.height).toBeLessThan(540);
        expect(JSON.stringify(picture)).not.toMatch(/NaN|Infinity|null/);
      }),
      { numRuns: 600, seed: 8 },
    );
  });
});
