/**
 * The canned tapping cycle as a commented skeleton in the sense of ISO 6983 and RS-274: what each word
 * is for, with blanks where only the shop knows. Never a finished program.
 *
 * Which words the public NIST RS-274/NGC report (version 3, NISTIR 6556) defines: its table of modal
 * groups. It has the right-hand cycle G84 and feed per minute G94; no left-hand cycle, no feed per turn.
 */

import type { Hand } from '../thread/thread';
import { exactFeed, roundedFeed, type FeedMode, type ProgramUnit } from './feed';

export const SKELETON_CODES = [
  'plane-xy',
  'absolute',
  'unit-mm',
  'unit-inch',
  'per-minute',
  'per-revolution',
  'radius-off',
  'cycles-off',
  'tool-number',
  'tool-change',
  'speed',
  'clockwise',
  'anticlockwise',
  'rapid',
  'position',
  'length-offset',
  'offset-number',
  'clear-height',
  'return-initial',
  'cycle-right',
  'cycle-left',
  'depth',
  'start-plane',
  'feed',
  'next-hole',
  'spindle-stop',
] as const;

export type SkeletonCode = (typeof SKELETON_CODES)[number];

export interface SkeletonWord {
  /** As it stands in the block; `_` is a blank for the shop to fill. */
  text: string;
  code: SkeletonCode;
  /** Whether the NIST RS-274/NGC report defines it; many controls have words it lacks. */
  inNist: boolean;
}

/** One block: its words from left to right. */
export type SkeletonBlock = readonly SkeletonWord[];

export interface SkeletonQuestion {
  unit: ProgramUnit;
  mode: FeedMode;
  hand: Hand;
  rpm: number;
  /** mm */
  pitch: number;
  /** Depth of the tap's tip below the face and height of the start plane above it, mm. */
  tip: number;
  start: number;
}

const word = (text: string, code: SkeletonCode, inNist = true): SkeletonWord => ({
  text,
  code,
  inNist,
});

/** A length in the program's unit: mm to 2 decimals, inches to 4, always with its point. */
function size(mm: number, unit: ProgramUnit): string {
  const value = unit === 'mm' ? mm : mm / 25.4;
  const text = value.toFixed(unit === 'mm' ? 2 : 4).replace(/0+$/, '');
  return text;
}

function feedText({ unit, mode, pitch, rpm }: SkeletonQuestion): string {
  const exact = exactFeed(pitch, rpm, unit, mode);
  const decimals = mode === 'per-minute' ? (unit === 'mm' ? 2 : 3) : unit === 'mm' ? 4 : 6;
  const text = roundedFeed(exact, decimals).toFixed(decimals).replace(/0+$/, '');
  return text;
}

/**
 * The blocks of the cycle, in order. Lengths mm, rev/min, all above 0. The depth counts from the face.
 * Sources: `nist-rs274`, `common-practice`.
 */
export function cycleSkeleton(question: SkeletonQuestion): SkeletonBlock[] {
  const { unit, mode, hand, rpm, tip, start } = question;
  const right = hand === 'right';
  return [
    [
      word('G17', 'plane-xy'),
      word('G90', 'absolute'),
      unit === 'mm' ? word('G21', 'unit-mm') : word('G20', 'unit-inch'),
      mode === 'per-minute' ? word('G94', 'per-minute') : word('G95', 'per-revolution', false),
      word('G40', 'radius-off'),
      word('G80', 'cycles-off'),
    ],
    [word('T_', 'tool-number'), word('M6', 'tool-change')],
    [
      word(`S${Math.round(rpm)}`, 'speed'),
      right ? word('M3', 'clockwise') : word('M4', 'anticlockwise'),
    ],
    [word('G0', 'rapid'), word('X_ Y_', 'position')],
    [word('G43', 'length-offset'), word('H_', 'offset-number'), word('Z_', 'clear-height')],
    [
      word('G98', 'return-initial'),
      right ? word('G84', 'cycle-right') : word('G74', 'cycle-left', false),
      word(`Z-${size(tip, unit)}`, 'depth'),
      word(`R${size(start, unit)}`, 'start-plane'),
      word(`F${feedText(question)}`, 'feed'),
    ],
    [word('X_ Y_', 'next-hole')],
    [word('G80', 'cycles-off')],
    [word('M5', 'spindle-stop')],
  ];
}
