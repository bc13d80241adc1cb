/** Rows of a check table kept beside its source. */

/** Reads the text of a plain CSV file (no quotes) into records by its header. */
export function readCsv(text: string): Record<string, string>[] {
  const [header = '', ...lines] = text.trim().split(/\r?\n/);
  const keys = header.split(',');
  return lines.map((line) => {
    const cells = line.split(',');
    return Object.fromEntries(keys.map((key, column) => [key, cells[column] ?? '']));
  });
}
