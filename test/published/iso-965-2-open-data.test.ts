/**
 * Metric 6H limits against ISO 965-2 values as threadlib (BSD 3-Clause) tabulates them, M1 to M64, with
 * D2max of the coarse sizes also in a tap maker's catalogue and a gauge maker's chart.
 */

import { describe, expect, test } from 'vitest';
import { threadLimits } from '../../core/limits/thread-limits';
import { limitsOf, noteCodes, printed, read } from '../core/thread/read-or-throw';
import { readCsv } from './csv';
import text from './data/metric-6H.csv?raw';

const rows = readCsv(text);
const cells = (row: Record<string, string>) => [
  row['D1min_6H'],
  row['D1max_6H'],
  row['D2min_6H'],
  row['D2max_6H'],
];
const named = (status: string) =>
  rows.filter((row) => row['status'] === status).map((row) => [row['designation']!, row] as const);

describe('ISO 965-2 values as tabulated in threadlib', () => {
  test('the file has the rows it should', () => {
    expect(named('ok')).toHaveLength(74);
    expect(named('reject-row')).toHaveLength(7);
    expect(named('no ISO 6H cell')).toHaveLength(11);
  });

  test.each(named('ok'))('%s-6H to the last printed digit', (designation, row) => {
    expect(printed(`${designation}-6H`, 3)).toEqual(cells(row));
    expect(limitsOf(`${designation}-6H`).basis).toBe('tabulated');
  });

  test.each(rows.map((row) => [row['designation']!, row['series']!] as const))(
    '%s is %s',
    (designation, series) => {
      expect(read(designation)).toMatchObject({ series, standard: true });
    },
  );

  test.each(named('no ISO 6H cell'))(
    '%s has no 6H cell in ISO 965-1: computed, and said so',
    (designation) => {
      const outcome = threadLimits(read(`${designation}-6H`));
      expect(outcome).toMatchObject({ ok: true, value: { basis: 'computed' } });
      expect(outcome.ok && outcome.notes.map(({ code }) => code)).toContain('not-tabulated');
      expect(noteCodes(`${designation}-6H`)).toContain('six-h-not-tabulated');
      expect(limitsOf(designation).basis).toBe('tabulated');
    },
  );
});

/**
 * Seven rows of the data set contradict ISO 724 or the tolerance that the same set gives for the same pitch
 * and diameter step; the standard's own values stand.
 */
describe('rows of threadlib that are misprints', () => {
  const misprints: [string, string, string[]][] = [
    ['M1.4x0.3', 'basic sizes of another pitch', ['1.075', '1.160', '1.205', '1.280']],
    ['M5.5x0.5', 'M4.5x0.5, same step, has TD2 0.100', ['4.959', '5.099', '5.175', '5.275']],
    ['M9x1', 'M8x1 and M10x1, same step, have TD2 0.150', ['7.917', '8.153', '8.350', '8.500']],
    ['M11x1.5', 'M10x1.5, same step, has TD2 0.180', ['9.376', '9.676', '10.026', '10.206']],
    ['M14x1.25', 'step 11.2 to 22.4 has TD2 0.180', ['12.647', '12.912', '13.188', '13.368']],
    ['M18x2.5', 'M20x2.5, same step, has TD2 0.224', ['15.294', '15.744', '16.376', '16.600']],
    ['M52x5', 'M48x5, same step, has TD2 0.335', ['46.587', '47.297', '48.752', '49.087']],
  ];

  test('the same seven as marked in the file', () => {
    expect(misprints.map(([designation]) => designation)).toEqual(
      named('reject-row').map(([designation]) => designation),
    );
  });

  test.each(misprints)('%s: %s', (designation, _why, expected) => {
    expect(printed(`${designation}-6H`, 3)).toEqual(expected);
    const row = rows.find((each) => each['designation'] === designation)!;
    expect(cells(row)).not.toEqual(expected);
  });
});
