/**
 * The hole in its part: each field of a request, one test each, with numbers worked by hand. Rules common
 * practice; lengths derived.
 */
import { describe, expect, it, test } from 'vitest';
import { planHole, type HolePlan, type HoleRequest } from '../../../core';

function plan(request: HoleRequest): HolePlan {
  const outcome = planHole(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}
const problems = (request: HoleRequest) => {
  const outcome = planHole(request);
  return outcome.ok ? [] : outcome.problems.map(({ code, field }) => `${field}: ${code}`);
};
const codes = (list: { code: string }[]) => list.map(({ code }) => code);
const best = (found: HolePlan) => found.taps.find(({ verdict }) => verdict === 'best');
const warning = (found: HolePlan, code: string) =>
  found.warnings.find((each) => each.code === code);
const remedy = (found: HolePlan, code: string) => found.remedies.find((each) => each.code === code);

const blind: HoleRequest = {
  thread: 'M8',
  hole: { kind: 'blind' },
  fullThread: 16,
  material: 'steel-low',
};
const through: HoleRequest = {
  thread: 'M8',
  hole: { kind: 'through', thickness: 16 },
  material: 'steel-low',
};
const limited = (depth: number): HoleRequest => ({
  ...blind,
  hole: { kind: 'blind', limit: { at: 'shoulder', depth } },
});

describe('entry', () => {
  test('a face 10° off square: no tap leads, a flat first, and what is lost on one side', () => {
    const found = plan({ ...blind, entry: { angle: 10 } });
    expect(best(found)).toBeUndefined();
    expect(found.taps.every(({ reasons }) => reasons[0]!.code === 'needs-flat')).toBe(true);
    expect(warning(found, 'entry-face')).toMatchObject({ level: 'caution' });
    const { numbers } = remedy(found, 'flat-first')!;
    // tan 10° = 0.176327; times 8 = 1.4106; half of 8.8 times it = 0.7758.
    expect(numbers['diameter']).toBeCloseTo(8.8, 9);
    expect(numbers['loss']).toBeCloseTo(1.4106, 4);
    expect(numbers['sink']).toBeCloseTo(0.7758, 4);
  });

  test('with the flat a tap leads again, still with care', () => {
    const found = plan({ ...blind, entry: { angle: 10, flat: true } });
    expect(best(found)?.style).toBe(best(plan(blind))?.style);
    expect(warning(found, 'entry-face')?.level).toBe('caution');
    expect(remedy(found, 'flat-first')).toBeUndefined();
  });

  test('up to 3° nothing is said', () => {
    const said = codes(plan({ ...blind, entry: { angle: 3 } }).warnings);
    expect(said).toEqual(codes(plan(blind).warnings));
    expect(codes(plan({ ...blind, entry: { angle: 3.01 } }).warnings)).toContain('entry-face');
  });

  test('a limit is measured at the axis, depths from the flat 0.776 mm below', () => {
    const at = (depth: number) =>
      best(plan({ ...limited(depth), entry: { angle: 10, flat: true } }))!;
    // 16 + 3 x 1.25 + 1.25 = 21 from the flat; 21.776 from the face at the axis.
    expect(at(21.78).chamfer.class).toBe('semi-bottoming');
    expect(at(21.77).chamfer.class).toBe('bottoming');
    expect(at(21.78).depth.shoulder).toBeCloseTo(21, 9);
    expect(at(21.78).depth.fromFace!.shoulder).toBeCloseTo(21.7758, 4);
    const short = plan({ ...limited(19), entry: { angle: 10, flat: true } });
    // Asked of the drawing, so measured as the drawing measures.
    expect(remedy(short, 'deeper-hole')!.numbers['to']).toBeCloseTo(21.7758, 4);
  });

  test('a through hole loses what the flat takes', () => {
    const found = plan({ ...through, entry: { angle: 10, flat: true } });
    expect(best(found)!.depth.fullThread).toBeCloseTo(16 - 0.7758, 4);
    expect(problems({ ...through, entry: { angle: 60, flat: true } })).toEqual([]);
    // tan 60° times 4.4 = 7.62: through a part of 7 mm.
    expect(
      problems({ ...through, hole: { kind: 'through', thickness: 7 }, entry: { angle: 60 } }),
    ).toEqual(['entry: flat-through-part']);
  });

  it.each([-1, 60.1, 90])('%d° is refused', (angle) =>
    expect(problems({ ...blind, entry: { angle } })).toEqual(['entry: entry-out-of-range']),
  );
  it('no number is refused', () =>
    expect(problems({ ...blind, entry: { angle: Number.NaN } })).toEqual([
      'entry: number-not-finite',
    ]));
});

describe('crossing', () => {
  const bore = (width: number, from?: number, cut: 'before' | 'after' = 'before') =>
    ({ kind: 'bore', width, cut, ...(from === undefined ? {} : { from }) }) as const;

  it.each([
    ['inside the thread', bore(6, 5), 6],
    ['partly below it', bore(6, 12), 4],
    ['wholly below it', bore(6, 16), 0],
    ['nobody knows where', bore(6), 6],
    ['a slot takes an arc, no length', { kind: 'slot', width: 2, cut: 'before' } as const, 0],
    ['cut after', bore(6, 5, 'after'), 6],
  ])('lost thread: %s', (_, crossing, lost) => {
    expect(plan({ ...blind, crossing }).lostThread).toBeCloseTo(lost, 9);
  });

  test('without a crossing no lost thread is named', () =>
    expect(plan(blind).lostThread).toBeUndefined());

  test('cut before: warned of, tap first as a remedy, straight flute with a chamfer that bridges', () => {
    const found = plan({ ...blind, crossing: bore(5, 5) });
    expect(warning(found, 'crossing')).toMatchObject({
      level: 'caution',
      numbers: { width: 5, gap: 4 },
    });
    expect(remedy(found, 'tap-before-crossing')).toBeDefined();
    // 5.5 threads of 1.25 are 6.9 mm, longer than the gap.
    expect(best(found)).toMatchObject({ style: 'straight-flute', chamfer: { class: 'plug' } });
    expect(codes(best(found)!.reasons)).toContain('bridges-crossing');
  });

  test('through: the spiral point keeps its place; a gap beyond 5.5 pitches takes the longest chamfer', () => {
    const style = (width: number) => best(plan({ ...through, crossing: bore(width, 2) }))!;
    expect(style(6.8)).toMatchObject({ style: 'spiral-point', chamfer: { class: 'plug' } });
    expect(style(6.9).chamfer.class).toBe('taper');
    const styles = plan({ ...through, crossing: bore(6.8, 2) }).taps.map((tap) => tap.style);
    expect(styles.indexOf('spiral-flute')).toBeGreaterThan(styles.lastIndexOf('straight-flute'));
  });

  test('slower, and never slower than a metal that hardens will bear', () => {
    const usual = plan(through).cycle!;
    const crossed = plan({ ...through, crossing: bore(4, 2) }).cycle!;
    expect(crossed.rpm).toBeLessThan(usual.rpm);
    expect(crossed.rpm).toBeGreaterThanOrEqual(usual.rpmRange.min * 0.95);
  });

  test('on a floating holder no tap leads across a gap', () => {
    const found = plan({ ...through, spindle: { drive: 'floating' }, crossing: bore(4, 2) });
    expect(best(found)).toBeUndefined();
    expect(found.taps[0]!.reasons[0]!.code).toBe('needs-synchronous');
    expect(
      best(plan({ ...through, spindle: { drive: 'floating' }, crossing: bore(4, 2, 'after') })),
    ).toBeDefined();
  });

  test('cut after: already the right order, deburr and gauge again', () => {
    const found = plan({ ...blind, crossing: bore(5, 5, 'after') });
    expect(codes(found.warnings)).toContain('crossing-after');
    expect(codes(found.warnings)).not.toContain('crossing');
    expect(remedy(found, 'tap-before-crossing')).toBeUndefined();
    expect(best(found)?.style).toBe(best(plan(blind))?.style);
  });

  test('a slot wider than a land asks for a helix or to tap first', () => {
    const slot = (width: number) =>
      plan({ ...blind, crossing: { kind: 'slot', width, cut: 'before' } });
    // Four flutes: a land is a half of pi 8 / 4, 3.14 mm.
    expect(best(slot(3.1))!.style).toBe('straight-flute');
    expect(best(slot(3.2))!.style).toBe('spiral-flute');
    expect(warning(slot(3.2), 'crossing')!.numbers['land']).toBeCloseTo(Math.PI, 9);
    expect(remedy(slot(3.2), 'tap-before-crossing')).toBeDefined();
  });

  test('what it takes is missing where the strength is reckoned', () => {
    const have = (request: HoleRequest) =>
      warning(plan(request), 'weak-when-stripped')?.numbers['have'];
    expect(have({ ...blind, crossing: bore(10, 2) })).toBeCloseTo(6, 9);
  });

  test('a bore that takes all of the thread stops', () => {
    const found = plan({ ...blind, crossing: bore(16, 0) });
    expect(best(found)).toBeUndefined();
    expect(warning(found, 'crossing')?.level).toBe('stop');
  });

  test('a crossing nobody measured keeps its own warning and its ranking', () => {
    const found = plan({ ...through, interrupted: true });
    expect(codes(found.warnings)).toContain('interrupted');
    expect(best(found)).toMatchObject({ style: 'spiral-point', chamfer: { class: 'plug' } });
    expect(found.lostThread).toBeUndefined();
  });

  it.each([
    ['crossing-kind-unknown', { kind: 'hole', width: 4, cut: 'before' }],
    ['crossing-width-out-of-range', { kind: 'bore', width: 0, cut: 'before' }],
    ['crossing-from-out-of-range', { kind: 'bore', width: 4, from: -1, cut: 'before' }],
    ['crossing-cut-unknown', { kind: 'bore', width: 4, cut: 'during' }],
    ['number-not-finite', { kind: 'bore', width: Infinity, cut: 'before' }],
  ])('%s', (code, crossing) =>
    expect(problems({ ...blind, crossing } as unknown as HoleRequest)).toEqual([
      `crossing: ${code}`,
    ]),
  );
});

describe('counterbore', () => {
  test('depths count from its floor and are also given from the face', () => {
    const plain = best(plan(blind))!.depth;
    const { depth } = best(plan({ ...blind, counterbore: { diameter: 15, depth: 8 } }))!;
    expect(depth).toMatchObject({ ...plain });
    expect(depth.fromFace).toEqual({
      shoulder: plain.shoulder + 8,
      point: plain.point + 8,
      tip: plain.tip + 8,
      fullThread: 24,
    });
    expect(plain.fromFace).toBeUndefined();
  });

  test('narrower than a millimetre over the shank it is tight', () => {
    // DIN 371 M8: shank 8.
    const said = (diameter: number) =>
      codes(plan({ ...blind, counterbore: { diameter, depth: 5 } }).warnings);
    expect(said(8.9)).toContain('counterbore-tight');
    expect(said(9)).not.toContain('counterbore-tight');
  });

  test('narrower than the thread is refused', () => {
    expect(problems({ ...blind, counterbore: { diameter: 7.9, depth: 5 } })).toEqual([
      'counterbore: counterbore-narrow',
    ]);
    expect(problems({ ...blind, counterbore: { diameter: 8, depth: 5 } })).toEqual([]);
  });

  it.each([
    ['counterbore-out-of-range', { diameter: 0, depth: 5 }],
    ['counterbore-out-of-range', { diameter: 1001, depth: 5 }],
    ['counterbore-depth-out-of-range', { diameter: 12, depth: 0 }],
    ['counterbore-depth-out-of-range', { diameter: 12, depth: 1001 }],
  ])('%s: %j', (code, counterbore) =>
    expect(problems({ ...blind, counterbore })).toEqual([`counterbore: ${code}`]),
  );
});

describe('reach', () => {
  test('beyond an ordinary tap: care, the length needed, the reduced shank', () => {
    // Spiral flute 2-3: tip 16 + 3.75; 19.75 + 18 = 37.75 against 35.
    const found = plan({ ...blind, counterbore: { diameter: 8.5, depth: 18 } });
    expect(best(found)).toBeDefined();
    expect(warning(found, 'tap-reach')).toMatchObject({
      level: 'caution',
      numbers: { needed: 37.75, have: 35, reduced: 72 },
    });
    expect(best(found)!.reach).toMatchObject({ verdict: 'long', needed: 37.75 });
    expect(
      codes(plan({ ...blind, counterbore: { diameter: 15, depth: 18 } }).warnings),
    ).not.toContain('tap-reach');
  });

  test('M4 by 60 deep: no stock tap, none leads', () => {
    const found = plan({ ...blind, thread: 'M4', fullThread: 60 });
    expect(best(found)).toBeUndefined();
    expect(
      found.taps.find(({ process }) => process === 'cut')!.reasons.map(({ code }) => code),
    ).toContain('no-stock-tap');
    expect(warning(found, 'tap-reach')?.level).toBe('stop');
    expect(remedy(found, 'longer-tap')).toBeDefined();
  });

  test('a deep counterbore that keeps the holder out: no stock tap', () => {
    // 19.75 + 53 = 72.75, beyond 90 - 3 x 6 = 72.
    const found = plan({ ...blind, counterbore: { diameter: 20, depth: 53 } });
    expect(best(found)).toBeUndefined();
    expect(best(plan({ ...blind, counterbore: { diameter: 20, depth: 52 } }))).toBeDefined();
    // All at once: a shorter chamfer is no way to a longer tap.
    const cut = found.taps.filter(({ process }) => process !== 'mill');
    expect(cut.every(({ verdict }) => verdict === 'no')).toBe(true);
  });

  test('a size whose taps are not held says so', () => {
    expect(codes(plan({ ...blind, thread: 'M64' }).assumptions)).toContain('tap-length-unknown');
    expect(codes(plan(blind).assumptions)).toContain('tap-length-stock');
  });
});

describe('cored', () => {
  test('no drill is promised; the size it is opened to is named', () => {
    const found = plan({ ...blind, material: 'iron-grey', cored: true });
    expect(warning(found, 'cored-hole')).toMatchObject({
      level: 'caution',
      numbers: { diameter: found.drill!.diameter },
    });
    expect(
      [found.drill, ...found.drills, ...found.taps.map(({ drill }) => drill)].some(
        (drill) => drill?.verdict === 'inside',
      ),
    ).toBe(false);
  });
  it('is yes or no', () =>
    expect(problems({ ...blind, cored: 'yes' } as unknown as HoleRequest)).toEqual([
      'cored: cored-unknown',
    ]));
});

describe('later', () => {
  it.each([
    ['harden', 'later-hardening'],
    ['plate', 'later-coating'],
    ['anodise', 'later-coating'],
    ['weld', 'later-welding'],
  ] as const)('%s: %s, once', (later, code) => {
    const found = plan({ ...blind, later: [later, later] });
    expect(codes(found.warnings).filter((each) => each === code)).toHaveLength(1);
    expect(warning(found, code)?.level).toBe('caution');
  });

  test('the ordinary tap of the class is named as failing when it does', () => {
    const said = (thread: string, thick: number) =>
      warning(
        plan({ ...blind, thread, coating: { thickness: [thick / 2, thick] }, later: ['plate'] }),
        'later-coating',
      )!.numbers;
    // M8-6H: ISO 2 begins 0.3 of grade 5 (125 µm) over basic, 38 µm: four times 8 µm fit, four times 10 do not.
    expect(said('M8', 0.008)).toMatchObject({ plate: 1, pitchMax: 0.032, holdsIso: 2 });
    expect(said('M8', 0.01)).toMatchObject({ failsIso: 2, takesIso: 3 });
    // 1/4-20-3B: H3 begins .0010 over basic; .0003 of zinc closes it by .0012.
    expect(said('1/4-20-3B', 0.0003 * 25.4)).toMatchObject({ failsH: 3 });
  });

  test('a layer nobody measured is asked for', () => {
    expect(warning(plan({ ...blind, later: ['anodise'] }), 'later-coating')!.numbers).toEqual({
      anodise: 1,
      unsized: 1,
    });
  });

  it.each([[['paint']], ['harden'], [[null]]])('%j is refused', (later) =>
    expect(problems({ ...blind, later } as unknown as HoleRequest)).toEqual([
      'later: later-unknown',
    ]),
  );
});

describe('duty', () => {
  it.each(['lifting', 'pressure', 'structure', 'vehicle', 'medical'] as const)(
    '%s is not judged here',
    (duty) => {
      const found = plan({ ...blind, duty });
      expect(found.warnings[0]).toMatchObject({
        code: 'duty-not-judged',
        level: 'stop',
        numbers: { [duty]: 1 },
      });
      expect(best(found)).toEqual(best(plan(blind)));
    },
  );
  it('any other is refused', () =>
    expect(problems({ ...blind, duty: 'fun' } as unknown as HoleRequest)).toEqual([
      'duty: duty-unknown',
    ]));
});

describe('defaults', () => {
  test('each field that is left out is an assumption, and goes when it is said', () => {
    const plainly = codes(plan(blind).assumptions);
    const names = [
      'entry-square',
      'crossing-none',
      'counterbore-none',
      'drilled-solid',
      'later-none',
      'duty-none',
    ];
    expect(plainly).toEqual(expect.arrayContaining(names));
    const said = codes(
      plan({
        ...blind,
        entry: { angle: 0 },
        crossing: { kind: 'bore', width: 2, cut: 'after' },
        counterbore: { diameter: 15, depth: 2 },
        cored: true,
        later: ['weld'],
        duty: 'vehicle',
      }).assumptions,
    );
    expect(names.filter((name) => said.includes(name))).toEqual([]);
    expect(said).toEqual(expect.arrayContaining(['counterbore-datum', 'crossing-whole']));
  });
});
