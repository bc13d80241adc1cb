/** Headings of a hole table: which column each names, and which row holds them. */

import { readCallout } from './callout';
import { COLUMN_NAMES } from './column-names';
import type { Column } from './columns';
import type { CellRow } from './table-cells';

const UNIT = [
  [/[([/,]\s*mm\s*[)\]]?\s*$|\s(?:in\s)?mm$/i, 'mm'],
  [/[([]\s*(?:in|inch(?:es)?|zoll|po|pouces?|pulg(?:adas)?|pollici|")\s*[)\]]\s*$/i, 'in'],
  [/,\s*in\.?$|\s(?:inch(?:es)?|zoll|pouces?|pulgadas|pollici)$/i, 'in'],
] as const;

function unitOf(name: string): 'mm' | 'in' | undefined {
  return UNIT.find(([pattern]) => pattern.test(name.trim()))?.[1];
}

/** A heading as bare words: no accents, points or brackets; the diameter sign as a word. */
function bareName(name: string): string {
  let plain = name.trim();
  for (const [pattern] of UNIT) plain = plain.replace(pattern, '');
  return plain
    .replace(/[Ø⌀∅φ]/gi, ' dia ')
    .replace(/[#№]|n\s?[º°]|n[o.]{0,2}\s?[:.]/gi, ' no ')
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .replace(/œ/g, 'oe')
    .replace(/(?<=\p{L})\.(?=\p{L})/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** `x` is a quantity to some and a coordinate to others: beside a `y` it is a place. */
function isPlace(name: string, all: readonly string[]): boolean {
  return name === 'x' && all.some((other) => other === 'y');
}

/** The column that a heading names, unit and all; null for a heading not known. Source: common practice. */
function namedColumn(name: string, all: readonly string[]): Column | null {
  const bare = bareName(name);
  if (bare === '') return null;
  const place = isPlace(bare, all.map(bareName));
  const found = place
    ? 'item'
    : COLUMN_NAMES.find(([, patterns]) => patterns.some((pattern) => pattern.test(bare)))?.[0];
  if (!found) return null;
  const unit = unitOf(name);
  return { kind: found, name: name.trim(), ...(unit && { unit }) };
}

/** A row of headings, with the columns that they name; null for those not known. */
export interface Headed {
  columns: (Column | null)[];
  row: CellRow;
}

/** At least two known headings, and nothing that reads as a thread. Source: common practice. */
export function headingsOf(row: CellRow): Headed | null {
  const filled = row.cells.filter((cell) => cell !== '');
  if (filled.length < 2 || filled.some((cell) => readCallout(cell).ok)) return null;
  const columns = row.cells.map((cell) => namedColumn(cell, row.cells));
  const known = columns.filter((column) => column !== null).length;
  return known >= 2 && known >= filled.length / 3 ? { columns, row } : null;
}

/** Words alone, over rows that hold threads: headings in a language that is not known. */
function wordsAlone(row: CellRow, rest: readonly CellRow[]): Headed | null {
  const filled = row.cells.filter((cell) => cell !== '');
  if (filled.length < 2 || filled.some((cell) => /\d/.test(cell) || !/\p{L}/u.test(cell)))
    return null;
  if (filled.length < Math.max(...rest.map(({ cells }) => cells.filter(Boolean).length)))
    return null;
  return { columns: row.cells.map((cell) => namedColumn(cell, row.cells)), row };
}

/** The first row that holds headings, above the first thread. Source: common practice. */
export function findHeadings(rows: readonly CellRow[]): Headed | null {
  for (const [at, row] of rows.entries()) {
    const headed = headingsOf(row);
    if (headed) return headed;
    if (row.cells.some((cell) => readCallout(cell).ok)) return null;
    const rest = rows.slice(at + 1);
    const words = rest.length > 0 ? wordsAlone(row, rest) : null;
    if (words) return words;
  }
  return null;
}
