/** The drawing of the chip-room calculator: the tap at its deepest, and the room below it. */

import type { HoleFacts } from '../../drawing/holeFacts';
import { drillName, limitNumber, type Unit } from '../../words/format';
import type { RoomAnswer } from './state';

/** The hole and the spiral-point tap in it, with the longest chamfer of its class. */
export function factsOf({ study, fullThread, shoulder }: RoomAnswer, unit: Unit): HoleFacts {
  const { thread, hole, drill, chamfer, tip, point } = study;
  return {
    designation: thread.designation,
    hand: thread.hand,
    through: false,
    major: thread.diameter,
    hole,
    pitch: thread.pitch,
    drill: drill ? drillName(drill) : `${limitNumber(hole, unit)} ${unit}`,
    fullThread,
    asked: fullThread,
    short: 0,
    tap: {
      style: 'spiral-point',
      body: fullThread,
      nose: tip,
      tip,
      chamfer: tip - fullThread,
      threads: chamfer.threads,
      middleTip: tip,
    },
    shoulder,
    point,
    limit: null,
    clearBelow: null,
    strikes: 0,
  };
}
