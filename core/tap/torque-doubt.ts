/**
 * How far the inputs of a torque are known, and what that makes of the answer: where nine in ten would
 * lie, and which input moves it most. The spreads are stated here, one by one, so that each can be argued
 * with. They say nothing of what the model leaves out; the band on every torque does.
 */

import { formHoleFactor } from '../load/forming';
import { peakTorque, type CuttingTorqueInput } from '../load/torque';
import { publishedFactor, thinningFactor } from '../load/chamfer-curve';
import { propagate, swings, type Spread, type Spread90, type Swing } from '../spread';
import { STYLES, WEAR } from './styles';
import { SECTION_SPREAD, STEEL_SPREAD, twistOff } from './twist';
import type { TwistedStyle } from './web';

export type DoubtfulInput =
  | 'reading'
  | 'material'
  | 'hole'
  | 'style'
  | 'chamfer'
  | 'rubbing'
  | 'wear'
  | 'web'
  | 'section'
  | 'steel';

/** Scatter of specific force within one of the handbook's materials, as a factor. From memory. */
const MATERIAL: Spread = { low: 0.85, likely: 1, high: 1.2 };

/** Rubbing of the guiding threads may be half or twice what is assumed. A modelling assumption. */
const RUBBING: Spread = { low: 0.5, likely: 1, high: 2 };

export interface DoubtInput {
  cut: CuttingTorqueInput;
  style: TwistedStyle;
  /** Every other factor on the torque: fluid, and what the shop measured. */
  factor: number;
  /** Hole as it may turn out, mm. For a form tap its own hole; `cut.hole` is then the cutting tap's. */
  hole: Spread;
  web: Spread;
  /** Band that a torque read on the machine leaves, as a factor; it takes the place of what the model doubts. */
  read?: number | undefined;
}

export interface TorqueDoubt {
  /** N·m, sharp and worn. */
  torque: Spread90;
  worn: Spread90;
  /** Shares of the breaking torque, sharp and worn. */
  share: Spread90;
  wornShare: Spread90;
  /** N·m that the sharp torque becomes, and the worn share, when one input alone goes to its ends. */
  torqueSwings: Swing<DoubtfulInput>[];
  shareSwings: Swing<DoubtfulInput>[];
  /** The spreads they come from: mm for hole and web, factors for the rest. */
  inputs: Record<DoubtfulInput, Spread>;
}

type Values = Record<DoubtfulInput, number>;

const point = (value: number): Spread => ({ low: value, likely: value, high: value });

function chamferSpread({ cut, style }: DoubtInput): Spread {
  if (style === 'form') return { low: 1, likely: 1, high: 1 };
  const thinning = thinningFactor(cut, cut.threads, cut.flutes, cut.material);
  const published = publishedFactor(cut, cut.threads);
  return {
    low: Math.min(1, thinning, published.low),
    likely: 1,
    high: Math.max(1, thinning, published.high),
  };
}

/** The stated spread of each input. mm and factors. Sources: on each constant. */
export function doubtfulInputs(input: DoubtInput): Record<DoubtfulInput, Spread> {
  const { low, middle, high } = STYLES[input.style].torque;
  const { read } = input;
  const known = (spread: Spread) => (read === undefined ? spread : point(spread.likely));
  return {
    reading: read === undefined ? point(1) : { low: 1 / read, likely: 1, high: read },
    material: known(MATERIAL),
    hole: input.hole,
    style: known({ low, likely: middle, high }),
    chamfer: known(chamferSpread(input)),
    rubbing: known(RUBBING),
    wear: WEAR,
    web: input.web,
    section: SECTION_SPREAD,
    steel: STEEL_SPREAD,
  };
}

function sharpTorque(input: DoubtInput, values: Values): number {
  const { cut, style, factor } = input;
  const friction = cut.material.friction * values.rubbing;
  const formed = style === 'form';
  const hole = formed ? cut.hole : values.hole;
  const straight = peakTorque({ ...cut, hole, material: { ...cut.material, friction } });
  const inHole = formed ? formHoleFactor({ ...cut, hole: values.hole }, input.hole.likely) : 1;
  return (
    straight * inHole * values.reading * values.material * values.style * values.chamfer * factor
  );
}

/**
 * Propagates the stated spreads by drawing 2,000 seeded sets, and moves each input alone for the swings.
 * Lengths mm, torque N·m. Sources: derived, and those of the spreads.
 */
export function torqueDoubt(input: DoubtInput): TorqueDoubt {
  const inputs = doubtfulInputs(input);
  const breaks = (values: Values) => twistOff(values.web, values.section, values.steel);
  const spreads = propagate(inputs, (values) => {
    const torque = sharpTorque(input, values);
    const share = torque / breaks(values);
    const { wear } = values;
    return { torque, worn: torque * wear, share, wornShare: share * wear };
  });
  const moved = (all: Swing<DoubtfulInput>[]) => all.filter(({ low, high }) => high - low > 1e-12);
  return {
    ...spreads,
    inputs,
    torqueSwings: moved(swings(inputs, (values) => sharpTorque(input, values))),
    shareSwings: moved(
      swings(inputs, (values) => (sharpTorque(input, values) * values.wear) / breaks(values)),
    ),
  };
}
