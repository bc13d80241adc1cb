/** What the exercises ask and answer. English. */

import type { JobInSteps } from '../../../core/practice/order';

export const REACH = {
  'drill-to':
    '{thread} in a blind hole, {full} of full thread. The tap has a chamfer of {threads} threads, on a {drive}. How deep must the hole be to the drill’s shoulder, for every tap of that class?',
  gives:
    '{thread} in a blind hole that may be {limit} deep to the drill’s shoulder. The tap has a chamfer of {threads} threads, on a {drive}. How much full thread can you promise?',
  drives: {
    synchronous: 'synchronous spindle: stop clearance one pitch',
    floating: 'floating holder: stop clearance three pitches',
  },
  working: {
    'drill-to':
      'Full thread {full}, longest chamfer {chamfer}, stop clearance {stop}: together {needed}.',
    gives:
      '{limit} less the longest chamfer {chamfer} and the stop clearance {stop} leaves {gives}.',
  },
  slips: {
    'thread-only': 'That is the full thread alone. Chamfer and clearance come below it.',
    'no-stop': 'The clearance to stop in is missing.',
    shortest: 'That is for the shortest chamfer of the class. The crib may hand out the longest.',
    'no-chamfer': 'The chamfer is missing: its threads are not full.',
    asked: 'That would be nice. The hole is too shallow for it.',
  },
} as const;

export const DRILL = {
  ask: '{thread}: which of these drills surely leaves the hole in its class, in steel, with what drills usually cut over size?',
  inside:
    'Limits {min} to {max}. It likely leaves {likely}: inside, {percent} of thread on the shop base.',
  small:
    'Limits {min} to {max}. {size} is below the least: the tap has too much to cut, and a plain plug refuses it.',
  large: 'Limits {min} to {max}. It likely leaves {likely}: too large.',
} as const;

export const CHOOSE = {
  blind:
    '{thread}, blind, {depth} of full thread in {material}. No limit to the hole. Which tap first?',
  through: '{thread} right through {depth} of {material}, open below. Which tap first?',
  clean:
    '{thread} right through {depth} of {material}. Nothing may fall out on the far side. Which tap first?',
  right: 'The planner’s first choice. {why}',
  wrong: 'It will not do. {why}',
} as const;

export const ERROR = {
  ask: 'A set-up sheet for {thread}, blind, {full} of full thread, chamfer of at most {threads} threads, synchronous spindle, medium-carbon steel. One line is wrong. Which?',
  lines: {
    gauge: 'Thread gauge {value}',
    drill: 'Drill {value}',
    shoulder: 'Drill to {value}, to the shoulder',
    tip: 'Tap to {value}',
    feed: 'Feed {value}',
    speed: 'Speed {value}',
  },
  fine: 'That line is right: {right}.',
  wrong: 'It should be {right}.',
  speedFine: 'That speed lies within {min} and {max}.',
} as const;

export const GAUGES = {
  ask: '{thread}. The GO {go}. The NOT GO enters {turns} before it stops. Plain plugs: the GO {minorGo}, the NOT GO {minorNotGo}. What does that mean?',
  go: { all: 'goes all the way', part: 'stops part of the way', none: 'will not start' },
  turns: { none: 'not one turn', one: '1 turn', many: '{turns} turns' },
  minor: { yes: 'goes in', no: 'does not go in' },
  findings: {
    'pitch-in-class': 'In its class, pitch diameter and hole',
    'pitch-small': 'Pitch diameter too small',
    'go-stops': 'Not enough good thread, or chips at the bottom',
    'pitch-large': 'Pitch diameter too large',
    'rules-disagree': 'The two rules of turns disagree: ask which one holds',
    'minor-large': 'The hole was drilled too large',
    'minor-small': 'The hole was drilled too small',
  } as Record<string, string>,
  rules: 'ASME B1.2 lets the NOT GO in by {b12} turns, ISO 1502 by {iso}.',
} as const;

export const DIAGNOSE = {
  ask: 'Seen: {symptom} Checked: {check} Found: {answer}. Which cause comes first?',
  right: 'That trace speaks for it. Try: {change}',
  wrong: 'It would not leave that trace, or less likely.',
} as const;

export const DRAWING = {
  ask: 'Wrought aluminium, synchronous spindle. Thread depth first, then hole depth to the shoulder, mm for M and inches for the others. Which line cannot be made as drawn by any machine tap?',
  right: 'The shortest machine chamfer needs {needed} to the shoulder, and {have} are drawn.',
  wrong: 'There is room enough: it can be made.',
} as const;

/** Steps in the right order, each with why it stands there. */
export const ORDERS: Record<JobInSteps, { ask: string; steps: [text: string, why: string][] }> = {
  'plan-a-hole': {
    ask: 'Plan a tapped hole. Put the steps in order.',
    steps: [
      ['Read the whole callout: thread, class, hand, depths', 'Everything else hangs on it.'],
      ['Ask what lies below or beyond', 'It decides where chips may go.'],
      ['Choose the tap by chip and chamfer', 'You need to know the hole before.'],
      ['Choose the drill inside the class', 'It depends on whether the tap cuts or forms.'],
      [
        'Add up the depth: thread, chamfer, clearance',
        'You need the chamfer of the tap you chose.',
      ],
    ],
  },
  'first-off': {
    ask: 'The first part of a batch. Put the steps in order.',
    steps: [
      ['Run the program above the part', 'A wrong depth shows where it costs nothing.'],
      ['Drill one hole and check it with a plain plug', 'A bad hole cannot make a good thread.'],
      ['Tap that hole and look at chips and tap', 'They tell you before the gauge does.'],
      ['Stop the spindle, clean the hole, gauge it', 'GO, NOT GO, plain plug, depth.'],
      ['Write down what was measured, then run the batch', 'The next shift needs it.'],
    ],
  },
  'by-hand': {
    ask: 'Tap a hole by hand. Put the steps in order.',
    steps: [
      ['Drill, countersink and clamp the part', 'The tap follows the hole.'],
      ['Choose a wrench of the tap’s size', 'A long one breaks small taps unawares.'],
      ['Start with the longest chamfer that fits', 'It starts straightest.'],
      ['After one or two turns check square, in two directions', 'Later it cannot be steered.'],
      ['Cut, with oil, clearing the chips', 'Back off only where the chip has to be broken.'],
      ['Gauge the thread', 'Last, on a clean thread.'],
    ],
  },
  'broken-tap': {
    ask: 'A tap has broken in the hole. Put the steps in order.',
    steps: [
      ['Stop, isolate and lock out the machine', 'Before any hand goes near.'],
      ['Keep the pieces and write down how deep it broke', 'They are the only witness.'],
      ['Find the cause', 'Or the next tap breaks as well.'],
      ['Choose a way out by the part’s value, size and material', 'Scrap is one of them.'],
      ['Change what caused it, then run one hole and watch', 'The proof comes last.'],
    ],
  },
  'gauge-it': {
    ask: 'Gauge a tapped hole. Put the steps in order.',
    steps: [
      ['Deburr it, flush the thread, let it cool', 'A gauge on chips measures chips.'],
      ['Read class and date on the gauges', 'Before one of them is turned into anything.'],
      ['GO by hand to its stop, counting turns', 'It must find room first: nothing too small.'],
      ['NOT GO by hand, counting turns', 'A hole that refuses the GO is bad already.'],
      ['Plain plugs in the minor diameter', 'The thread plugs cannot feel the drilled hole.'],
      [
        'Reckon the full depth from the GO’s turns, and write it all down',
        'It comes from a count you have by then. What nobody wrote is a memory.',
      ],
    ],
  },
  'left-hand-job': {
    ask: 'A left-hand thread comes in. Put the steps in order.',
    steps: [
      ['See LH in the callout and say it aloud', 'It is the letter that is missed.'],
      [
        'Fetch a left-hand tap and a left-hand gauge',
        'A right-hand one run backwards cuts nothing.',
      ],
      ['Find the left-hand cycle in the control’s manual', 'Controls differ, some have none.'],
      ['Run it above the part and watch which way it turns', 'Before it touches metal.'],
      ['Tap one hole and gauge it', 'With the left-hand gauge.'],
    ],
  },
};
