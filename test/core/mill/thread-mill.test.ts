/**
 * Thread milling. Values of growth, path and feed: derived (small-angle formula and exact sweep worked out apart);
 * programmes read back by a small interpreter and, for both hands, written out by hand.
 */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { planThreadMill, type ThreadMillRequest } from '../../../core/index';
import { passDiameters } from '../../../core/mill/cutting';
import { pitchGrowth, pitchGrowthFormula } from '../../../core/mill/sweep';
import { interpret, type Move } from './interpreter';

const M10: ThreadMillRequest = {
  thread: 'M10x1.5',
  fullThread: 20,
  hole: { kind: 'blind' },
  material: 'steel-medium',
  drill: 8.5,
  cutter: { diameter: 7, teeth: 3, rows: 'one' },
  speed: 80,
  feedPerTooth: 0.05,
  passes: 2,
  controlFeed: 'centre',
};

function planned(request: Partial<ThreadMillRequest> = {}) {
  const outcome = planThreadMill({ ...M10, ...request });
  if (!outcome.ok) throw new Error(outcome.problems.map(({ code }) => code).join());
  return outcome.value;
}

function refused(request: Partial<ThreadMillRequest>): string[] {
  const outcome = planThreadMill({ ...M10, ...request });
  return outcome.ok ? [] : outcome.problems.map(({ code }) => code);
}

const codes = (list: readonly { code: string }[]) => list.map(({ code }) => code);

describe('growth of the pitch diameter', () => {
  // Derived: the small-angle formula, and the sweep of the tooth's tip, each worked out by hand.
  test.each([
    [10, 1.5, 7, 0.0798, 0.0802],
    [10, 1.5, 6, 0.0513, 0.0514],
    [10, 1.5, 8, 0.1368, 0.1388],
    [6, 1, 4.5, 0.076, 0.0768],
    [20, 2.5, 14, 0.1108, 0.1112],
    [20, 1.5, 14, 0.0399, 0.0399],
    [30, 3.5, 20, 0.1241, 0.1244],
    [12.7, 25.4 / 13, 9, 0.1111, 0.1118],
  ])('Ø%d × %d with a %d mm cutter', (major, pitch, cutter, formula, sweep) => {
    expect(pitchGrowthFormula({ major, pitch, cutter })).toBeCloseTo(formula, 4);
    expect(pitchGrowth({ major, pitch, cutter })).toBeCloseTo(sweep, 4);
  });

  test('formula within 2 % of a brute sweep to 0.75 D and 3 % to 0.9 D, over 500 threads', () => {
    const brute = (major: number, cutter: number, pitch: number) => {
      const [e, r] = [(major - cutter) / 2, cutter / 2];
      let most = 0;
      for (let step = 1; step <= 4000; step += 1) {
        const theta = (step / 4000) * (e < r ? Math.PI / 2 : Math.asin(r / e));
        if (Math.abs(e * Math.sin(theta)) > r) break;
        const edge = e * Math.cos(theta) + Math.sqrt(r * r - (e * Math.sin(theta)) ** 2);
        const excess = (pitch * theta) / (2 * Math.PI) - (major / 2 - edge) * Math.tan(Math.PI / 6);
        most = Math.max(most, excess);
      }
      return 2 * Math.sqrt(3) * most;
    };
    const worst = { near: 0, far: 0, sweep: 0 };
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 60, noNaN: true }),
        fc.double({ min: 0.06, max: 0.15, noNaN: true }),
        fc.double({ min: 0.4, max: 0.9, noNaN: true }),
        (major, coarseness, share) => {
          // No cutter is larger than 95 % of its hole.
          const most = 0.95 * (1 - coarseness);
          const orbit = { major, pitch: major * coarseness, cutter: major * Math.min(share, most) };
          const sweep = pitchGrowth(orbit);
          const byHand = brute(major, orbit.cutter, orbit.pitch);
          worst.sweep = Math.max(worst.sweep, Math.abs(sweep / byHand - 1));
          const off = Math.abs(pitchGrowthFormula(orbit) / sweep - 1);
          if (orbit.cutter <= 0.75 * major) worst.near = Math.max(worst.near, off);
          else worst.far = Math.max(worst.far, off);
        },
      ),
      { numRuns: 500 },
    );
    expect(worst.sweep).toBeLessThan(0.001);
    expect(worst.near).toBeLessThan(0.02);
    expect(worst.far).toBeLessThan(0.035);
  });
});

describe('the worked thread: M10 × 1.5, hole 8.5, 7 mm cutter of three teeth', () => {
  it('turns, feeds, passes and takes the time worked out by hand', () => {
    const plan = planned();
    expect(plan.rpm).toBe(3638);
    expect(plan.feedAtTeeth).toBeCloseTo(546, 0);
    expect(plan.feedAtCentre).toBeCloseTo(164, 0);
    expect(plan.pathDiameter).toBe(3);
    expect(plan.majors[0]).toBeCloseTo(9.561, 3);
    expect(plan.majors[1]).toBe(10);
    expect(plan.turns).toBe(15);
    expect(plan.seconds / 2).toBeCloseTo(52, 0);
    expect(plan.pitchGrowth).toBeCloseTo(0.0802, 4);
  });

  it('is judged by its class: 6H allows 0.180 mm on the pitch diameter', () => {
    // ISO 965-1: TD2 of M10x1.5 6H is 180 µm; half of it is 90.
    expect(planned().verdict).toBe('best');
    expect(planned({ cutter: { ...M10.cutter, diameter: 7.5 } }).reasons[0]!.code).toBe(
      'mill-growth-half',
    );
    expect(planned({ cutter: { ...M10.cutter, diameter: 8.4 } }).verdict).toBe('no');
  });
});

describe('passes', () => {
  it('take equal areas of a sharp groove', () => {
    const depths = passDiameters(8, 10, 4).map((major) => (major - 8) ** 2);
    const areas = depths.map((each, index) => each - (depths[index - 1] ?? 0));
    for (const area of areas) expect(area).toBeCloseTo(areas[0]!, 10);
  });

  test.each([
    ['al-wrought', 'one', 1],
    ['steel-medium', 'one', 2],
    ['stainless-austenitic', 'one', 3],
    ['titanium', 'one', 3],
    ['steel-hard', 'one', 3],
    ['steel-medium', { length: 24 }, 3],
  ] as const)('%s with %j: %d', (material, rows, passes) => {
    const { passes: _, ...request } = M10;
    const outcome = planThreadMill({ ...request, material, cutter: { ...M10.cutter, rows } });
    expect(outcome.ok && outcome.value.majors.length).toBe(passes);
  });
});

describe('turns and lifts', () => {
  test.each([
    [20, 'one', 15],
    [15, 'one', 11],
    [20, { length: 21.5 }, 1],
    [20, { length: 21 }, 2],
    [20, { length: 9 }, 3],
    [20, { length: 1.5 }, 15],
  ] as const)('%d mm with %j: %d', (fullThread, rows, turns) => {
    expect(planned({ fullThread, cutter: { ...M10.cutter, rows } }).turns).toBe(turns);
  });
});

describe('refusals', () => {
  test.each<[string, Partial<ThreadMillRequest>]>([
    ['cutter-not-smaller', { cutter: { diameter: 8.5, teeth: 3, rows: 'one' } }],
    ['cutter-not-smaller', { cutter: { diameter: 12, teeth: 3, rows: 'one' } }],
    ['rows-under-pitch', { cutter: { diameter: 7, teeth: 3, rows: { length: 1 } } }],
    ['teeth-not-whole', { cutter: { diameter: 7, teeth: 0, rows: 'one' } }],
    ['teeth-not-whole', { cutter: { diameter: 7, teeth: 2.5, rows: 'one' } }],
    ['number-not-finite', { cutter: { diameter: Number.NaN, teeth: 3, rows: 'one' } }],
    ['number-not-finite', { speed: Number.POSITIVE_INFINITY }],
    ['mill-feed-out-of-range', { feedPerTooth: 0 }],
    ['passes-not-whole', { passes: 0 }],
    ['cut-to-out-of-range', { cutTo: 8 }],
    ['taper-pipe', { thread: '1/4-18 NPT' }],
    ['full-thread-not-positive', { fullThread: -1 }],
  ])('%s', (code, request) => {
    expect(refused(request)).toContain(code);
  });

  it('never throws for what an address may hold', () => {
    expect(planThreadMill(undefined as never).ok).toBe(false);
    expect(planThreadMill({ ...M10, cutter: undefined as never }).ok).toBe(false);
    expect(
      planThreadMill({ ...M10, cutter: { diameter: 7, teeth: 3, rows: null as never } }).ok,
    ).toBe(false);
  });
});

describe('reach and room', () => {
  it('a neck that is too short is a no', () => {
    const plan = planned({ cutter: { ...M10.cutter, reach: 18 } });
    expect(plan.verdict).toBe('no');
    expect(codes(plan.reasons)).toContain('mill-reach-short');
  });

  it('beyond three cutter diameters it bends, beyond four it is a no in steel', () => {
    // 7 mm: 21 and 28 mm.
    expect(planned({ fullThread: 21 }).verdict).toBe('best');
    expect(codes(planned({ fullThread: 24 }).reasons)).toContain('mill-slender');
    expect(planned({ fullThread: 28.5 }).verdict).toBe('no');
    expect(planned({ fullThread: 28.5, material: 'al-wrought' }).verdict).toBe('works');
  });

  it('reaches to within a pitch of the floor, not nearer than three quarters', () => {
    const to = (depth: number) =>
      ({ hole: { kind: 'blind', limit: { at: 'shoulder', depth } } }) as const;
    expect(planned({ fullThread: 15, ...to(16.5) }).verdict).toBe('best');
    expect(planned({ fullThread: 15, ...to(16.2) }).verdict).toBe('works');
    const near = planned({ fullThread: 15, ...to(15.5) });
    expect(near.verdict).toBe('no');
    expect(near.reasons[0]!.numbers['obtainable']).toBeCloseTo(15.5 - 1.125, 9);
  });

  it('needs air under a through hole', () => {
    const hole = { kind: 'through', thickness: 15, clearBelow: 1 } as const;
    expect(planned({ fullThread: 15, hole }).verdict).toBe('no');
    expect(planned({ fullThread: 15, hole: { ...hole, clearBelow: 3 } }).verdict).toBe('best');
  });
});

const PITCHES: Record<string, number> = {
  M10: 1.5,
  'M10-LH': 1.5,
  'M20x2.5': 2.5,
  '1/2-13': 25.4 / 13,
  '1/2-13 UNC-2B-LH': 25.4 / 13,
  M6: 1,
};

const radius = ({ to }: Move) => Math.hypot(to[0], to[1]);

describe('the programme', () => {
  it('right hand, written out by hand: from the floor up, counter-clockwise, one pitch a turn', () => {
    // Path Ø3 on Ø10 with a 7 mm cutter: radius 1.5, lead 0.75 × 1.5 = 1.125, a quarter of 1.25 mm is 0.3125.
    const plan = planThreadMill({
      ...M10,
      thread: 'M10x1.25',
      fullThread: 2.5,
      drill: 8.8,
      passes: 1,
    });
    expect(plan.ok && plan.value.programme).toEqual([
      'G21 G17 G90 G94 G40 G80',
      'T_ M6',
      'S3638 M3',
      'G0 X0 Y0',
      'G43 H_ Z3.750',
      'G1 Z-2.813 F164',
      'G41 D_ G1 X0.375 Y-1.125 F82',
      'G3 X1.500 Y0.000 Z-2.500 I0.000 J1.125',
      'G3 X1.500 Y0.000 Z-1.250 I-1.500 J0.000 F164',
      'G3 X1.500 Y0.000 Z0.000 I-1.500 J0.000',
      'G3 X1.500 Y0.000 Z1.250 I-1.500 J0.000',
      'G3 X0.375 Y1.125 Z1.563 I-1.125 J0.000',
      'G40 G1 X0.000 Y0.000',
      'G0 Z3.750',
      'M5',
    ]);
  });

  it('left hand, written out by hand: from the top down, counter-clockwise', () => {
    const plan = planThreadMill({
      ...M10,
      thread: 'M10x1.25-LH',
      fullThread: 2.5,
      drill: 8.8,
      passes: 1,
    });
    expect(plan.ok && plan.value.programme.slice(5, 12)).toEqual([
      'G1 Z1.563 F164',
      'G41 D_ G1 X0.375 Y-1.125 F82',
      'G3 X1.500 Y0.000 Z1.250 I0.000 J1.125',
      'G3 X1.500 Y0.000 Z0.000 I-1.500 J0.000 F164',
      'G3 X1.500 Y0.000 Z-1.250 I-1.500 J0.000',
      'G3 X1.500 Y0.000 Z-2.500 I-1.500 J0.000',
      'G3 X0.375 Y1.125 Z-2.813 I-1.125 J0.000',
    ]);
  });

  it('read back: lead, hand, path, depth, no move below the floor, back where it began', () => {
    const request = fc.record({
      thread: fc.constantFrom(...Object.keys(PITCHES)),
      fullThread: fc.double({ min: 4, max: 24, noNaN: true }),
      rows: fc.constantFrom('one' as const, { length: 8 }, { length: 30 }),
      passes: fc.integer({ min: 1, max: 3 }),
      unit: fc.constantFrom('mm' as const, 'in' as const),
    });
    let read = 0;
    fc.assert(
      fc.property(request, ({ thread, rows, fullThread, passes, unit }) => {
        const cutter = { diameter: thread === 'M6' ? 3.5 : 6, teeth: 3, rows };
        const outcome = planThreadMill({
          thread,
          fullThread,
          hole: { kind: 'blind' },
          material: 'al-wrought',
          cutter,
          passes,
          unit,
        });
        if (!outcome.ok) throw new Error('refused');
        const { programme, pathDiameter, turns } = outcome.value;
        const { moves, metric } = interpret(programme);
        const mm = metric ? 1 : 25.4;
        const hair = metric ? 0.002 : 0.006;
        const pitch = PITCHES[thread]!;
        const left = thread.includes('LH');
        const arcs = moves.filter(({ arc }) => arc);
        const full = arcs.filter(({ arc }) => arc!.turn === 360);
        const faults: string[] = [];
        const holds = (truth: boolean, what: string) => truth || faults.push(what);
        holds(full.length === turns * passes, 'turns');
        for (const { arc, from, to } of arcs) {
          holds(Math.abs(arc!.radius[0] - arc!.radius[1]) * mm < hair, 'arc is no circle');
          holds(arc!.turn > 0, 'clockwise');
          const rise = ((to[2] - from[2]) * mm * 360) / arc!.turn;
          holds(Math.abs(rise - (left ? -pitch : pitch)) < 4 * hair, `lead ${rise}`);
        }
        const last = full.slice(-turns);
        holds(
          last.every((move) => Math.abs(radius(move) * mm - pathDiameter / 2) < hair),
          'path',
        );
        const deepest = Math.min(...full.map(({ from, to }) => Math.min(from[2], to[2]))) * mm;
        holds(Math.abs(deepest + fullThread) < hair, 'depth');
        const heights = moves.map(({ to }) => to[2]).filter(Number.isFinite);
        const lowest = Math.min(...heights) * mm;
        holds(lowest >= -fullThread - pitch / 4 - hair, 'below the floor');
        const cutting = moves.filter(({ kind }) => kind !== 'rapid');
        holds(
          cutting.every(({ feed }) => feed > 0),
          'no feed',
        );
        const rapids = moves.filter(
          ({ kind, from }) => kind === 'rapid' && Number.isFinite(from[2]),
        );
        holds(
          rapids.every(
            ({ to, from }) => to[0] === from[0] && to[1] === from[1] && to[2] >= from[2],
          ),
          'rapid in the cut',
        );
        const end = moves.at(-1)!;
        holds(end.to[0] === 0 && end.to[1] === 0 && end.to[2] > 0 && end.offset === 'off', 'end');
        holds(
          moves.every(({ kind, offset }) => offset === 'off' || kind !== 'rapid'),
          'offset in rapid',
        );
        if (faults.length > 0) throw new Error(faults.join());
        read += 1;
      }),
      { numRuns: 200 },
    );
    expect(read).toBeGreaterThanOrEqual(200);
  });

  it('gives the control the feed that it counts', () => {
    const feeds = (controlFeed: 'centre' | 'teeth') =>
      planned({ controlFeed, passes: 1 }).programme.join(' ');
    expect(feeds('centre')).toContain('F164');
    expect(feeds('teeth')).toContain('F546');
    const unsaid = planThreadMill({ ...M10, controlFeed: undefined as never });
    expect(unsaid.ok && codes(unsaid.value.warnings)).toContain('mill-feed-setting');
  });
});
