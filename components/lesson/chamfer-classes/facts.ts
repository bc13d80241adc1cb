/** Numbers in the text of the lesson on chamfer classes, from the study of its holes. */

import { chamferOf, FORM_F } from '../../../core/chamfer/classes';
import type { ChamferClass } from '../../../core/chamfer/chamfer';
import { roomBelowThread, STOP_CLEARANCE } from '../../../core/hole/depth';
import { chamferStudy } from '../../../core/plan/chamfer-study';
import type { HoleRequest } from '../../../core/plan/types';
import {
  bothLengths,
  force,
  length,
  limitLength,
  percent,
  threadRange,
  torque,
  type Unit,
} from '../../words';
import { planned, tapOf } from '../planned';
import { COVER, PLATE } from './jobs';

/** Chamfers the text compares, threads: the middle of a short metric one and a common long one. */
const SHORT = 1.5;
const LONG = 5;
/** A taper chamfer of an inch hand tap. */
const TAPER = 8;

function study(request: HoleRequest, threads: number) {
  const outcome = chamferStudy(request, 'straight-flute', threads);
  if (!outcome.ok) throw new Error(`No chamfer study of ${request.thread}.`);
  return outcome.value;
}

const [short, long] = [study(PLATE, SHORT).here, study(PLATE, LONG).here];
const rubbing = study(COVER, TAPER);
const { pitch } = planned(PLATE).thread;
/** A chamfer of four threads, for the reader to work out: its end below the full thread, and with room to stop. */
const fourChain = { pitch, chamferThreads: 4, centre: 0, clearance: 0 };
const range = (name: ChamferClass, system: 'inch' | 'metric') =>
  threadRange(chamferOf(name, system).threads);
const room = (name: ChamferClass) =>
  length(
    roomBelowThread({
      pitch,
      chamferThreads: chamferOf(name, 'metric').threads.max,
      centre: 0,
      clearance: STOP_CLEARANCE.synchronous,
    }),
    'mm',
  );

/** Room below the full thread of a blind hole for the longest of a class, on a synchronous spindle. */
function blindReach(thread: string, name: ChamferClass, first: Unit): string {
  const plan = planned({ thread, hole: { kind: 'blind' }, material: 'steel-medium' });
  const tap = tapOf(plan, 'spiral-flute', name);
  return bothLengths(tap.depth.shoulder - tap.depth.fullThread, first);
}

export const chamferFacts = {
  short: String(SHORT),
  long: String(LONG),
  shortLoad: force(short.toothLoad),
  longLoad: force(long.toothLoad),
  shareOfShort: percent(long.toothLoad / short.toothLoad),
  share: long.toothLoad / short.toothLoad,
  shortTorque: torque(short.torque.expected),
  shortLow: torque(short.torque.low),
  shortHigh: torque(short.torque.high),
  shortChip: limitLength(short.chip, 'mm'),
  longChip: limitLength(long.chip, 'mm'),
  taper: String(TAPER),
  taperChip: limitLength(rubbing.here.chip, 'mm'),
  pitch,
  four: roomBelowThread(fourChain),
  fourAndStop: roomBelowThread({ ...fourChain, clearance: STOP_CLEARANCE.synchronous }),
  fourText: bothLengths(roomBelowThread(fourChain)),
  bottomingRoom: room('bottoming'),
  plugRoom: room('plug'),
  inch: {
    taper: range('taper', 'inch'),
    plug: range('plug', 'inch'),
    semiBottoming: range('semi-bottoming', 'inch'),
    bottoming: range('bottoming', 'inch'),
  },
  metric: {
    plug: range('plug', 'metric'),
    bottoming: range('bottoming', 'metric'),
  },
  formF: threadRange(FORM_F.threads),
  blind: {
    plug: blindReach('M10x1.5-6H', 'plug', 'mm'),
    semi: blindReach('M10x1.5-6H', 'semi-bottoming', 'mm'),
  },
  blindInch: {
    plug: blindReach('3/8-16 UNC-2B', 'plug', 'in'),
    semi: blindReach('3/8-16 UNC-2B', 'semi-bottoming', 'in'),
  },
} as const;
