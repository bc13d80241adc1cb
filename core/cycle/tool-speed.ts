/** How much faster, or slower, than a plain HSS-E tap in oil: by substrate, coating and fluid. */

import type { Range } from '../units';

export const SUBSTRATES = ['hss', 'hss-powder', 'carbide'] as const;
/** What a tap may be made of, as a request names it. */
export const TAP_SUBSTRATES = ['hss', 'hss-e', 'pm', 'carbide'] as const;
export const COATINGS = ['plain', 'coated'] as const;
export const CYCLE_FLUIDS = ['oil', 'emulsion', 'dry'] as const;

export type Substrate = (typeof SUBSTRATES)[number];
export type TapCoating = (typeof COATINGS)[number];
export type CycleFluid = (typeof CYCLE_FLUIDS)[number];

const SUBSTRATE: Record<Substrate, Range> = {
  hss: { min: 1, max: 1 },
  'hss-powder': { min: 1, max: 1.3 },
  carbide: { min: 1.5, max: 2.5 },
};

/** A coating lets high-speed steel run half as fast again to twice as fast; carbide hardly needs it. */
const COATED = { steel: { min: 1.5, max: 2 }, carbide: { min: 1, max: 1.3 } } as const;

const PLAIN: Range = { min: 1, max: 1 };

function coatingFactor(substrate: Substrate, coating: TapCoating): Range {
  if (coating === 'plain') return PLAIN;
  return substrate === 'carbide' ? COATED.carbide : COATED.steel;
}

const FLUID: Record<CycleFluid, Range> = {
  oil: { min: 1, max: 1 },
  emulsion: { min: 0.8, max: 1 },
  dry: { min: 0.4, max: 0.7 },
};

/**
 * Factor on the surface speed of a plain HSS-E tap in oil, as a range: where shops differ, so does the
 * answer. No unit. Source: `common-practice`, within about a third.
 */
export function toolSpeedFactor(
  substrate: Substrate,
  coating: TapCoating,
  fluid: CycleFluid,
): Range {
  const parts = [SUBSTRATE[substrate], coatingFactor(substrate, coating), FLUID[fluid]];
  return {
    min: parts.reduce((product, { min }) => product * min, 1),
    max: parts.reduce((product, { max }) => product * max, 1),
  };
}
