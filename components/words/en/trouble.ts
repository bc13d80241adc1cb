/** The page of broken taps and bad threads, apart from symptoms, checks and causes. English. */

import type { PlanFactCode } from '../../../core/diagnose/plan-facts';

export const TROUBLE = {
  title: 'Broken taps and bad threads',
  address: 'Not all of the address could be used',
  notLoaded: 'The finder did not load',
  notLoadedText:
    'Check the network, then load the page again. What you chose is in its address, and the whole list stands below.',
  description:
    'From what you see to the cause, one check at a time: broken taps, chipped teeth, gauges that refuse, torn threads, and the change to try.',
  lead: 'Say what you see. One check after another finds the cause; at the end stands a change to try, and how to know that it worked.',
  choose: 'What do you see?',
  chosen: 'You see',
  other: 'Choose again',
  check: 'Check this next',
  howto: 'How',
  told: 'Checked so far',
  change: 'Change the answer',
  causes: 'Causes, most likely first',
  causesNote: 'The bars rank the causes by what you found. They are not a count of cases.',
  tryThis: 'Try this',
  tryFirst: 'If you can check no more, try this',
  proof: 'It worked if',
  rank: 'Where it comes from',
  tried: 'I tried it: no better',
  triedList: 'Tried, and no better',
  undo: 'Put it back',
  nothing:
    'Every cause on the list was tried. Keep the pieces with the hole’s number, run one hole on scrap with somebody watching, and choose what you see again: it may be another fault than it looked.',
  before: 'Before the next tap goes in',
  beforeText:
    'Keep the pieces, in order, with the number of the hole, how deep it broke, and whether it was going in or out. Mend the cause before the second tap.',
  own: 'This hole’s own numbers',
  ownHint:
    'Optional. Type the hole, and its plan speaks too: room in pitches, share of the tap’s strength, tooth load, speed.',
  ownUsed: 'The tap that was run',
  ownStyle: 'Kind of tap',
  ownChamfer: 'Chamfer',
  ownRpm: 'Speed it ran at',
  ownTorque: 'Torque of the spindle',
  ownPlan: 'Open this hole in the planner',
  ownSays: 'The plan of {thread} says',
  ownPoints: 'points to: {causes}',
  ownFailed: 'The plan did not load. Check the network; the finder works without it.',
  ownProblem: 'This hole cannot be planned yet',
  noPlan: 'No plan yet',
  bestTap: 'the plan’s first choice',
  matrix: 'The whole list',
  matrixText:
    'Every symptom with its causes, the most frequent first, the checks that tell them apart, and what to change. Ranks are common practice; yours may differ.',
  matrixCause: 'Cause',
  matrixCheck: 'Check that shows it',
  matrixChange: 'Change to try',
  matrixProof: 'It worked if',
  matrixGround: 'Ground',
  noScript:
    'Script is off in this browser, so nothing can ask you one check at a time. The whole list stands below.',
  removal: 'Getting a broken tap out',
  rework: 'What to do with the part',
  gauges: 'Read the gauges together',
  hand: 'Tapping by hand',
  onward: 'From here',
  statusNext: 'Next check: {check}',
  statusTry: 'Most likely: {cause}. Try this: {change}',
  notSpeed: '“Speed it ran at” must be a number of turns a minute, like 400.',
} as const;

export const PLAN_FACT_WORDS: Record<PlanFactCode, string> = {
  'room-short':
    'Room below the thread: {have:pitches}. This tap wants {wanted:pitches}, so it meets the floor.',
  'room-enough': 'Room below the thread is enough when drilled as planned: {wanted:pitches}.',
  'chips-ahead-blind': 'This tap drives its chips ahead, onto the floor of a blind hole.',
  'share-high':
    'Torque is {sharp:percent} of what breaks this tap when sharp, {worn:percent} when worn.',
  'share-low':
    'Torque is only {sharp:percent} of what breaks this tap when sharp, {worn:percent} when worn: by the plan it is not simply too weak.',
  'spindle-short':
    'A sharp tap takes {sharp:percent} of the spindle’s torque, a worn one {worn:percent}.',
  'tooth-load-high':
    'The heaviest tooth carries {load:force}, {ratio:times} what it would with a plug chamfer.',
  'speed-above': 'It ran at {rpm:rpm}; the range for this metal ends at {max:rpm}.',
  'speed-below': 'It ran at {rpm:rpm}; the range for this metal begins at {min:rpm}.',
  'speed-range':
    '[It ran at {rpm:rpm}, inside the range. ]Range for this metal: {min:rpm} to {max:rpm}.',
  'thread-deep': 'The thread is {diameters:diameters} deep: chips have far to go.',
  'work-hardens': 'This metal hardens where it is rubbed.',
  'springs-back': 'This metal springs back behind the tap.',
  interrupted: 'The bore is interrupted.',
  plated: 'The hole is coated: pitch diameter moves by up to {pitchMax:limit}.',
  'drill-at-risk': 'The drill may cut to {likely:limit}, and the class ends at {max:limit}.',
  'strips-first':
    'With the usual screw this metal strips before the screw breaks: {have:length} of thread, about {matching:length} to match.',
};
