/** Tables as text: read whatever a spreadsheet saves, write what none of them will run as a formula. */

/** What separates the cells: the sign that stands most often in the first line outside quotes. */
function separatorOf(text: string): string {
  const line = /^(?:"(?:[^"]|"")*"|[^\r\n"])*/.exec(text)?.[0].replace(/"(?:[^"]|"")*"/g, '') ?? '';
  const count = (sign: string) => line.split(sign).length;
  // A semicolon or tab before a comma: where those stand, the comma is a decimal sign.
  return [';', '\t', ','].find((sign) => count(sign) > 1) ?? ',';
}

/** Rows of cells, trimmed; rows without anything are passed over. Quotes as in RFC 4180; a BOM is dropped. */
export function readTable(text: string): string[][] {
  const plain = text.replace(/^\ufeff/, '');
  const separator = separatorOf(plain);
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let quoted = false;
  const endCell = () => {
    row.push(cell.trim());
    cell = '';
  };
  const endRow = () => {
    endCell();
    if (row.some((each) => each !== '')) rows.push(row);
    row = [];
  };
  for (let at = 0; at < plain.length; at += 1) {
    const sign = plain[at]!;
    if (quoted) {
      if (sign !== '"') cell += sign;
      else if (plain[at + 1] === '"') {
        cell += '"';
        at += 1;
      } else quoted = false;
    } else if (sign === '"' && cell.trim() === '') {
      cell = '';
      quoted = true;
    } else if (sign === separator) endCell();
    else if (sign === '\n' || sign === '\r') {
      if (sign === '\r' && plain[at + 1] === '\n') at += 1;
      endRow();
    } else cell += sign;
  }
  endRow();
  return rows;
}

/** Signs with which a spreadsheet starts to reckon. */
const FORMULA = /^[\s]*[=+\-@\t\r]/;

function writeCell(value: string): string {
  // An apostrophe in front makes it text in every spreadsheet.
  const safe = FORMULA.test(value) ? `'${value}` : value;
  return /[",;\r\n\t]|^\s|\s$/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
}

/** A table as CSV with a BOM, so that spreadsheets read its signs right. */
export function writeTable(rows: readonly (readonly string[])[]): string {
  return `\ufeff${rows.map((row) => row.map(writeCell).join(',')).join('\r\n')}\r\n`;
}
