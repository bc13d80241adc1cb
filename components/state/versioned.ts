/** How a text that was stored by some version of the handbook is opened: ours or not, older, or newer. */

export type Loose = Record<string, unknown>;

export type Opened =
  | { state: 'read'; data: Loose; from: number }
  /** Not ours, or broken. */
  | { state: 'damaged' }
  /** Written by a later version. */
  | { state: 'newer' };

export const isObject = (data: unknown): data is Loose =>
  typeof data === 'object' && data !== null && !Array.isArray(data);

/** Opens a store's or a file's text; `format` is the name it must bear, where it bears one. Never throws. */
export function openVersioned(text: string, version: number, format?: string): Opened {
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return { state: 'damaged' };
  }
  if (!isObject(data)) return { state: 'damaged' };
  if (format !== undefined && data['format'] !== format) return { state: 'damaged' };
  const from = Number.isInteger(data['version']) ? Number(data['version']) : 0;
  if (from < 1) return { state: 'damaged' };
  return from > version ? { state: 'newer' } : { state: 'read', data, from };
}
