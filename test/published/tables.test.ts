/** The tables that `/checks/` shows, each row held to its tolerance. Each table names its source. */
import { describe, expect, test } from 'vitest';
import { difference, PUBLISHED } from './tables';

describe.each(PUBLISHED.map((table) => [table.title, table] as const))('%s', (_, table) => {
  test.each(table.rows.map((row) => [row.of, row.what, row] as const))(
    '%s %s',
    (_of, _what, row) => {
      // A unit of the tenth digit is how a computer keeps a decimal, not a difference.
      expect(Math.abs(difference(row))).toBeLessThanOrEqual(row.within + 1e-10);
    },
  );
});

test('there are as many as the page claims to be worth reading', () => {
  expect(PUBLISHED.length).toBeGreaterThan(12);
  expect(PUBLISHED.flatMap(({ rows }) => rows).length).toBeGreaterThan(900);
});
