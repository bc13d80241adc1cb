/** Exercises in words, on the screen and on paper. */

import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { makeExercise } from '../../core/practice/make';
import { EXERCISE_KINDS, LEVELS } from '../../core/practice/types';
import { initialValues } from '../../components/state/address';
import { Asked } from '../../components/practice/Asked';
import {
  PRACTICE_FIELDS,
  practiceHref,
  readAt,
  readCount,
  readKinds,
  readSeed,
} from '../../components/practice/inputs';
import { saidExercise } from '../../components/practice/said';
import { answerOf, SheetPaper } from '../../components/practice/SheetPaper';
import { Practice } from '../../components/practice/view';

beforeEach(() => history.replaceState(null, '', '/practice/'));
afterEach(cleanup);

const all = EXERCISE_KINDS.flatMap((kind) =>
  LEVELS.flatMap((level) =>
    Array.from({ length: 40 }, (_, seed) => makeExercise(kind, seed, level)),
  ),
);

describe('every exercise is said in full', () => {
  test('no slot is left open, no option twice, one right, each with its answer', () => {
    for (const exercise of all) {
      const said = saidExercise(exercise);
      const text = JSON.stringify(said);
      expect(text).not.toMatch(/\(not known\)|undefined|NaN|\{\w+\}/);
      expect(said.question.length).toBeGreaterThan(20);
      if (said.type === 'choice') {
        expect(said.options.filter(({ right }) => right)).toHaveLength(1);
        expect(new Set(said.options.map((each) => each.text)).size).toBe(said.options.length);
        for (const { why } of said.options) expect(why.length).toBeGreaterThan(10);
      }
      if (said.type === 'order') {
        expect([...said.start].sort((a, b) => a - b)).toEqual(said.steps.map((_, at) => at));
      }
    }
  });

  test('a length is said with its unit, in both systems', () => {
    for (const exercise of all.filter(({ kind }) => kind === 'reach')) {
      const { question } = saidExercise(exercise);
      expect(question).toMatch(/ mm/);
      expect(question).toMatch(/ in/);
    }
  });
});

describe('on the screen', () => {
  test('a length is taken in either unit and with either decimal mark', () => {
    const exercise = makeExercise('reach', 5, 1);
    if (exercise.ask.type !== 'length') throw new Error('reach');
    const heard: boolean[] = [];
    render(<Asked exercise={exercise} onAnswered={(right) => heard.push(right)} />);
    const field = screen.getByRole('textbox');
    const check = () => fireEvent.click(screen.getByRole('button', { name: 'Check' }));
    fireEvent.input(field, {
      target: { value: exercise.ask.answer.toFixed(2).replace('.', ',') },
    });
    check();
    fireEvent.input(field, { target: { value: `${(exercise.ask.answer / 25.4).toFixed(3)} in` } });
    check();
    fireEvent.input(field, { target: { value: '1' } });
    check();
    fireEvent.input(field, { target: { value: 'deep' } });
    check();
    expect(heard).toEqual([true, true, false]);
  });

  test('the row goes on, and the first answer counts', async () => {
    history.replaceState(null, '', '/practice/?seed=7&kinds=gauges');
    render(<Practice example="example" />);
    expect(await screen.findByRole('heading', { name: 'Read the gauges' })).toBeTruthy();
    for (const option of screen.getAllByRole('radio').slice(-4)) {
      fireEvent.click(option);
      fireEvent.click(screen.getByRole('button', { name: 'Check' }));
    }
    expect(screen.getByText(/^[01] of 1 right in this row\.$/)).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: 'Next exercise' }));
    expect(screen.getByText('Exercise 2 of this row')).toBeTruthy();
  });
});

describe('on paper', () => {
  const values = { ...initialValues(PRACTICE_FIELDS), seed: '3', count: '8' };

  test('the same number gives the same sheet, with and without its answers', () => {
    const { container } = render(<SheetPaper values={values} />);
    const plain = container.querySelector('.sheet-list')?.innerHTML;
    expect(container.querySelectorAll('.sheet-list > li')).toHaveLength(8);
    expect(container.querySelector('.sheet-key')).toBeNull();
    cleanup();
    const again = render(<SheetPaper values={{ ...values, key: 'yes' }} />).container;
    expect(again.querySelector('.sheet-list')?.innerHTML).toBe(plain);
    expect(again.querySelectorAll('.sheet-key li')).toHaveLength(8);
  });

  test('the key names the letter of the right answer', () => {
    const exercise = makeExercise('drill', 2, 1);
    const said = saidExercise(exercise);
    if (said.type !== 'choice') throw new Error('drill');
    const at = said.options.findIndex(({ right }) => right);
    expect(answerOf(said, 'mm').answer).toBe(`${'ABCD'[at]}) ${said.options[at]?.text}`);
  });
});

test('what an address asks for is read with care', () => {
  expect(readSeed('7')).toBe(7);
  for (const bad of ['', '-1', '1.5', '1e9', 'seven', '99999999999'])
    expect(readSeed(bad)).toBeNull();
  expect(readKinds('drill,nonsense,drill,__proto__')).toEqual(['drill']);
  expect(readKinds('')).toHaveLength(EXERCISE_KINDS.length);
  expect([readCount('1000'), readCount('x'), readAt('-3'), readAt('4.9')]).toEqual([40, 8, 1, 4]);
  expect(practiceHref('/practice/sheet/', { seed: '3', kinds: 'reach,drill', key: 'yes' })).toBe(
    '/practice/sheet/?seed=3&kinds=reach%2Cdrill&key=yes',
  );
});
