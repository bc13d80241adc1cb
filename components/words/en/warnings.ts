/** Warnings beside an answer: a title and what to do. English. How grave each is, the core says. */

import type { WarningCode } from '../../../core/plan/codes';

export interface WarningWords {
  title: string;
  text: string;
  /** Slug of the lesson that explains it. */
  lesson?: string;
}

export const WARNINGS: Record<WarningCode, WarningWords> = {
  'tap-share-high': {
    title: 'Hard on the tap',
    text: 'Sharp, it meets {sharp:percent} of the torque that breaks it; worn, {worn:percent}. Use a fresh tap and good oil, count the holes, and change it early.',
  },
  'tap-will-break': {
    title: 'A worn tap will break',
    text: 'Sharp, it meets {sharp:percent} of the torque that breaks it; worn, {worn:percent}. Read what else could be done before you start.',
  },
  'spindle-over': {
    title: 'Too much for the spindle',
    text: 'A worn tap needs {worn:torque}[; the spindle gives {spindle:torque}]. Torque is the limit here, not power, and turning slower or faster does not lower it.',
  },
  'chips-ahead-no-room': {
    title: 'No spiral-point tap here',
    text: 'It drives its chips ahead, and packed against the floor they want about {needed:roughly} of free hole below it; this hole leaves {have:length}. Without that room the tap jams and breaks.',
    lesson: 'naming-a-tap',
  },
  'chips-must-not-fall': {
    title: 'No chips out below',
    text: 'Draw the chips back up or form the thread. Plug or guard the far side all the same, and look before you pass the part on.',
    lesson: 'naming-a-tap',
  },
  'thin-work': {
    title: 'Thin work',
    text: 'The metal is {thickness:length} thick, {pitches:pitches}. Back it up and clamp it flat so that it cannot lift or spin, and ask whether so few threads are strong enough.',
    lesson: 'chamfer-classes',
  },
  'deep-thread': {
    title: 'Deep thread',
    text: 'The thread is {diameters:number} diameters deep. Chips travel further and fluid gets in worse, so the speed is lowered. Beyond what the screw needs, depth only adds risk.',
  },
  'work-hardens': {
    title: 'Work-hardens',
    text: 'Sharp drill, firm feed, no dwell, and never below {slowest:speed}. Rich tapping oil, or emulsion at 10 % and more. A blunt drill leaves a hard wall that the tap then pays for.',
  },
  'springs-back': {
    title: 'Springs back',
    text: 'The metal closes on the tap after the cut. Drill to the large end of what the class allows, use a sharp tap with high relief, and gauge the thread when it has cooled.',
  },
  dust: {
    title: 'Dust',
    text: 'This material leaves dust, not chips. Draw it off or wet it; do not breathe it or blow it about. Keep this tap for this material.',
  },
  'swarf-fire': {
    title: 'Swarf can burn',
    text: 'Sharp tools, plenty of the right fluid, and clear the swarf often. On a fire: a class D extinguisher, never water. Follow the safety data sheet.',
  },
  'water-fire': {
    title: 'No water near the fines',
    text: 'Magnesium fines make hydrogen of water and burn on in it. No water-mixed fluid, no emulsion left in the sump or the hose: thin mineral oil, or dry. Draw nothing through a vacuum that is not made for it, keep swarf dry in a closed steel bin, and have class D powder or dry sand within reach. Follow the safety data sheet and the fire rules of your shop.',
  },
  'carbide-wants': {
    title: 'Carbide breaks rather than bends',
    text: 'A carbide tap wants a stiff holder that runs true within 0.01 mm, a drilled hole in line with it, and no drawing back in the cut. A piece of it that flies is sharp: doors closed.',
  },
  'carbide-unsuited': {
    title: 'Carbide is not for this',
    text: 'Carbide taps belong on a synchronous spindle and in metals whose chips break. Elsewhere they chip, so no speed is gained here. Take a coated tap of powder steel.',
  },
  'left-hand': {
    title: 'Left-hand thread',
    text: 'Left-hand tap, left-hand gauge, and a left-hand cycle with the spindle the other way round. The words for it differ between controls: see your manual. A right-hand tap run backwards cuts nothing.',
  },
  interrupted: {
    title: 'Broken into by another hole',
    text: 'The cut stops and starts. Use a tap that keeps several teeth in metal all round, slow down, and clear the burr out of the cross hole. How wide it is, where it begins and when it is cut were not said: say so, and the plan reckons with it.',
  },
  plated: {
    title: 'Tap large for the coating',
    text: 'The coating closes the pitch diameter by four times its thickness: {pitchMin:limit} to {pitchMax:limit} here. Tap over size by that much or mask the hole, and gauge before and after.',
  },
  'drill-at-risk': {
    title: 'Drill may cut too large',
    text: 'Drills cut a little over size. This one is likely to leave {likely:limit}[; the class allows up to {max:limit}]. Gauge the first hole with a plain plug, or take the next drill down.',
  },
  'below-clearance': {
    title: 'Too little room below',
    text: 'The tap must run {needed:length} past the far face to finish the thread[, and there is {have:length}]. Pack the part up or turn to a shorter chamfer.',
  },
  'weak-when-stripped': {
    title: 'The thread may strip before the screw breaks',
    text: 'For the screw to give way first, ask for {wanted:length} of full thread; this hole has {have:length}, {ratio:number} times the length at which the two are equally strong. It compares the strengths of metals and rates no load: ask the designer.',
  },
  'harden-after': {
    title: 'Too hard to tap',
    text: 'Tap it before it is hardened and allow for the growth, or mill the thread with a solid-carbide cutter.',
  },
  'taper-pipe': {
    title: 'Taper pipe thread',
    text: 'It is gauged by how far the gauge goes in, not by two limits. The size of the drill and the depth come from its own standard, and a joint that holds pressure is not for this page to approve.',
  },
  'heavy-by-hand': {
    title: 'Heavy by hand',
    text: 'Even sharp the tap needs {sharp:torque}. That takes a long wrench and a helper to keep it square; above {most:torque} leave it to a machine.',
  },
  'minor-limit-unknown': {
    title: 'Largest minor diameter not known',
    text: 'For this profile the upper limit of the minor diameter is not known with confidence. Take it from the drawing or the standard before you choose a drill.',
  },
  'duty-not-judged': {
    title: 'What this thread carries is not judged here',
    text: '[{lifting:only}It lifts: a competent person for lifting equipment must approve it.][{pressure:only}It holds pressure: the pressure code and whoever inspects to it must approve it.][{structure:only}It holds up a structure: the responsible structural engineer must approve it.][{vehicle:only}It is part of a vehicle: whoever answers for the vehicle’s approval must approve it.][{medical:only}It is part of a medical device: whoever answers for the device must approve it.] Only geometry stands here. Do not put it to use, repair it or load it on the word of this page.',
  },
  'entry-face': {
    title: 'The face slants',
    text: 'It lies {angle:number}° off square. [{bare:only}A drill walks off on it and can snap, and {loss:length} of the thread would have metal on one side only. Cut a flat first, {diameter:length} across, square to the hole.][{flat:only}Spotface it first, {diameter:length} across, with a cutter that cuts to its centre.][ Depths count from the flat’s lowest full edge, {sink:length} below the face at the axis.] The cutter bites on one side only: clamp against that, feed gently by the machine’s manual, and stay clear.',
  },
  crossing: {
    title: 'The tap crosses a gap',
    text: '[{bore:only}A bore {width:length} wide, {gap:pitches}, is there already. Take a chamfer longer than that, where there is one.][{slot:only}A slot {width:length} wide is there already and takes an arc out of every turn.] The teeth leave the metal and knock when they meet it again: straight flutes or a spiral point, many flutes, slower, and a synchronous spindle only.[ The slot is wider than a land, about {land:length}, which can drop into it: take a helix that bridges it, or tap first.][ It takes {lost:length} of the full thread and leaves {left:length}.] Chips fly out of the crossing: stay clear, deburr with a tool and never with a finger, and gauge again.',
  },
  'crossing-after': {
    title: 'Crossed after tapping',
    text: 'That is the right order. Deburr with a tool where the thread is cut open, never with a finger, flush the chips out of both, and gauge again.[{bore:only} The bore is {width:length} wide.][{slot:only} The slot takes an arc out of every turn, which no length of thread makes good.][ It takes {lost:length} of the full thread and leaves {left:length}.][{gone:only} No thread is left.]',
  },
  'tap-reach': {
    title: 'A long way in for the tap',
    text: '[An ordinary tap of this size goes in {have:length} before its shank or its holder is in the way; here it must go {needed:length}.][ One with a reduced shank reaches {reduced:length}.][No stock tap gets there: it must go in {needed:length}, and {most:length} is the most.] Measure the tap in its holder before you start.',
  },
  'counterbore-tight': {
    title: 'Counterbore narrow for the tap',
    text: 'It is {diameter:length} wide and the shank is {shank:length} thick; to let the shank in it wants {wants:length}. Shank and holder stay above it, so the tap must be long enough in front of them. See that nothing rubs and that chips find a way out.',
  },
  'cored-hole': {
    title: 'Cast-in hole',
    text: 'No size of drill is promised: a drill follows the cast hole, its taper and its hard skin. Open it first[ to {diameter:length}] with a core drill or by boring, and try it with a plain plug. In iron, feel for chilled spots with a file: where it slides, do not tap.',
  },
  'later-hardening': {
    title: 'Hardened after tapping',
    text: 'Heat moves the thread and scale fills it. Agree the allowance with whoever hardens it, plug or coat the hole for it, clean and gauge every one after. What must be cut hard is milled with solid carbide or ground. Above 45 HRC never put a tap in: it shatters.',
  },
  'later-coating': {
    title: 'Coated after tapping',
    text: '[{plate:only}Plating grows by its whole thickness. ][{anodise:only}Anodising grows by about half of its layer: count that half. ]The growth of one surface counts four times on the pitch diameter[: {pitchMin:limit} to {pitchMax:limit} here].[{unsized:only} Enter it as the coating, and the tap is judged.][ The ordinary ISO {failsIso:whole} tap fails: coated, the GO gauge will not enter.][ ISO {takesIso:whole} leaves room.][ The ordinary H{failsH:whole} tap fails: coated, the GO gauge will not enter.][ H{takesH:whole} leaves room.][ The ordinary D{failsD:whole} tap fails: coated, the GO gauge will not enter.][ D{takesD:whole} leaves room.][ The ordinary ISO {holdsIso:whole} tap leaves room for it.][ The ordinary H{holdsH:whole} tap leaves room for it.][ The ordinary D{holdsD:whole} tap leaves room for it.][{noRoom:only} The layer varies more than the class allows.] Otherwise plug or mask the hole. Gauge before and after.',
  },
  'later-welding': {
    title: 'Welded after tapping',
    text: 'Heat draws the hole out of round and spatter fills it. Weld first if the order may change; otherwise keep the thread away from the weld, plug it, and gauge it cold. Clean out oil and fluid before: an oily or closed hole can burn or burst. Welding is for qualified people, by the rules of the place.',
  },
  'limits-computed': {
    title: 'Limits computed',
    text: 'This size is not in the table of its standard. The limits come from the standard’s formulas: check them before you order a gauge.',
  },
  'mill-feed-setting': {
    title: 'Which feed does the control count?',
    text: 'Some controls take F for the cutter’s centre, some for its edge. Given the wrong one, this cutter runs {factor:number} times too fast or too slow: look it up, and run it above the part first.',
  },
};

/** Said of `spindle-over` where even a worn tap still stays under what the spindle gives. */
export const NEAR_SPINDLE: WarningWords = {
  title: 'Near the spindle’s limit',
  text: 'A worn tap needs {worn:torque} of the {spindle:torque} that the spindle gives. It runs with a fresh tap and good oil; change the tap early, and watch the load.',
};
