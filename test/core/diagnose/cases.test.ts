/**
 * Ten mishaps of an invented shop, each with the cause a setter would put first.
 * Expected causes: the trade's troubleshooting rules, common practice.
 */
import { describe, expect, test } from 'vitest';
import { planHole, type HoleRequest } from '../../../core';
import { diagnose, type CheckAnswer } from '../../../core/diagnose/finder';
import { planFacts, type TapUsed } from '../../../core/diagnose/plan-facts';
import type { CauseId } from '../../../core/diagnose/causes';
import type { SymptomId } from '../../../core/diagnose/symptoms';

interface Case {
  name: string;
  symptom: SymptomId;
  answers: [CheckAnswer['check'], string][];
  hole?: HoleRequest;
  used?: TapUsed;
  first: CauseId;
}

const cover: HoleRequest = {
  thread: 'M10x1.5-6H',
  fullThread: 15,
  hole: { kind: 'blind', limit: { at: 'shoulder', depth: 16.5 } },
  material: 'al-wrought',
};

const CASES: Case[] = [
  {
    name: 'valve cover on VMC-A: M10 to 15 mm, hole ends at 16.5; nose shiny, hole as drawn and short',
    symptom: 'broke-bottom',
    answers: [
      ['nose', 'shiny'],
      ['bottom-chips', 'clear'],
      ['shoulder-depth', 'short'],
    ],
    hole: cover,
    first: 'too-little-room',
  },
  {
    name: 'TM-1 with the reversing head: deep enough, but the tap runs on at half depth',
    symptom: 'broke-bottom',
    answers: [
      ['nose', 'shiny'],
      ['bottom-chips', 'clear'],
      ['shoulder-depth', 'enough'],
      ['half-depth', 'runs-on'],
    ],
    first: 'overrun',
  },
  {
    name: 'bracket on RD-2: drilled on a cast slope, first thread cut on one side',
    symptom: 'broke-entry',
    answers: [
      ['witness', 'one-side'],
      ['indicator', 'true'],
    ],
    first: 'rough-entry',
  },
  {
    name: 'pump housing in 304, spiral point in a blind hole: fragment packed',
    symptom: 'broke-middle',
    answers: [['flutes', 'packed']],
    hole: {
      thread: 'M8x1.25-6H',
      fullThread: 16,
      hole: { kind: 'blind' },
      material: 'stainless-austenitic',
    },
    used: { style: 'spiral-point', chamfer: 'plug' },
    first: 'chips-packed',
  },
  {
    name: 'flange in 4140 on VMC-B: breaks as reverse begins, holder that gives cures it',
    symptom: 'broke-reversing',
    answers: [
      ['wedge', 'none'],
      ['reverse-start', 'at-start'],
      ['micro-float', 'cures'],
    ],
    first: 'lead-error',
  },
  {
    name: 'sprinkler body: bottoming tap in 30 HRC, first row of teeth gone',
    symptom: 'teeth-chipped',
    answers: [['which-teeth', 'first']],
    hole: {
      thread: '1/2-13 UNC-2B',
      fullThread: 19.05,
      hole: { kind: 'blind' },
      material: 'steel-alloy-30hrc',
    },
    used: { style: 'spiral-flute', chamfer: 'bottoming' },
    first: 'tooth-load',
  },
  {
    name: 'valve seat: NOT GO runs in all along, second gauge the same, H limit two steps high',
    symptom: 'not-go-goes',
    answers: [
      ['loose-where', 'all'],
      ['second-gauge', 'agrees'],
      ['tap-marking', 'high'],
    ],
    first: 'limit-high',
  },
  {
    name: 'bench: first tap of a serial set, GO will not start',
    symptom: 'go-refuses',
    answers: [
      ['clean-retry', 'same'],
      ['passes', 'missing'],
    ],
    first: 'serial-omitted',
  },
  {
    name: 'M8 in an inch program, one flank shaved, G20 with a feed in mm',
    symptom: 'thin-thread',
    answers: [
      ['feed-check', 'differs'],
      ['unit-words', 'mixed'],
    ],
    first: 'units-error',
  },
  {
    name: 'M30 in 1045 on VMC-B: overload from the first hole, torque over the spindle',
    symptom: 'spindle-alarm',
    answers: [['load-trend', 'first-hole']],
    hole: {
      thread: 'M30x3.5-6H',
      hole: { kind: 'through', thickness: 45 },
      material: 'steel-medium',
      spindle: { drive: 'synchronous', torque: 30 },
    },
    used: { style: 'spiral-point' },
    first: 'torque-over',
  },
];

function factsOf(hole: HoleRequest | undefined, used: TapUsed | undefined) {
  if (!hole) return [];
  const plan = planHole(hole);
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return planFacts(plan.value, hole, used);
}

describe('mishaps at Copperfell Works', () => {
  test.each(CASES)('$name', ({ symptom, answers, hole, used, first }) => {
    const outcome = diagnose({
      symptom,
      answers: answers.map(([check, answer]) => ({ check, answer })),
      plan: factsOf(hole, used),
    });
    expect(outcome.ok && outcome.value.ranked[0]?.cause).toBe(first);
  });
});

describe('what the plan brings along', () => {
  const codes = (hole: HoleRequest, used: TapUsed = {}) =>
    factsOf(hole, used).map(({ code }) => code);

  test('room in pitches: one pitch on the valve cover, where four would be wanted', () => {
    // 16.5 − 15 = 1.5 mm = 1.0 P; a chamfer of 2 to 3 threads and 1 P to stop in: 4 P. Derived.
    const facts = factsOf(cover, { style: 'spiral-flute', chamfer: 'semi-bottoming' });
    const room = facts.find(({ code }) => code === 'room-short');
    expect(room?.numbers['have']).toBeCloseTo(1, 6);
    expect(room?.numbers['wanted']).toBeCloseTo(4, 6);
    expect(room?.speaksFor).toContain('too-little-room');
  });

  test('the load of a bottoming chamfer against 3 to 5 threads is the plan’s own', () => {
    const facts = factsOf(
      { ...cover, hole: { kind: 'blind' } },
      { style: 'spiral-flute', chamfer: 'bottoming' },
    );
    const tooth = facts.find(({ code }) => code === 'tooth-load-high');
    // Tooth load goes as 1/n by geometry, a little less by chip thinning: 4.5 over 1.75 threads, 2.57. Derived.
    expect(tooth?.numbers['ratio']).toBeGreaterThan(1.6);
    expect(tooth?.numbers['ratio']).toBeLessThan(2.6);
  });

  test('speed: said as a range, and judged only when the speed run is known', () => {
    expect(codes(cover)).toContain('speed-range');
    expect(codes(cover, { rpm: 60 })).toContain('speed-below');
    expect(codes(cover, { rpm: 6000 })).toContain('speed-above');
  });

  test('M30 on 30 N·m: spindle short; an M12 in iron: share low, so a break is bending first', () => {
    const last = CASES.at(-1)!;
    expect(codes(last.hole!, last.used)).toContain('spindle-short');
    const iron: HoleRequest = {
      thread: 'M12x1.75-6H',
      fullThread: 24,
      hole: { kind: 'blind' },
      material: 'iron-grey',
    };
    expect(codes(iron)).toContain('share-low');
    const outcome = diagnose({ symptom: 'broke-unseen', answers: [], plan: factsOf(iron, {}) });
    expect(
      outcome.ok && outcome.value.ranked.find(({ cause }) => cause === 'bending')?.plan,
    ).toHaveLength(1);
  });
});
