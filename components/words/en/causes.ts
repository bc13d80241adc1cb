/** Causes of trouble: what each is, the change to try, and how to know that it worked. English. */

import type { CauseId } from '../../../core/diagnose/causes';

export interface CauseWords {
  name: string;
  /** The change to try. */
  change: string;
  /** How to know that it worked. */
  proof: string;
}

/** [what it is, what to change, how to know] */
const WORDS: Record<CauseId, readonly [string, string, string]> = {
  // The hole and the room in it.
  'touches-bottom': [
    'The tap meets the floor, or chips lying on it',
    'Take the tip depth back, clear the chips, and send them up with a spiral flute, or press the thread with a form tap where the metal flows.',
    'The nose stays as ground, and a pin still finds free depth under the thread.',
  ],
  'too-little-room': [
    'Too little room below the thread',
    'Drill deeper, or take a shorter chamfer. If the drawing forbids both, ask the designer.',
    'The room counted in pitches is at least the chamfer and the stop together.',
  ],
  overrun: [
    'Spindle or float runs on past the depth',
    'Measure the overrun and take it off the depth. Allow {floatingStop:pitches} on a floating holder.',
    'At half depth the nose stops where the program says, hole after hole.',
  ],
  'centre-not-counted': [
    'The centre on the nose was not counted',
    'Have the centre ground off, or add its length to the hole and set the tool length on it.',
    'The nose clears the shoulder by the stop you planned.',
  ],
  'hole-small': [
    'The hole is too small',
    'Drill to the larger end of the class window. A part already tapped is opened to the class first, then chased.',
    'The plain plug goes in, and the load falls at once.',
  ],
  'hole-shallow': [
    'The hole is drilled too shallow',
    'Drill to the planned shoulder; look whether the drill was reground or slipped. A part already tapped is tapped deeper if there is room, or takes a shorter screw if the designer agrees.',
    'The pin finds the planned depth, and the GO goes as deep as asked.',
  ],
  'drill-off': [
    'The drill cuts large or small',
    'Regrind or change the drill; spot first, or ream.',
    'Plain plugs pass in ten holes running.',
  ],
  'wrong-drill': [
    'The wrong drill is in the holder',
    'Put in the drill on the sheet and write its size on the holder.',
    'Plain plugs pass before the tap goes in.',
  ],
  'drill-wandered': [
    'The drill wandered',
    'Spot the hole, take a short drill, face a rough skin first.',
    'A pin in the drilled hole stands square both ways.',
  ],
  'bent-hole': [
    'The hole is bent, and the tap follows it',
    'Short drill, less feed at the start, ream or bore where it must be straight.',
    'A long pin slides to the bottom without binding.',
  ],
  'rough-entry': [
    'The entry is sloped or rough',
    'Spot-face it square and countersink to just over the thread’s diameter.',
    'The first thread is cut all round alike.',
  ],
  'angled-entry': [
    'The entry face slants',
    'Mill or spot-face a flat before drilling, and guide the tap.',
    'The gauge’s handle stands square both ways.',
  ],
  'hard-spot': [
    'A hard spot or an interrupted bore',
    'Move the operation, drill the cross bore or cut the keyway after tapping, take off the scale; a stiffer tap with more flutes.',
    'The hole in that place taps with the same load as its neighbours.',
  ],
  'hardened-wall': [
    'The drill hardened the wall',
    'Sharp drill, firm feed, no dwell; change the drill before the tap.',
    'The drilled wall looks cut, and the tap lasts as it used to.',
  ],
  'form-hole-off': [
    'The form tap’s hole is off its size',
    'Bring the hole to the size for forming, within {formHole:length} either way; ream if need be.',
    'The plain plugs pass after forming.',
  ],
  'form-hole-large': [
    'The hole is too large to fill the thread',
    'Drill smaller, within {formHole:length} either way, or cut the thread.',
    'Crests are full, with a small closed seam.',
  ],
  'form-hole-small': [
    'The hole is too small: the metal has nowhere to go',
    'Drill larger, within {formHole:length} either way.',
    'The load falls, and crests are rounded, not flared.',
  ],
  // The set-up and the program.
  misaligned: [
    'Tap and hole do not share an axis',
    'Indicate the holder and the part; change the collet; drill and tap in one clamping.',
    'Runout is under {runout:length}, and the first thread is cut all round.',
  ],
  'start-feed': [
    'Feed and pitch disagree at the start',
    'Feed exactly one pitch a turn, and give the spindle room to come up to speed.',
    'The first thread is as thick as the rest.',
  ],
  'r-plane': [
    'The cycle starts in the metal',
    'Raise the start plane to {startPlane:pitches} above the highest metal.',
    'The tap turns in the air before it bites.',
  ],
  'lead-error': [
    'A rigid holder and a small error of lead',
    'A holder that gives a few tenths; check the feed to the last digit.',
    'A hundred holes without a break at the turn.',
  ],
  'retract-fast': [
    'It comes out too fast',
    'Come out at the cutting speed, or slower.',
    'Nothing breaks on the way out, and the flanks stay clean.',
  ],
  'axial-miscut': [
    'The tap is pushed or held back along its axis',
    'Feed exactly one pitch a turn; let the tap draw itself in.',
    'Both flanks look alike, and the NOT GO stays out.',
  ],
  'float-setting': [
    'The float is set wrong',
    'Set the holder so that the tap draws it out a little and is never pushed.',
    'Both flanks look alike under the loupe.',
  ],
  'float-pressure': [
    'Too much pressure on the floating head',
    'Start lightly, then let the tap lead.',
    'The first threads gauge like the rest.',
  ],
  'entry-compression': [
    'The holder is pressed together at entry',
    'Set it for tension, feed a little under the pitch, or tap in step without a float.',
    'The holder stays drawn out at entry, and the mouth holds.',
  ],
  'units-error': [
    'Inch and millimetre are mixed',
    'Set the unit word and feed mode, then work the feed out again.',
    'A dry run moves one pitch a turn, measured.',
  ],
  'pitch-error': [
    'The tap has another pitch, or its lead is off',
    'Change the tap; check drawing, label and pitch leaves against one another.',
    'The leaves fit, and the GO runs through.',
  ],
  'z-short': [
    'The tip depth leaves out the chamfer',
    'Program full thread and the longest chamfer together. Parts already made are tapped deeper, started by hand into the old thread.',
    'The GO goes as deep as the drawing asks.',
  ],
  reentered: [
    'The tap went in again at another place of the turn',
    'Do not run a cycle twice in a hole unless the control keeps the turn. This hole is for the ladder of rework.',
    'New holes show one helix.',
  ],
  'length-reset': [
    'The tool length was set again in between',
    'Never touch the length between two passes. This hole is for the ladder of rework.',
    'New holes show one helix.',
  ],
  'started-twice': [
    'It was started twice by hand',
    'Turn the tap backwards until it drops into the thread, then forwards.',
    'It runs down the old thread under two fingers.',
  ],
  'part-moved': [
    'The part moved',
    'Clamp against a stop; check the first part after the cut too.',
    'The part indicates the same before and after.',
  ],
  'torque-over': [
    'The tap wants more torque than the spindle has',
    'Another machine, a spiral point or thread mill, or the largest hole the class allows. Slower does not help.',
    'The meter stays under nine tenths with a tap near its end.',
  ],
  'rpm-over': [
    'Faster than the machine can tap',
    'Stay under the tapping limit in the manual.',
    'Ten holes without the alarm.',
  ],
  acceleration: [
    'Too few turns to come up to speed',
    'Raise the start plane or lower the speed.',
    'Spindle and feed stay in step from the first thread.',
  ],
  'weak-hold': [
    'Part or holder gives',
    'Clamp nearer the hole, support the wall, shorten the holder.',
    'The sound is gone, and so are the waves on the flank.',
  ],
  'no-square-drive': [
    'Nothing holds the tap’s square',
    'A holder or collet with a square drive.',
    'A line drawn across tap and holder stays a line.',
  ],
  'oily-shank': [
    'The shank is oily',
    'Wipe shank and collet dry each time.',
    'No new rings on the shank.',
  ],
  'clutch-low': [
    'The clutch lets go too soon',
    'Set it to one and a half to two times the sharp torque, and no more than half of what breaks the tap.',
    'It drives a sharp tap through and lets go for a dull one.',
  ],
  // The tap.
  'dull-tap': [
    'The tap is dull',
    'Change it, and set a count: about {life:whole} % of the shortest life you have seen.',
    'A new tap cures it, and the count keeps it cured.',
  ],
  'tooth-load': [
    'Each tooth takes too much',
    'A longer chamfer, or more flutes; where room forces the short one, cut with a longer one first.',
    'The teeth stay whole for the usual number of holes.',
  ],
  'limit-high': [
    'The tap’s limit is too high for the class',
    'A tap with a lower limit number or class.',
    'NOT GO stops within its rule, GO still goes.',
  ],
  'limit-low': [
    'The tap’s limit is too low for class or coating',
    'A tap with a higher limit, worked out with the coating.',
    'GO goes after coating, NOT GO stops within its rule.',
  ],
  'uneven-regrind': [
    'The chamfer was ground unevenly',
    'Regrind in a fixture, lands alike, or put a new tap in.',
    'All lands start at one height, and NOT GO stops.',
  ],
  'rake-wrong': [
    'The rake does not suit the metal',
    'A tap ground for this metal: keen for soft and long, blunt for short and hard.',
    'Flanks come off cut, not torn.',
  ],
  'bare-tool': [
    'The tap’s surface does not suit the metal',
    'A coating made for the metal; in aluminium none that holds aluminium.',
    'No metal on the flanks after twenty holes.',
  ],
  'high-helix': [
    'A steep helix in gummy metal',
    'A lower helix, or a tap with a chip-breaking edge.',
    'Chips come off short and fall away.',
  ],
  'serial-omitted': [
    'A tap of the serial set was left out',
    'Run all of them in their order.',
    'GO goes after the last one.',
  ],
  overload: [
    'Twisted off: more torque than it stands',
    'Find what loaded it: packed chips, a dull edge, a small hole, the floor. Then a stronger style, or a clutch.',
    'The torque stays under half of what breaks it, to the end of its life.',
  ],
  bending: [
    'Bent off: tap and hole not in line, or the part moved',
    'Indicate, clamp, guide the start.',
    'The tap runs true to the hole, and the first thread is cut all round.',
  ],
  // The hand.
  'hand-rock': [
    'The hand start rocked',
    'A guide block, a countersink, and a square after one turn and after two.',
    'The gauge’s handle stands square, and the mouth holds.',
  ],
  'hand-reversing': [
    'A spiral flute was turned back by hand',
    'Keep a spiral flute turning; break chips only with straight flutes.',
    'The teeth stay whole.',
  ],
  // Chips and fluid.
  'chips-packed': [
    'Chips pack in the flutes',
    'Send chips where the hole lets them out: ahead when it is through, up when it is blind. More fluid into the flute.',
    'The flutes come out clean, and the load stays level to the bottom.',
  ],
  'chip-root-jammed': [
    'The root of the chip jams behind the chamfer',
    'A tap relieved behind its edge, slower at the turn, more lubricant.',
    'No chips behind the lands, and the turn is quiet.',
  ],
  'chips-in-bottom': [
    'Chips lie in the bottom',
    'Flush and draw them off before gauging; send chips up.',
    'The GO goes as deep as the tap did.',
  ],
  'recut-chips': [
    'Chips are cut a second time',
    'Clear the chips’ way: another style, a stronger stream along the flute.',
    'No scratch lines on the flanks.',
  ],
  'weak-flush': [
    'Long chips, too little flush',
    'More pressure, aimed along the flute; clear between holes.',
    'The tap comes out bare.',
  ],
  'chip-form': [
    'Speed makes a bad chip',
    'Change the speed by {slower:whole} %, first down, then up.',
    'Chips come bright and in one shape.',
  ],
  'fluid-missed': [
    'The fluid misses the hole',
    'Aim two nozzles, or bring it through the tap.',
    'The stream meets the tap at the bottom of its stroke.',
  ],
  dry: ['It runs dry', 'Tapping oil, or a stronger mix at the edge.', 'The sound stops at once.'],
  'poor-lubrication': [
    'The fluid cools but does not lubricate',
    'Tapping oil, or an emulsion of {emulsion:whole} % and more. Look at its safety data sheet first.',
    'Load and edge wear fall over the next twenty holes.',
  ],
  'speed-high': [
    'Too fast',
    'Take {slower:whole} % off the speed.',
    'The edge stays sharp for the usual number of holes.',
  ],
  rubbing: [
    'The edge rubs instead of cutting',
    'A sharp tap with a shorter chamfer, firm and not below {slowest:speed}.',
    'Real chips, and no sound.',
  ],
  heat: [
    'Heat builds up from hole to hole',
    'More fluid, less speed, time to cool.',
    'The tenth hole looks like the first.',
  ],
  'built-up-edge': [
    'Metal builds up on the edge',
    'More lubricant, a coating that suits, another speed.',
    'Edge and flanks are bare under the loupe.',
  ],
  // The metal.
  'hard-material': [
    'The metal is too hard, or the tap too brittle for it',
    'A tougher tap, less speed; tap before hardening; past the reach of high-speed steel, mill the thread.',
    'The teeth stay whole through one part.',
  ],
  abrasive: [
    'The metal grinds the edge away',
    'A hard, wear-resistant tap with a coating; count the holes.',
    'Its life can be foretold, and holds.',
  ],
  springy: [
    'The metal springs back and grips the tap',
    'More relief on the tap, a larger hole in the class, oil, and slow on the way out.',
    'It comes out with less torque than it went in.',
  ],
  'closes-in': [
    'The metal closes up behind the tap',
    'A tap with a higher limit and more relief, a larger hole in the class; gauge when cool.',
    'GO goes when the part is at {gaugeTemperature:whole} °C.',
  ],
  'brittle-forming': [
    'The metal is too brittle to be pressed',
    'Cut the thread. Forming wants metal that stretches about {elongation:whole} %.',
    'Crests are whole.',
  ],
  // Gauges, burrs, coatings, screws.
  'wrong-gauge': [
    'The gauge is the wrong one, or worn',
    'Check class, marking and calibration; compare with a second gauge.',
    'Two calibrated gauges agree.',
  ],
  'gauge-chamfer': [
    'The gauge’s own start was not taken off',
    'Count turns from the face and take off half to one thread for the gauge’s start.',
    'Turns and a cut-open sample agree.',
  ],
  'burr-or-chips': [
    'Burr or chips in the thread',
    'Countersink before tapping, flush after, take off the exit burr.',
    'GO goes without being asked twice.',
  ],
  'burr-crest': [
    'A burr stands on the crests',
    'A sharp tap, a hole inside its window, a light chase.',
    'The plain plug goes without brushing.',
  ],
  'no-allowance': [
    'Nothing was allowed for the coating',
    'Tap larger by {coating:whole} times the thickness on the pitch diameter, or have the holes masked.',
    'GO goes after coating.',
  ],
  'thick-plate': [
    'The coating is too thick, or built up at the edges',
    'Take it up with the plater; countersink; mask.',
    'Measured thickness is as ordered, and GO goes.',
  ],
  'engagement-short': [
    'Too few threads hold the screw',
    'Ask the designer: a longer screw, a deeper thread or an insert. How much is enough is for them to say.',
    'The designer’s own check, on the drawing.',
  ],
  'minor-large-unseen': [
    'The hole is large, and nobody tried a plain plug',
    'Bring the hole into its window, and put the plain plugs on the sheet.',
    'The plain NOT GO stays out in every hole.',
  ],
  'under-formed': [
    'Formed threads are not filled; thread gauges cannot see it',
    'A smaller hole for forming, checked with plain plugs after.',
    'A sample cut open shows full crests.',
  ],
  'wrong-screw': [
    'The wrong screw, or a softer part than drawn',
    'Screw and certificate as on the drawing.',
    'The right screw holds at the torque the drawing gives.',
  ],
};

export const CAUSE_WORDS = Object.fromEntries(
  Object.entries(WORDS).map(([id, [name, change, proof]]) => [id, { name, change, proof }]),
) as Record<CauseId, CauseWords>;
