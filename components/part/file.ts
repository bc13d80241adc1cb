/** A part's inputs as a small file, for lists that are too long for an address. */

import { readAddress, type AddressNote } from '../state/address';
import { PART_FIELDS, PART_NAMES, type PartInputs } from './inputs';
import { TEXT } from '../words/en/part';

const FORMAT = 'tapped-hole-handbook part';

export function writePart(values: PartInputs): string {
  const typed = PART_NAMES.flatMap((name) => (values[name] === '' ? [] : [[name, values[name]]]));
  return `${JSON.stringify({ format: FORMAT, version: 1, values: Object.fromEntries(typed) }, null, 2)}\n`;
}

/** A name for the file that a person finds again. */
export function fileName(values: PartInputs): string {
  const part = (values.part || values.job)
    .replace(/[^\p{L}\p{N}-]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return `${part || 'part'}-tapped-holes.json`;
}

export type OpenedPart =
  { ok: true; values: PartInputs; notes: AddressNote[] } | { ok: false; said: string };

/** Reads a file field by field, as an address is read: one bad value spoils itself and nothing else. */
export function readPart(text: string): OpenedPart {
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return { ok: false, said: TEXT.notOurs };
  }
  if (typeof data !== 'object' || data === null) return { ok: false, said: TEXT.notOurs };
  const { format, version, values } = data as Record<string, unknown>;
  if (format !== FORMAT || typeof values !== 'object' || values === null) {
    return { ok: false, said: TEXT.notOurs };
  }
  if (version !== 1) return { ok: false, said: TEXT.newer };
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries(values)) query.append(name, String(value));
  return { ok: true, ...readAddress(query.toString(), PART_FIELDS) };
}
