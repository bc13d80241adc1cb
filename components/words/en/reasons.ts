/** Why a tap is first, works, or will not do. English. */

import type { ReasonCode } from '../../../core/plan/codes';

export const REASONS: Record<ReasonCode, string> = {
  // Where the chips go.
  'chips-go-ahead': 'It drives the chips ahead of it.',
  'chips-come-back': 'It draws the chips back up the hole and out at the mouth.',
  'chips-stay': 'It leaves the chips lying in its flutes.',
  'no-chips': 'It makes no chips: the metal is pressed aside, not cut away.',
  'suits-short-chips': 'This metal chips short, and short chips can lie in straight flutes.',
  'chips-wrong-way': 'That is not the way this hole wants them to go.',
  'chips-ahead-no-room':
    'It would pack its chips against the floor: they want about {needed:roughly} of free hole below the tap[, and there is {have:length}].',
  'chips-ahead-fit':
    'It drives the chips ahead, and there is room: they want about {needed:roughly} of free hole below the tap[; there is {have:length}].',
  'chips-must-not-fall': 'It would push its chips out below, where they must not fall.',

  // Reach.
  reaches: 'It reaches[, and leaves {room:pitches} of room below the full thread].',
  'does-not-reach':
    'It does not reach: with its longest chamfer it needs {needed:length} to the shoulder[; the drawing allows {have:length}].',
  'below-clearance':
    'It cannot run through: it wants {needed:length} free below the part[; there is {have:length}].',
  'chamfer-usual-blind':
    'A chamfer of {min:number}–{max:number} threads is the usual one for a blind hole: long enough to last, short enough to fit.',
  'chamfer-usual-through':
    'A chamfer of {min:number}–{max:number} threads is the usual one for a through hole: it starts easily and lasts.',
  'chamfer-shorter-than-wanted':
    'Only {min:number}–{max:number} threads of chamfer share the cut: each tooth is loaded more and wears sooner than it must here.',
  'chamfer-longer-than-wanted':
    'Its chamfer of {min:number}–{max:number} threads is longer than the usual one here: more depth to drill and to tap.',
  'thin-work-never-fully-engaged':
    'The work is only {pitches:pitches} thick, less than the chamfer is long: its teeth never all cut at once, and the torque stays below its full value.',

  // Forming.
  'not-formable': 'This metal cannot be pressed into a thread: it cracks or crumbles.',
  'form-marginal':
    'This metal is near the limit of what a form tap can press; try it in scrap first.',
  'form-hole':
    'It wants its own hole, {diameter:length}[, for {percent:threadPercent} on the form-tap scale], held close.',
  'form-first-no-chips': 'No chips may fall here, and a form tap makes none.',

  // Strength and drive.
  'low-helix':
    'Choose a low helix, about 10–15°: in this metal a steep one is too weak at the edge.',
  'weaker-core': 'Its core is weaker than that of the other cut taps.',
  'tap-will-break': 'When worn it would meet {worn:percent} of the torque that breaks it.',
  'spindle-over': 'When worn it needs {worn:torque}[, and the spindle gives {spindle:torque}].',
  'too-hard': 'The metal is too hard for a high-speed-steel tap.',
  'hand-mismatch': 'It cuts the other hand.',
  'not-stocked-usually': 'Few shops keep it in the drawer.',
  'mill-limits':
    'A thread mill reaches nearly to the floor[: {fullThread:length} of full thread]. It needs little torque, takes longer, and is planned by its maker’s table.',
  'mill-needs-cnc': 'It needs a machine that moves in a helix under control.',
  'mill-growth-inside':
    'Its teeth have no lead, so they widen the pitch diameter by up to {growth:limit}; the class allows {tolerance:limit} in all.',
  'mill-growth-half':
    'Its teeth have no lead, so they widen the pitch diameter by up to {growth:limit}, {share:percent} of the {tolerance:limit} that the class allows. Choose a smaller cutter, or gauge the first thread with care.',
  'mill-growth-over':
    'It is too large for this thread: its teeth widen the pitch diameter by up to {growth:limit}, and the class allows {tolerance:limit} in all. Choose a smaller cutter, or one whose maker has corrected the profile for this thread.',
  'mill-reach-short': 'Its neck lets it in {have:length}, and this thread needs {needed:length}.',
  'mill-slender':
    'It reaches {reach:length}, {diameters:times} its own diameter, and bends. Take a lighter first pass and add a spring pass.',
  'mill-too-slender':
    'It reaches {reach:length}, {diameters:times} its own diameter: too slender for this metal. Choose a larger cutter or a shorter thread.',
  'mill-near-floor':
    'Only {pitches:pitches} are left below the full thread. Check how far the cutter’s nose stands below its lowest tooth.',
  'mill-no-room':
    'Only {room:length} are left below the full thread. The lowest tooth needs more to get in[; {obtainable:length} of full thread can be had].',
  'mill-hole-outside':
    'A hole of {hole:limit} is outside the class, which allows {min:limit} to {max:limit}.',
  'mill-feed-at-centre':
    'The edge moves at {teeth:feed} and the cutter’s centre at {centre:feed}. Give the control the one it counts: the wrong one is out by a factor of {factor:number}.',
  'mill-passes': 'Passes in depth: {passes:whole}, each taking about the same area of the groove.',
  'mill-speed-limited':
    'The spindle turns at {rpm:rpm} at most; the cutter would take {wanted:rpm}.',
  rubs: 'Each tooth takes only {chip:limit}: so thin that it rubs and hardens the wall instead of cutting.',
  'breaks-sharp':
    'Even sharp it would meet {sharp:percent} of the torque that breaks it: it would not come out whole.',
  'form-too-large':
    'Form taps are hardly made larger than {most:length}: the torque to move so much metal is too high.',
  'form-special-size':
    'Above {usual:length} a form tap is a special order in this metal, and asks a very strong spindle.',
  'taper-pipe-tap':
    'Taper pipe taps come with one chamfer, about {min:number} to {max:number} threads, on straight flutes or with every other tooth left out. The gauge decides the depth.',
  'turns-lightest':
    'Of the taps that fit it turns lightest: the one that suits the hole better needs {worn:torque} when worn, which the spindle does not give.',
  'not-by-hand': 'It is a tap for a machine: by hand it cannot be turned evenly enough.',
  'by-hand-set': 'A hand set has straight flutes: turn on, turn back, and the chip breaks.',
  'by-hand-single':
    'It can be turned by hand where it starts true, but it is made for a machine and is no hand set.',
  'too-heavy-by-hand':
    'Even sharp it needs {sharp:torque}; above {most:torque} no wrench is turned true by hand.',

  // The part around the hole.
  'needs-flat':
    'The face slants by {angle:number}°: it wants a flat, {diameter:length} across, before anything is drilled.',
  'needs-synchronous': 'Across a gap only a synchronous spindle keeps the tap to its pitch.',
  'no-thread-left': 'What crosses takes {lost:length}: all of the full thread.',
  'no-stock-tap':
    'No stock tap gets there: it must go in {needed:length}, and {most:length} is the most.',
  'bridges-crossing':
    'The gap is {gap:pitches} wide and its chamfer {min:number}–{max:number} threads long: longer than the gap, it always has teeth in metal. Measure it.',
  'drops-into-crossing':
    'The gap is {gap:pitches} wide, more than its chamfer of {min:number}–{max:number} threads: all its cutting teeth leave the metal at once and meet it again with a knock.',
  'catches-in-crossing': 'The edge of a steep helix catches where the wall begins again.',

  // What would make it work.
  'no-drill-inside': 'No stocked drill leaves the hole it wants.',
  'fits-if-deeper': 'It fits if the hole may go {by:length} deeper.',
  'fits-if-shorter-thread': 'It fits if {to:length} of full thread is enough.',
  'fits-if-room-below': 'It fits with {by:length} more room below the part.',
  'fits-if-spindle': 'It works on a spindle that gives {torque:torque}.',
  'fits-if-chips-may-fall': 'It works if chips may fall out below.',
};

/** Said instead where the number rests on how chips pack, which is known only roughly. */
export const ROUGH_REASONS: Partial<Record<ReasonCode, string>> = {
  'fits-if-deeper': 'It fits if the hole may go about {by:roughly} deeper.',
};
