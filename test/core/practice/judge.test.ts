/** Judging, and how the difficulty follows the answers. */
import { describe, expect, test } from 'vitest';
import { judgeChoice, judgeLength, judgeOrder, levelAfter } from '../../../core/practice/judge';
import { makeExercise } from '../../../core/practice/make';

describe('judging', () => {
  test('a length within the stated tolerance is right, beyond it wrong, and a known slip is named', () => {
    const exercise = makeExercise('reach', 3, 1);
    if (exercise.ask.type !== 'length') throw new Error('reach');
    const { answer, tolerance, slips } = exercise.ask;
    expect(judgeLength(exercise, answer + tolerance)).toEqual({ right: true });
    expect(judgeLength(exercise, answer - tolerance)).toEqual({ right: true });
    expect(judgeLength(exercise, answer + tolerance * 1.5)).toEqual({ right: false });
    expect(judgeLength(exercise, slips[0]!.value)).toEqual({ right: false, slip: slips[0]!.code });
    expect(judgeLength(exercise, Number.NaN)).toEqual({ right: false });
  });

  test('a choice by its id, an order as a whole', () => {
    const choice = makeExercise('drill', 3, 1);
    if (choice.ask.type !== 'choice') throw new Error('drill');
    for (const { id } of choice.ask.options) {
      expect(judgeChoice(choice, id).right).toBe(id === choice.ask.answer);
    }
    const order = makeExercise('order', 3, 1);
    if (order.ask.type !== 'order') throw new Error('order');
    expect(judgeOrder(order, order.ask.answer).right).toBe(true);
    expect(judgeOrder(order, order.ask.steps).right).toBe(false);
    expect(judgeChoice(order, order.ask.answer[0]!).right).toBe(false);
  });
});

describe('the level', () => {
  test('rises after three right in a row, and not past the last', () => {
    expect(levelAfter(1, [true, true])).toBe(1);
    expect(levelAfter(1, [true, true, true])).toBe(2);
    expect(levelAfter(2, [false, true, true, true])).toBe(3);
    expect(levelAfter(3, [true, true, true])).toBe(3);
  });

  test('falls after two wrong in a row, and not below the first', () => {
    expect(levelAfter(2, [true, false])).toBe(2);
    expect(levelAfter(2, [false, false])).toBe(1);
    expect(levelAfter(1, [false, false])).toBe(1);
  });
});
