/** Nobody else's words by accident: each name on the pages has been asked where it comes from. */
import { expect, test } from 'vitest';
import { markedNames, shownNames } from '../tools/names';

const marked = new Map(markedNames().map((each) => [each.name, each]));

test('every name that a reader sees is marked: of the trade, of a standard, or our own', () => {
  const unmarked = [...shownNames()]
    .filter(([name]) => !marked.get(name)?.mark)
    .map(([name, { kind, page }]) => `${page}: ${kind} “${name}”`);
  expect(unmarked, 'run `npm run names`, mark the new rows, and say which standard').toEqual([]);
});

test('marks are of three kinds, and a standard is named', () => {
  const wrong = [...marked.values()].filter(
    ({ mark, of }) =>
      !['trade', 'standard', 'ours'].includes(mark) || (mark === 'standard') !== (of !== ''),
  );
  expect(wrong).toEqual([]);
});
