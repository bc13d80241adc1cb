/** Tapping by hand: wrench arms, order of taps, turning back. Expected figures: shop practice, common practice. */
import { describe, expect, test } from 'vitest';
import { findMaterial, readThread } from '../../../core';
import { handTapping, type HandJob } from '../../../core/tap/hand';
import { wrenchArm } from '../../../core/tap/wrench';

function thread(text: string) {
  const read = readThread(text);
  if (!read.ok) throw new Error(text);
  return read.value;
}

const M10: HandJob = {
  thread: thread('M10x1.5'),
  fullThread: 15,
  hole: { kind: 'through' },
  set: 'same-diameter',
  style: 'straight-flute',
};

function plan(changes: Partial<HandJob>) {
  const outcome = handTapping({ ...M10, ...changes });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('the wrench', () => {
  // Breaking torque, N·m, by the quick D³ rule, and the longest arm, mm: 50 N each hand, half the strength.
  test.each([
    [1.35, 7],
    [10.8, 54],
    [50, 250],
  ])('a tap that breaks at %s N·m: no more than %d mm', (breaks, arm) => {
    expect(wrenchArm(breaks)).toBeLessThanOrEqual(arm + 1e-9);
    expect(wrenchArm(breaks)).toBeGreaterThan(0.95 * arm);
  });

  test('M6 and M10 by their own webs agree with the quick rule; M3 with three flutes is weaker still', () => {
    const arm = (text: string) => plan({ thread: thread(text) }).arm;
    expect(Math.abs(arm('M6x1').expected - 54)).toBeLessThan(0.05 * 54);
    expect(Math.abs(arm('M10x1.5').expected - 250)).toBeLessThan(0.05 * 250);
    expect(arm('M3x0.5').expected).toBeLessThan(7);
    for (const size of ['M3x0.5', 'M6x1', 'M10x1.5', '1/4-20']) {
      expect(arm(size).careful).toBeLessThan(arm(size).expected);
    }
  });
});

describe('order of taps', () => {
  test('same diameter, through: one tap does it', () => {
    const { taps, reaches } = plan({});
    expect(taps.map((tap) => [tap.class, tap.needed])).toEqual([
      ['taper', true],
      ['plug', false],
      ['bottoming', false],
    ]);
    expect(reaches).toBe(true);
  });

  test('same diameter, blind: on to the next only as the depth demands', () => {
    // 3.5–5.5 threads and half a pitch: 6 × 1.5 = 9 mm of room. Derived.
    const deep = plan({ hole: { kind: 'blind', shoulder: 24 } });
    expect(deep.taps.filter(({ needed }) => needed).map((tap) => tap.class)).toEqual([
      'taper',
      'plug',
    ]);
    const tight = plan({ hole: { kind: 'blind', shoulder: 18.5 } });
    expect(tight.taps.every(({ needed }) => needed)).toBe(true);
    expect(tight.reaches).toBe(true);
  });

  test('too short for any: says what can be had', () => {
    // Bottoming 2 threads and a quarter pitch: 16.5 − 3.375. Derived.
    const { obtainable, reaches } = plan({ hole: { kind: 'blind', shoulder: 16.5 } });
    expect(reaches).toBe(false);
    expect(obtainable).toBeCloseTo(13.125, 6);
  });

  test('serial: all, in order, and undersize until the last', () => {
    const { taps } = plan({ set: 'serial' });
    expect(taps.map(({ undersize }) => undersize)).toEqual([true, true, false]);
    expect(taps.every(({ needed }) => needed)).toBe(true);
    expect(taps.map(({ fullThread }) => fullThread)).toEqual([0, 0, 15]);
  });

  test('stainless that hardens is not begun with the longest chamfer', () => {
    const { taps } = plan({ material: findMaterial('stainless-austenitic') });
    expect(taps[0]?.class).toBe('plug');
  });
});

describe('turning back and clearing', () => {
  test('straight flutes in long chips: half to one on, a quarter to a half back', () => {
    expect(plan({}).backOff).toEqual({
      on: { min: 0.5, max: 1 },
      back: { min: 0.25, max: 0.5 },
    });
  });

  test.each([
    { style: 'spiral-point' },
    { style: 'spiral-flute' },
    { material: findMaterial('iron-grey') },
  ] as Partial<HandJob>[])('none where the chip is led away or comes short', (changes) => {
    expect(plan(changes).backOff).toBeNull();
  });

  test('blind: out and clear every two to four pitches, stop before the floor', () => {
    const blind = plan({ hole: { kind: 'blind', shoulder: 24 } });
    expect(blind.clearEvery).toEqual({ min: 2, max: 4 });
    expect(blind.stop).toBeCloseTo(23.25, 9);
    expect(plan({}).clearEvery).toBeNull();
    expect(plan({}).stop).toBeNull();
  });

  test('squareness after one turn and two; after three it cannot be steered', () => {
    expect(plan({}).square).toEqual({ check: [1, 2], fixed: 3 });
  });
});

test('refusals', () => {
  const code = (changes: Partial<HandJob>) => {
    const outcome = handTapping({ ...M10, ...changes });
    return outcome.ok ? null : outcome.problems[0]?.code;
  };
  expect(code({ fullThread: 0 })).toBe('full-thread-not-positive');
  expect(code({ hole: { kind: 'blind', shoulder: 15 } })).toBe('thread-deeper-than-hole');
  expect(code({ hole: { kind: 'blind', shoulder: 24 }, style: 'spiral-point' })).toBe(
    'spiral-point-blind',
  );
  expect(code({ thread: thread('G1/4') })).toBe('taper-by-hand');
});
