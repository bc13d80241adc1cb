/** Speed, feed and time of a tapping cycle. */

import type { Range } from '../units';
import type { Material } from '../material/material';

/** Surface speed is cut to this share in threads deeper than 2 and 3 diameters. Common practice. */
export function depthFactor(fullThread: number, major: number): number {
  if (fullThread > 3 * major) return 0.5;
  return fullThread > 2 * major ? 0.7 : 1;
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
 * Range of spindle speeds for a material and thread, rev/min, and one to start from (the geometric
 * middle). `major` and `fullThread` mm; `maxRpm` limits both. Null where HSS does not tap the material.
 * Source: `speed-charts`.
 */
export function tappingSpeed(
  material: Pick<Material, 'speed'>,
  major: number,
  fullThread: number,
  maxRpm = Infinity,
): { rpm: number; range: Range } | null {
  if (!material.speed) return null;
  const factor = depthFactor(fullThread, major);
  const min = rpmFor(material.speed.min * factor, major);
  const max = rpmFor(material.speed.max * factor, major);
  const middle = shopRpm(Math.sqrt(min * max));
  return {
    rpm: Math.min(middle, maxRpm),
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
