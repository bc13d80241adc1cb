/**
 * Unified 1B, 2B and 3B limits against rows of the ASME B1.1 tables: Machinery's Handbook 31st edition,
 * open copies of the tables, catalogue limits. Rows partly or wholly from memory are marked in their title.
 */

import { describe, expect, test } from 'vitest';
import { limitsOf, printed, read } from '../core/thread/read-or-throw';
import { readCsv } from './csv';
import text from './data/unified-2B-3B.csv?raw';

const rows = readCsv(text);
const columns = ['D1min', 'D1max', 'D2min', 'D2max'];

function designation(row: Record<string, string>): string {
  const series = row['series']!.replace(/^\d+-/, '');
  return `${row['designation']} ${series}-${row['class']}`;
}

describe('rows of the ASME B1.1 tables', () => {
  test('the file has the rows it should', () => {
    expect(rows).toHaveLength(70);
  });

  test.each(rows.map((row) => [designation(row), row['provenance']!, row] as const))(
    '%s to the last printed digit (%s)',
    (name, _provenance, row) => {
      const ours = printed(name, 4);
      columns.forEach((column, place) => {
        if (row[column]) expect(ours[place], column).toBe(row[column]);
      });
      expect(read(name).series).toBe(row['series']);
      expect(read(name).designation).toBe(name);
    },
  );
});

describe('ASME B1.1 rows as every shop chart prints them', () => {
  test.each([
    ['1/4-20 UNC-2B', '0.1960', '0.2070', '0.2175', '0.2224'],
    ['3/8-16 UNC-2B', '0.3070', '0.3210', '0.3344', '0.3401'],
    ['1/2-13 UNC-2B', '0.4170', '0.4340', '0.4500', '0.4565'],
    ['1-8 UNC-2B', '0.8650', '0.8900', '0.9188', '0.9276'],
    ['1/4-20 UNC-3B', '0.1960', '0.2067', '0.2175', '0.2211'],
    ['5/8-11 UNC-3B', '0.5270', '0.5391', '0.5660', '0.5714'],
  ])('%s', (name, ...expected) => {
    expect(printed(name, 4)).toEqual(expected);
  });
});

describe('ASME B1.1 cells that look wrong and are right', () => {
  test.each([
    ['1-3/4-5 UNC-2B', 'D1min', 1.534],
    ['#10-24 UNC-2B', 'D1max', 0.156],
    ['7/8-14 UNF-2B', 'D1max', 0.814],
    ['1-14 UNS-2B', 'D1max', 0.938],
    ['5/8-18 UNF-3B', 'D1max', 0.573],
  ])('%s %s is %d', (name, cell, value) => {
    const { minor } = limitsOf(name);
    expect(cell === 'D1min' ? minor.min : minor.max).toBe(value);
  });
});

describe('the one printed ASME B1.1 cell that its formula misses', () => {
  test('#6-32 UNC-3B: printed .1204, formula .1205; the printed one stands, for that cell alone', () => {
    expect(limitsOf('#6-32 UNC-3B').pitch.max).toBe(0.1204);
    expect(limitsOf('#6-32 UNC-2B').pitch.max).toBe(0.1214);
    expect(limitsOf('#6-40 UNF-3B').pitch.max).toBe(0.1243);
  });
});
