import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MATERIAL_IDS } from '../../core';
import { EXAMPLE } from '../../components/planner/examples';
import { FIELDS, isStarted, type InputName, type Inputs } from '../../components/planner/inputs';
import { fieldProblemText } from '../../components/planner/problems';
import { readingOf } from '../../components/planner/reading';
import { attempt } from '../../components/planner/state';
import { initialValues } from '../../components/state/address';
import { bestTap } from '../../components/words';

const blank = initialValues(FIELDS);
const typed = (values: Partial<Inputs>): Inputs => ({ ...blank, ...values });

/** Complaints by field, in words. */
function complaints(values: Partial<Inputs>): Partial<Record<InputName, string>> {
  const { problems } = attempt(typed(values), 'mm');
  return Object.fromEntries(
    problems.map(({ field, problem }) => [field, fieldProblemText(field, problem, 'mm')]),
  );
}

describe('from the form to a plan', () => {
  it('plans the worked example with the depths worked out by hand', () => {
    const { plan, request, problems } = attempt(EXAMPLE, 'mm');
    expect(problems).toEqual([]);
    expect(request?.spindle).toEqual({ drive: 'synchronous', torque: 30 });
    const best = plan && bestTap(plan);
    // 16 + 3 × 1.25 of chamfer + 1 × 1.25 of stop clearance = 21.0; tip at 19.75: derived.
    expect(best?.depth.shoulder).toBeCloseTo(21, 9);
    expect(best?.depth.tip).toBeCloseTo(19.75, 9);
    expect(best?.style).toBe('spiral-flute');
  });

  it('reads bare numbers in the page’s unit and typed units as they say', () => {
    const inch = typed({ ...EXAMPLE, depth: '.625', limit: '22 mm' });
    const { request } = attempt(inch, 'in');
    expect(request?.fullThread).toBeCloseTo(15.875, 9);
    expect(request?.hole).toEqual({ kind: 'blind', limit: { at: 'shoulder', depth: 22 } });
  });

  it('takes a decimal comma', () => {
    const { request } = attempt(typed({ ...EXAMPLE, thread: 'M8x1,25', depth: '15,5' }), 'mm');
    expect(request?.fullThread).toBe(15.5);
  });

  it('leaves every default to the core, so that it is listed as assumed', () => {
    const { request } = attempt(
      typed({ thread: 'M8', hole: 'through', thickness: '12', material: 'steel-low' }),
      'mm',
    );
    expect(request).toEqual({
      thread: 'M8',
      hole: { kind: 'through', thickness: 12 },
      material: 'steel-low',
    });
  });

  it('does not carry the depth of a blind hole into a through one', () => {
    const { plan } = attempt(typed({ ...EXAMPLE, hole: 'through', thickness: '12' }), 'mm');
    expect(plan).not.toBeNull();
  });

  it('reads everything that stands one step away', () => {
    const { request } = attempt(
      typed({
        ...EXAMPLE,
        point: '140°',
        drills: 'metric,letter',
        web: '3,4',
        centre: '1.5',
        interrupted: 'yes',
        'coat-min': '5',
        'coat-max': '8',
        measured: '3.5',
        'measured-style': 'spiral-flute',
        'measured-chamfer': 'plug',
        'measured-worn': 'yes',
        rpm: '3000 rpm',
      }),
      'mm',
    );
    expect(request).toMatchObject({
      drillPoint: 140,
      stockedDrills: ['metric', 'letter'],
      tapWeb: 3.4,
      externalCentre: 1.5,
      interrupted: true,
      coating: { thickness: [0.005, 0.008] },
      measured: { torque: 3.5, style: 'spiral-flute', chamfer: 'plug', worn: true },
      spindle: { drive: 'synchronous', torque: 30, maxRpm: 3000 },
    });
  });
});

describe('the part around the hole', () => {
  const around = (values: Partial<Inputs>) =>
    attempt(typed({ ...EXAMPLE, ...values }), 'mm').request;
  it.each<[string, Partial<Inputs>, object]>([
    ['a slope', { entry: '10°' }, { entry: { angle: 10 } }],
    ['a flat on it', { entry: '10', 'entry-flat': 'yes' }, { entry: { angle: 10, flat: true } }],
    [
      'a bore',
      {
        crossing: 'bore',
        'crossing-width': '6',
        'crossing-from': '3/8 in',
        'crossing-cut': 'before',
      },
      { crossing: { kind: 'bore', width: 6, from: 9.525, cut: 'before' } },
    ],
    [
      'a slot has no beginning',
      { crossing: 'slot', 'crossing-width': '2', 'crossing-from': '5', 'crossing-cut': 'after' },
      { crossing: { kind: 'slot', width: 2, cut: 'after' } },
    ],
    ['a crossing nobody measured', { interrupted: 'yes' }, { interrupted: true }],
    [
      'a counterbore',
      { 'bore-diameter': '15', 'bore-depth': '8' },
      { counterbore: { diameter: 15, depth: 8 } },
    ],
    ['cast in', { cored: 'yes' }, { cored: true }],
    ['later', { later: 'weld,paint,harden' }, { later: ['weld', 'harden'] }],
    ['duty', { duty: 'pressure' }, { duty: 'pressure' }],
  ])('%s', (_, values, expected) => expect(around(values)).toMatchObject(expected));

  it.each<[Partial<Inputs>, InputName, RegExp]>([
    [{ entry: 'steep' }, 'entry', /number of degrees/],
    [{ entry: '70' }, 'entry', /0° to 60°/],
    [{ crossing: 'bore', 'crossing-cut': 'before' }, 'crossing-width', /how wide/],
    [
      { crossing: 'bore', 'crossing-width': '0', 'crossing-cut': 'after' },
      'crossing-width',
      /more than 0/,
    ],
    [{ 'bore-diameter': '15' }, 'bore-depth', /how deep/],
    [{ 'bore-depth': '8' }, 'bore-diameter', /how wide/],
    [{ 'bore-diameter': '7', 'bore-depth': '8' }, 'bore-diameter', /as wide as the thread/],
    [{ 'bore-diameter': '15', 'bore-depth': '0' }, 'bore-depth', /more than 0/],
  ])('%j is asked about at its field', (values, field, words) =>
    expect(complaints({ ...EXAMPLE, ...values })[field]).toMatch(words),
  );
});

describe('what is wrong or missing', () => {
  it('asks a blank form for the thread, the hole and the material', () => {
    const { problems } = attempt(blank, 'mm');
    expect(problems.map(({ field, missing }) => [field, missing])).toEqual([
      ['thread', true],
      ['hole', true],
      ['material', true],
    ]);
  });

  it.each<[string, Partial<Inputs>, InputName, RegExp]>([
    ['an M left out', { ...EXAMPLE, thread: '8x1.25' }, 'thread', /Put M in front/],
    ['a screw’s class', { ...EXAMPLE, thread: 'M8-6g' }, 'thread', /6G|6H/i],
    ['no depth at all', { ...EXAMPLE, depth: '0' }, 'depth', /more than 0/],
    ['a negative depth', { ...EXAMPLE, depth: '-5' }, 'depth', /more than 0/],
    ['an absurd depth', { ...EXAMPLE, depth: '16000', limit: '' }, 'depth', /deeper than any/],
    ['a word for a depth', { ...EXAMPLE, depth: 'deep' }, 'depth', /must be a length, like/],
    ['more thread than hole', { ...EXAMPLE, depth: '30' }, 'depth', /deeper than the hole/],
    ['a zero while the rest is blank', { depth: '0' }, 'depth', /more than 0/],
    ['no thickness', { ...EXAMPLE, hole: 'through' }, 'thickness', /how thick/],
    ['a torque in mm', { ...EXAMPLE, torque: '30 mm' }, 'torque', /must be a torque/],
    ['no drill at all', { ...EXAMPLE, drills: 'none' }, 'drills', /at least one/],
    ['a drill point of 10°', { ...EXAMPLE, point: '10' }, 'point', /between 60° and 180°/],
    ['a measured tap unnamed', { ...EXAMPLE, measured: '4' }, 'measured-style', /Choose the tap/],
  ])('says what to type instead of %s', (_what, values, field, words) => {
    expect(complaints(values)[field]).toMatch(words);
    expect(complaints(values)[field]).not.toMatch(/please|sorry|invalid|oops/i);
  });

  it('never lays a problem of a through hole at the blind hole’s depth', () => {
    const found = complaints({ ...EXAMPLE, hole: 'through', thickness: '5', partial: '9' });
    expect(Object.keys(found)).toEqual(['partial']);
  });

  it('answers or complains for whatever is typed, and never throws', () => {
    const anything = fc.record({
      thread: fc.oneof(fc.constantFrom('M8', '1/4-20', '#10-32', 'M10x1-LH'), fc.string()),
      hole: fc.constantFrom('', 'blind', 'through'),
      depth: fc.oneof(fc.constantFrom('', '12', '0', '1e9'), fc.string()),
      limit: fc.oneof(fc.constantFrom('', '20', '-1'), fc.string()),
      thickness: fc.oneof(fc.constantFrom('', '6', '3/8'), fc.string()),
      material: fc.constantFrom('', ...MATERIAL_IDS),
      torque: fc.oneof(fc.constantFrom('', '30'), fc.string()),
      units: fc.constantFrom('', 'in'),
    });
    fc.assert(
      fc.property(anything, (values) => {
        const { plan, problems } = attempt(typed(values), values.units === 'in' ? 'in' : 'mm');
        expect(plan === null).toBe(problems.length > 0);
      }),
    );
  });
});

describe('what was read, said back', () => {
  const reading = (name: InputName, values: Partial<Inputs>, unit: 'mm' | 'in' = 'mm') =>
    readingOf(name, typed(values), unit, attempt(typed(values), unit));

  it('names the thread in words', () => {
    expect(reading('thread', { thread: 'm8' })).toMatch(/^Read as M8 coarse, pitch 1\.25 mm/);
    expect(reading('thread', { thread: '10-32' })).toMatch(/#10/);
  });

  it('shows a length in both units, the typed one first', () => {
    expect(reading('depth', { depth: '16' })).toBe('16.0 mm = 0.630 in');
    expect(reading('depth', { depth: '3/4' })).toBe('0.750 in = 19.05 mm');
    expect(reading('coat-max', { 'coat-max': '8' })).toBe('0.008 mm = 0.0003 in');
  });

  it('says nothing of what cannot be read', () => {
    expect(reading('depth', { depth: 'deep' })).toBe('');
    expect(reading('thread', { thread: '8x' })).toBe('');
  });
});

describe('when the example goes', () => {
  it('at the first input that bears on the plan', () => {
    expect(isStarted(blank)).toBe(false);
    expect(isStarted(typed({ thread: 'M' }))).toBe(true);
    expect(isStarted(typed({ hole: 'blind' }))).toBe(true);
  });

  it('not for the unit, nor for what only stands on the card', () => {
    expect(isStarted(typed({ units: 'in', part: 'Cover' }))).toBe(false);
  });
});
