/** What a sitting asks, and in which order. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Standing } from '../../../core/review/schedule';
import { interleaved, sessionOf, type Askable } from '../../../core/review/session';

const DAY = 20_000;
const LIMITS = { all: 20, fresh: 8 };
const ask = (name: string): Askable => ({ id: name, lesson: name.split('/')[0]! });
const due = (days: number, interval = 10): Standing => ({
  interval,
  seen: DAY - days - interval,
  due: DAY - days,
});
const names = (questions: readonly Askable[]) => questions.map(({ id }) => id);

describe('a sitting', () => {
  test('asks what is due, not what is resting', () => {
    const standings = { 'a/1': due(1), 'a/2': due(-1) };
    const chosen = sessionOf(['a/1', 'a/2'].map(ask), standings, DAY, LIMITS);
    expect(names(chosen)).toEqual(['a/1']);
  });

  test('asks first what has overrun its rest most, in shares of the rest', () => {
    const standings = { 'a/long': due(20, 100), 'b/short': due(3, 2), 'c/mid': due(5, 10) };
    const chosen = sessionOf(Object.keys(standings).map(ask), standings, DAY, LIMITS);
    expect(names(chosen)).toEqual(['b/short', 'c/mid', 'a/long']);
  });

  test('fills up with new questions, in the order of the course and only so many', () => {
    const all = Array.from({ length: 12 }, (_, index) => ask(`a/${index}`));
    expect(sessionOf(all, {}, DAY, LIMITS)).toEqual(all.slice(0, 8));
    const standings = Object.fromEntries(all.slice(0, 3).map(({ id }) => [id, due(1)]));
    expect(sessionOf(all, standings, DAY, { all: 5, fresh: 8 })).toHaveLength(5);
  });

  test('leaves new questions out when enough is due', () => {
    const all = Array.from({ length: 6 }, (_, index) => ask(`a/${index}`));
    const standings = Object.fromEntries(all.slice(1).map(({ id }) => [id, due(1)]));
    expect(names(sessionOf(all, standings, DAY, { all: 5, fresh: 8 }))).not.toContain('a/0');
  });
});

describe('interleaving', () => {
  test('puts lessons in turn', () => {
    const mixed = interleaved(['a/1', 'a/2', 'a/3', 'b/1', 'b/2'].map(ask));
    expect(names(mixed)).toEqual(['a/1', 'b/1', 'a/2', 'b/2', 'a/3']);
  });

  test('keeps every question, and no two of a lesson together unless it holds more than half', () => {
    const lessons = fc.array(fc.constantFrom('a', 'b', 'c', 'd'), { maxLength: 30 });
    fc.assert(
      fc.property(lessons, (drawn) => {
        const questions = drawn.map((lesson, index) => ask(`${lesson}/${index}`));
        const mixed = interleaved(questions);
        expect(names(mixed).sort()).toEqual(names(questions).sort());
        const most = Math.max(
          0,
          ...['a', 'b', 'c', 'd'].map((each) => drawn.filter((lesson) => lesson === each).length),
        );
        const together = mixed.filter(
          (each, at) => at > 0 && each.lesson === mixed[at - 1]!.lesson,
        );
        const unavoidable = Math.max(0, 2 * most - drawn.length - 1);
        expect(together.length).toBe(unavoidable);
      }),
      { numRuns: 500, seed: 94 },
    );
  });
});
