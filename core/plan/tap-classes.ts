/** One style of tap with every chamfer it is made with, in one hole. */

import { CHAMFER_CLASSES } from '../chamfer/chamfer';
import type { Fluid } from '../load/fluid';
import { tapLoads, type LoadedStyle, type TapLoad } from './tap-load';
import type { HoleRequest } from './types';

/**
 * The load on one style by class of chamfer, longest first; classes that are not made, or a hole that
 * cannot be planned, give nothing. Lengths mm, N·m. Sources: as `tapLoads`.
 */
export function classLoads(request: HoleRequest, style: LoadedStyle, fluid?: Fluid): TapLoad[] {
  return CHAMFER_CLASSES.flatMap((name) => {
    const loads = tapLoads(request, name, fluid);
    return loads.ok ? loads.value.filter((load) => load.style === style) : [];
  });
}
