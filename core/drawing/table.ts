/** Hole tables as they are pasted from a spreadsheet: which column is what, and each row as one callout. */

import type { Column, ColumnKind } from './columns';
import { guessColumns } from './guess-columns';
import { findHeadings, headingsOf, type Headed } from './headings';
import { settledKind } from './settled-column';
import { bodyOf, threadColumn, type Body } from './table-body';
import { rowText } from './row-text';
import { cellRows, type CellRow, type Separator } from './table-cells';

export interface TableEntry {
  /** One callout, to be read by `readCallout`. */
  text: string;
  /** As typed, with its separators. */
  line: string;
  /** Numbers of its lines as typed, counted from 1. */
  lines: number[];
  /** None for a line between the rows that is no row itself. */
  cells?: string[];
  /** Tool number of the row. */
  tool?: string;
}

export interface HoleTable {
  separator: Separator;
  columns: Column[];
  /** Number of the line with the headings, counted from 1. */
  header?: number;
  entries: TableEntry[];
}

function columnsOf(body: Body, headed: Headed | null): Column[] | null {
  const named = headed?.columns ?? [];
  const settled = Array.from({ length: body.width }, (_, at) => {
    const column = named[at];
    return column ? { ...column, kind: settledKind(column, body, at, named) } : null;
  });
  const said = settled.findIndex((column) => column?.kind === 'thread');
  const open = settled.flatMap((column, at) => (column ? [] : [at]));
  const thread = said >= 0 ? said : threadColumn(body, open);
  if (thread < 0) return null;
  const guessed = guessColumns(body, thread, settled);
  return guessed.map((kind, at) => {
    const name = headed?.row.cells[at] ?? '';
    // Only what no heading names is guessed; the words of a heading not known are read with its cells.
    const unknown = name !== '' && !settled[at] && at !== thread;
    return settled[at] ?? { kind: unknown ? 'remark' : kind, name, ...(unknown && { unknown }) };
  });
}

function chosen(columns: Column[], kinds: readonly (ColumnKind | undefined)[]): Column[] {
  return columns.map((column, at) => {
    const kind = kinds[at];
    if (!kind || kind === column.kind) return column;
    const { name, unit } = column;
    return { kind, name, ...(unit && { unit }) };
  });
}

function entryOf(row: CellRow, columns: readonly Column[]): TableEntry {
  const { line, lines, cells } = row;
  // A line between the rows, without a single separator: a callout or a note of its own.
  if (cells.length < 2) return { text: line, line, lines };
  const tool = cells.find((cell, at) => cell !== '' && columns[at]?.kind === 'tool');
  return { text: rowText(cells, columns), line, lines, cells, ...(tool !== undefined && { tool }) };
}

/** Without tabs it is a table only where that is sure: commas and semicolons stand in callouts too. */
function surelyTable(
  rows: readonly CellRow[],
  headed: Headed | null,
  columns: readonly Column[],
): boolean {
  if (headed)
    return (
      rows.every(({ cells }) => cells.length > 1) && columns.some(({ kind }) => kind === 'thread')
    );
  const even = rows.every(({ cells }) => cells.length === rows[0]!.cells.length);
  return (
    even && rows.length > 1 && columns.some(({ kind }) => kind === 'quantity' || kind === 'item')
  );
}

function tableWith(
  lines: readonly string[],
  separator: Separator,
  kinds: readonly (ColumnKind | undefined)[],
): HoleTable | null {
  const rows = cellRows(lines, separator);
  const wide = rows.filter(({ cells }) => cells.length > 1);
  if (wide.length === 0) return null;
  const headed = findHeadings(wide);
  const body = wide.filter((row) => row !== headed?.row && !(headed && headingsOf(row)));
  const found = body.length > 0 ? columnsOf(bodyOf(body, headed?.row.cells ?? []), headed) : null;
  if (!found) return null;
  if (separator !== '\t' && !surelyTable(rows, headed, found)) return null;
  const columns = chosen(found, kinds);
  return {
    separator,
    columns,
    ...(headed && { header: headed.row.lines[0]! }),
    entries: rows
      .filter((row) => row.cells.length < 2 || body.includes(row))
      .map((row) => entryOf(row, columns)),
  };
}

/**
 * Reads lines as a hole table: pasted cells (tabs), or CSV with semicolons or commas, quotes and decimal commas.
 * Headings name the columns in English, German, French, Spanish or Italian; without them a column of whole numbers is
 * the quantity, unless it counts the rows. `columns` is a person's own choice of kinds, which stands above both.
 * Each row comes back as one callout, any text; lengths in it keep their heading's unit, mm or in. Null where the lines
 * are no table. Never throws. Source: common practice.
 *
 * @example
 * tableOf(['Qty;Thread;Depth', '4;M8;16']).entries[0].text // '4x M8 ↧16'
 */
export function tableOf(
  lines: readonly string[],
  columns: readonly (ColumnKind | undefined)[] = [],
): HoleTable | null {
  const separators: Separator[] = lines.some((line) => line.includes('\t')) ? ['\t'] : [';', ','];
  for (const separator of separators) {
    if (!lines.some((line) => line.includes(separator))) continue;
    const table = tableWith(lines, separator, columns);
    if (table) return table;
  }
  return null;
}
