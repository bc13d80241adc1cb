/** Words of the page for a whole part. English. */

import type { ColumnKind } from '../../../core/drawing/columns';
import type { PartName } from '../../part/inputs';

export const LABELS: Record<PartName, string> = {
  holes: 'Every threaded hole, one callout a line',
  designation: 'Its grade, as the drawing writes it',
  material: 'Material',
  thickness: 'Thickness, where holes go through',
  drive: 'Spindle',
  torque: 'Its torque',
  rpm: 'Its highest tapping speed',
  changes: 'Changes for single holes',
  columns: 'Columns of the table',
  lines: 'Lines joined or parted',
  job: 'Job',
  part: 'Part',
  operation: 'Operation',
  machine: 'Machine',
  units: 'Lengths in',
};

export const TEXT = {
  inDrawer: 'in the drawer',
  notInDrawer: 'not in the drawer',
  form: 'The part',
  submit: 'Plan the part',
  clear: 'Start again',
  takeExample: 'Try it with the example',
  example: 'Example',
  exampleText:
    'A pump-housing lid in 6061, 16 mm thick, on a synchronous spindle with 30 N·m. Six callouts, as they came from the drawing office.',
  exampleGoes: 'It goes when you type your own.',
  holesHint:
    'Paste them as the drawing or the spreadsheet has them. Up to 200 lines; what cannot be read is kept and marked.',
  head: 'What stands on the sheet',
  headHint: 'All optional: what is left empty prints as a line to write on.',
  chooseMaterial: 'Choose a material',
  designationLike: 'Like 1.4301, 304L, 42CrMo4+QT, 6061-T6, GG25: chosen for you.',
  noTorque: 'empty: not judged',
  noThickness: 'empty: 1½ diameters',
  waiting: 'Still needed',
  noAnswer: 'No answer yet.',
  loading: 'One moment …',
  working: 'Working it out …',
  notLoaded: 'The page did not load whole',
  notLoadedText: 'Check the connection and load the page again. What you typed comes back.',
  errors: 'Before this part can be planned',
  errorTitle: 'Error: ',
  address: 'From the address',
  holes: 'Hole by hole',
  change: 'Change for this hole',
  sameAsPart: 'As the part',
  plan: 'Plan it alone',
  tools: 'Fewest tools',
  toolsRule:
    'As few as keep every hole at its best tap or one that also works, and in a drill that is surely inside its class. Among equals, those in your drawer, then those the holes like best.',
  taps: 'Taps',
  drills: 'Drills',
  forHoles: 'For',
  designer: 'One note to the designer',
  copy: 'Copy it',
  copied: 'Copied',
  notCopied: 'Not copied: mark the text and copy it yourself',
  print: 'Print the set-up sheet',
  save: 'Save to a file',
  open: 'Open a file',
  tooLong:
    'This list is too long for the address. It stays here while the page is open; save it to a file to keep it or send it on.',
  opened: 'Opened',
  notOpened: 'The file could not be read.',
  keep: 'Keep it on this device',
  kept: 'Kept. It is on the page of jobs.',
  notKept: 'Not kept: this browser would not store it. Save it to a file.',
  jobs: 'Jobs on this device',
  sheet: 'Set-up sheet: tapped holes',
  sheetHoles: 'Holes of the sheet',
  sheetExample: 'Example. Not for use.',
  sheetNot: 'Not to be run as drawn',
  watch: 'Watch',
  cautions: 'Cautions',
  assumed: 'Assumed for every hole',
  record: ['First-off by', 'GO / NOT GO', 'Holes run', 'Date, shift'],
  noScript:
    'The form needs script, which is off in this browser. Below is a worked example of what it answers. Do not work to it.',
  answer: 'Answer',
  readAs: 'Read as {callout}.',
  joined: 'Lines {lines} read as one',
  part: 'Part lines {first} and {last}',
  join: 'Join line {own} to line {line}',
  tap: 'It is a threaded hole',
  untap: 'Line {line} is no threaded hole after all',
  apart: 'Set apart: no threaded holes',
  apartText: 'These lines are kept here and do not go on the sheet.',
  tool: 'tool {number}',
  sections: 'Sections of the holes, each to its own scale; depths from the face',
  letGo: 'let go at {band}',
  tooNear: 'runs too near its strength',
  shopBase: '{percent} thread, shop base',
  to: 'to',
  sheetDepths:
    'Depths from the face, with the longest chamfer of the class; flat-nosed sharp HSS taps.',
  oneNamed: 'Hole',
  manyNamed: 'Holes',
  oneHole: 'hole {numbers}',
  manyHoles: 'holes {numbers}',
  examplePart: 'Housing lid HL-118',
  notOurs: 'This is no part file of the handbook. Nothing was changed.',
  newer:
    'This file is from a newer version of the handbook. Load the page again, or open it there.',
} as const;

export const COLUMNS = {
  number: 'No.',
  hole: 'Hole',
  drill: 'Drill',
  drillTo: 'Shoulder at',
  tap: 'Tap',
  tapTo: 'Tap to (Z)',
  full: 'Full thread',
  speed: 'Speed, feed',
  torque: 'Torque, sharp',
  gauge: 'Gauge',
  through: 'through',
  point: 'point',
} as const;

/** What is wrong with a field and what to type instead. */
export const PROBLEMS = {
  noHoles: 'Enter at least one callout, like 4× M8-6H ↧16.',
  noMaterial: 'Choose the material.',
  tooMany: 'At most 200 lines are planned at once. Take some out, or plan the part in two.',
  length: {
    mm: '“{label}” must be a length, like 16, 12,5 or 3/4 in.',
    in: '“{label}” must be a length, like .75, 3/4 or 16 mm.',
  },
  torque: '“{label}” must be a torque, like 30 or 22 lbf·ft.',
  speed: '“{label}” must be a number of turns a minute, like 3000.',
} as const;

/** The table of a spreadsheet, column by column. */
export const TABLE = {
  heading: 'Read as a table of {count} columns',
  check: 'Look whether each column is read as what it is, and choose another where it is not.',
  unclear: 'One column is not clear. Say what it is, or its numbers are asked about.',
  column: 'Column {number}',
  named: 'Column {number}, “{name}”',
  example: 'such as {cells}',
  empty: 'empty',
} as const;

export const COLUMN_NAMES: Record<ColumnKind, string> = {
  item: 'Item number or place, not read',
  quantity: 'Quantity',
  thread: 'Thread or callout',
  pitch: 'Pitch or threads per inch',
  class: 'Class',
  depth: 'Depth of the full thread',
  through: 'Through or not',
  thickness: 'Thickness of the part there',
  drill: 'Tap drill',
  'drill-depth': 'Depth of the drilled hole',
  countersink: 'Countersink',
  tool: 'Tool number',
  remark: 'Remark, read word by word',
  unclear: 'Not clear: asked about',
  'left-out': 'Left out, not read',
};

/** What a line without a threaded hole was recognised as. */
export const APART = {
  clearance: 'A hole that a screw or bolt goes through, or the screw itself.',
  title: 'From the title block.',
  note: 'A general note.',
  because: '{what} It says “{words}”.',
} as const;
