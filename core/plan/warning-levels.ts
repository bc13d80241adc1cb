/**
 * How grave each warning is. One list: the drawing page, the planner and the card all read it. Warnings
 * whose weight hangs on their numbers are judged below, the others by code.
 */

import type { WarningCode } from './codes';
import type { WarningLevel } from './types';

/** Diameters of thread up to which depth alone is a note. Common practice. */
const DEEP_CAUTION = 3;

/** Share of the breaking torque that a worn tap may meet before it asks for care. Common practice. */
const WORN_CAUTION = 0.7;

const LEVELS: Record<WarningCode, WarningLevel> = {
  'tap-share-high': 'caution',
  'tap-will-break': 'stop',
  'spindle-over': 'stop',
  'chips-ahead-no-room': 'caution',
  'chips-must-not-fall': 'caution',
  'thin-work': 'caution',
  'deep-thread': 'note',
  'work-hardens': 'note',
  'springs-back': 'caution',
  dust: 'note',
  'swarf-fire': 'caution',
  'water-fire': 'caution',
  'carbide-wants': 'note',
  'carbide-unsuited': 'caution',
  'left-hand': 'note',
  interrupted: 'caution',
  plated: 'caution',
  'drill-at-risk': 'caution',
  'below-clearance': 'caution',
  'weak-when-stripped': 'caution',
  'harden-after': 'stop',
  'taper-pipe': 'caution',
  'limits-computed': 'note',
  'minor-limit-unknown': 'caution',
  'mill-feed-setting': 'caution',
  'duty-not-judged': 'stop',
  'entry-face': 'caution',
  crossing: 'caution',
  'crossing-after': 'caution',
  'tap-reach': 'caution',
  'counterbore-tight': 'caution',
  'cored-hole': 'caution',
  'later-hardening': 'caution',
  'later-coating': 'caution',
  'later-welding': 'caution',
  'heavy-by-hand': 'caution',
};

/**
 * The level of a warning with its numbers (shares and ratios as fractions, torque N·m).
 * Source: common practice.
 */
export function warningLevel(
  code: WarningCode,
  numbers: Readonly<Record<string, number>> = {},
): WarningLevel {
  const { worn = 0, spindle = 0, diameters = 0, ratio = 0, left = 1 } = numbers;
  // No thread is left, or no tap to be bought gets there.
  if (code === 'crossing' && left < 1e-9) return 'stop';
  if (code === 'tap-reach' && numbers['most'] !== undefined) return 'stop';
  if (code === 'spindle-over' && worn <= spindle) return 'caution';
  if (code === 'deep-thread' && diameters > DEEP_CAUTION + 1e-9) return 'caution';
  if (code === 'tap-share-high' && worn < WORN_CAUTION) return 'note';
  // It is as strong as its screw; only the hand's breadth for uneven load is missing.
  if (code === 'weak-when-stripped' && ratio >= 1) return 'note';
  return LEVELS[code];
}
