/**
 * What is wrong with an input and what to type instead. English.
 * `{typed}` and the other slots without a kind are echoed as the core gives them.
 */

import type { CalloutProblemCode } from '../../../core/drawing/types';
import type { LimitsProblemCode } from '../../../core/limits/codes';
import type { OwnProblemCode } from '../../../core/material/own';
import type { RequestProblemCode } from '../../../core/plan/codes';
import type { ThreadProblemCode } from '../../../core/thread/codes';
import type { ThreadFamily } from '../../../core/thread/not-covered';

type ProblemCode =
  ThreadProblemCode | LimitsProblemCode | RequestProblemCode | OwnProblemCode | CalloutProblemCode;

/** Between the last two of several spellings that could be meant. */
export const OR = ' or ';

/** Threads that are recognised and refused. */
export const FAMILIES: Record<ThreadFamily, string> = {
  'multi-start': 'threads of several starts',
  trapezoidal: 'trapezoidal threads',
  acme: 'ACME threads',
  whitworth: 'Whitworth threads',
  ba: 'BA threads',
  buttress: 'buttress threads',
  round: 'round threads',
  conduit: 'conduit and lamp threads',
  'other-pipe': 'this kind of pipe thread',
  miniature: 'miniature threads',
};

export const PROBLEMS: Record<ProblemCode, string> = {
  // The thread, as typed.
  empty: 'Enter the thread as the drawing gives it, like M8x1.25-6H or 1/4-20 UNC-2B.',
  unreadable:
    '“{typed}” does not read as a thread. Type it like M8x1.25-6H, 1/4-20 UNC-2B or #10-32.',
  'extra-words': '“{extra}” does not belong to a thread. [Try {suggestion}.]',
  'metric-letter-missing': 'Put M in front for a metric thread: {suggestion}.',
  'external-class':
    '{class} is a class for screws. Holes take 6H, 2B and the like[: {suggestion}].',
  'internal-grade':
    'There is no class {class} for a hole. Metric holes take grades 4 to 8, like 6H; unified holes take 1B, 2B or 3B.',
  'class-of-other-system':
    '{class} belongs to the other system: 6H is metric, 2B is unified. Try {suggestion}.',
  'class-letter-missing': 'The class needs its letter: {suggestion}.',
  'class-as-pitch': '{class} is a tolerance class. Put a dash before it: {suggestion}.',
  'length-not-needed':
    '{length} looks like the length of a screw. A hole needs only the thread: {suggestion}.',
  'series-pitch-mismatch':
    '{size} {series} does not have that pitch[: it has {seriesTpi} threads per inch]. [That pitch is {pairSeries}.] Type {offers}.',
  'pitch-missing': 'Which pitch? [Type {offers}.]',
  'which-pitch': '“{typed}” stands in no list of threads. Type {offers}.',
  'which-pipe': 'Which pipe thread? Type {offers}.',
  'pitch-too-large':
    'A pitch of [{pitch} mm][{tpi} threads per inch] is too coarse for {size}. Is it a length[, or are {pitch} threads per inch meant]?',
  'pitch-too-fine':
    'A pitch of [{pitch} mm][{tpi} threads per inch] is too fine for {size}. Type it like M8x1 or 1/4-20.',
  'no-such-number-size':
    'There is no number size {number}. Number sizes are #0 to #6, #8, #10 and #12.',
  'no-such-inch-size':
    'There is no inch size {size}. Sizes go by sixteenths, like 5/16, or as a decimal like .3125.',
  'improper-fraction': '{fraction} is a top-heavy fraction. Type {offers}.',
  'no-such-pipe-size':
    '{form} does not come in {size}. Pipe sizes are 1/16, 1/8, 1/4, 3/8, 1/2, 3/4, 1 and up.',
  'external-pipe': 'R is the taper thread on the pipe. For the hole type {offers}.',
  'not-covered':
    'Recognised, but not covered here: {family}. Metric M and MJ, unified and pipe threads are.',
  'size-out-of-range': '{size} is outside the sizes covered here, M1 to M300 and #0 to 6 inch.',

  // Its limits.
  'taper-pipe':
    '{designation} is gauged by how far the gauge goes in, so it has no limits of diameter.',
  'no-limits-held':
    'The limits of {designation} are not known here with confidence. Take them from the standard.',
  'outside-tolerances':
    '{designation} is beyond the sizes and pitches of the tolerance system. Take its limits from the drawing.',
  'class-unknown':
    'The tolerance system has no class {class} for {designation}. Leave the class out for the usual one.',

  // The hole.
  'full-thread-not-positive':
    'Full thread must be more than 0, like 16. Leave it empty for 1.5 diameters.',
  'thickness-not-positive': 'Thickness must be more than 0, like 12.',
  'limit-not-positive':
    'Enter how deep the hole may go, more than 0, like 22. Leave it empty if nothing is in the way.',
  'own-name-missing': 'Enter what you call the material.',
  'own-name-too-long': 'Keep the name to 40 letters.',
  'own-group-unknown': 'Choose the material that yours is most like.',
  'own-hardness-out-of-range':
    'Hardness must be one that metals have, like 30 HRC, 180 HB or 190 HV.',
  'own-kc-out-of-range': 'Specific force kc1.1 must be between 50 and 8000 N/mm², like 1800.',
  'own-mc-out-of-range': 'The exponent mc must be between 0 and 0.5, like 0.25.',
  'own-mc-alone':
    'The exponent mc says nothing without kc1.1. Enter that too, or leave both empty.',
  'own-like-other-group': 'Choose a material of the same group as yours.',
  'number-not-finite': 'Enter a number, like 16 or 12.5.',
  'depth-absurd':
    'That is deeper than any tap reaches. Enter a depth in mm, or check whether you meant inches.',

  // What cuts it.
  'thread-deeper-than-hole':
    'The full thread is deeper than the hole may go. Enter less thread or a deeper hole.',
  'full-thread-over-thickness':
    'The full thread is more than the part is thick. Enter the thickness or less.',
  'clear-below-negative':
    'Room below must be 0 or more, like 30. Leave it empty if nothing is in the way.',
  'hole-unknown':
    'Choose through or blind, and for a blind hole whether its limit is at the shoulder or the point.',
  'material-unknown': 'Choose a material from the list.',
  'drill-point-out-of-range':
    'Drill point must be between 60° and 180°, like 118. 180 is a flat bottom.',
  'web-out-of-range':
    'The tap’s core must be between nothing and the thread’s own diameter, measured across the bottoms of the flutes.',
  'external-centre-out-of-range':
    'Enter how far the point stands out from the tap’s nose, 0 or more, like 2.',
  'tool-unknown': 'Choose what the tap is made of from the list.',
  'coating-out-of-range':
    'Enter the least and the most growth of one surface, thin first, like 0.005 and 0.010.',
  'measured-out-of-range': 'Measured torque must be more than 0 N·m, like 4.5.',
  'learned-out-of-range':
    'The torque kept for your shop is more than ten times, or less than a tenth of, what is planned here. Remove it and measure again.',
  'drive-unknown': 'Choose a spindle from the list.',
  'drill-series-unknown': 'Choose drills from the list: metric, fraction, number or letter.',
  'spindle-out-of-range':
    'Spindle torque and speed must be more than 0, like 30 N·m and 3000 rev/min.',

  // The part around the hole.
  'entry-out-of-range': 'The face may slant from 0° to 60° off square, like 10.',
  'flat-through-part':
    'A flat on a face that slants so much would cut through the part. Check the angle and the thickness.',
  'crossing-kind-unknown': 'Choose whether a bore or a slot crosses the hole.',
  'crossing-width-out-of-range': 'Enter how wide the crossing is, more than 0, like 8.',
  'crossing-from-out-of-range':
    'Enter where along the hole the crossing begins, 0 or more, like 10. Leave it empty if nobody knows.',
  'crossing-cut-unknown': 'Choose whether it is cut before or after tapping.',
  'counterbore-out-of-range': 'Enter how wide the counterbore is, more than 0, like 14.',
  'counterbore-depth-out-of-range': 'Enter how deep the counterbore is, more than 0, like 8.',
  'counterbore-narrow':
    'The counterbore must be as wide as the thread or wider, or no tap gets in. Is it the tap drill?',
  'cored-unknown': 'Say yes or no: is the hole cast in?',
  'later-unknown': 'Choose what is done later from the list: harden, plate, anodise or weld.',
  'duty-unknown':
    'Choose the duty from the list: lifting, pressure, structure, vehicle or medical.',

  // A line of a drawing.
  'empty-line': 'This line is empty.',
  'no-thread':
    'No thread was found in this line. Put the thread on it, like M8x1.25-6H ↧16, or leave the line out.',
  'count-absurd': '{typed} holes is more than any part has. Check the number before the ×.',
  'no-tapped-hole':
    'Set apart: it names {words}, and nothing says that it is tapped. Write TAP, a class or a thread depth if it is.',
  'insert-hole-unknown':
    'The hole of this insert is its own, not that of {thread}: take thread and hole from the insert’s data sheet.',
  'two-threads':
    'Two threads stand on this line, {first} and {second}. Put each on a line of its own, with its own depth.',
};
