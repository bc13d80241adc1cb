/** What must be read, and to which canonical spelling. */

import { describe, expect, test } from 'vitest';
import { noteCodes, noteData, read } from './read-or-throw';

test('a special decimal size keeps three to six decimals and no idle zeros', () => {
  expect(read('1.2521401-25').designation).toBe('1.25214-25 UNS-2B');
});

describe('metric spellings', () => {
  test.each([
    ['M8', 'M8x1.25-6H'],
    ['m8', 'M8x1.25-6H'],
    ['M 8', 'M8x1.25-6H'],
    ['M8x1', 'M8x1-6H'],
    ['M8X1.25', 'M8x1.25-6H'],
    ['M8 x 1.25 - 6H', 'M8x1.25-6H'],
    ['M8 X 1.25 6H', 'M8x1.25-6H'],
    ['M8×1,25', 'M8x1.25-6H'],
    ['M8*1.25', 'M8x1.25-6H'],
    ['M8х1.25', 'M8x1.25-6H'],
    ['М8х1,25-6Н', 'M8x1.25-6H'],
    ['Ｍ８×１．２５', 'M8x1.25-6H'],
    ['M8x1.25–6H', 'M8x1.25-6H'],
    ['M8x1.25−6H', 'M8x1.25-6H'],
    ['M8\u00a0x\u00a01.25', 'M8x1.25-6H'],
    ['M8\tx\n1.25', 'M8x1.25-6H'],
    ['  M8x1.25-6H.  ', 'M8x1.25-6H'],
    ['M8x1.250', 'M8x1.25-6H'],
    ['M8x0.05', 'M8x0.05-6H'],
    ['M08', 'M8x1.25-6H'],
    ['M8x1.25 (6H)', 'M8x1.25-6H'],
    ['M8x1.25-6 H', 'M8x1.25-6H'],
    ['M8x1.25x6H', 'M8x1.25-6H'],
    ['M8-6H', 'M8x1.25-6H'],
    ['M8-1.25', 'M8x1.25-6H'],
    ['M8 pitch 1.25', 'M8x1.25-6H'],
    ['M8 x 1.25 mm', 'M8x1.25-6H'],
    ['M8 mm', 'M8x1.25-6H'],
    ['M8 coarse', 'M8x1.25-6H'],
    ['ISO metric thread M8', 'M8x1.25-6H'],
    ['TAP M8x1.25', 'M8x1.25-6H'],
    ['M10x1-6H-LH', 'M10x1-6H-LH'],
    ['M10x1 LH', 'M10x1-6H-LH'],
    ['M10x1LH', 'M10x1-6H-LH'],
    ['LH M10', 'M10x1.5-6H-LH'],
    ['M10 x 1.5 - 6H LH', 'M10x1.5-6H-LH'],
    ['M10 left-hand', 'M10x1.5-6H-LH'],
    ['M10 L.H.', 'M10x1.5-6H-LH'],
    ['M10 RH', 'M10x1.5-6H'],
    ['M6x1-5H6H', 'M6x1-5H6H'],
    ['M6 x 1.0 - 5H6H', 'M6x1-5H6H'],
    ['M6-6H6H', 'M6x1-6H'],
    ['M8x1-6G', 'M8x1-6G'],
    ['M8x1.25-6H-L', 'M8x1.25-6H-L'],
    ['M8x1.25-6H-L-LH', 'M8x1.25-6H-L-LH'],
    ['M8x1.25-6H-12', 'M8x1.25-6H-12'],
    ['MF8x1', 'M8x1-6H'],
    ['MJ6', 'MJ6x1-4H5H'],
    ['MJ5', 'MJ5x0.8-4H6H'],
    ['mj6x1-4h5h', 'MJ6x1-4H5H'],
    ['EG M8', 'EG M8x1.25-6H'],
    ['STI M8x1.25', 'EG M8x1.25-6H'],
    ['M8 EG', 'EG M8x1.25-6H'],
  ])('%j', (typed, designation) => {
    expect(read(typed).designation).toBe(designation);
  });
});

describe('inch spellings', () => {
  test.each([
    ['1/4-20', '1/4-20 UNC-2B'],
    ['1/4 20', '1/4-20 UNC-2B'],
    ['1/4"-20', '1/4-20 UNC-2B'],
    ['1/4″-20', '1/4-20 UNC-2B'],
    ['1/4” - 20', '1/4-20 UNC-2B'],
    ["1/4''-20", '1/4-20 UNC-2B'],
    ['1/4 in-20', '1/4-20 UNC-2B'],
    ['1/4 inch - 20', '1/4-20 UNC-2B'],
    ['1/4"-20UNC-2B', '1/4-20 UNC-2B'],
    ['1/4-20 UNC 2B', '1/4-20 UNC-2B'],
    ['1/4-20UNC2B', '1/4-20 UNC-2B'],
    ['1/4 - 20 UNC - 2B', '1/4-20 UNC-2B'],
    ['1/4-20-2B', '1/4-20 UNC-2B'],
    ['1/4-20 U.N.C.', '1/4-20 UNC-2B'],
    ['1/4x20', '1/4-20 UNC-2B'],
    ['1/4 x 20 TPI', '1/4-20 UNC-2B'],
    ['1/4-20TPI', '1/4-20 UNC-2B'],
    ['1/4-20 threads per inch', '1/4-20 UNC-2B'],
    ['1/4-20 UNC-2b', '1/4-20 UNC-2B'],
    ['¼-20', '1/4-20 UNC-2B'],
    ['1⁄4–20', '1/4-20 UNC-2B'],
    ['2/8-20', '1/4-20 UNC-2B'],
    ['No. 1/4-20', '1/4-20 UNC-2B'],
    ['10/32-18', '5/16-18 UNC-2B'],
    ['.250-20 UNC-2B', '1/4-20 UNC-2B'],
    ['0.25-20', '1/4-20 UNC-2B'],
    ['0,25-20', '1/4-20 UNC-2B'],
    ['1/4 UNC', '1/4-20 UNC-2B'],
    ['UNC 1/4-20', '1/4-20 UNC-2B'],
    ['1/4 UNC-20', '1/4-20 UNC-2B'],
    ['1/4-20 UNC-2B (21)', '1/4-20 UNC-2B'],
    ['1/4-20 UNC-2B-RH', '1/4-20 UNC-2B'],
    ['1/4-20 UNC-2B LH', '1/4-20 UNC-2B-LH'],
    ['1/4-20 LEFT HAND', '1/4-20 UNC-2B-LH'],
    ['1/4-20 UNC-1B', '1/4-20 UNC-1B'],
    ['#10-24', '#10-24 UNC-2B'],
    ['# 10 - 24', '#10-24 UNC-2B'],
    ['No. 10-32 UNF-3B', '#10-32 UNF-3B'],
    ['№10-32', '#10-32 UNF-2B'],
    ['Nr. 8-32', '#8-32 UNC-2B'],
    ['10-32', '#10-32 UNF-2B'],
    ['10-32UNF', '#10-32 UNF-2B'],
    ['10 – 32', '#10-32 UNF-2B'],
    ['.190-32', '#10-32 UNF-2B'],
    ['0-80', '#0-80 UNF-2B'],
    ['1-8 UNC', '1-8 UNC-2B'],
    ['1"-8', '1-8 UNC-2B'],
    ['1 1/4-7', '1-1/4-7 UNC-2B'],
    ['1 1/4 - 7', '1-1/4-7 UNC-2B'],
    ['1¼-7', '1-1/4-7 UNC-2B'],
    ['1.250-7', '1-1/4-7 UNC-2B'],
    ['1-1/4-7 UNC', '1-1/4-7 UNC-2B'],
    ['1-1/4-12 UN-2B LH', '1-1/4-12 UNF-2B-LH'],
    ['1.25-12 UNF', '1-1/4-12 UNF-2B'],
    ['2-4 1/2 UNC', '2-4.5 UNC-2B'],
    ['2-4-1/2', '2-4.5 UNC-2B'],
    ['2-4.5', '2-4.5 UNC-2B'],
    ['2 1/4-4 1/2 UNC', '2-1/4-4.5 UNC-2B'],
    ['5/8 11', '5/8-11 UNC-2B'],
    ['3/8-16NC', '3/8-16 UNC-2B'],
    ['1/4-28 NF-3B', '1/4-28 UNF-3B'],
    ['1/2-28 UNEF-2B', '1/2-28 UNEF-2B'],
    ['15/16-12', '15/16-12 UN-2B'],
    ['15/16-12 12-UN', '15/16-12 UN-2B'],
    ['1-1/4 8UN', '1-1/4-8 UN-2B'],
    ['1-14', '1-14 UNS-2B'],
    ['1/4-20 UNRC-2B', '1/4-20 UNC-2B'],
    ['1/4-28 UNJF-3B', '1/4-28 UNJF-3B'],
    ['1/4-28 UNJF', '1/4-28 UNJF-3B'],
    ['15/16-12 UNJ', '15/16-12 UNJ-3B'],
    ['.390-27', '.390-27 UNS-2B'],
    ['STI 1/4-20', 'STI 1/4-20 UNC-2B'],
    ['1/4-20 UNC-2B STI', 'STI 1/4-20 UNC-2B'],
  ])('%j', (typed, designation) => {
    expect(read(typed).designation).toBe(designation);
  });
});

describe('pipe spellings', () => {
  test.each([
    ['G1/4', 'G1/4'],
    ['G 1/4', 'G1/4'],
    ['g 1/4"', 'G1/4'],
    ['G1 1/4', 'G1-1/4'],
    ['G 1-1/4', 'G1-1/4'],
    ['1/4 BSPP', 'G1/4'],
    ['1/4-19 BSPP', 'G1/4'],
    ['ISO 228 - G 1/2', 'G1/2'],
    ['Rp1/2', 'Rp1/2'],
    ['RC 1/2', 'Rc1/2'],
    ['1/2 BSPT', 'Rc1/2'],
    ['G1/4-LH', 'G1/4-LH'],
    ['1/4 NPT', '1/4-18 NPT'],
    ['1/4-18 NPT', '1/4-18 NPT'],
    ['NPT 1/4', '1/4-18 NPT'],
    ['1/4" N.P.T.', '1/4-18 NPT'],
    ['1-11 1/2 NPT', '1-11.5 NPT'],
    ['1 1/4 NPT', '1-1/4-11.5 NPT'],
    ['1/8-27NPTF', '1/8-27 NPTF'],
    ['1/8-27 NPTF-1', '1/8-27 NPTF-1'],
    ['1/8 NPSM', '1/8-27 NPSM'],
    ['1/4-18 NPSF', '1/4-18 NPSF'],
    ['1/4-18 NPSF class 2', '1/4-18 NPSF-2'],
  ])('%j', (typed, designation) => {
    expect(read(typed).designation).toBe(designation);
  });
});

describe('the whole of a thread', () => {
  test('metric', () => {
    expect(read('M10x1-6H-LH')).toEqual({
      designation: 'M10x1-6H-LH',
      system: 'metric',
      form: 'M',
      diameter: 10,
      pitch: 1,
      series: 'fine',
      standard: true,
      class: '6H',
      classGiven: true,
      hand: 'left',
      insert: false,
    });
  });

  test('unified: the inch sizes are the standard’s, the millimetres exact', () => {
    expect(read('8-32')).toEqual({
      designation: '#8-32 UNC-2B',
      system: 'unified',
      form: 'UN',
      diameter: 4.1656,
      pitch: 0.79375,
      inch: { size: '#8', diameter: 0.164, tpi: 32 },
      series: 'UNC',
      standard: true,
      class: '2B',
      classGiven: false,
      hand: 'right',
      insert: false,
    });
  });

  test('pipe: no class, and the size as the drawing names it', () => {
    expect(read('1/4 NPT')).toMatchObject({
      system: 'pipe',
      form: 'NPT',
      diameter: 13.716,
      class: '',
      classGiven: false,
      inch: { size: '1/4', diameter: 0.54, tpi: 18 },
    });
    expect(read('G1/2')).toMatchObject({
      form: 'G',
      diameter: 20.955,
      series: 'G',
      inch: { size: '1/2', diameter: 0.825, tpi: 14 },
    });
  });

  test('J forms, inserts and engagement', () => {
    expect(read('1/4-28 UNJF')).toMatchObject({ form: 'UNJ', series: 'UNJF', class: '3B' });
    expect(read('15/16-12 UNJ')).toMatchObject({ form: 'UNJ', series: '12-UNJ' });
    expect(read('STI #10-32')).toMatchObject({ insert: true, diameter: 4.826 });
    expect(read('M8x1.25-6H-L').engagement).toBe('L');
    expect(read('M8x1.25-6H-12').engagement).toBe(12);
    expect(read('M8').engagement).toBeUndefined();
  });
});

describe('what was taken for granted is told', () => {
  test.each([
    ['M8', ['coarse-assumed', 'class-assumed']],
    ['MJ6', ['coarse-assumed', 'class-assumed']],
    ['M8x1.25-6H', []],
    ['M8-1', ['dash-pitch', 'class-assumed']],
    ['10-32 UNF-2B', ['number-size-read']],
    ['1/8-40 UNC-2B', ['number-size-read']],
    ['.313-18 UNC-2B', ['decimal-read-as']],
    ['3/8-16 NC-2B', ['old-series-name']],
    ['1-1/4-12 UN-2B', ['series-named']],
    ['1/4-20 UNRC-2B', ['external-root-name']],
    ['1/4 UNC-2B', ['pitch-from-series']],
    ['1/4-19', ['not-standard-pair', 'class-assumed']],
    ['M8x1.3-6H', ['not-standard-pair']],
    ['M1x0.25-6H', ['six-h-not-tabulated']],
    ['M8x1.25-6H/6g', ['fit-internal-part']],
    ['M8x1.25-6g/6H', ['fit-internal-part']],
    ['1/4-20 UNC-2A/2B', ['fit-internal-part']],
    ['m8x1.25-6g', ['lower-case-class']],
    ['m8x1.25-6h', []],
    ['1/4 BSPP', ['pipe-name']],
    ['1/4-20 UNC-2B (22)', ['gauging-dropped']],
    ['3-8 UN-2B', []],
  ])('%s: %j', (typed, codes) => {
    expect(noteCodes(typed)).toEqual(codes);
  });

  test('with what it needs to say so', () => {
    expect(noteData('10-32', 'number-size-read')).toEqual({ typed: '10', size: '#10' });
    expect(noteData('.313-18', 'decimal-read-as')).toEqual({ typed: '.313', size: '5/16' });
    expect(noteData('M8', 'coarse-assumed')).toEqual({ pitch: '1.25' });
    expect(noteData('M1x0.25-6H', 'six-h-not-tabulated')).toEqual({ class: '5H' });
    expect(noteData('5-16', 'did-you-mean-fraction')).toEqual({
      size: '5',
      fraction: '5/16',
      example: '5/16-18 UNC',
    });
    expect(noteData('m8-6g', 'lower-case-class')).toEqual({ typed: '6g', class: '6G' });
    expect(noteData('1-1/4-12 UN', 'series-named')).toEqual({ typed: 'UN', series: 'UNF' });
    expect(noteData('3/8-16NC', 'old-series-name')).toEqual({ typed: 'NC', series: 'UNC' });
  });
});
