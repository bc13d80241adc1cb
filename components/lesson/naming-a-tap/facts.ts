/** Numbers and names in the text of the lesson, from the plans of its jobs. */

import { bothLengths, length, tapName, threadRange } from '../../words';
import { roughLength } from '../../words/format';
import { chamferOf } from '../../../core/chamfer/classes';
import { numberOf, planned, tapOf } from '../planned';
import { NAMING_JOBS } from './jobs';

const housing = planned(NAMING_JOBS.housing);
const housingPoint = tapOf(housing, 'spiral-point', 'plug');
const best = (plan: typeof housing) => {
  const tap = plan.taps.find(({ verdict }) => verdict === 'best');
  if (!tap) throw new Error(`No tap suits ${plan.thread.designation}.`);
  const name = tapName(tap, plan.thread.system);
  return name.charAt(0).toLowerCase() + name.slice(1);
};
const inch = (name: Parameters<typeof chamferOf>[0]) =>
  threadRange(chamferOf(name, 'inch').threads);

/** Threads of chamfer that the reader counts on an M8 tap. */
const COUNTED = 4;
const { pitch } = housing.thread;

export const namingFacts = {
  counted: COUNTED,
  pitch,
  slope: COUNTED * pitch,
  slopeText: bothLengths(COUNTED * pitch),
  room: roughLength(numberOf(housingPoint.reasons, 'chips-ahead-no-room', 'needed'), 'mm'),
  have: length(numberOf(housingPoint.reasons, 'chips-ahead-no-room', 'have'), 'mm'),
  housingTap: best(housing),
  bracketTap: best(planned(NAMING_JOBS.bracket)),
  galleryTap: best(planned(NAMING_JOBS.gallery)),
  taper: inch('taper'),
  plug: inch('plug'),
  formB: threadRange(chamferOf('plug', 'metric').threads),
  semiBottoming: inch('semi-bottoming'),
  bottoming: inch('bottoming'),
} as const;
