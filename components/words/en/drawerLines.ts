/** Words of the drawer's lines, of the kept holes' spreadsheet and of what is printed. English. */

/** Lines of the drawer, read back or refused. What a line is written in stays the same in every language. */
export const READING = {
  head: ['kind', 'name', 'style or spindle', 'chamfer or torque', 'rpm'],
  tap: 'Tap {thread}, {style}, {chamfer}',
  styles: {
    'spiral-point': 'spiral point',
    'spiral-flute': 'spiral flute',
    'straight-flute': 'straight flute',
    form: 'form',
  },
  chamfers: {
    taper: 'taper, 6–10 threads',
    plug: '3–5 threads',
    'semi-bottoming': '2–3 threads',
    bottoming: '1–2 threads',
  },
  drill: 'Drill {name}',
  machine: 'Machine {name}',
  notKind: 'Start the line with tap, drill or machine.',
  notStyle:
    '“{typed}” is no kind of tap known here. Write spiral point, spiral flute, straight flute or form.',
  notChamfer:
    '“{typed}” is no chamfer known here. Write its threads, like 2-3, or its class or form letter.',
  notDrill: 'There is no stocked drill “{typed}”. Write it like 6.8, 27/64, #7 or F.',
  noMachine: 'The machine needs a name.',
  notDrive:
    '“{typed}” is no spindle known here. Write synchronous, floating, reversing head or hand.',
  notTorque: '“{typed}” must be a torque, like 30 or 22 lbf·ft.',
  notSpeed: '“{typed}” must be a number of turns a minute, like 4000.',
};

/** Columns of the kept holes in a spreadsheet. */
export const SHEET_HEAD = [
  'job',
  'part',
  'operation',
  'machine',
  'hole',
  'count',
  'thread',
  'kind',
  'material',
  'tap',
  'drill',
  'shoulder mm',
  'tap to mm',
  'full thread mm',
  'speed',
  'feed mm/rev',
];

export const MADE = 'Made {day} by {site} {version}.';

/** The part of the worked example. */
export const EXAMPLE_PART = 'Pump cover PC-16';
