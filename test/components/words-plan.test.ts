/** The words held against real plans: nothing missing in a sentence, nothing that reads like a program. */

import { describe, expect, test } from 'vitest';
import { planHole, readThread, MATERIAL_IDS, type HoleRequest } from '../../core';
import * as words from '../../components/words';
import type { Unit } from '../../components/words';

const HOLES: Pick<HoleRequest, 'hole' | 'fullThread'>[] = [
  { fullThread: 16, hole: { kind: 'blind', limit: { at: 'shoulder', depth: 22 } } },
  { fullThread: 15, hole: { kind: 'blind', limit: { at: 'point', depth: 16.5 } } },
  { hole: { kind: 'blind' } },
  { fullThread: 60, hole: { kind: 'blind' } },
  { hole: { kind: 'through', thickness: 3 } },
  { hole: { kind: 'through', thickness: 40, clearBelow: 2, chipsMayFall: false } },
  { fullThread: 10, hole: { kind: 'through', thickness: 30, clearBelow: 0 } },
];

const EXTRAS: Partial<HoleRequest>[] = [
  {},
  { spindle: { drive: 'floating', torque: 2, maxRpm: 500 } },
  { spindle: { drive: 'hand' }, externalCentre: 2, drillPoint: 140, interrupted: true },
  {
    entry: { angle: 10, flat: true },
    crossing: { kind: 'bore', width: 3, cut: 'before' },
    counterbore: { diameter: 40, depth: 9 },
    cored: true,
    later: ['harden', 'plate', 'anodise', 'weld'],
    coating: { thickness: [0.005, 0.008] },
    duty: 'lifting',
  },
  {
    entry: { angle: 10 },
    crossing: { kind: 'slot', width: 6, cut: 'before' },
    counterbore: { diameter: 32, depth: 100 },
    later: ['anodise'],
    duty: 'pressure',
  },
  { crossing: { kind: 'bore', width: 70, cut: 'after' }, duty: 'structure' },
  {
    crossing: { kind: 'bore', width: 2, from: 1, cut: 'before' },
    spindle: { drive: 'floating' },
    duty: 'vehicle',
  },
  {
    coating: { thickness: [0.005, 0.008] },
    stockedDrills: ['fraction'],
    measured: { torque: 3, style: 'spiral-flute', chamfer: 'plug' },
  },
];

const THREADS = [
  'M8',
  'M2',
  'M30-LH',
  'M10x1-6H',
  'MJ6',
  '1/2-13 UNC-3B',
  '#6-32',
  '1/4-28 UNJF',
  'EG M8',
];

function everything(request: HoleRequest, unit: Unit): string[] {
  const outcome = planHole(request);
  if (!outcome.ok) return outcome.problems.map((problem) => words.problemText(problem, unit));
  const plan = outcome.value;
  return [
    words
      .answerSentence(plan, request, unit)
      .map(({ text }) => text)
      .join(''),
    words.becauseSentence(plan, request, unit),
    words.readingText(plan.thread),
    words.gaugeText(plan.thread),
    ...words.designerNote(plan, request, unit),
    ...outcome.notes.map((note) => words.noteText(note, unit)),
    ...plan.taps.map((tap) => words.tapName(tap, plan.thread.system)),
    ...plan.taps.flatMap(({ reasons }) => reasons.map((each) => words.reasonText(each, unit))),
    ...plan.warnings.flatMap((each) => Object.values(words.warningText(each, unit))),
    ...plan.remedies.flatMap((each) => Object.values(words.remedyText(each, unit))),
    ...plan.assumptions.map((each) => words.assumptionText(each, unit)),
  ];
}

describe('every sentence about every plan', () => {
  test.each(MATERIAL_IDS)('%s', (material) => {
    for (const thread of THREADS)
      for (const hole of HOLES)
        for (const extra of EXTRAS)
          for (const unit of ['mm', 'in'] as const) {
            const request: HoleRequest = { thread, material, ...hole, ...extra };
            for (const sentence of everything(request, unit)) {
              expect(sentence).not.toMatch(
                /not known\)|NaN|undefined|Infinity|[[\]{}]|\s{2}| [.,;:]/,
              );
            }
          }
  });
});

const sentence = (request: HoleRequest, unit: Unit = 'mm') => {
  const outcome = planHole(request);
  if (!outcome.ok) throw new Error(outcome.problems[0]?.code);
  return words
    .answerSentence(outcome.value, request, unit)
    .map(({ text }) => text)
    .join('');
};

describe('the answer in one sentence', () => {
  const blind = { kind: 'blind', limit: { at: 'shoulder', depth: 22 } } as const;

  test('names tap, chamfer, drill and depth, in the unit asked for', () => {
    const request: HoleRequest = {
      thread: 'M8x1.25-6H',
      fullThread: 16,
      hole: blind,
      material: 'stainless-austenitic',
    };
    expect(sentence(request)).toBe(
      'Spiral-flute tap, 2–3 thread chamfer. Drill 6.8 mm, shoulder 21.0 mm deep.',
    );
    expect(sentence(request, 'in')).toContain('shoulder 0.827 in deep.');
  });

  test('says how far a tap runs through', () => {
    const request: HoleRequest = {
      thread: 'M5x0.8-6H',
      hole: { kind: 'through', thickness: 3 },
      material: 'stainless-austenitic',
    };
    expect(sentence(request)).toBe(
      'Spiral-point tap, 3.5–5.5 thread chamfer. Drill 4.2 mm right through; run the tap to 8.2 mm.',
    );
  });

  test('says with numbers that nothing fits', () => {
    const request: HoleRequest = {
      thread: 'M10x1.5-6H',
      fullThread: 15,
      hole: { kind: 'blind', limit: { at: 'shoulder', depth: 16.5 } },
      material: 'al-wrought',
    };
    expect(sentence(request)).toBe(
      'No machine tap gives 15.0 mm of full thread here. The most is 12.0 mm, with a 1.5–2 thread chamfer.',
    );
  });

  test('says that the spindle is too weak, and by how much', () => {
    const request: HoleRequest = {
      thread: 'M30x3.5-6H',
      hole: { kind: 'through', thickness: 45 },
      material: 'steel-medium',
      spindle: { drive: 'synchronous', torque: 30 },
    };
    expect(sentence(request)).toMatch(
      /^Too much for this spindle: a worn tap would need 1\d0 N·m, and it gives 30 N·m\.$/,
    );
  });

  test('keeps hard steel away from taps', () => {
    const request: HoleRequest = { thread: 'M8', hole: { kind: 'blind' }, material: 'steel-hard' };
    expect(sentence(request)).toMatch(/^Too hard to tap/);
  });

  test('says the hand', () => {
    const request: HoleRequest = {
      thread: 'M12x1.75-LH',
      hole: { kind: 'through', thickness: 20 },
      material: 'steel-medium',
    };
    expect(sentence(request)).toMatch(/^Left-hand spiral-point tap, /);
  });
});

describe('a thread that cannot be read is answered in a machinist’s words', () => {
  test.each([
    ['8x1.25', /M in front.*M8x1\.25/],
    ['M8x1.25x30', /30.*screw.*M8x1\.25/],
    ['M8-6g', /6g is a class for screws/],
    ['1/4-20 UNC-2A', /2A is a class for screws/],
    ['M8x6H', /dash before it: M8/],
    ['1/4-20 UNF', /28 threads per inch.*UNC/],
    ['1/4', /1\/4-20 UNC.*1\/4-28 UNF/],
    ['M8x20', /pitch of 20/],
    ['7-40', /no number size (#)?7/],
    ['10-28', /10-24.*10-32/],
    ['M8-9H', /grades 4 to 8/],
    ['1/4-20-4B', /1B, 2B or 3B/],
    ['R1/2', /taper thread/],
    ['Tr20x4', /not covered/i],
    ['', /Enter the thread/],
    ['frog', /“frog” does not read as a thread/],
  ])('%s', (typed, expected) => {
    const outcome = readThread(typed);
    expect(outcome.ok).toBe(false);
    if (outcome.ok) return;
    const said = outcome.problems.map((problem) => words.problemText(problem, 'mm')).join(' ');
    expect(said).toMatch(expected);
    expect(said).not.toMatch(/not known\)|undefined|[[\]{}]/);
  });

  test.each([
    ['M8', 'M8 coarse, pitch 1.25 mm, class 6H (the usual one), right hand'],
    ['M8x1.25-6H', 'M8 coarse, pitch 1.25 mm, class 6H, right hand'],
    ['M10x1-6H-LH', 'M10 fine, pitch 1 mm, class 6H, left hand'],
    ['1/4-20 UNC-2B', '1/4 inch UNC, 20 threads per inch, class 2B, right hand'],
    ['10-32', '#10 UNF, 32 threads per inch, class 2B (the usual one), right hand'],
  ])('%s reads back', (typed, expected) => {
    const outcome = readThread(typed);
    expect(outcome.ok && words.readingText(outcome.value)).toBe(expected);
  });
});
