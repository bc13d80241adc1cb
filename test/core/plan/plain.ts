/** How kept answers are written: four digits of every number, no quotes, long lists by their ends. */

const MOST = 6;

export function plain(value: unknown): string {
  if (typeof value === 'number') return String(Number(value.toPrecision(4)));
  if (Array.isArray(value)) {
    if (value.length <= MOST) return `[${value.map(plain).join(', ')}]`;
    const ends = [...value.slice(0, MOST - 2), value.at(-1)].map(plain);
    return `[${value.length}: ${ends.join(', ')}]`;
  }
  if (typeof value !== 'object' || value === null) return String(value);
  // A thread is written as drawings write it; what it reads as is tested with the reader.
  if ('designation' in value && 'system' in value) return String(value.designation);
  const parts = Object.entries(value).filter(([, each]) => each !== undefined);
  return `{${parts.map(([name, each]) => `${name} ${plain(each)}`).join(', ')}}`;
}
