/** What is seen when a tap or a thread goes wrong. English. */

import type { SymptomGroup, SymptomId } from '../../../core/diagnose/symptoms';

export const SYMPTOM_GROUP_NAMES: Record<SymptomGroup, string> = {
  broken: 'The tap broke',
  tool: 'The tap looks bad',
  gauge: 'The gauges say no',
  thread: 'The thread looks bad',
  machine: 'The machine complains',
};

export interface SymptomWords {
  /** For a list. */
  name: string;
  /** How to know that this is it. */
  seen: string;
  /** What its picture shows. */
  picture: string;
}

export const SYMPTOM_WORDS: Record<SymptomId, SymptomWords> = {
  'broke-bottom': {
    name: 'Broke at the bottom of a blind hole',
    seen: 'It went all the way down, and broke about where it should have stopped.',
    picture: 'A tap with its nose on the floor of a blind hole, broken above it.',
  },
  'broke-entry': {
    name: 'Broke as it went in',
    seen: 'It broke within the first turns; there is hardly any thread in the hole.',
    picture: 'A tap leaning beside the axis of its hole, broken at the mouth.',
  },
  'broke-middle': {
    name: 'Broke on the way down',
    seen: 'It broke somewhere between the mouth and the bottom, not always at the same depth.',
    picture: 'A tap half way down a hole with chips packed in its flutes, broken at the face.',
  },
  'broke-reversing': {
    name: 'Broke as it turned back or came out',
    seen: 'It had reached its depth and broke when it reversed, or on the way out.',
    picture: 'A tap with an arrow for turning back, a chip jammed behind its chamfer.',
  },
  'broke-unseen': {
    name: 'Broke, and nobody saw when',
    seen: 'Only the pieces are left. Lay them out in their order before you touch anything else.',
    picture: 'Two pieces of a tap side by side: one broken along a slant, one straight across.',
  },
  'teeth-chipped': {
    name: 'Teeth of the chamfer chipped',
    seen: 'The tap is whole, but pieces are missing from its cutting teeth.',
    picture: 'The end of a tap with two teeth of its chamfer broken off.',
  },
  'wears-fast': {
    name: 'Wears out fast',
    seen: 'It lasts far fewer holes than others did in the same metal.',
    picture: 'A row of tapped holes and a tap whose teeth are rounded after a few of them.',
  },
  'not-go-goes': {
    name: 'NOT GO goes in',
    seen: 'The NOT GO thread plug enters further than its rule allows.',
    picture: 'A gauge marked NOT GO, deep in a tapped hole.',
  },
  'go-refuses': {
    name: 'GO will not go in',
    seen: 'The GO thread plug does not start, or binds at once.',
    picture: 'A gauge marked GO, standing on the mouth of a tapped hole.',
  },
  'go-stops': {
    name: 'GO stops before the depth',
    seen: 'The GO runs in freely, then stops short of the full thread.',
    picture: 'A gauge marked GO, stopped half way down a tapped hole.',
  },
  'bell-mouth': {
    name: 'Loose at the mouth only',
    seen: 'The first threads are wide and loose, the rest holds.',
    picture: 'A tapped hole that widens towards its mouth.',
  },
  'torn-flanks': {
    name: 'Threads torn or rough',
    seen: 'Flanks are ragged, smeared or scratched.',
    picture: 'Threads in section with ragged flanks.',
  },
  'thin-thread': {
    name: 'One flank shaved, threads thin',
    seen: 'One side of every thread is cut away; the thread is thin and loose in its axis.',
    picture: 'Threads in section, one flank of each cut back.',
  },
  'minor-wrong': {
    name: 'Minor diameter wrong',
    seen: 'The plain plug will not go in, or the plain NOT GO does.',
    picture: 'A plain plug beside a hole whose thread crests are too low.',
  },
  'chips-wrap': {
    name: 'Chips wrap round the tap',
    seen: 'A nest of chips hangs on the tap when it comes out.',
    picture: 'A tap above its hole with a tangle of chips round it.',
  },
  galling: {
    name: 'Metal sticks to the tap',
    seen: 'Workpiece metal is welded onto flanks and edges.',
    picture: 'Teeth of a tap with lumps of metal stuck on their flanks.',
  },
  'out-of-square': {
    name: 'Thread leans or is off its place',
    seen: 'The gauge’s handle leans, or the screw stands askew.',
    picture: 'A tapped hole whose axis leans away from square.',
  },
  'double-start': {
    name: 'Two threads in one hole',
    seen: 'Two helices cross or run side by side; crests are cut to pieces.',
    picture: 'A hole with two threads cut between one another.',
  },
  'form-incomplete': {
    name: 'Formed thread not filled or split',
    seen: 'A form tap left crests with a deep seam, or cracked ones.',
    picture: 'Formed threads in section with an open seam in every crest.',
  },
  'spindle-alarm': {
    name: 'Spindle overload or lost step',
    seen: 'The control stops with an overload or says that spindle and feed are out of step.',
    picture: 'A meter with its needle past the mark, over a tap in a hole.',
  },
  squeal: {
    name: 'Squeals or chatters',
    seen: 'It howls, or leaves waves on the flanks.',
    picture: 'A tap in a hole with sound waves beside it.',
  },
  'screw-strips': {
    name: 'Gauges pass, but the screw strips',
    seen: 'The thread gauges well and still pulls out when the screw is tightened.',
    picture: 'A screw drawn up with the stripped threads of its hole.',
  },
  'tight-after-coating': {
    name: 'Good before coating, tight after',
    seen: 'The GO went in before plating or anodising, and does not now.',
    picture: 'Threads in section with a layer on their flanks, and the gauge’s line across it.',
  },
  'tap-slips': {
    name: 'Tap turns or slides in its holder',
    seen: 'The tap stops or sinks while the holder turns on.',
    picture: 'A tap in a collet with rings rubbed into its shank.',
  },
};

/** Written on the gauges of the pictures. */
export const GAUGE_MARKS = { go: 'GO', notGo: 'NOT GO' } as const;
