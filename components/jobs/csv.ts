/** Tables as text: read whatever a spreadsheet saves, write what none of them will run as a formula. */

import { parse, unparse } from 'papaparse';

/**
 * What separates the cells: the sign that stands most often in the first line outside quotes. Not left to the
 * parser's guess: where semicolons or tabs stand, the comma is a decimal sign.
 */
function separatorOf(text: string): string {
  const line = /^(?:"(?:[^"]|"")*"|[^\r\n"])*/.exec(text)?.[0].replace(/"(?:[^"]|"")*"/g, '') ?? '';
  const count = (sign: string) => line.split(sign).length;
  return [';', '\t', ','].find((sign) => count(sign) > 1) ?? ',';
}

/** Rows of cells, trimmed; rows without anything are passed over. A BOM is dropped. */
export function readTable(text: string): string[][] {
  const plain = text.replace(/^\ufeff/, '');
  const { data } = parse<string[]>(plain, { delimiter: separatorOf(plain) });
  return data
    .map((row) => row.map((cell) => cell.trim()))
    .filter((row) => row.some((cell) => cell !== ''));
}

/** Signs with which a spreadsheet starts to reckon, after any blanks. */
const FORMULA = /^\s*[=+\-@\t\r].*$/s;

/**
 * A table as CSV with a BOM, so that spreadsheets read its signs right. An apostrophe in front of what
 * looks like a formula makes it text in every spreadsheet.
 */
export function writeTable(rows: readonly (readonly string[])[]): string {
  const text = unparse(
    rows.map((row) => [...row]),
    { escapeFormulae: FORMULA, newline: '\r\n' },
  );
  return `\ufeff${text}\r\n`;
}
