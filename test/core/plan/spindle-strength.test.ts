/** The studies behind the tap-strength and spindle calculators: worked jobs, trade figures, refusals. */
import { describe, expect, it } from 'vitest';
import { torqueAt } from '../../../core/cycle/spindle';
import { drawnCurve, spindleStudy, type SpindleQuestion } from '../../../core/plan/spindle-study';
import {
  familiarDangers,
  strengthStudy,
  type StrengthQuestion,
} from '../../../core/plan/strength-study';
import { roundDecimals } from '../../../core/units';

function spindle(question: Partial<SpindleQuestion>) {
  const found = spindleStudy({
    request: {
      thread: 'M30x3.5',
      hole: { kind: 'through', thickness: 45 },
      material: 'steel-medium',
    },
    style: 'spiral-point',
    points: [
      { rpm: 60, torque: 30 },
      { rpm: 3500, torque: 30 },
      { rpm: 10000, torque: 10.5 },
    ],
    ...question,
  });
  if (!found.ok) throw new Error(found.problems[0]?.code);
  return found.value;
}

describe('M30×3.5 through 45 in 1045 on a 30-taper spindle of 30 N·m and 11 kW (worked job)', () => {
  const study = spindle({});

  it('needs 74 N·m sharp: 2.5 times what the spindle has, although the power is a tenth of it', () => {
    expect(Math.abs(study.needed.sharp / 74 - 1)).toBeLessThan(0.03);
    expect(Math.abs((study.sharp.share ?? 0) / 2.5 - 1)).toBeLessThan(0.05);
    expect(study.sharp.power).toBeLessThan(1.1);
    expect(study.worn.mostPower).toBeGreaterThan(10);
    expect(study.verdict).toBe('over');
  });

  it('no speed helps', () => {
    expect(study.speeds).toEqual([]);
    expect(study.within).toEqual([]);
  });

  it('a radial drill of 320 N·m at 90 rev/min turns it', () => {
    const drill = spindle({ points: [{ rpm: 90, torque: 320 }], rpm: 90 });
    expect(drill.verdict).toBe('in');
    expect(drill.speeds).toEqual([{ min: 90, max: 90 }]);
    // Slower than the charts' range for the material, which starts at 106 rev/min for this size.
    expect(drill.within).toEqual([]);
  });
});

describe('the speed', () => {
  const request = {
    thread: 'M12x1.75',
    hole: { kind: 'through', thickness: 20 },
    material: 'steel-medium',
  } as const;
  /** Weak when slow, as some drives are, and weak again when fast. */
  const points = [
    { rpm: 100, torque: 8 },
    { rpm: 400, torque: 40 },
    { rpm: 1600, torque: 10 },
  ];

  it('is moved to where the torque is, and said to have been chosen', () => {
    const study = spindle({ request, points });
    expect(study.rpmGiven).toBe(false);
    expect(study.within.length).toBeGreaterThan(0);
    expect(study.rpm).toBeGreaterThanOrEqual(study.within[0]!.min - 1e-9);
    expect(study.rpm).toBeLessThanOrEqual(study.within[0]!.max + 1e-9);
    expect(study.verdict).toBe('in');
  });

  it('stays as it was given, with its own verdict', () => {
    expect(spindle({ request, points, rpm: 100 }).verdict).toBe('over');
    expect(spindle({ request, points, rpm: 2000 }).verdict).toBe('off-curve');
    const { needed } = spindle({ request, points });
    const flat = [
      { rpm: 100, torque: needed.worn * 1.05 },
      { rpm: 800, torque: needed.worn * 1.05 },
    ];
    expect(spindle({ request, points: flat, rpm: 300 }).verdict).toBe('tight');
  });

  it('a measured torque takes the place of the predicted one', () => {
    const study = spindle({ request, points, torque: 4 });
    expect(study.needed).toEqual({ sharp: 4, worn: 6.6, measured: true });
  });

  it('refuses what makes no sense, with the code of whoever saw it', () => {
    const code = (question: Partial<SpindleQuestion>) => {
      const found = spindleStudy({ request, style: 'form', points, ...question });
      return found.ok ? 'ok' : found.problems[0]?.code;
    };
    expect(code({ points: [] })).toBe('spindle-no-points');
    expect(code({ request: { ...request, thread: 'M12x9' } })).toBe('pitch-too-large');
    expect(code({ request: { ...request, material: 'steel-hard' } })).toBe('too-hard');
    expect(code({ request: { ...request, material: 'iron-grey' } })).toBe('tap-not-planned');
  });

  it('is drawn through every point that was typed', () => {
    const { curve } = spindle({ request, points });
    const drawn = drawnCurve(curve);
    for (const point of points) expect(drawn).toContainEqual(point);
    for (const { rpm, torque } of drawn) expect(torqueAt(curve, rpm)).toBeCloseTo(torque, 9);
  });
});

function strength(question: Partial<StrengthQuestion>) {
  const found = strengthStudy({ thread: 'M10x1.5', style: 'straight-flute', ...question });
  if (!found.ok) throw new Error(found.problems[0]?.code);
  return found.value;
}

describe('tap strength', () => {
  it('M10 straight-flute, web 4.85: 50 N·m, and a wrench of at most 250 mm (trade figures)', () => {
    const study = strength({});
    expect(study.breaks.expected).toBeCloseTo(50.4, 1);
    expect(Math.abs(study.arm / 250 - 1)).toBeLessThan(0.02);
  });

  it('M3 wants a wrench held by the fingertips (trade figure: no more than 7 mm)', () => {
    const { arm } = strength({ thread: 'M3' });
    expect(arm).toBeGreaterThan(7 / 2);
    expect(arm).toBeLessThan(7);
  });

  it('a measured web narrows the band to its steel and its shape, and is refused where it cannot be', () => {
    const usual = strength({});
    const measured = strength({ web: 4.85 });
    expect(measured.webMeasured).toBe(true);
    expect(measured.breaks.expected).toBeCloseTo(usual.breaks.expected, 9);
    expect(measured.breaks.high / measured.breaks.low).toBeLessThan(
      usual.breaks.high / usual.breaks.low,
    );
    const refused = strengthStudy({ thread: 'M10', style: 'spiral-point', web: 9.9 });
    expect(refused.ok ? '' : refused.problems[0]?.code).toBe('web-out-of-range');
  });

  it('without a torque there is no share and no clutch; with one there are both', () => {
    expect(strength({}).torque).toBeUndefined();
    expect(strength({}).clutch).toBeUndefined();
    const study = strength({ torque: 8 });
    expect(study.torque?.share.judgement).toBe('easy');
    expect(study.torque?.share.worst).toBeGreaterThan(study.torque!.share.worn);
    expect(study.clutch).toEqual({ low: 12, high: 16, held: false });
    expect(strength({ torque: 30 }).clutch).toBeNull();
    expect(strength({ torque: 31 }).torque?.share.judgement).toBe('breaks');
  });

  it('flutes matter to a straight-flute tap alone', () => {
    expect(strength({ flutes: 3 }).breaks.expected).toBeLessThan(
      strength({ flutes: 4 }).breaks.expected,
    );
    expect(strength({ style: 'spiral-point', flutes: 2 }).breaks).toEqual(
      strength({ style: 'spiral-point', flutes: 4 }).breaks,
    );
  });

  it('familiar threads stand in the order of their danger, #6-32 last (derived, printed to three decimals)', () => {
    const rows = familiarDangers().map(({ designation, index }) => [
      designation,
      roundDecimals(index, 3),
    ]);
    expect(rows).toEqual([
      ['M30x3.5', 0.014],
      ['M10x1.5', 0.023],
      ['M6x1', 0.028],
      ['M3x0.5', 0.028],
      ['#10-24', 0.048],
      ['#4-40', 0.05],
      ['#6-32', 0.051],
    ]);
  });
});
