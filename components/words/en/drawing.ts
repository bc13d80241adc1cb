/** What a drawing leaves for its designer to settle, hole by hole. English. */

import type { QuestionCode } from '../../../core/drawing/types';

/** A question in full, for the note; and in a few words, for beside the hole. */
export interface QuestionWords {
  short: string;
  text: string;
}

export const QUESTIONS: Record<QuestionCode, QuestionWords> = {
  'hole-too-shallow': {
    short: 'No tap reaches: the hole is {by:length}, {byPitches:pitches}, too shallow.',
    text: '[{fullThread:length} of full thread is asked ({fullThreadPitches:pitches}).] [The hole ends at {limit:length}, so {room:length} stay below the thread: {roomPitches:pitches}.] A machine tap needs {needed:length} to the shoulder, {by:length} more than drawn.[ As drawn, {obtainable:length} of full thread is certain.]',
  },
  'thread-deeper-than-hole': {
    short: 'The thread is drawn deeper than its hole.',
    text: '{fullThread:length} of full thread is asked in a hole that is {depth:length} deep. Which of the two is meant?',
  },
  'thread-longer-than-part': {
    short: 'The thread is drawn longer than the part is thick.',
    text: '{fullThread:length} of full thread is asked where the part is thinner than that. Which of the two is meant?',
  },
  'no-room-below': {
    short: 'The tap has no room below: {by:length} more is needed.',
    text: 'The tap must run {to:length} past the far face, {by:length} more than there is.',
  },
  'spindle-too-small': {
    short: 'Too much torque for this spindle.',
    text: 'Cutting this thread needs a spindle of at least {torque:torque}, which this machine does not give. Would a finer pitch, a smaller size or a milled thread do?',
  },
  'too-hard-to-tap': {
    short: 'Too hard to tap.',
    text: 'The material is too hard for a tap. May the thread be cut before hardening, or milled?',
  },
  'strip-strength': {
    short: 'The thread may strip before its screw breaks.',
    text: 'The hole has {have:length} of full thread, {ratio:number} times the length at which screw and thread are equally strong. For the screw to give way first it would take {wanted:length}. Is that needed here, and which grade of screw goes in?',
  },
  'drill-outside-class': {
    short: 'The hole named on the drawing is outside the class.',
    text: 'The drawing names a hole of {drawn:limit}. The thread\u2019s class allows {min:limit} to {max:limit}. May the drawing be corrected?',
  },
  'depth-not-clear': {
    short: 'How deep is not clear.',
    text: 'No depth could be read in this callout. Does the hole go right through? If not, how deep are the full thread and the hole?',
  },
  'face-not-square': {
    short: 'The face slopes: no tap starts there before a flat is cut.',
    text: 'The hole begins on a sloping face, where neither drill nor tap starts true. May a flat be cut square to the hole first, and from where do the depths then count?',
  },
  'insert-which': {
    short: 'A thread insert goes in: its kind and length must be confirmed.',
    text: 'This hole takes a thread insert. Which kind, how long, and to which standard is its hole made?',
  },
  'tapped-or-clearance': {
    short: 'It names a screw, a bolt or a nut: is this hole tapped?',
    text: 'The line names what goes into the hole or through it. Is this hole tapped for it, or does it give clearance?',
  },
  'note-touches-all': {
    short: 'Line {line:whole} speaks of a process or a duty: does it touch this hole?',
    text: 'Line {line:whole} of what was pasted names a process or a duty without a hole. Does it touch this hole, and is the hole tapped before or after it?',
  },
  'depth-on-next-line': {
    short: 'Line {line:whole} gives a depth that belongs to no hole.',
    text: 'Line {line:whole} of what was pasted gives a depth and no hole. Does it belong to this one?',
  },
};

export const NOTE = {
  opening: 'Part {part}: {count} of its threaded holes need a word from you before they are cut.',
  openingUnnamed:
    '{count} of the threaded holes on this drawing need a word from you before they are cut.',
  openingOne: 'One threaded hole of part {part} needs a word from you before it is cut.',
  openingOneUnnamed: 'One threaded hole on this drawing needs a word from you before it is cut.',
  hole: '{number}. {callout}, in {material}',
  options: 'What would help, cheapest first:',
  assumed: 'Reckoned with the longest chamfer of its class, flat-nosed taps and {clearance}.',
  clearance: 'the usual stop clearance of the machine',
  closing:
    'Which of these may we mark up? Please confirm in writing, with the grade of screw and the load it must hold, and send the changed drawing.',
  none: 'Nothing on this drawing needs asking.',
  notRead: 'We could not read “{words}” on this line. What does it ask for?',
} as const;

export const VERDICTS = {
  ready: 'Ready',
  caution: 'Caution',
  impossible: 'Impossible as drawn',
  unread: 'Not read',
} as const;

/** A callout read back. */
export const CALLOUT = {
  through: 'through',
  fullThread: '{length} of full thread',
  hole: 'hole',
  holeSize: 'hole {size}',
  deepTo: { shoulder: '{depth} deep to the shoulder', point: '{depth} deep to the point' },
  countersink: 'countersink {diameter} × {angle}°',
  thick: '{length} thick there',
  entry: 'into a face at {angle}°',
  crossing: { bore: 'crossed by a bore of {width}', slot: 'crossed by a slot of {width}' },
  crossed: 'crossed by another hole',
  counterbore: 'counterbore {diameter} × {depth} deep',
  cored: 'in a cast hole',
  later: {
    harden: 'hardened afterwards',
    plate: 'plated afterwards',
    anodise: 'anodised afterwards',
    weld: 'welded afterwards',
  },
  duty: {
    lifting: 'for lifting',
    pressure: 'must hold pressure',
    structure: 'carries a structure',
    vehicle: 'on a vehicle',
    medical: 'on a medical device',
  },
  left: 'left hand',
  insert: 'for a wire insert',
  coating: 'coated {least}–{most} a surface',
} as const;
