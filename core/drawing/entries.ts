/** What a drawing is planned from: the rows of a table, or lines joined where they belong together. */

import { joinLines, type Entry } from './join-lines';
import { tableOf } from './table';
import type { Shop } from './types';

export interface DrawingEntry extends Entry {
  /** Tool number of a table's row. */
  tool?: string;
}

/**
 * The entries of a drawing in order, one for each hole and each line kept apart; blank lines and headings are passed
 * over. Any text; no unit; never throws. `columns` and `joins` as in `Shop`. Source: common practice.
 */
export function drawingEntries(
  lines: readonly string[],
  { columns, joins }: Pick<Shop, 'columns' | 'joins'> = {},
): DrawingEntry[] {
  const table = tableOf(lines, columns);
  const typed = lines.map((line, index) => ({ line, lines: [index + 1], text: line }));
  const filled = typed.filter(({ line }) => line.trim() !== '');
  const tools = new Map(table?.entries.map(({ lines: [first], tool }) => [first, tool]));
  return joinLines(table ? table.entries.map(bare) : filled, joins).map((entry) => {
    const tool = tools.get(entry.lines[0]!);
    return { ...entry, ...(tool !== undefined && { tool }) };
  });
}

const bare = ({ line, lines, text }: Entry): Entry => ({ line, lines, text });
