/** What the live figure says of each material and hole, planned while the page is built. */

import { chipCourse } from '../../../core/chips/direction';
import { faceLean } from '../../../core/chips/face';
import { PACKED_BULKING } from '../../../core/chips/room';
import { chipsShort, findMaterial } from '../../../core/material/table';
import type { MaterialId } from '../../../core/material/material';
import type { HoleRequest } from '../../../core/plan/types';
import type { TapStyle } from '../../../core/tap/tap';
import { tapName } from '../../words/names';
import { planned } from '../planned';
import { RING } from './jobs';
import type { HoleName, MaterialCase } from './told';

const HOLES: Record<HoleName, HoleRequest['hole']> = {
  blind: { kind: 'blind' },
  through: { kind: 'through', thickness: RING.thickness },
  closed: { kind: 'through', thickness: RING.thickness, chipsMayFall: false },
};

/** The face that a style cuts with, and so the way its chip goes. */
function leanOf(style: TapStyle): number | null {
  if (style === 'spiral-point') return faceLean('gash', 'right');
  if (style === 'spiral-flute') return faceLean('climbs-right', 'right');
  return style === 'straight-flute' ? faceLean('straight', 'right') : null;
}

function first(id: MaterialId, hole: HoleName): MaterialCase['taps'][HoleName] {
  const plan = planned({
    thread: RING.thread,
    fullThread: RING.fullThread,
    hole: HOLES[hole],
    material: id,
  });
  const best = plan.taps.find(({ verdict }) => verdict === 'best');
  if (!best) return null;
  const lean = leanOf(best.style);
  return {
    name: tapName(best, plan.thread.system),
    lean,
    course: lean === null ? 'none' : chipCourse(lean, 'right'),
  };
}

/** One material with the planner's first tap for each hole. */
export function materialCase(id: MaterialId): MaterialCase {
  const material = findMaterial(id);
  if (!material) throw new Error(`No material ${id}.`);
  const { chips, workHardens, springsBack, dust, swarfFire } = material;
  return {
    id,
    chips,
    short: chipsShort(chips),
    factor: PACKED_BULKING[chips],
    traits: { workHardens, springsBack, dust, swarfFire },
    taps: {
      blind: first(id, 'blind'),
      through: first(id, 'through'),
      closed: first(id, 'closed'),
    },
  };
}
