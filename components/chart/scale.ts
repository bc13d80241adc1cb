/** A straight scale from a measure to the sheet. d3's own carries formats and colours not needed here. */

export interface Scale {
  (value: number): number;
  domain: readonly [number, number];
  range: readonly [number, number];
}

/** A linear scale; `domain` must have two different ends. */
export function linearScale(
  domain: readonly [number, number],
  range: readonly [number, number],
): Scale {
  const factor = (range[1] - range[0]) / (domain[1] - domain[0]);
  const scale = (value: number) => range[0] + (value - domain[0]) * factor;
  return Object.assign(scale, { domain, range });
}
