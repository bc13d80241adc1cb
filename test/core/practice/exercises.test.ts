/**
 * Every exercise worked again by another path: own arithmetic from the published formulas, or the trade's plain
 * rules, never the functions that made it. Ten thousand of them, none impossible, trivial or ambiguous.
 */
import { describe, expect, test } from 'vitest';
import { CHECKS } from '../../../core/diagnose/checks';
import { makeExercise, makeSheet } from '../../../core/practice/make';
import { EXERCISE_KINDS, LEVELS, type Exercise } from '../../../core/practice/types';

const SEEDS = 420;
const exercises = EXERCISE_KINDS.flatMap((kind) =>
  LEVELS.flatMap((level) =>
    Array.from({ length: SEEDS }, (_, seed) => makeExercise(kind, seed, level)),
  ),
);
const of = (kind: Exercise['kind']) => exercises.filter((each) => each.kind === kind);
const num = (value: unknown) => Number(value);

/** Diameter and pitch, mm, read from a designation by this test alone. */
function sizes(text: string): { D: number; P: number; metric: boolean } {
  const metric = /^M([\d.]+)x([\d.]+)/.exec(text);
  if (metric) return { D: num(metric[1]), P: num(metric[2]), metric: true };
  const [, number, fraction, tpi] = /^(?:#(\d+)|(\d+\/\d+))-(\d+)/.exec(text)!;
  const [top, bottom] = (fraction ?? '1/1').split('/').map(Number);
  // Number sizes: .060 in and .013 in a step (ASME B1.1).
  const D = number === undefined ? top! / bottom! : 0.06 + 0.013 * Number(number);
  return { D: D * 25.4, P: 25.4 / Number(tpi), metric: false };
}

/** Longest chamfer of a class, threads: ISO 8830 and DIN 2197 forms D, C, E; ASME B94.9 for inch taps. */
const LONGEST: Record<string, [metric: number, inch: number]> = {
  plug: [5.5, 5],
  'semi-bottoming': [3, 3],
  bottoming: [2, 2],
};

/** Minor-diameter tolerance, mm: ISO 965-1 grade 6, and the 2B rule of ASME B1.1. */
function minorTolerance(D: number, P: number, metric: boolean): number {
  if (metric) return (P < 1 ? 433 * P - 190 * P ** 1.22 : 230 * P ** 0.7) / 1000;
  const [d, p] = [D / 25.4, P / 25.4];
  const inch = d < 0.25 ? 0.05 * p ** (2 / 3) + (0.03 * p) / d - 0.002 : 0.25 * p - 0.4 * p ** 2;
  return inch * 25.4;
}

test('there are ten thousand, and the same seed makes the same bytes', () => {
  expect(exercises.length).toBeGreaterThanOrEqual(10_000);
  for (const { kind, seed, level } of exercises.filter((_, at) => at % 97 === 0)) {
    expect(JSON.stringify(makeExercise(kind, seed, level))).toBe(
      JSON.stringify(makeExercise(kind, seed, level)),
    );
  }
  expect(JSON.stringify(makeSheet(7, ['reach', 'drill'], 6, 2))).toBe(
    JSON.stringify(makeSheet(7, ['reach', 'drill'], 6, 2)),
  );
});

test('seeds differ', () => {
  for (const kind of EXERCISE_KINDS) {
    const made = new Set(of(kind).map(({ given, ask }) => JSON.stringify([given, ask])));
    expect(made.size, kind).toBeGreaterThan(20);
  }
});

test('a choice has exactly one right answer among different ones, not always in one place', () => {
  const choices = exercises.flatMap(({ ask }) => (ask.type === 'choice' ? [ask] : []));
  const places = new Map<number, number>();
  for (const { options, answer } of choices) {
    expect(options.length).toBeGreaterThanOrEqual(3);
    expect(new Set(options.map(({ id }) => id)).size).toBe(options.length);
    const at = options.findIndex(({ id }) => id === answer);
    expect(at).toBeGreaterThanOrEqual(0);
    places.set(at, (places.get(at) ?? 0) + 1);
  }
  for (const at of [0, 1, 2]) expect(places.get(at)).toBeGreaterThan(choices.length / 12);
});

describe('each kind, by another path', () => {
  test('reach: thread, longest chamfer and stop clearance, or what they leave', () => {
    for (const { given, ask, variant } of of('reach')) {
      if (ask.type !== 'length') throw new Error('reach');
      const { P, metric } = sizes(String(given['thread']));
      const longest = LONGEST[String(given['chamfer'])]![metric ? 0 : 1];
      const stop = given['drive'] === 'floating' ? 3 : 1;
      const below = (longest + stop) * P;
      const want =
        variant === 'gives' ? num(given['limit']) - below : num(given['fullThread']) + below;
      expect(Math.abs(ask.answer - want)).toBeLessThan(ask.tolerance / 2);
      // Not to be read off the question.
      for (const name of ['fullThread', 'limit', 'pitch']) {
        if (name in given) expect(Math.abs(num(given[name]) - ask.answer)).toBeGreaterThan(0.2);
      }
      for (const { value } of ask.slips) {
        expect(Math.abs(value - ask.answer)).toBeGreaterThan(ask.tolerance);
      }
    }
  });

  test('drill: one inside the class with its oversize, the others outside', () => {
    for (const { given, ask } of of('drill')) {
      if (ask.type !== 'choice') throw new Error('drill');
      const { D, P, metric } = sizes(String(given['thread']));
      const min = D - 1.082532 * P;
      const max = min + minorTolerance(D, P, metric);
      // Tables round: metric limits to .001 mm, inch 2B limits to .001 in and outward for the largest.
      const slack = metric ? 0.006 : 0.03;
      for (const { id, facts } of ask.options) {
        const [diameter, likely] = [num(facts['diameter']), num(facts['likely'])];
        if (id === ask.answer) {
          expect(diameter).toBeGreaterThan(min - slack);
          expect(likely).toBeLessThan(max + slack);
          expect(likely).toBeGreaterThanOrEqual(diameter);
        } else {
          expect(
            likely < min + slack + 0.14 || diameter > max - slack,
            `${given['thread']} ${id}`,
          ).toBe(true);
          expect(diameter < min + slack || diameter > max - slack).toBe(true);
        }
      }
    }
  });

  // Common practice: chips go where the hole wants them; short chips lie in straight flutes.
  test('choose: the right tap sends its chips where the hole wants them', () => {
    const short = ['iron-grey', 'brass-free'];
    for (const { given, ask, variant } of of('choose')) {
      if (ask.type !== 'choice') throw new Error('choose');
      const [style] = ask.answer.split(' ');
      const brittle = short.includes(String(given['material']));
      const allowed =
        variant === 'clean'
          ? ['form', 'spiral-flute']
          : brittle
            ? ['straight-flute']
            : variant === 'blind'
              ? ['spiral-flute']
              : ['spiral-point'];
      // Ductile iron chips shorter than steel: either flute is defensible, so it is left out here.
      if (given['material'] !== 'iron-ductile')
        expect(allowed, JSON.stringify(given)).toContain(style);
      if (variant === 'clean') expect(brittle && style === 'form').toBe(false);
      for (const { id, facts } of ask.options) {
        expect(facts['verdict']).toBe(id === ask.answer ? 'best' : 'no');
      }
    }
  });

  test('error: every other line of the sheet adds up, and that one does not', () => {
    for (const { given, ask, working } of of('error')) {
      if (ask.type !== 'choice') throw new Error('error');
      const thread = String(given['thread']);
      const { D, P, metric } = sizes(thread);
      const tip = num(given['fullThread']) + num(given['threadsMax']) * P;
      const min = D - 1.082532 * P;
      const max = min + minorTolerance(D, P, metric);
      const drill = String(given['drill']);
      const drilled = drill.startsWith('metric') ? num(drill.split(' ')[1]) : null;
      const faults = {
        gauge: given['gauge'] !== thread,
        // Inch drills by name are judged by the drill exercise; here the planted one differs from the plan's.
        drill:
          drilled === null ? drill !== working['drill'] : drilled < min || drilled > max + 0.006,
        shoulder: Math.abs(num(given['shoulder']) - (tip + P)) > 0.02,
        tip: Math.abs(num(given['tip']) - tip) > 0.02,
        feed: Math.abs(num(given['feed']) - P) > 0.001,
        speed: num(given['speed']) > num(working['max']) * 1.5,
      };
      const found = Object.entries(faults).flatMap(([line, wrong]) => (wrong ? [line] : []));
      expect(found, JSON.stringify(given)).toEqual([ask.answer]);
    }
  });

  test('order: every step once, shown in another order than the right one', () => {
    for (const { ask } of of('order')) {
      if (ask.type !== 'order') throw new Error('order');
      const numbers = ask.answer.map((step) => Number(step.split('.')[1]));
      expect(numbers).toEqual(numbers.map((_, at) => at + 1));
      expect([...ask.steps].sort()).toEqual([...ask.answer].sort());
      expect(ask.steps.join()).not.toBe(ask.answer.join());
    }
  });

  // ASME B1.2 allows about three turns of the NOT GO, ISO 1502 two.
  test('gauges: what the plugs did has one meaning', () => {
    for (const { given, ask } of of('gauges')) {
      if (ask.type !== 'choice') throw new Error('gauges');
      const turns = num(given['notGoTurns']);
      const meaning =
        given['go'] === 'none'
          ? 'pitch-small'
          : given['go'] === 'part'
            ? 'go-stops'
            : turns > 3
              ? 'pitch-large'
              : turns > 2
                ? 'rules-disagree'
                : given['minorNotGo'] === 'yes'
                  ? 'minor-large'
                  : given['minorGo'] === 'no'
                    ? 'minor-small'
                    : 'pitch-in-class';
      expect(ask.answer).toBe(meaning);
    }
  });

  test('diagnose: the answered check points at the right cause and at none of the others', () => {
    for (const { given, ask } of of('diagnose')) {
      if (ask.type !== 'choice') throw new Error('diagnose');
      const check: Record<string, readonly string[] | 'rest'> =
        CHECKS[given['check'] as keyof typeof CHECKS];
      const named = Object.values(check).flatMap((causes) => (causes === 'rest' ? [] : causes));
      const gives = (cause: string) => {
        const causes = check[String(given['seen'])];
        return causes === 'rest' ? !named.includes(cause) : Boolean(causes?.includes(cause));
      };
      expect(gives(ask.answer)).toBe(true);
    }
  });

  test('drawing: one hole has less room than the shortest chamfer and a pitch, the rest have enough', () => {
    for (const { ask } of of('drawing')) {
      if (ask.type !== 'choice') throw new Error('drawing');
      for (const { id } of ask.options) {
        const [, text, full, hole] = /^\d+X (.+?) ↧([\d.]+) \/ ↧([\d.]+)$/.exec(id)!;
        const { P, metric } = sizes(text!);
        const room = ((num(hole) - num(full)) * (metric ? 1 : 25.4)) / P;
        // Bottoming taps have up to two threads of chamfer; one pitch to stop in.
        expect(room < 3, id).toBe(id === ask.answer);
      }
    }
  });
});
