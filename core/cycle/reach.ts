/** What a spindle's acceleration makes of a programmed speed: reached or not, overrun, time. */

import { cycleSeconds } from './speed';

/**
 * Highest speed that can be reached between two stops, rev/min: half the travel to speed up, half to
 * slow down. `acceleration` rev/s², `pitch` and `travel` mm, all above 0. Source: derived.
 */
export function reachableRpm(acceleration: number, pitch: number, travel: number): number {
  return 60 * Math.sqrt((acceleration * travel) / pitch);
}

/** Travel that the spindle needs to come to speed, mm; as much again to stop. Units as above. Source: derived. */
export function rampTravel(rpm: number, acceleration: number, pitch: number): number {
  return ((rpm / 60) ** 2 / (2 * acceleration)) * pitch;
}

/**
 * How far a tap in a floating holder runs on while a spindle that is not tied to the feed slows down,
 * mm. Needs the spindle's own deceleration: measure it, for belts and clutches differ. Source: derived.
 */
export function overrun(rpm: number, deceleration: number, pitch: number): number {
  return rampTravel(rpm, deceleration, pitch);
}

export interface CycleTime {
  in: number;
  out: number;
  total: number;
  /** Speed that is really reached on the way in and out, rev/min. */
  reached: { in: number; out: number };
}

/**
 * Seconds in and out over `travel` mm from the start plane to the tip. `retract`: speed out as a multiple
 * of the speed in, 1 where the control allows no more. `acceleration` rev/s², left out where not known:
 * then the spindle is taken to be at speed at once. Source: derived.
 */
export function cycleTime(question: {
  travel: number;
  pitch: number;
  rpm: number;
  retract?: number;
  acceleration?: number | undefined;
}): CycleTime {
  const { travel, pitch, rpm, retract = 1, acceleration } = question;
  const most = acceleration ? reachableRpm(acceleration, pitch, travel) : Infinity;
  const stroke = (speed: number) => cycleSeconds(travel, pitch, speed, acceleration) / 2;
  const [into, out] = [stroke(rpm), stroke(rpm * retract)];
  const reached = { in: Math.min(rpm, most), out: Math.min(rpm * retract, most) };
  return { in: into, out, total: into + out, reached };
}
