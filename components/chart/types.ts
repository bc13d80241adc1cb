/** What a chart says, in plain numbers and words; every value is in the unit its axis names. */

import type { Tone } from '../drawing/marks';

export interface Datum {
  x: number;
  /** Lower edge, middle and upper edge. A band needs both edges, a line the middle. */
  low?: number;
  mid?: number;
  high?: number;
}

/** Dash, marker and hatch that tell one series from another without colour. */
export type Look = 0 | 1 | 2 | 3 | 4;

export interface Series {
  /** Stands at the end of the line: short for a phone, whole for a wide page and the table. */
  label: { short: string; long: string };
  data: Datum[];
  look: Look;
  /** The one the page is about: drawn in the accent, heavier. */
  strong?: boolean;
  /** Values from this x on are outside what the model holds for: drawn dotted. */
  beyond?: number;
}

export interface Axis {
  /** Quantity, e.g. `Torque`. */
  label: string;
  /** Unit as printed, e.g. `N·m`. */
  unit: string;
  /** From the data when missing; then it starts at zero. */
  domain?: readonly [number, number];
  /** Step between ticks when the shop has a favourite. */
  ticks?: readonly number[];
  /** How a value is written in tables and labels; the same rounding as the answer box. */
  write: (value: number) => string;
}

/** A line across the panel at one value: a limit, what was asked, a boundary. */
export interface Reference {
  at: number;
  label: string;
  tone?: Tone;
}

/** A stretch of the x axis with a name, e.g. the range of a chamfer class. */
export interface Zone {
  from: number;
  to: number;
  label: { short: string; long: string };
}

/** Where the reader stands. */
export interface Here {
  x: number;
  y: number;
  /** Lines of words beside the point; say the values. */
  label: readonly string[];
}

export interface Panel {
  y: Axis;
  series: readonly Series[];
  references?: readonly Reference[];
  here?: Here;
  /** Share of the height, 1 when missing. */
  weight?: number;
}

export interface Chart {
  /** The finding, at most fifteen words. */
  title: string;
  /** Measure and conditions. */
  subtitle: string;
  /** One paragraph on the shape, for those who cannot see it. */
  description: string;
  x: Axis;
  panels: readonly Panel[];
  /** Lines at one x, through every panel. */
  references?: readonly Reference[];
  zones?: readonly Zone[];
  /** What the bands cover, in words. */
  bands?: string;
}

/** Narrow: a phone. Wide: a page of text. Each is laid out by itself, so that words stay readable. */
export type WidthClass = 'narrow' | 'wide';
