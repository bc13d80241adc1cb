/**
 * What a figure is made of before anything is drawn: plain marks with a role each.
 * A role is a CSS class (site/styles/figures.css); no mark carries a colour or a line width.
 */

export interface PathMark {
  kind: 'path';
  role: string;
  d: string;
}

export interface TextMark {
  kind: 'text';
  role: TextRole;
  x: number;
  y: number;
  text: string;
  anchor?: 'start' | 'middle' | 'end';
  /** Extra classes: colour by meaning. */
  tone?: Tone;
}

export interface GroupMark {
  kind: 'group';
  role: string;
  marks: Mark[];
}

export type Mark = PathMark | TextMark | GroupMark;

/** Meaning that the eye must catch; each also has a word or a sign. */
export type Tone = 'quiet' | 'blue' | 'amber' | 'stop';

/** Text sizes in units of the viewBox; figures.css sets the same. */
export const TEXT_SIZE = { title: 17, value: 17, word: 15, note: 15 } as const;

export type TextRole = keyof typeof TEXT_SIZE;

/** A figure ready to draw, with the words that stand for it where it cannot be seen. */
export interface Picture {
  /** Left upper corner of what is shown, where that is not the sheet's own. */
  corner?: Point;
  width: number;
  height: number;
  title: string;
  description: string;
  marks: Mark[];
}

export type Point = readonly [x: number, y: number];

/**
 * A coordinate to a tenth: finer than a screen or a printer shows, short enough for a page's budget,
 * and the same on every machine.
 */
export function coordinate(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}

/** Path data through points. */
export function polyline(points: readonly Point[], closed = false): string {
  const steps = points.map(([x, y]) => `${coordinate(x)} ${coordinate(y)}`);
  return `M${steps.join('L')}${closed ? 'Z' : ''}`;
}

export function path(role: string, ...data: string[]): PathMark {
  return { kind: 'path', role, d: data.join('') };
}

export function line(role: string, from: Point, to: Point): PathMark {
  return path(role, polyline([from, to]));
}

export function group(role: string, marks: readonly (Mark | null)[]): GroupMark {
  return { kind: 'group', role, marks: marks.filter((mark) => mark !== null) };
}

export function text(
  role: TextRole,
  [x, y]: Point,
  words: string,
  options: { anchor?: TextMark['anchor']; tone?: Tone | undefined } = {},
): TextMark {
  const mark: TextMark = { kind: 'text', role, x: coordinate(x), y: coordinate(y), text: words };
  if (options.anchor) mark.anchor = options.anchor;
  if (options.tone) mark.tone = options.tone;
  return mark;
}

/** Every mark of a figure, groups opened. */
export function flatten(marks: readonly Mark[]): (PathMark | TextMark)[] {
  return marks.flatMap((mark) => (mark.kind === 'group' ? flatten(mark.marks) : [mark]));
}
