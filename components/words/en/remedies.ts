/** What could be changed when a hole cannot be tapped as drawn, or only badly. English. */

import type { RemedyCode } from '../../../core/plan/codes';

export const REMEDIES: Record<RemedyCode, { title: string; text: string }> = {
  'deeper-hole': {
    title: 'Drill deeper',
    text: 'Ask for {to:length} to the shoulder[, {by:length} more than drawn].',
  },
  'shorter-thread': {
    title: 'Shorten the full thread',
    text: 'Ask whether {to:length} of full thread is enough[, cut with a chamfer of {threadsMin:number}–{threadsMax:number} threads].[ That is {strength:number} times the length at which screw and thread are equally strong.]',
  },
  'finish-by-hand': {
    title: 'Finish by hand',
    text: 'Follow with a bottoming tap of 1–1.5 threads, by hand: {to:length} of full thread[, about {toNominal:length} at the middle of its class]. Clear the chips first and stop at the first firm touch.',
  },
  'thread-mill': {
    title: 'Mill the thread',
    text: 'A thread mill needs no chamfer and little torque[: about {to:length} of full thread]. Slower, and the cutter must fit the hole.',
  },
  'relief-groove': {
    title: 'Ask for a relief groove',
    text: 'A groove below the thread takes the chamfer[: at least {width:length} wide]. It must be cut before tapping, and it weakens a thin floor.',
  },
  'through-hole': {
    title: 'Go right through',
    text: 'If nothing stands behind it, a through hole costs less than a deep blind one and lets the chips out.',
  },
  'bigger-spindle': {
    title: 'Move to a bigger spindle',
    text: 'Find a machine that gives {torque:torque} at tapping speed.',
  },
  'form-tap-instead': {
    title: 'Form it instead',
    text: 'A form tap has no flutes and is far stronger[: {share:percent} of its breaking torque when worn]. It needs its own drill.',
  },
  'larger-hole': {
    title: 'Drill larger within the class',
    text: 'A hole of {diameter:limit} still passes and leaves less metal to cut.',
  },
  'change-tap-early': {
    title: 'Change the tap early',
    text: 'Count holes, find the fewest that wore one out, and change at three quarters of that.',
  },
  'bore-or-ream': {
    title: 'Bore or ream the hole',
    text: 'No stocked drill leaves it inside the class. Finish it between {min:limit} and {max:limit}.',
  },
  'more-room-below': {
    title: 'Make room below',
    text: 'Raise the part by {by:length}, or clear what stands under the hole.',
  },
  'tap-before-hardening': {
    title: 'Tap before hardening',
    text: 'Cut the thread soft, allow for growth, and chase it after.',
  },
  'plug-or-vacuum-chips': {
    title: 'Catch the chips',
    text: 'Plug the far side or draw the chips off with a vacuum, and inspect the gallery before it is closed.',
  },
  'longer-engagement': {
    title: 'More full thread',
    text: 'For the screw to break before the thread strips, ask for {needed:length} of full thread[; this gives {have:length}].',
  },
  'softer-screw-or-insert': {
    title: 'Weaker screw, or an insert',
    text: 'Beyond a certain depth more thread adds nothing. Ask whether a lower grade of screw will do, or an insert.',
  },
  'extruded-or-insert': {
    title: 'Get more thread',
    text: 'A drawn-out (extruded) rim, a weld or clinch nut, or an insert gives more threads than the sheet is thick. The designer must agree.',
  },
};
