/** What oil takes off the torque, or its absence puts on. */

import type { Material } from '../material/material';
import type { SourceId } from '../sources';

export const FLUIDS = ['oil', 'dry'] as const;

/** `oil`: a cutting oil or paste, or a rich emulsion; `dry`: nothing, or air. */
export type Fluid = (typeof FLUIDS)[number];

/** Dry torque over oiled. Source: `measured-m3` (0.18 against 0.11 N·m in aluminium). */
const DRY = 1.6;

export interface FluidFactor {
  factor: number;
  /** False where the factor was measured in another metal and is only borrowed. */
  measured: boolean;
  source: SourceId;
}

/**
 * Factor of the fluid on torque, oil being 1. Measured in aluminium only; iron, brass and plastics are
 * commonly tapped dry without harm; elsewhere the figure for aluminium is borrowed and says so.
 * Sources: `measured-m3`, `common-practice`.
 */
export function fluidFactor(fluid: Fluid, material: Pick<Material, 'id' | 'group'>): FluidFactor {
  if (fluid === 'oil') return { factor: 1, measured: true, source: 'tap-chip-model' };
  const { id, group } = material;
  if (group === 'K' || group === 'O' || id === 'brass-free') {
    return { factor: 1, measured: false, source: 'common-practice' };
  }
  return { factor: DRY, measured: id.startsWith('al-'), source: 'measured-m3' };
}
