/** Lines as rows of cells: pasted from a spreadsheet (tabs) or saved by one (semicolons, commas, quotes). */

export type Separator = '\t' | ';' | ',';

export interface CellRow {
  /** As typed; a row whose quoted cell spans lines keeps its line breaks. */
  line: string;
  /** Numbers of its lines as typed, counted from 1. */
  lines: number[];
  cells: string[];
}

/** A quoted cell that runs on for longer than this was never meant as one. */
const MOST_LINES_IN_A_CELL = 12;

/** What a spreadsheet writes for nothing. */
const NOTHING = /^(?:[-–—.]|n\.?\/?a\.?|none)$/i;

function plainCell(text: string): string {
  const plain = text.replace(/\s*[\r\n]+\s*/g, ' ').trim();
  return NOTHING.test(plain) ? '' : plain;
}

/** The quoted cell that begins at `from`: its text and where the next cell begins; null while it stands open. */
function quotedCell(
  text: string,
  from: number,
  separator: string,
): { cell: string; next: number } | null | 'not-quoted' {
  const opening = /^[^\S\t]*"/.exec(text.slice(from));
  if (!opening) return 'not-quoted';
  let at = from + opening[0].length;
  let cell = '';
  while (at < text.length) {
    if (text[at] !== '"') cell += text[at];
    else if (text[at + 1] === '"') {
      cell += '"';
      at += 1;
    } else {
      const rest = text.slice(at + 1).replace(/^ +/, '');
      if (rest === '') return { cell, next: text.length + 1 };
      // A quote in the middle of a cell is an inch mark, and the cell was none of the quoted kind.
      if (!rest.startsWith(separator)) return 'not-quoted';
      return { cell, next: text.length - rest.length + 1 };
    }
    at += 1;
  }
  return null;
}

/** The cells of one line, or null where a quoted cell is still open at its end. */
function cellsOf(text: string, separator: string): string[] | null {
  const cells: string[] = [];
  let at = 0;
  while (at <= text.length) {
    const quoted = quotedCell(text, at, separator);
    if (quoted === null) return null;
    if (quoted === 'not-quoted') {
      const end = text.indexOf(separator, at);
      const stop = end < 0 ? text.length : end;
      cells.push(text.slice(at, stop));
      at = stop + 1;
    } else {
      cells.push(quoted.cell);
      at = quoted.next;
    }
  }
  return cells;
}

/** The row that begins on this line, and how many lines it takes. */
function rowAt(lines: readonly string[], from: number, separator: string): [string[], number] {
  for (let taken = 1; taken <= MOST_LINES_IN_A_CELL; taken += 1) {
    if (from + taken > lines.length) break;
    const cells = cellsOf(lines.slice(from, from + taken).join('\n'), separator);
    if (cells) return [cells, taken];
  }
  return [lines[from]!.split(separator), 1];
}

/** Rows of trimmed cells; lines that hold nothing but separators are passed over. Source: derived. */
export function cellRows(lines: readonly string[], separator: Separator): CellRow[] {
  const rows: CellRow[] = [];
  for (let at = 0; at < lines.length;) {
    const [cells, taken] = rowAt(lines, at, separator);
    const numbers = Array.from({ length: taken }, (_, step) => at + step + 1);
    const row = {
      line: lines.slice(at, at + taken).join('\n'),
      lines: numbers,
      cells: cells.map(plainCell),
    };
    if (cells.some((cell) => cell.trim() !== '')) rows.push(row);
    at += taken;
  }
  return rows;
}
