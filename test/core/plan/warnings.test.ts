/** What to watch, at the very thresholds. Common practice; numbers by hand. */
import { describe, expect, it } from 'vitest';
import { planHole, type HolePlan, type HoleRequest } from '../../../core';
import { SHARE_WATCH, shareWarnings, spindleWarnings } from '../../../core/plan/warnings';

function plan(request: HoleRequest): HolePlan {
  const outcome = planHole(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}
const codes = (list: { code: string }[]) => list.map(({ code }) => code);
const warned = (request: HoleRequest) => codes(plan(request).warnings);
const numbers = (request: HoleRequest, code: string) =>
  plan(request).warnings.find((each) => each.code === code)?.numbers;

const through = (thickness: number, more: { clearBelow?: number; chipsMayFall?: boolean } = {}) =>
  ({ kind: 'through', thickness, ...more }) as const;
const open = { thread: 'M8', hole: through(14), material: 'steel-low' } as const;
const blind = { ...open, hole: { kind: 'blind' }, fullThread: 12 } as const;

describe('a tap as a share of its strength: half worn, never over', () => {
  it.each([
    [0.45, SHARE_WATCH.worn, []],
    [0.2, SHARE_WATCH.worn + 0.001, ['tap-share-high']],
    [0.6, 1, ['tap-share-high']],
    [0.6, 1.001, ['tap-will-break']],
  ])('sharp %d, worn %d: %j', (sharp, worn, expected) => {
    const found = shareWarnings({ sharp, worn });
    expect(codes(found)).toEqual(expected);
    for (const each of found)
      expect(each).toMatchObject({ numbers: { sharp, worn }, source: 'tap-chip-model' });
  });
});

describe('a worn tap against the spindle: nine tenths of it', () => {
  it('is said from there on', () => {
    expect(spindleWarnings(10, 18, 20)).toEqual([]);
    expect(spindleWarnings(10, 18.01, 20)).toEqual([
      {
        code: 'spindle-over',
        numbers: { sharp: 10, worn: 18.01, spindle: 20 },
        source: 'tap-chip-model',
        level: 'caution',
      },
    ]);
    expect(spindleWarnings(10, 20.01, 20)[0]!.level).toBe('stop');
  });
});

describe('a hole with nothing to watch', () => {
  it('says nothing', () => expect(warned(open)).toEqual([]));
});

describe('one thing at a time', () => {
  it.each<[string, HoleRequest, string[]]>([
    ['left hand', { ...open, thread: 'M8-LH' }, ['left-hand']],
    ['interrupted', { ...open, interrupted: true }, ['interrupted']],
    ['not interrupted', { ...open, interrupted: false }, []],
    ['a coating of nothing', { ...open, coating: { thickness: [0, 0] } }, []],
    ['a pair in no table', { ...open, thread: 'M8x1.3' }, ['limits-computed']],
    ['inch limits are always computed', { ...open, thread: '5/16-18' }, []],
    ['no largest hole held', { ...open, thread: '5/16-18 UNJC' }, ['minor-limit-unknown']],
    ['chips may', { ...open, hole: through(14, { chipsMayFall: true }) }, []],
    ['deep: just two diameters', { ...open, hole: through(16) }, []],
    ['deep: more', { ...open, hole: through(16.1) }, ['deep-thread']],
    ['dust', { ...open, material: 'iron-grey' }, ['dust']],
    ['springs back', { ...open, material: 'plastic' }, ['springs-back', 'weak-when-stripped']],
    ['hardened', { ...open, material: 'steel-hard' }, ['harden-after']],
    ['chips ahead in a blind hole', blind, ['chips-ahead-no-room']],
    [
      'none of that in a blind hole of hardened steel',
      { ...blind, material: 'steel-hard' },
      ['harden-after'],
    ],
  ])('%s', (_, request, expected) => expect(warned(request)).toEqual(expected));

  it('chips may not fall: said beside whatever the other tap brings with it', () => {
    const said = warned({ ...open, hole: through(14, { chipsMayFall: false }) });
    expect(said).toContain('chips-must-not-fall');
  });

  it('titanium: hardens below its slowest speed, springs back, burns', () => {
    const found = warned({ ...open, material: 'titanium' });
    expect(found.filter((code) => /hardens|springs|fire|dust/.test(code))).toEqual([
      'work-hardens',
      'springs-back',
      'swarf-fire',
    ]);
    expect(numbers({ ...open, material: 'titanium' }, 'work-hardens')).toEqual({ slowest: 3 });
  });
});

describe('with its numbers', () => {
  it('a coating moves the pitch diameter by four times its thickness', () => {
    const coated = { ...open, coating: { thickness: [0.005, 0.01] } } satisfies HoleRequest;
    expect(numbers(coated, 'plated')).toEqual({
      min: 0.005,
      max: 0.01,
      pitchMin: 0.02,
      pitchMax: 0.04,
    });
  });

  it('thin work in pitches: M5×0.8 in 3 mm', () => {
    const sheet = { thread: 'M5', hole: through(3), material: 'steel-low' } as const;
    expect(numbers(sheet, 'thin-work')).toEqual({ pitches: expect.closeTo(3.75, 9), thickness: 3 });
    expect(warned({ ...sheet, hole: through(3.6) })).not.toContain('thin-work');
  });

  it('deep thread in diameters', () => {
    expect(numbers({ ...open, hole: through(20) }, 'deep-thread')).toEqual({ diameters: 2.5 });
  });

  it('room below, against 5.5 threads and a pitch of M8', () => {
    const over = (clearBelow: number) => ({ ...open, hole: through(14, { clearBelow }) });
    expect(numbers(over(3), 'below-clearance')).toEqual({ have: 3, needed: 8.125 });
    expect(warned(over(9))).toEqual([]);
  });

  it('a drill that likely cuts past the class', () => {
    const risky = { ...open, thread: 'M12x1-4H', hole: through(20) };
    const { drill } = plan(risky);
    const found = numbers(risky, 'drill-at-risk')!;
    expect(found).toMatchObject({ diameter: drill!.diameter, likely: drill!.likely });
    // 4H ends at 10.917 + 0.150.
    expect(found['max']!).toBeCloseTo(11.067, 6);
    expect(found['likely']).toBeGreaterThan(found['max']!);
  });

  it('a thread that strips before its screw breaks: M10 8.8 in 6061 wants 10.4 mm, 13 with margin', () => {
    const cover = (fullThread: number) =>
      ({ thread: 'M10', fullThread, hole: { kind: 'blind' }, material: 'al-wrought' }) as const;
    const weak = numbers(cover(8), 'weak-when-stripped')!;
    expect(weak['matching']).toBeCloseTo(10.4, 1);
    expect(weak['wanted']).toBeCloseTo(1.25 * weak['matching']!, 9);
    expect(weak['ratio']).toBeCloseTo(8 / weak['matching']!, 9);
    expect(weak).toMatchObject({ have: 8, tensile: 800 });
    expect(warned(cover(weak['wanted']! + 1e-6))).not.toContain('weak-when-stripped');
    expect(warned(cover(weak['wanted']! - 0.01))).toContain('weak-when-stripped');
  });

  it('a taper pipe thread with its gauge: 1/4 NPT, L1 .2278 in, a turn either way', () => {
    const tapered = { ...blind, thread: '1/4 NPT' };
    expect(numbers(tapered, 'taper-pipe')).toEqual({
      length: expect.closeTo(0.2278 * 25.4, 6),
      turns: 1,
    });
  });

  it('the lightest style of cut tap is the one a weak spindle is set against', () => {
    const weak = { ...open, spindle: { drive: 'synchronous', torque: 0.1 } } as const;
    // Chamfers differ by less than the model knows: each style counts with its usual one.
    const cut = plan(open).taps.filter(
      ({ process, chamfer }) => process === 'cut' && chamfer.class === 'plug',
    );
    const lightest = Math.min(...cut.map(({ torque }) => torque.expected));
    expect(numbers(weak, 'spindle-over')).toEqual({
      sharp: expect.closeTo(lightest, 9),
      worn: expect.closeTo(1.65 * lightest, 9),
      spindle: 0.1,
    });
    expect(warned({ ...open, spindle: { drive: 'hand', torque: 0.1 } })).toEqual([]);
  });
});
