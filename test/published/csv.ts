/** Rows of a check table kept beside its source. */

import { readFileSync } from 'node:fs';

/** Reads a plain CSV file (no quotes) of `test/published/data/` into records by its header. */
export function readCsv(name: string): Record<string, string>[] {
  const text = readFileSync(new URL(`./data/${name}`, import.meta.url), 'utf8');
  const [header = '', ...lines] = text.trim().split(/\r?\n/);
  const keys = header.split(',');
  return lines.map((line) => {
    const cells = line.split(',');
    return Object.fromEntries(keys.map((key, column) => [key, cells[column] ?? '']));
  });
}
