/** Which of the usual cautions belong beside this hole. */

import { findMaterial } from '../../core/material/table';
import type { HoleRequest } from '../../core/plan/types';
import type { CautionId } from '../words';

export function cautionsFor(request: HoleRequest): CautionId[] {
  const byHand = request.spindle?.drive === 'hand';
  const material = findMaterial(request.material);
  return [
    ...(byHand
      ? (['hand-tapping', 'sharp-tools'] as const)
      : (['entanglement', 'part-spins', 'reaching-in'] as const)),
    'flying-chips',
    'chips-by-hand',
    ...(request.hole.kind === 'blind' ? (['compressed-air'] as const) : []),
    'fluid',
    ...(material?.dust ? (['dust'] as const) : []),
    ...(material?.swarfFire ? (['swarf-fire'] as const) : []),
  ];
}
