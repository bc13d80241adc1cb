/** The rows of a hole table, column by column. */

import { readCallout } from './callout';
import type { Column } from './columns';
import type { CellRow } from './table-cells';

/** Whole numbers as a spreadsheet writes them. */
export const WHOLE = /^\d{1,4}(?:[.,]0+)?$/;

/** Columns as lists of cells, blank ones left out, with the row each stands in. */
export interface Body {
  rows: readonly (readonly string[])[];
  width: number;
}

/** What headings say of the columns; null where they say nothing. */
export type Known = readonly (Column | null)[];

export interface Placed {
  cell: string;
  row: number;
}

/** The filled cells of one column. Source: derived. */
export function columnOf({ rows }: Body, at: number): Placed[] {
  return rows.flatMap((cells, row) => {
    const cell = cells[at] ?? '';
    return cell === '' ? [] : [{ cell, row }];
  });
}

/** The column most of whose cells read as threads or callouts, or -1. Source: common practice. */
export function threadColumn(body: Body, candidates: readonly number[]): number {
  const shares = candidates.map((at) => {
    const cells = columnOf(body, at);
    const read = cells.filter(({ cell }) => readCallout(cell).ok).length;
    return { at, share: cells.length === 0 ? 0 : read / cells.length, read };
  });
  const [best] = shares.filter(({ share }) => share >= 0.5).sort((a, b) => b.read - a.read);
  return best?.at ?? -1;
}

const whole = (cell: string) => Number(cell.replace(',', '.'));

/** 1, 2, 3 … or 10, 20, 30 …: numbers that count rows. Source: common practice. */
export function countsRows(cells: readonly Placed[]): boolean {
  if (cells.length < 2 || !cells.every(({ cell }) => WHOLE.test(cell))) return false;
  const [first, second] = [whole(cells[0]!.cell), whole(cells[1]!.cell)];
  const step = second - first;
  const known = (step === 1 && (first === 1 || cells.length > 2)) || (step === 10 && first === 10);
  return known && cells.every(({ cell }, at) => whole(cell) === first + step * at);
}

/** Whether no two cells are the same. Source: derived. */
export function distinct(cells: readonly Placed[]): boolean {
  return cells.length > 1 && new Set(cells.map(({ cell }) => cell)).size === cells.length;
}

/** Rows as a body, as wide as the last filled column of the rows or of their headings. Source: derived. */
export function bodyOf(rows: readonly CellRow[], headings: readonly string[]): Body {
  const cells = rows.map((row) => row.cells);
  const wide = (row: readonly string[]) =>
    row.reduce((width, cell, at) => (cell === '' ? width : at + 1), 0);
  return { rows: cells, width: Math.max(...[headings, ...cells].map(wide)) };
}
