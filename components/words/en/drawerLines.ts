/** Words of the drawer's lines, of the kept holes' spreadsheet and of what is printed. English. */

import type { ChamferClass } from '../../../core/chamfer/chamfer';
import { chamferOf } from '../../../core/chamfer/classes';
import { threadRange } from '../format';

/** A drawer holds both systems: from the shorter of the two ranges to the longer. */
const anyOf = (name: ChamferClass) => {
  const [inch, metric] = [chamferOf(name, 'inch').threads, chamferOf(name, 'metric').threads];
  return threadRange({
    min: Math.min(inch.min, metric.min),
    max: Math.max(inch.max, metric.max),
  });
};

const ANY = {
  taper: anyOf('taper'),
  plug: anyOf('plug'),
  'semi-bottoming': anyOf('semi-bottoming'),
  bottoming: anyOf('bottoming'),
};

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
    taper: `taper, ${ANY.taper} threads`,
    plug: `${ANY.plug} threads`,
    'semi-bottoming': `${ANY['semi-bottoming']} threads`,
    bottoming: `${ANY.bottoming} threads`,
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

/** The part of the worked example. */
export const EXAMPLE_PART = 'Pump cover PC-16';
