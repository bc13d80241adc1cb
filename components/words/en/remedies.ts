/** What could be changed when a hole cannot be tapped as drawn, or only badly. English. */

import type { RemedyCode } from '../../../core/plan/codes';

export const REMEDIES: Record<RemedyCode, { title: string; text: string }> = {
  'deeper-hole': {
    title: 'Drill deeper',
    text: 'Ask for {to:length} to the shoulder, {by:length} more than drawn[; the drill’s point then ends at {toPoint:length}].',
  },
  'shorter-thread': {
    title: 'Shorten the full thread',
    text: 'Ask whether {to:length} of full thread is enough, cut with a chamfer of {threadsMin:number}–{threadsMax:number} threads.[ That is {strength:number} times the length at which screw and thread are equally strong.]',
  },
  'finish-by-hand': {
    title: 'Finish by hand',
    text: 'Follow with a bottoming tap of 1–1.5 threads, by hand: {to:length} of full thread for certain, {toNominal:length} at best. Clear the chips first and stop at the first firm touch.',
  },
  'thread-mill': {
    title: 'Mill the thread',
    text: 'A thread mill needs no chamfer and little torque[: {to:length} of full thread or a little more]. It takes longer, and its cutter must fit the hole.',
  },
  'relief-groove': {
    title: 'Ask for a relief groove',
    text: 'A groove below the thread takes the chamfer. It must be cut before tapping, and it weakens a thin floor.',
  },
  'through-hole': {
    title: 'Go right through',
    text: 'If nothing stands behind it, a through hole costs less than a deep blind one and lets the chips out.',
  },
  'bigger-spindle': {
    title: 'Move to a bigger spindle',
    text: 'Find a machine that gives at least {torque:torque} at tapping speed[, {most:torque} for every style of tap].',
  },
  'form-tap-instead': {
    title: 'Form it instead',
    text: 'A form tap has no flutes and is far stronger: worn, it meets {share:percent} of the torque that breaks it. It needs its own drill.',
  },
  'larger-hole': {
    title: 'Drill larger within the class',
    text: 'A drill of {diameter:limit} is the largest that still holds the hole inside the class; it leaves less metal to cut.',
  },
  'change-tap-early': {
    title: 'Change the tap early',
    text: 'A worn tap meets {worn:percent} of the torque that breaks it. Count holes, find the fewest that wore one out, and change at three quarters of that.',
  },
  'bore-or-ream': {
    title: 'Bore or ream the hole',
    text: 'No stocked drill leaves it inside the class. Finish it between {min:limit} and {max:limit}.',
  },
  'more-room-below': {
    title: 'Make room below',
    text: 'The tap must run {to:length} past the far face: raise the part by {by:length}, or clear what stands under the hole.',
  },
  'tap-before-hardening': {
    title: 'Tap before hardening',
    text: 'Cut the thread soft, with the allowance your hardener gives, and plug it. Above 45 HRC do not chase it: mill it with solid carbide or grind it.',
  },
  'flat-first': {
    title: 'Cut a flat first',
    text: 'Spotface or mill it {diameter:length} across, square to the hole, with a cutter that cuts to its centre. Without it {loss:length} of the thread has metal on one side only. It ends {sink:length} below the face at the axis, and depths count from there.',
  },
  'tap-before-crossing': {
    title: 'Tap first, cross after',
    text: 'Ask whether what crosses, {width:length} wide, may be cut after the thread: the tap then meets whole metal. Deburr and gauge again afterwards.',
  },
  'longer-tap': {
    title: 'Get a longer tap',
    text: 'It must reach {needed:length} in front of what stands in its way. A long or extended tap twists and springs more: run it slower.',
  },
  'plug-or-vacuum-chips': {
    title: 'Catch the chips',
    text: 'Plug the far side or draw the chips off with a vacuum, and inspect the gallery before it is closed.',
  },
  'longer-engagement': {
    title: 'More full thread',
    text: 'For the screw to break before the thread strips, ask for {to:length} of full thread[; at {matching:length} the two are equally strong].',
  },
  'softer-screw-or-insert': {
    title: 'Weaker screw, or an insert',
    text: 'If {to:length} of thread does not fit, ask whether a lower grade of screw will do, or an insert.',
  },
  'less-thread': {
    title: 'Ask for less thread',
    text: 'About {to:length} of full thread is enough for the screw to break first, with half as much again in hand[; {from:length} is asked for]. Ask the designer: less thread is less risk to the tap.',
  },
  'next-size-or-finer': {
    title: 'Another thread',
    text: 'This tap is weak for what it cuts.[ A pitch of {finer:length} in the same size takes less metal.][ The next size up is {next:length}.] The designer decides.',
  },
  'ream-to-size': {
    title: 'Drill under size and ream',
    text: 'No stocked drill is sure to stay inside the class. Drill a little under size and ream or bore to between {min:limit} and {max:limit}, or gauge every hole.',
  },
  'by-machine': {
    title: 'Tap it by machine',
    text: 'A machine that gives at least {torque:torque} at tapping speed turns it true.',
  },
  'extruded-or-insert': {
    title: 'Get more thread',
    text: 'For the screw to break first, the thread should be {to:length} long. A drawn-out rim, a weld or clinch nut, or an insert gives more thread than the sheet is thick. The designer must agree.',
  },
};
