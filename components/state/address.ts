/**
 * Inputs ⇄ address. Every calculator keeps what was typed, as typed, in the query: a bookmark,
 * a class link or the code on a printed card opens the same page again. Pure: no window here.
 */

export interface AddressField<Name extends string = string> {
  name: Name;
  initial: string;
  /** Where given, anything else in the address falls back to `initial`, with a note. */
  choices?: readonly string[];
}

export type Values<Name extends string> = Record<Name, string>;

/** Something in an address that this page could not use. */
export interface AddressNote {
  reason: 'unknown-name' | 'unknown-choice';
  name: string;
  typed: string;
}

export function initialValues<Name extends string>(
  fields: readonly AddressField<Name>[],
): Values<Name> {
  return Object.fromEntries(fields.map(({ name, initial }) => [name, initial])) as Values<Name>;
}

/** Reads a query, field by field: one bad value spoils itself and nothing else. */
export function readAddress<Name extends string>(
  search: string,
  fields: readonly AddressField<Name>[],
): { values: Values<Name>; notes: AddressNote[] } {
  const values = initialValues(fields);
  const notes: AddressNote[] = [];
  for (const [name, typed] of new URLSearchParams(search)) {
    const field = fields.find((candidate) => candidate.name === name);
    if (!field) notes.push({ reason: 'unknown-name', name, typed });
    else if (field.choices && !field.choices.includes(typed) && typed !== field.initial) {
      notes.push({ reason: 'unknown-choice', name, typed });
    } else values[field.name] = typed;
  }
  return { values, notes };
}

/** The query for these values, `?…` or empty; what still stands at its initial value is left out. */
export function writeAddress<Name extends string>(
  values: Values<Name>,
  fields: readonly AddressField<Name>[],
): string {
  const query = new URLSearchParams();
  for (const { name, initial } of fields) {
    if (values[name] !== initial) query.append(name, values[name]);
  }
  // Slashes, commas and colons are legal in a query; left bare, the printed address is shorter.
  const text = query.toString().replace(/%2F/g, '/').replace(/%2C/g, ',').replace(/%3A/g, ':');
  return text === '' ? '' : `?${text}`;
}
