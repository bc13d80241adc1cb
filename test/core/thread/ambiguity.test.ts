/** Texts that could mean two threads: the rule that decides, tried from both sides. */

import { describe, expect, test } from 'vitest';
import { noteCodes, problem, read } from './read-or-throw';

describe('a bare whole number is a number size where the pair is one', () => {
  const pairs =
    '0-80 1-64 1-72 2-56 2-64 3-48 3-56 4-40 4-48 4-36 5-40 5-44 6-32 6-40 8-32 8-36 10-24 10-32 12-24 12-28 12-32';
  test.each(pairs.split(' '))('%s', (pair) => {
    expect(read(pair).inch?.size).toBe(`#${pair.split('-')[0]}`);
    expect(noteCodes(pair)).toContain('number-size-read');
  });
});

describe('else it is inches where that pair is listed', () => {
  test.each(['1-8', '1-12', '1-14', '1-20', '2-4.5', '2-12', '3-4', '4-4', '6-12', '5-16', '3-8'])(
    '%s',
    (pair) => {
      const [size, tpi] = pair.split('-').map(Number);
      expect(read(pair)).toMatchObject({ inch: { size: `${size}`, diameter: size, tpi } });
      expect(noteCodes(pair)).not.toContain('number-size-read');
    },
  );

  test('5-16 and 3-8 may be fractions: that is said', () => {
    expect(read('5-16').designation).toBe('5-16 UN-2B');
    expect(noteCodes('5-16')).toContain('did-you-mean-fraction');
    expect(noteCodes('3-8')).toContain('did-you-mean-fraction');
    expect(noteCodes('5-4')).not.toContain('did-you-mean-fraction');
    expect(noteCodes('1-8')).not.toContain('did-you-mean-fraction');
    expect(noteCodes('5/16-18')).not.toContain('did-you-mean-fraction');
  });
});

describe('else it is asked, unless UNS says that a special is meant', () => {
  test('10-28', () => {
    expect(problem('10-28').code).toBe('which-pitch');
    expect(read('#10-28').designation).toBe('#10-28 UNS-2B');
    expect(read('10-28 UNS').designation).toBe('#10-28 UNS-2B');
  });

  test('6-10: no #6 carries ten threads an inch, so with UNS it is six inches', () => {
    expect(problem('6-10').code).toBe('which-pitch');
    expect(read('6-10 UNS')).toMatchObject({ diameter: 152.4, series: 'UNS' });
    expect(read('6-20 UNS').inch?.size).toBe('#6');
  });

  test('an inch mark always says inches, and stays in the spelling where it is needed', () => {
    expect(read('6"-20').designation).toBe('6"-20 UNS-2B');
    expect(read('2"-56').designation).toBe('2"-56 UNS-2B');
    expect(read('1"-8').designation).toBe('1-8 UNC-2B');
    expect(read('7"-8').designation).toBe('7"-8 UNS-2B');
  });
});

describe('1-1/4 is a mixed number, never 1 inch', () => {
  test('1-1/4-7 and 1-1/2', () => {
    expect(read('1-1/4-7').diameter).toBe(31.75);
    expect(problem('1-1/2')).toMatchObject({ code: 'pitch-missing', data: { size: '1-1/2' } });
    expect(problem('4 1/2')).toMatchObject({ code: 'pitch-missing', data: { size: '4-1/2' } });
  });
});

describe('a number after a dash is the pitch where it can be one', () => {
  test('M8-1.25, M8-1, M10-1.5, M8 1.25', () => {
    expect(read('M8-1.25').series).toBe('coarse');
    expect(read('M8-1').pitch).toBe(1);
    expect(read('M10-1.5').series).toBe('coarse');
    expect(read('M8 1.25').pitch).toBe(1.25);
    expect(noteCodes('M8-1')).toContain('dash-pitch');
    expect(noteCodes('M8x1')).not.toContain('dash-pitch');
  });
});

describe('a pair that stands in several series has one name', () => {
  test.each([
    ['1/2-20', 'UNF'],
    ['3/8-16', 'UNC'],
    ['1-1/4-12', 'UNF'],
    ['1-8', 'UNC'],
    ['9/16-12', 'UNC'],
    ['3/4-16', 'UNF'],
    ['1-12', 'UNF'],
    ['1-20', 'UNEF'],
    ['5/8-12', '12-UN'],
    ['5/16-20', '20-UN'],
    ['1-7/16-6', '6-UN'],
    ['2-5/8-4', '4-UN'],
    ['1/4-19', 'UNS'],
    ['1-14', 'UNS'],
  ])('%s is %s', (pair, series) => {
    expect(read(pair).series).toBe(series);
  });
});

describe('the usual class, where none is given', () => {
  test.each([
    ['M8', '6H'],
    ['M1.6x0.35', '6H'],
    ['M1.4x0.3', '5H'],
    ['M1', '5H'],
    ['M2x0.25', '5H'],
    ['M1x0.2', '4H'],
    ['M1.8x0.2', '4H'],
    ['MJ4', '4H6H'],
    ['MJ8', '4H5H'],
    ['1/4-20', '2B'],
    ['1/4-28 UNJF', '3B'],
    ['STI 1/4-20', '2B'],
  ])('%s: %s', (typed, grade) => {
    expect(read(typed)).toMatchObject({ class: grade, classGiven: false });
    expect(noteCodes(typed)).toContain('class-assumed');
  });
});

describe('a decimal inch within .0005 of a standard size is that size', () => {
  test.each([
    ['.313-18', '5/16'],
    ['.3125-18', '5/16'],
    ['.312-18', '5/16'],
    ['.4375-14', '7/16'],
    ['.438-14', '7/16'],
    ['.1640-32', '#8'],
    ['.125-40', '#5'],
    ['.3131-18', '.3131'],
    ['.3119-18', '.3119'],
    ['.390-27', '.390'],
  ])('%s is %s', (typed, size) => {
    expect(read(typed).inch?.size).toBe(size);
  });

  test('a size that is none is special', () => {
    expect(read('.3131-18')).toMatchObject({ series: 'UNS', standard: false });
  });
});

describe('a comma is a decimal sign only where it makes one number', () => {
  test('M8×1,25 and lists', () => {
    expect(read('M8×1,25').pitch).toBe(1.25);
    expect(read('M16x1,5-6H').pitch).toBe(1.5);
    expect(read('M8, 1.25').pitch).toBe(1.25);
    expect(read('M8,1.25').pitch).toBe(1.25);
    expect(read('1/4-20, UNC, 2B').designation).toBe('1/4-20 UNC-2B');
  });
});

describe('small letters', () => {
  test('beside capitals, small e to h is a screw’s class; all small, it is read as a capital', () => {
    expect(problem('M8-6h').code).toBe('external-class');
    expect(read('m8-6h').class).toBe('6H');
    expect(read('m8x1-6g').class).toBe('6G');
    expect(problem('m8-6f').code).toBe('external-class');
    expect(read('m8-6h lh').designation).toBe('M8x1.25-6H-LH');
    expect(read('1/4-20 unc-2b').class).toBe('2B');
  });
});
