/** Speed, feed and time of a tapping cycle. */

import type { Range } from '../units';
import type { Material } from '../material/material';

/** Slack for comparing depths, diameters: inches turned into mm must not tip a rule. */
const HAIR = 1e-6;

/** Surface speed is cut to this share in threads deeper than 2 and 3 diameters. mm. Common practice. */
export function depthFactor(fullThread: number, major: number): number {
  const diameters = fullThread / major - HAIR;
  if (diameters > 3) return 0.5;
  return diameters > 2 ? 0.7 : 1;
}

/**
 * Surface speeds at this depth of thread, m/min: cut down in deep threads, but in a metal that work-hardens
 * never below the slow end of its range, where a tap rubs instead of cutting. `factor`: what tool and fluid
 * make of it, slow and fast end. Null where HSS does not tap the material. mm. Source: `speed-charts`.
 */
export function surfaceSpeeds(
  { speed, workHardens }: Pick<Material, 'speed' | 'workHardens'>,
  major: number,
  fullThread: number,
  factor: Range = { min: 1, max: 1 },
): Range | null {
  if (!speed) return null;
  const deep = depthFactor(fullThread, major);
  const floor = workHardens ? speed.min : 0;
  return {
    min: Math.max(floor, speed.min * deep * factor.min),
    max: Math.max(floor, speed.max * deep * factor.max),
  };
}

/** Revolutions per minute for a surface speed in m/min at a diameter in mm (above 0). Derived. */
export function rpmFor(speed: number, diameter: number): number {
  return (1000 * speed) / (Math.PI * diameter);
}

/** Rounds a spindle speed to a step a setter would type: 5 below 100, 10 below 1000, else 50. Common practice. */
export function shopRpm(rpm: number): number {
  const step = rpm < 100 ? 5 : rpm < 1000 ? 10 : 50;
  return Math.max(step, Math.round(rpm / step) * step);
}

/**
 * A speed to start from, rev/min: the geometric middle of a range, as a setter would type it; rounding does not
 * take a work-hardening metal below the range. Common practice.
 */
export function startRpm(
  { workHardens }: Pick<Material, 'workHardens'>,
  min: number,
  max: number,
): number {
  const middle = shopRpm(Math.sqrt(min * max));
  return workHardens && middle < min ? Math.ceil(min) : middle;
}

/**
 * Range of spindle speeds for a material and thread, rev/min, and one to start from (the geometric
 * middle). `major` and `fullThread` mm; `maxRpm` limits both. Null where HSS does not tap the material.
 * Source: `speed-charts`.
 */
export function tappingSpeed(
  material: Pick<Material, 'speed' | 'workHardens'>,
  major: number,
  fullThread: number,
  maxRpm = Infinity,
): { rpm: number; range: Range } | null {
  const surface = surfaceSpeeds(material, major, fullThread);
  if (!surface) return null;
  const min = rpmFor(surface.min, major);
  const max = rpmFor(surface.max, major);
  return {
    rpm: Math.min(startRpm(material, min, max), maxRpm),
    range: { min: Math.min(min, maxRpm), max: Math.min(max, maxRpm) },
  };
}

/**
 * Seconds to tap in and out over `travel` mm at `rpm`, with spindle ramps where the acceleration
 * (rev/s²) is known. If the ramps meet, the set speed is never reached and the time says so.
 * Source: derived.
 */
export function cycleSeconds(
  travel: number,
  pitch: number,
  rpm: number,
  acceleration?: number,
): number {
  const turns = travel / pitch;
  const speed = rpm / 60;
  if (!acceleration) return (2 * turns) / speed;
  const rampTurns = speed ** 2 / acceleration;
  if (rampTurns > turns) return 4 * Math.sqrt(turns / acceleration);
  return 2 * (turns / speed + speed / acceleration);
}
