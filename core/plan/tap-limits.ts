/** Which tap limit to order for a class, coated or bare. */

import type { TapLimit } from '../tap/limits';
import { judgeTapLimits } from '../tap/limits-judge';
import type { Job } from './job';
import { platingStudy } from './plating-study';

/**
 * The limits that printed lists name for the thread and class; with a coating the ones that leave the bare thread room
 * for it. Empty for pipe threads and where no list speaks. Sources: on each.
 */
export function tapLimitsFor({ thread, limits, request }: Job): TapLimit[] {
  if (!limits || thread.system === 'pipe') return [];
  const [, thick = 0] = request.coating?.thickness ?? [];
  if (request.coating && thick > 0) {
    const coated = platingStudy(thread, request.coating.thickness);
    return coated.ok ? coated.value.best.map(plain) : [];
  }
  return judgeTapLimits(thread, limits, limits.pitch, 'all')
    .filter(({ listed, verdict }) => listed !== null && verdict !== 'outside')
    .map(plain);
}

const plain = ({ system, number, name, unit, pitch, source }: TapLimit): TapLimit => ({
  system,
  number,
  name,
  unit,
  pitch,
  source,
});
