/** What should be said beside an answer that was given. English. */

import type { CalloutNoteCode } from '../../../core/drawing/types';
import type { LimitsNoteCode } from '../../../core/limits/codes';
import type { ThreadNoteCode } from '../../../core/thread/codes';

export const NOTES: Record<ThreadNoteCode | LimitsNoteCode | CalloutNoteCode, string> = {
  'number-size-read': 'Read as the number size {size}.',
  'not-standard-pair':
    'Not a pair of the standard lists. It is treated as special: its limits are computed, not tabulated.',
  'class-assumed': 'No class given: {class} taken, the usual one.',
  'coarse-assumed': 'No pitch given: coarse taken, {pitch} mm.',
  'pitch-from-series': 'Pitch taken from {series}: {tpi} threads per inch.',
  'dash-pitch': 'The number after the dash was read as the pitch, {pitch} mm.',
  'decimal-read-as': '{typed} was read as {size}.',
  'old-series-name': '{typed} is the old name of {series}.',
  'series-named': 'This pair has a name of its own: {series}.',
  'external-root-name': '{typed} is a form for screws; the hole is {series}.',
  'did-you-mean-fraction':
    'Read as {size} inch. Did you mean {fraction}? Type size and pitch, like {example}.',
  'six-h-not-tabulated': '6H is not tabulated for this pitch; {class} is the usual class.',
  'fit-internal-part': '{typed} is a fit; the hole’s part of it, {class}, was read.',
  'lower-case-class':
    '{typed} was read as {class}: capitals are for holes, small letters for screws.',
  'not-tabulated': 'Not in its standard’s table: these limits come from the standard’s formulas.',
  'minor-max-unknown':
    'The largest minor diameter of this profile is not known here with confidence: take it from the drawing.',
  'insert-minor-closer':
    'For wire inserts the minor diameter is often held closer[, to {minorMax:limit} at most].',
  'long-engagement':
    'Long engagement: the tolerance on pitch diameter is {factor:number} times the usual.',
  'parallel-pipe-from-memory': 'The tolerance of this pipe thread is from memory: check it.',
  'printed-cell':
    'The standard prints one of these limits otherwise than its formula gives; the printed one stands.',
  'pipe-name': '{typed} was read as {form}.',
  'gauging-dropped': 'The gauging note {typed} does not change the hole and was left out.',

  // A line of a drawing.
  'not-read': 'Not read: “{text}”.',
  'through-assumed': 'No depth and no THRU: taken as a through hole.',
  'depth-unclear': 'A number here was not understood. If it is the depth, write ↧ or DEEP with it.',
  'depth-in-other-unit': '{typed} was read in the other unit: nothing else makes sense here.',
  'counterbore-not-planned': '“{text}” is yours to make: the depths below count from its floor.',
  'countersink-angle-assumed': 'No angle stands with the countersink: the usual one was taken.',
  'planned-at-least':
    'Not all of {drawn:length} can be had: the tolerance allows {planned:length}, and that is planned.',
  'planned-at-deepest':
    'The hole is too shallow at {drawn:length}: the tolerance allows {planned:length}, and that is planned.',
  'planned-deeper':
    'The hole is too shallow at {drawn:length}, which is its least: it is planned deeper.',
  'thread-depth-range':
    'Full thread[ at least {least:length}][ at most {deepest:length}]; the figure drawn is planned.',
  'hole-depth-range':
    'Hole[ at least {least:length}][ at most {deepest:length}] deep; the figure drawn is planned.',
  typical: 'TYP: the drawing means every like hole. Count them yourself.',
};
