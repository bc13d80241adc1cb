/** Lines as drawings carry them, in five languages: how each is read, and how its hole stands. */

import { describe, expect, test } from 'vitest';
import { planDrawing } from '../../../core';
import { APART } from './corpus/apart';
import { CODES } from './corpus/codes';
import { EAST_ASIAN } from './corpus/east-asian';
import { FRENCH } from './corpus/french';
import { GERMAN } from './corpus/german';
import { GRAVE } from './corpus/grave';
import { ITALIAN } from './corpus/italian';
import { JOINED } from './corpus/joined';
import { ORDINARY } from './corpus/ordinary';
import type { Row } from './corpus/row';
import { SPANISH } from './corpus/spanish';

const CORPUS: Record<string, readonly Row[]> = {
  ...{ ordinary: ORDINARY, grave: GRAVE, apart: APART, joined: JOINED, codes: CODES },
  ...{ german: GERMAN, french: FRENCH, spanish: SPANISH, italian: ITALIAN, east: EAST_ASIAN },
};

const rounded = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_, each: unknown) =>
      typeof each === 'number' ? Math.round(each * 1000) / 1000 : each,
    ),
  );

/** What the drawing makes of a row's lines, in the shape of a row. */
function readAs({ line, from }: Row): Row {
  const { holes } = planDrawing(line.split('\n'), { material: 'steel-medium' });
  expect(holes.length, line).toBe(1);
  const { verdict, apart, callout } = holes[0]!;
  const common = { line, from, verdict, ...(apart && { apart }) };
  if (!callout.ok) return { ...common, problem: callout.problems[0]!.code };
  const { count, through, notRead, read: _read, harmless: _harmless, ...rest } = callout.value;
  const { fasteners: _fasteners, ...said } = rest;
  return rounded({
    ...common,
    ...said,
    ...(count !== 1 && { count }),
    ...(through && { through }),
    ...(notRead.length > 0 && { notRead }),
  }) as Row;
}

describe.each(Object.keys(CORPUS))('%s', (name) => {
  test.each(CORPUS[name]!.map((row) => [row.line, row] as const))('%s', (_, row) => {
    expect(readAs(row)).toEqual(row);
  });
});

test('at least 250 lines, and at least 95 in a hundred ordinary ones ready', () => {
  const all = Object.values(CORPUS).flat();
  expect(all.length).toBeGreaterThanOrEqual(250);
  const ready = ORDINARY.filter(({ verdict }) => verdict === 'ready').length;
  expect(ready / ORDINARY.length).toBeGreaterThanOrEqual(0.95);
  // The same in another metal.
  const holes = ORDINARY.flatMap(
    ({ line }) => planDrawing([line], { material: 'al-wrought' }).holes,
  );
  const inAluminium = holes.filter(({ verdict }) => verdict === 'ready').length;
  expect(inAluminium / holes.length).toBeGreaterThanOrEqual(0.95);
});
