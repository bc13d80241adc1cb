/** Which of the usual cautions belong beside this hole. */

import { findMaterial } from '../../core/material/table';
import type { HoleRequest } from '../../core/plan/types';
import type { CautionId } from '../words';

/** By hand too the hole is drilled first, by something that turns. */
const BY_HAND: readonly CautionId[] = [
  'hand-tapping',
  'entanglement',
  'part-spins',
  'key-left-in',
  'sharp-tools',
];

const BY_MACHINE: readonly CautionId[] = ['entanglement', 'part-spins', 'reaching-in'];

/** A hole that breaks into something which somebody will want to close while it is tapped. */
function breaksInto({ hole, crossing }: HoleRequest): boolean {
  return (hole.kind === 'through' && hole.chipsMayFall === false) || crossing !== undefined;
}

export function cautionsFor(request: HoleRequest): CautionId[] {
  const { hole, later, spindle } = request;
  const material = findMaterial(request.material);
  return [
    ...(spindle?.drive === 'hand' ? BY_HAND : BY_MACHINE),
    'flying-chips',
    'chips-by-hand',
    ...(hole.kind === 'blind' ? (['compressed-air'] as const) : []),
    ...(breaksInto(request) ? (['wound-in'] as const) : []),
    ...(later?.includes('weld') ? (['welding'] as const) : []),
    'fluid',
    ...(material?.dust ? (['dust'] as const) : []),
    ...(material?.swarfFire ? (['swarf-fire'] as const) : []),
  ];
}
