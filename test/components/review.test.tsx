/** The review on a device: what is answered is kept, or the page says that it is not. */
import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { openFile } from '../../components/review/Files';
import { answered, daysOf, joined, withLesson } from '../../components/review/progress';
import {
  EMPTY,
  FORMAT,
  KEY,
  readProgress,
  SHELF,
  writeProgress,
  type Progress,
} from '../../components/review/shape';
import { Review } from '../../components/review/view';
import { changeShelf, openShelf } from '../../components/state/shelf';
import { KEEPING } from '../../components/words/en/keeping';
import { REVIEW } from '../../components/words/en/review';
import { memory } from '../tools/memory';

const DAY = 20_000;
const asked =
  (id: string, when = DAY) =>
  (kept: Progress) =>
    answered(kept, id, when, 'remembered');

const standing = fc.record({
  interval: fc.double({ min: 1, max: 365, noNaN: true }),
  seen: fc.double({ min: 0, max: 30_000, noNaN: true }),
  due: fc.double({ min: 0, max: 31_000, noNaN: true }),
});
const progress: fc.Arbitrary<Progress> = fc.record({
  lessons: fc.uniqueArray(fc.constantFrom('a', 'b', 'c'), { maxLength: 3 }),
  standings: fc.dictionary(fc.constantFrom('a/1', 'a/2', 'b/1', 'c/1'), standing, {
    noNullPrototype: true,
  }),
  unread: fc.constant([]),
});

describe('a file of progress', () => {
  test('comes back as it was', () => {
    fc.assert(
      fc.property(progress, (kept) => {
        const read = readProgress(writeProgress(kept, 2));
        expect(read).toEqual({ state: 'read', contents: kept });
      }),
      { numRuns: 200, seed: 95 },
    );
  });

  test.each(['', '{', '[]', 'null', '{"format":"other","version":1}', `{"format":"${FORMAT}"}`])(
    '%j is not one',
    (text) => {
      expect(readProgress(text).state).toBe('damaged');
    },
  );

  test('of a later version is left alone', () => {
    expect(readProgress(`{"format":"${FORMAT}","version":2}`).state).toBe('newer');
  });

  test('with one bad entry keeps the rest, and writes the bad one back', () => {
    const text = writeProgress(asked('a/1')(EMPTY)).replace(
      '"standings":{',
      '"standings":{"b/1":{"interval":"long"},',
    );
    const read = readProgress(text);
    if (read.state !== 'read') throw new Error(read.state);
    expect(Object.keys(read.contents.standings)).toEqual(['a/1']);
    expect(writeProgress(read.contents)).toContain('{"b/1":{"interval":"long"}}');
  });

  test('joined with what is here: of each question the later asking counts, and nothing is lost', () => {
    fc.assert(
      fc.property(progress, progress, (one, two) => {
        const both = joined(one, two);
        for (const [id, { seen }] of [
          ...Object.entries(one.standings),
          ...Object.entries(two.standings),
        ]) {
          expect(both.standings[id]!.seen).toBeGreaterThanOrEqual(seen);
        }
        expect(new Set(both.lessons)).toEqual(new Set([...one.lessons, ...two.lessons]));
        expect(joined(both, two)).toEqual(both);
      }),
      { numRuns: 200, seed: 96 },
    );
  });
});

describe('the store', () => {
  test('the same question in two tabs at once earns one rest, not two', () => {
    const store = memory();
    changeShelf(store, SHELF, asked('a/1', DAY));
    changeShelf(store, SHELF, asked('a/1', DAY + 0.001));
    expect(openShelf(store, SHELF).contents.standings['a/1']?.interval).toBeCloseTo(2, 1);
  });
});

describe('the page', () => {
  const lessons = [
    { slug: 'a', title: 'First' },
    { slug: 'b', title: 'Second' },
  ];
  const prompts = ['a/1', 'a/2', 'b/1'].map((id) => ({
    id,
    lesson: id[0]!,
    ask: `Ask ${id}?`,
    answer: `Answer ${id}.`,
  }));
  const press = (name: string) => fireEvent.click(screen.getByRole('button', { name }));
  const kept = () => openShelf(window.localStorage, SHELF).contents;

  beforeEach(() => window.localStorage.clear());
  afterEach(() => {
    cleanup();
    vi.restoreAllMocks();
  });

  async function start(chosen = ['a', 'b']) {
    changeShelf(window.localStorage, SHELF, (before) =>
      chosen.reduce((all, slug) => withLesson(all, slug, true), before),
    );
    render(<Review lessons={lessons} prompts={prompts} />);
    await screen.findByRole('button', { name: REVIEW.start });
  }

  test('asks nothing before a lesson is ticked, then its questions', async () => {
    render(<Review lessons={lessons} prompts={prompts} />);
    expect(await screen.findByText(REVIEW.noneChosen)).toBeTruthy();
    fireEvent.click(screen.getByLabelText('First'));
    expect(await screen.findByText('2 to answer now, 2 of them new.')).toBeTruthy();
    expect(kept().lessons).toEqual(['a']);
  });

  test('holds the answer back, takes the verdict, keeps it, and asks again what was forgotten', async () => {
    await start();
    press(REVIEW.start);
    expect(screen.queryByText('Answer a/1.')).toBeNull();
    press(REVIEW.show);
    expect(document.activeElement?.textContent).toBe('Answer a/1.');
    press(REVIEW.forgot);
    expect(await screen.findByText(REVIEW.again)).toBeTruthy();
    // Another lesson's question comes between.
    expect(document.activeElement?.textContent).toBe('Ask b/1?');
    for (const id of ['b/1', 'a/2', 'a/1']) {
      expect(screen.getByText(`Ask ${id}?`)).toBeTruthy();
      press(REVIEW.show);
      press(REVIEW.knew);
    }
    expect(await screen.findByText('Done for now: 2 of 3 at the first try.')).toBeTruthy();
    const { standings } = kept();
    expect(standings['b/1']?.interval).toBe(2);
    // A day, and the moments that passed since it was forgotten: a slow machine takes some.
    expect(standings['a/1']?.interval).toBeCloseTo(1, 2);
    expect(screen.getByText('Nothing to answer now. The next is due tomorrow.')).toBeTruthy();
  });

  test('a full device is told, the sitting goes on, and the whole of it is kept once there is room', async () => {
    await start();
    press(REVIEW.start);
    const { localStorage } = window;
    const noRoom = () => {
      throw new Error('QuotaExceededError');
    };
    const full = vi.spyOn(window, 'localStorage', 'get').mockReturnValue({
      ...localStorage,
      getItem: (key: string) => localStorage.getItem(key),
      removeItem: noRoom,
      setItem: noRoom,
    });
    press(REVIEW.show);
    press(REVIEW.knew);
    expect(await screen.findByText(KEEPING.unsaved)).toBeTruthy();
    full.mockRestore();
    expect(kept().standings).toEqual({});
    press(REVIEW.show);
    press(REVIEW.knew);
    expect(Object.keys(kept().standings).sort()).toEqual(['a/1', 'b/1']);
    expect(screen.queryByText(KEEPING.unsaved)).toBeNull();
  });

  test('what cannot be read is offered as a file', async () => {
    window.localStorage.setItem(KEY, '{half');
    render(<Review lessons={lessons} prompts={prompts} />);
    expect(await screen.findByRole('button', { name: KEEPING.asideSave })).toBeTruthy();
  });

  test('a file is taken in, or refused with nothing changed', () => {
    let held = EMPTY;
    const change = (make: (before: Progress) => Progress) => void (held = make(held));
    expect(openFile({ change }, '{"other":1}')).toBe(REVIEW.notOurs);
    expect(held).toBe(EMPTY);
    expect(openFile({ change }, writeProgress(asked('a/1')(EMPTY)))).toBe(REVIEW.opened);
    expect(held.standings['a/1']?.interval).toBe(2);
  });
});

test('a clock’s milliseconds are days', () => {
  expect(daysOf(86_400_000)).toBe(1);
  expect(daysOf(43_200_000 + 86_400_000 * 20_000)).toBe(20_000.5);
});
