/** The checks of the finder: what to look at, and what may be found. English. */

import type { CHECKS, CheckId } from '../../../core/diagnose/checks';

type AnswerWords = { [C in CheckId]: Record<keyof (typeof CHECKS)[C], string> };

export type CheckWords = { [C in CheckId]: { ask: string; how: string; answers: AnswerWords[C] } };

export const CANNOT = 'I cannot check that now';

export const CHECK_WORDS: CheckWords = {
  // The tap and its pieces.
  nose: {
    ask: 'What does the nose of the tap look like?',
    how: 'Find the lowest piece and look at its end face under a loupe.',
    answers: {
      shiny: 'Its face is rubbed shiny or mashed',
      crushed: 'A centre that stood out in front is crushed',
      clean: 'As ground: nothing touched it',
    },
  },
  fracture: {
    ask: 'How does the break run?',
    how: 'Wipe the pieces and lay them together. Flutes confuse the picture: follow the core.',
    answers: {
      helical: 'On a slant round the core, near half a right angle',
      square: 'Nearly straight across, with a small lip on one side',
      'teeth-only': 'Only teeth of the chamfer are gone',
      'nose-crushed': 'The nose is crushed',
    },
  },
  flutes: {
    ask: 'What is in the flutes of the piece?',
    how: 'Look before anything is washed out.',
    answers: { packed: 'Packed hard with chips', empty: 'Empty, or a loose chip or two' },
  },
  edges: {
    ask: 'Are the cutting edges worn?',
    how: 'Hold the chamfer teeth to the light under a loupe. A sharp edge reflects nothing.',
    answers: {
      worn: 'A bright band along the edges, or rounded corners',
      sharp: 'Sharp: no light on the edge',
    },
  },
  wedge: {
    ask: 'Are chips wedged behind the cutting lands?',
    how: 'Look at the back of each land at the chamfer, the side that leads when the tap turns back.',
    answers: { wedged: 'Yes, driven in behind a land', none: 'No' },
  },
  'which-teeth': {
    ask: 'Which teeth are gone?',
    how: 'Count from the nose, flute by flute.',
    answers: {
      first: 'The first cutting teeth, on every flute alike',
      end: 'The very end, with the face of the nose',
      any: 'Here and there, no order in it',
    },
  },
  'by-hand': {
    ask: 'Was a spiral-flute tap turned back by hand to break the chip?',
    how: 'Ask whoever had the wrench.',
    answers: { yes: 'Yes', no: 'No' },
  },
  'land-compare': {
    ask: 'Does the chamfer start at the same height on every flute?',
    how: 'Turn the tap between centres under an indicator, or stand it on a plate and compare.',
    answers: { uneven: 'No: one land leads', even: 'Yes' },
  },
  'tap-marking': {
    ask: 'Does the limit marked on the shank suit the class?',
    how: 'Read the H, L or D number or the ISO class, and look it up for this thread.',
    answers: {
      high: 'Higher than the class wants',
      low: 'Lower than the class, or the coating, wants',
      suits: 'It suits',
    },
  },
  rake: {
    ask: 'Was the tap made for this metal?',
    how: 'Read the label; compare with a tap known to cut this metal well.',
    answers: { other: 'No, or nobody knows', right: 'Yes' },
  },
  helix: {
    ask: 'Is it a steep helix in soft, gummy metal?',
    how: 'Look at the flutes from the side.',
    answers: { steep: 'Yes: steep flutes, soft metal', low: 'No' },
  },
  'tool-surface': {
    ask: 'Does the surface of the tap suit the metal?',
    how: 'Bare steel sticks in stainless and aluminium; a coating that holds aluminium sticks in aluminium.',
    answers: { wrong: 'Bare, or coated with the wrong thing', suits: 'It suits' },
  },
  'fresh-tap': {
    ask: 'What does one hole with a new tap of the same kind give?',
    how: 'Same hole, same program, one part.',
    answers: { right: 'A good thread', same: 'The same trouble' },
  },
  passes: {
    ask: 'Did every tap of a serial set go through?',
    how: 'Count the rings on the shanks and ask. The first ones of such a set leave the thread small.',
    answers: { missing: 'One was left out', all: 'All ran, or it was no such set' },
  },
  // The hole.
  'shoulder-depth': {
    ask: 'Is the hole deep enough to its shoulder?',
    how: 'Pin the depth with a flat pin that just fits, and compare with thread, chamfer and stop together.',
    answers: { short: 'Too short', enough: 'Deep enough' },
  },
  'bottom-chips': {
    ask: 'What lies on the floor of the next hole after tapping?',
    how: 'Look with a light, draw the chips out with a hook or a vacuum. No air, no fingers.',
    answers: { packed: 'Chips, packed on the floor', clear: 'Nothing to speak of' },
  },
  'plain-plug': {
    ask: 'What does a plain plug say of the drilled hole?',
    how: 'Drill one hole, do not tap it, and try the plain plugs.',
    answers: { small: 'Too small', large: 'Too large', right: 'In its limits' },
  },
  'drill-measured': {
    ask: 'Is the hole right before it is tapped?',
    how: 'Plain plugs in a drilled hole.',
    answers: { off: 'No: off its size', right: 'Yes' },
  },
  'drill-named': {
    ask: 'Is the drill the one on the sheet?',
    how: 'Read its shank, then measure across the lips.',
    answers: { other: 'It is another', right: 'It is the one' },
  },
  'tap-kind': {
    ask: 'Is it a form tap?',
    how: 'No flutes that cut: it presses the thread, and its hole is another one.',
    answers: { form: 'Yes', cut: 'No' },
  },
  'crest-burr': {
    ask: 'Does the plug go once the crests are brushed?',
    how: 'Brush or chase lightly, flush, try again.',
    answers: { goes: 'Yes', same: 'No' },
  },
  'drilled-only': {
    ask: 'Does a drilled hole lean before it is tapped?',
    how: 'Put a close pin in a drilled hole and hold a square to it, twice, a quarter turn apart.',
    answers: { leans: 'It leans already', square: 'It stands square' },
  },
  'bore-check': {
    ask: 'Is the drilled hole bent?',
    how: 'A long pin that goes in a little way and binds further down says so.',
    answers: { bent: 'Bent', straight: 'Straight' },
  },
  witness: {
    ask: 'Did the first thread cut all round?',
    how: 'Look at the mouth: is the thread deeper on one side?',
    answers: {
      'one-side': 'On one side only, or the face slopes',
      around: 'All round alike',
    },
  },
  'drill-wall': {
    ask: 'How does the drilled wall look?',
    how: 'Look into a drilled hole with a light. Look at the drill too.',
    answers: { glazed: 'Glazed or blue, the drill dull', clean: 'Clean and cut' },
  },
  'hard-place': {
    ask: 'Does it happen at the same place of the part?',
    how: 'Mark the holes. Look for cross holes, scale, welds, flame-cut edges.',
    answers: { same: 'Yes, always there', anywhere: 'No, anywhere' },
  },
  // The set-up and the program.
  indicator: {
    ask: 'Does the tap run true over the hole?',
    how: 'Indicator on the tap’s shank, then sweep the hole. Spindle isolated. More than {runout:length} is too much for a small tap.',
    answers: { 'runs-out': 'It runs out, or stands beside the hole', true: 'It runs true' },
  },
  'feed-check': {
    ask: 'Is the feed the speed times the pitch?',
    how: 'Work it out from the program, to the last digit.',
    answers: { differs: 'It differs', agrees: 'It agrees' },
  },
  'unit-words': {
    ask: 'Are program, feed and pitch in the same unit?',
    how: 'Look for the inch or millimetre word, and for the feed mode, at the top and before the cycle.',
    answers: { mixed: 'Inch and millimetre are mixed', agree: 'They agree' },
  },
  'r-clearance': {
    ask: 'Is the start plane clear of the metal?',
    how: 'Measure from the highest boss or clamp: {startPlane:pitches} at least.',
    answers: { inside: 'It starts in the metal, or just above', above: 'It is clear' },
  },
  'half-depth': {
    ask: 'Where does the tap stop when told half the depth?',
    how: 'Run one hole with the depth halved, and measure the nose’s true depth.',
    answers: { 'runs-on': 'It runs on further', 'stops-true': 'It stops where told' },
  },
  'tip-depth': {
    ask: 'Does the programmed depth include the chamfer?',
    how: 'Tip depth should be full thread and the whole chamfer together.',
    answers: { short: 'No, or it is shorter', enough: 'Yes' },
  },
  'reverse-start': {
    ask: 'When on the way back does it break?',
    how: 'Watch, or read the depth in the control when it stopped.',
    answers: { 'at-start': 'At the very start of turning back', later: 'Later, on the way out' },
  },
  'micro-float': {
    ask: 'Does a holder that gives a few tenths cure it?',
    how: 'Run one hole in a holder with a little give.',
    answers: { cures: 'Yes', same: 'No' },
  },
  'slower-out': {
    ask: 'Does half the speed on the way out cure it?',
    how: 'Where the control has a word for it, retract at half or at the cutting speed.',
    answers: { cures: 'Yes', same: 'No' },
  },
  'start-how': {
    ask: 'How was the tap started?',
    how: 'Ask, and look at the holder.',
    answers: {
      hand: 'By hand',
      floating: 'In a floating holder or tapping head',
      rigid: 'Held rigid',
    },
  },
  'float-set': {
    ask: 'What does the float do as the tap enters?',
    how: 'Watch the holder at the start of one hole.',
    answers: { compresses: 'It is pressed together', pulls: 'It is drawn out a little, or stays' },
  },
  marks: {
    ask: 'Did the part move?',
    how: 'Look for rubbed clamp marks; indicate the part again.',
    answers: { moved: 'It moved', still: 'It did not' },
  },
  history: {
    ask: 'What happened to this hole?',
    how: 'Ask, and read the offset page.',
    answers: {
      again: 'The cycle ran a second time in it',
      offset: 'The tool length was set again in between',
      hand: 'It was started twice by hand',
    },
  },
  'load-trend': {
    ask: 'How does the load run from hole to hole?',
    how: 'Write the meter down for a few holes.',
    answers: { climbs: 'It climbs with the count', 'first-hole': 'High from the first hole' },
  },
  'torque-plan': {
    ask: 'Is the torque more than the spindle gives at that speed?',
    how: 'Plan the hole here, and read the torque curve in the machine’s manual: torque, not power.',
    answers: { over: 'More', under: 'Less' },
  },
  'rpm-limit': {
    ask: 'Is the speed over the machine’s limit for tapping?',
    how: 'The limit stands in the manual; it is lower than the spindle’s highest speed.',
    answers: { over: 'Over', within: 'Within' },
  },
  'higher-start': {
    ask: 'Does a higher start plane or a lower speed cure it?',
    how: 'Give the spindle more turns to come up to speed, in one hole.',
    answers: { cures: 'Yes', same: 'No' },
  },
  hold: {
    ask: 'Does it stop when the part is held harder?',
    how: 'Another clamp, or a jack under the wall. Never a hand.',
    answers: { stops: 'It stops', same: 'It goes on' },
  },
  collet: {
    ask: 'Does the holder drive the tap by its square?',
    how: 'Take the tap out and look.',
    answers: { round: 'No: it grips the round shank only', square: 'Yes' },
  },
  rings: {
    ask: 'Are rings rubbed into the shank?',
    how: 'Wipe the shank and look.',
    answers: { rings: 'Yes', none: 'No: the clutch let go' },
  },
  wiped: {
    ask: 'Does it hold once shank and collet are wiped dry?',
    how: 'Degrease both, try one hole.',
    answers: { holds: 'It holds', slips: 'It slips again' },
  },
  // Chips, fluid, metal.
  nozzle: {
    ask: 'Does the fluid reach the tap in the hole?',
    how: 'Watch a whole cycle through the window: the stream at the start, and when the tap is down.',
    answers: { misses: 'It misses, or is cut off', reaches: 'It reaches' },
  },
  refractometer: {
    ask: 'Is the fluid strong enough?',
    how: 'A drop on the refractometer, times the fluid’s own factor; for stainless {emulsion:whole} % and more.',
    answers: { weak: 'Weak, or it is mere coolant', right: 'Strong enough, or oil' },
  },
  'oil-stops': {
    ask: 'Does a drop of tapping oil stop it?',
    how: 'Spindle stopped, then oil into the hole, then one more.',
    answers: { stops: 'It stops', same: 'It goes on' },
  },
  'speed-check': {
    ask: 'Where does the speed lie in the range for this metal?',
    how: 'Plan the hole here: the range stands beside the speed.',
    answers: { above: 'Above', below: 'Below', within: 'Within' },
  },
  'chip-bite': {
    ask: 'What do the chips look like?',
    how: 'Look at a few on white paper.',
    answers: { thin: 'Thin as dust or foil, the edge rubs', proper: 'Real chips' },
  },
  'chip-look': {
    ask: 'What are the chips in the nest like?',
    how: 'Draw one out with a hook, spindle stopped. Length and colour.',
    answers: { long: 'Long and bright', blue: 'Blue, or torn and crumpled' },
  },
  'flush-trial': {
    ask: 'Does more fluid clear them?',
    how: 'One hole with the stream turned up and aimed along the flute.',
    answers: { clears: 'They go', same: 'They stay' },
  },
  warm: {
    ask: 'Does it begin only when tap and part are warm?',
    how: 'Compare the first hole with the tenth; let it cool and try again.',
    answers: { warm: 'Yes', cool: 'No' },
  },
  hardness: {
    ask: 'Is the metal as hard as it should be?',
    how: 'A hardness tester, or a file on a corner against a known piece.',
    answers: { hard: 'Harder', drawn: 'As the drawing says' },
  },
  abrasive: {
    ask: 'Is it cast aluminium with much silicon, or iron?',
    how: 'Read the material’s name.',
    answers: { yes: 'Yes', no: 'No' },
  },
  'springy-metal': {
    ask: 'Is it a metal that closes up behind the tap?',
    how: 'Titanium, plastics, thin walls, and what was tapped hot.',
    answers: { yes: 'Yes', no: 'No' },
  },
  // The thread and the gauges.
  'loose-where': {
    ask: 'Where is the NOT GO loose?',
    how: 'Turn it in without force and rock it, thread by thread.',
    answers: { all: 'All the way along', mouth: 'At the mouth only' },
  },
  flanks: {
    ask: 'What do the flanks look like at ten times?',
    how: 'Cut one open, or look with a borescope.',
    answers: {
      smeared: 'Smeared, with metal stuck on',
      scratched: 'Scratched in lines',
      'one-side': 'One flank cut away, the other fine',
      even: 'Even and cut, or dull all over',
    },
  },
  'second-gauge': {
    ask: 'Does a second gauge say the same?',
    how: 'Another gauge of the right class, calibrated.',
    answers: { disagrees: 'It does not', agrees: 'It does' },
  },
  'clean-retry': {
    ask: 'Does the gauge go once the hole is clean?',
    how: 'Flush, take the burr off the mouth, let it cool to {gaugeTemperature:whole} °C, try again.',
    answers: { goes: 'It goes', same: 'No change' },
  },
  'pitch-leaves': {
    ask: 'Do the pitch leaves fit?',
    how: 'Lay them on the tap, or on a cast of the thread.',
    answers: { off: 'They do not', fits: 'They fit' },
  },
  'gauge-nose': {
    ask: 'Is the missing depth no more than the gauge’s own start?',
    how: 'The first half to whole thread of a gauge shows no full thread. Count from the face, not from the countersink.',
    answers: { explains: 'No more than that', more: 'More' },
  },
  seam: {
    ask: 'What are the crests like?',
    how: 'Cut one open. A small closed seam is usual in a formed thread.',
    answers: {
      open: 'A deep open seam, crests too low',
      flared: 'Crests full and flared, the tap laboured',
      cracked: 'Cracked or broken out',
    },
  },
  'cut-open': {
    ask: 'What does a sample show when it is cut open?',
    how: 'Saw one through its axis and count the threads that were in the screw.',
    answers: {
      short: 'Few threads engaged',
      hollow: 'Crests low or hollow',
      full: 'Full threads, as many as asked',
    },
  },
  'screw-check': {
    ask: 'Is it the right screw, in the right metal?',
    how: 'Grade on its head, length under the head, the part’s certificate. Never grade a screw from its look.',
    answers: { other: 'No', right: 'Yes' },
  },
  allowance: {
    ask: 'Was the hole tapped larger for the coating?',
    how: 'Pitch diameter moves by {coating:whole} times the thickness.',
    answers: { none: 'No', made: 'Yes' },
  },
  'coat-measured': {
    ask: 'Is the coating thicker than ordered?',
    how: 'Measure on a flat, then mind that edges build up more.',
    answers: { over: 'Thicker', ordered: 'As ordered' },
  },
};
