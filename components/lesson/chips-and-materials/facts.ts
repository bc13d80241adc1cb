/** Numbers in the text of the lesson on chips and materials, from the core's own studies. */

import { PACKED_BULKING } from '../../../core/chips/room';
import { findMaterial } from '../../../core/material/table';
import type { MaterialId } from '../../../core/material/material';
import type { HoleRequest } from '../../../core/plan/types';
import { chamferStudy } from '../../../core/plan/chamfer-study';
import { bothLengths, decimals, limitLength } from '../../words';
import { tapName } from '../../words/names';
import { planned } from '../planned';
import { CHIP_JOBS } from './jobs';
import { roomOfChips } from './room';

const { solid, section, packed } = roomOfChips();
const of = (id: MaterialId) => {
  const material = findMaterial(id);
  if (!material) throw new Error(`No material ${id}.`);
  return material;
};

function best(request: HoleRequest): string {
  const plan = planned(request);
  const tap = plan.taps.find(({ verdict }) => verdict === 'best');
  if (!tap) throw new Error(`No tap suits ${request.thread}.`);
  const name = tapName(tap, plan.thread.system);
  return name.charAt(0).toLowerCase() + name.slice(1);
}

function chipAt(threads: number): string {
  const study = chamferStudy(CHIP_JOBS.sleeve, 'straight-flute', threads);
  if (!study.ok) throw new Error(`No chamfer study of ${CHIP_JOBS.sleeve.thread}.`);
  const { chip } = study.value.here;
  return `${limitLength(chip, 'mm')} (${limitLength(chip, 'in')})`.replace(
    /(\d) (mm|in)/g,
    '$1\u00a0$2',
  );
}

const longest = packed.find(({ bulk }) => bulk === 'long')!.room;
/** Metal of a hole for the reader to work out, mm³. */
const METAL = 150;

export const chipFacts = {
  fluteTimes: decimals(section / solid, 0),
  shortTimes: decimals(PACKED_BULKING.short, 0),
  mediumTimes: decimals(PACKED_BULKING.medium, 0),
  longTimes: decimals(PACKED_BULKING.long, 0),
  longOverFlute: decimals(longest / section, 0),
  voluteTap: best(CHIP_JOBS.volute),
  coverTap: best(CHIP_JOBS.cover),
  capTap: best(CHIP_JOBS.cap),
  sleeveTap: best(CHIP_JOBS.sleeve),
  plugThreads: '4',
  taperThreads: '8',
  plugChip: chipAt(4),
  taperChip: chipAt(8),
  slowest: decimals(of('stainless-austenitic').speed?.min ?? 0, 0),
  voluteThread: bothLengths(CHIP_JOBS.volute.fullThread ?? 0),
  capThread: bothLengths(CHIP_JOBS.cap.fullThread ?? 0, 'in'),
  metal: METAL,
  packed: METAL * PACKED_BULKING.long,
  packedShort: METAL * PACKED_BULKING.short,
  packedMedium: METAL * PACKED_BULKING.medium,
} as const;
