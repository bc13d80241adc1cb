/** The drawing of the blind-hole calculator, from the core's own depths. */

import type { HoleFacts } from '../../drawing/holeFacts';
import { drillName, limitNumber, type Unit } from '../../words/format';
import type { DepthAnswer } from './state';

/** The hole with the tap that was chosen, or with the longest chamfer that it has room for. */
export function factsOf({ study, chamfer, pointAngle }: DepthAnswer, unit: Unit): HoleFacts {
  const { thread, promised, middle, hole, drill } = study;
  const threads = chamfer?.threads ?? { min: promised.threads, max: promised.threads };
  return {
    designation: thread.designation,
    hand: thread.hand,
    through: false,
    major: thread.diameter,
    hole,
    pitch: thread.pitch,
    drill: drill ? drillName(drill) : `${limitNumber(hole, unit)} ${unit}`,
    fullThread: promised.fullThread,
    asked: promised.fullThread,
    short: 0,
    tap: {
      style: 'spiral-flute',
      body: promised.fullThread,
      nose: promised.nose,
      tip: promised.tip,
      chamfer: promised.nose - promised.fullThread,
      threads,
      middleTip: middle.tip,
    },
    shoulder: promised.shoulder,
    point: pointAngle === 180 ? promised.shoulder : promised.point,
    limit: null,
    clearBelow: null,
    strikes: 0,
  };
}
