/** How a number named in a template is shown: the word after its colon. */

import { COUNTED, MEASURED } from './en/units';
import * as format from './format';
import type { Unit } from './format';
import { say } from './say';

const count =
  ([one, many]: readonly [string, string]) =>
  (value: number): string => {
    const text = format.decimals(value, 1);
    return `${text} ${text === '1' ? one : many}`;
  };

const KINDS = {
  number: (value: number) => format.decimals(value, 2),
  whole: (value: number) => format.decimals(value, 0),
  length: format.length,
  limit: format.limitLength,
  roughly: format.roughLength,
  torque: format.torque,
  force: format.force,
  percent: (value: number) => format.percent(value),
  threadPercent: (value: number) => format.threadPercent(value),
  rpm: (value: number) => format.rpm(value),
  feed: format.feed,
  threads: count(COUNTED.threads),
  pitches: count(COUNTED.pitches),
  diameters: (value: number) => say(MEASURED.diameters, { count: format.decimals(value, 2) }),
  times: (value: number) => say(MEASURED.times, { count: format.decimals(value, 2) }),
  degrees: (value: number) => `${format.decimals(value, 0)}°`,
  speed: (value: number) => `${format.decimals(value, 1)} m/min`,
  /** Shows nothing: keeps a part in brackets only where the number is there. */
  only: () => '',
  strength: (value: number) => `${format.decimals(value, 0)} N/mm²`,
} as const satisfies Record<string, (value: number, unit: Unit) => string>;

export type Kind = keyof typeof KINDS;

/** Every kind a template may ask for. */
export const KIND_NAMES = Object.keys(KINDS) as Kind[];

/** The number in its kind; a kind that does not exist shows the bare number. */
export function show(value: number, kind: Kind, unit: Unit): string {
  return (KINDS[kind] ?? KINDS.number)(value, unit);
}
