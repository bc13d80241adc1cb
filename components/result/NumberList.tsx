/** The numbers as a list of name and value, with what belongs to each under it. */

import type { ComponentChildren } from 'preact';

export interface NumberRow {
  name: string;
  value: string;
  /** The middle of the class, the band, the base: whatever keeps the number honest. */
  beside?: readonly string[];
  picture?: ComponentChildren;
}

export function NumberList({ rows }: { rows: readonly NumberRow[] }) {
  return (
    <dl class="numbers">
      {rows.map(({ name, value, beside = [], picture }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
          {picture && <dd class="picture">{picture}</dd>}
          {beside.map((text) => (
            <dd class="beside" key={text}>
              {text}
            </dd>
          ))}
        </div>
      ))}
    </dl>
  );
}
