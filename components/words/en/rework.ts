/** The ladder of rework. English. */

import type { Authority, Defect, ReworkRung } from '../../../core/diagnose/rework';

export const REWORK = {
  title: 'What to do with a bad thread',
  description:
    'From a chase to an insert to scrap: what helps with which fault of a thread, and whose authority each rung needs. Nothing here accepts a rework.',
  lead: 'A thread is wrong, or a tap had to be cut out of it. Climb only as far as you must, and ask whoever each rung belongs to, before metal is cut.',
  refused: 'Nothing on this page accepts a rework',
  refusedText:
    'It says what can be done and who may allow it. Accepting the part is for the one who answers for it, in writing, with the part’s number.',
  ladder: 'The ladder, cheapest rung first',
  rung: 'Rung',
  what: 'What it is',
  whose: 'Whose word it needs',
  governed: 'Where a code governs the thread',
  governedText:
    'Pressure, lifting, structures, vehicles, medicine: a code and a responsible engineer govern the thread, and its repair too.',
  helps: 'Helps when the thread is',
  any: 'anything',
  faults: 'By the fault',
  fault: 'The thread is',
  insert: 'Hole for a wire insert',
  insertText:
    'An insert makes the old thread good with a larger one round it, if there is wall enough. The tap is a special one for inserts. Sit it a quarter to half a turn below the face; in a through hole break off its tang and account for it.',
  thread: 'For the screw',
  minor: 'Minor diameter at least',
  major: 'Its thread reaches to',
  wall: 'Wall to keep beyond that',
  note: 'Limits at the top come from the insert’s own data sheet. The wall is common practice: the designer decides.',
  before: 'First, read all the gauges',
  mark: 'Keep such parts apart, marked and locked away from good ones, until the word has come.',
} as const;

export const RUNG_WORDS: Record<ReworkRung, { name: string; what: string }> = {
  chase: {
    name: 'Clean or chase',
    what: 'Flush, deburr, run a tap of the right limit through by hand.',
  },
  'open-minor': {
    name: 'Open the minor diameter, then chase',
    what: 'Ream, or drill with the part clamped and the hole on the axis, to a size inside the class. Then run a tap of the right limit through by hand to take off the burr, and try the plain plugs again.',
  },
  're-tap': {
    name: 'Tap again, or deeper',
    what: 'A fresh tap of the right limit, started by hand into the old thread. Deeper where the thread was short, if the chamfer and its clearance still fit above the floor; otherwise with a shorter chamfer.',
  },
  'shorter-screw': {
    name: 'Shorter screw, or a washer under the head',
    what: 'So that the screw clamps before it reaches the end of the thread. Check that enough thread still holds it. The drawing changes.',
  },
  'longer-screw': {
    name: 'Longer screw',
    what: 'Reach threads further down that are whole. The drawing changes.',
  },
  'larger-thread': {
    name: 'Next larger thread',
    what: 'Next size up, or a finer pitch on a larger diameter, with another screw. The drawing changes.',
  },
  'wire-insert': {
    name: 'Wire insert',
    what: 'Bore, tap for the insert, wind it in. The old screw fits.',
  },
  'solid-insert': {
    name: 'Solid or keyed insert',
    what: 'A threaded bush, locked with keys or a collar. Needs more wall than a wire insert.',
  },
  'plug-or-weld': {
    name: 'Plug or weld, drill and tap anew',
    what: 'Heat changes the metal round the hole, and a plug can turn or leak. Welding is for somebody qualified and allowed to.',
  },
  scrap: { name: 'Scrap', what: 'Mark it, count it, write down why.' },
};

export const AUTHORITIES: Record<Authority, string> = {
  shop: 'the shop itself, written in the record',
  designer: 'the designer: the drawing changes',
  concession: 'a concession in writing from whoever accepts the part',
  engineer: 'the responsible engineer, in writing, under the code that governs',
};

export const DEFECT_WORDS: Record<Defect, string> = {
  'chips-or-burr': 'full of chips or burred',
  'pitch-small': 'too tight: GO refuses',
  'pitch-large': 'too loose: NOT GO goes',
  'minor-large': 'drilled too large',
  'minor-small': 'drilled too small',
  'thread-short': 'too short',
  torn: 'torn',
  'double-start': 'cut twice',
  stripped: 'stripped',
};
