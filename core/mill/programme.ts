/**
 * A thread mill's programme in the words of ISO 6983 and RS-274: climb milling, Z0 at the face, X0 Y0 at the
 * hole's centre. X and Y are where the cutter's centre goes; the radius offset holds its wear alone, 0 for a new cutter.
 * Tool and offset numbers are blanks (`_`) that only the shop can fill: a control stops at them.
 * Helical G2 and G3 with Z are defined by NIST RS-274/NGC; the control's manual overrules.
 */

import type { Hand } from '../thread/thread';

export interface MillPath {
  hand: Hand;
  unit: 'mm' | 'in';
  rpm: number;
  pitch: number;
  /** Depth below the face of the lowest tooth's middle when the thread is done, mm. */
  deepest: number;
  /** Turns of each pass, and mm between their starts. */
  turns: number;
  lift: number;
  /** True where a comb is lifted between single turns; false where one helix runs through. */
  lifts: boolean;
  /** Of each pass: diameter of the centre's path, mm, and the feed that the control is given, mm/min. */
  passes: readonly { path: number; feed: number }[];
  /** Height of the clear plane above the face, mm. */
  clear: number;
}

/** mm to 3 decimals, inches to 4; no minus zero. */
function size(mm: number, unit: MillPath['unit']): string {
  const text = (unit === 'mm' ? mm : mm / 25.4).toFixed(unit === 'mm' ? 3 : 4);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

/**
 * The quarter turn that leads in, on a radius of three quarters of the path's: its centre lies on the line to the
 * start, so that it meets the path without a corner. Half of the radius or more, or it would not; the whole at most.
 */
const LEAD = 0.75;

interface Writer {
  at: (mm: number) => string;
  feed: (mmPerMinute: number) => string;
  lines: string[];
}

/** One stretch of helix with its lead in and lead out; back on the centre line when it ends. */
function helix(
  out: Writer,
  path: number,
  feed: number,
  [from, to, turns]: [from: number, to: number, turns: number],
): void {
  const { at, lines } = out;
  const radius = path / 2;
  const lead = LEAD * radius;
  const rise = (to - from) / turns;
  const share = rise / 4;
  // The lead turns the same way as the cut and climbs its share of the pitch.
  lines.push(
    `G1 Z${at(from - share)} F${out.feed(feed)}`,
    `G41 D_ G1 X${at(radius - lead)} Y${at(-lead)} F${out.feed(feed / 2)}`,
    `G3 X${at(radius)} Y${at(0)} Z${at(from)} I${at(0)} J${at(lead)}`,
  );
  for (let turn = 1; turn <= turns; turn += 1) {
    const speed = turn === 1 ? ` F${out.feed(feed)}` : '';
    lines.push(
      `G3 X${at(radius)} Y${at(0)} Z${at(from + rise * turn)} I${at(-radius)} J${at(0)}${speed}`,
    );
  }
  lines.push(
    `G3 X${at(radius - lead)} Y${at(lead)} Z${at(to + share)} I${at(-lead)} J${at(0)}`,
    `G40 G1 X${at(0)} Y${at(0)}`,
  );
}

/** Where each stretch begins and ends, mm from the face, in the order they are cut. Right hand climbs, left hand goes down. */
function stretches({
  hand,
  pitch,
  deepest,
  turns,
  lift,
  lifts,
}: MillPath): [number, number, number][] {
  const up = hand === 'right';
  if (!lifts) {
    const top = -deepest + turns * pitch;
    return [up ? [-deepest, top, turns] : [top, -deepest, turns]];
  }
  const starts = Array.from({ length: turns }, (_, index) => -deepest + index * lift);
  const each = starts.map((low): [number, number, number] =>
    up ? [low, low + pitch, 1] : [low + pitch, low, 1],
  );
  return up ? each : each.reverse();
}

/**
 * The blocks, in order; lengths in `unit`, feed per minute. All lengths of `path` mm and above 0, rpm in
 * rev/min. Sources: `nist-rs274`, `common-practice`, path `derived`.
 */
export function millProgramme(path: MillPath): string[] {
  const { unit, rpm, passes, clear } = path;
  const at = (mm: number) => size(mm, unit);
  const feed = (value: number) => (unit === 'mm' ? value.toFixed(0) : (value / 25.4).toFixed(2));
  const out: Writer = { at, feed, lines: [] };
  out.lines.push(
    `${unit === 'mm' ? 'G21' : 'G20'} G17 G90 G94 G40 G80`,
    'T_ M6',
    `S${rpm} M3`,
    'G0 X0 Y0',
    `G43 H_ Z${at(clear)}`,
  );
  for (const each of passes) {
    for (const stretch of stretches(path)) helix(out, each.path, each.feed, stretch);
    out.lines.push(`G0 Z${at(clear)}`);
  }
  out.lines.push('M5');
  return out.lines;
}
