/** Seconds for a hole against the programmed speed: a spindle that needs time to turn, and one that does not. */

import { cycleTime } from '../../../core/cycle/reach';
import { cycleSeconds } from '../../../core/cycle/speed';
import type { Chart } from '../../chart/types';
import { REACH } from '../../words/en/cycle';
import { decimals, seconds, type Unit } from '../../words/format';
import { fill } from '../../words/template';

export interface ReachCase {
  thread: string;
  pitch: number;
  /** mm from the start plane to the tip. */
  travel: number;
}

export interface ReachTrial {
  /** rev/min and rev/s²; null while what was typed is no such number. */
  rpm: number | null;
  acceleration: number | null;
}

export const RPM = { min: 200, max: 4000, step: 200 } as const;
export const ACCELERATION = { min: 5, max: 100, step: 5 } as const;

const SPEEDS = Array.from({ length: 39 }, (_, index) => RPM.min + 100 * index);

export interface Reached {
  chart: Chart;
  sentence: string;
}

/** Chart and sentence for a trial. */
export function reached(one: ReachCase, trial: ReachTrial, unit: Unit): Reached {
  const { pitch, travel } = one;
  const speed = trial.rpm ?? RPM.min;
  const acceleration = trial.acceleration ?? ACCELERATION.min;
  const time = cycleTime({ travel, pitch, rpm: speed, acceleration });
  const there = time.reached.in >= speed - 0.5;
  const values = {
    thread: one.thread,
    rpm: speed,
    reached: time.reached.in,
    time: seconds(time.total),
    ideal: seconds(cycleSeconds(travel, pitch, speed)),
    acceleration: decimals(acceleration, 0),
  };
  const sentence = fill(there ? REACH.there : REACH.short, values, unit);
  const line = (with_: number | undefined) =>
    SPEEDS.map((rpm) => ({ x: rpm, mid: cycleSeconds(travel, pitch, rpm, with_) }));
  return {
    sentence,
    chart: {
      title: REACH.title,
      subtitle: fill(REACH.subtitle, values, unit),
      description: fill(REACH.description, { sentence }, unit),
      x: {
        label: REACH.rpm,
        unit: 'rev/min',
        domain: [0, RPM.max],
        write: (value) => decimals(value, 0),
      },
      panels: [
        {
          y: { label: REACH.time, unit: 's', write: (value) => decimals(value, 2) },
          series: [
            { label: REACH.real, look: 0, strong: true, data: line(acceleration) },
            { label: REACH.atOnce, look: 1, data: line(undefined) },
          ],
          here: { x: speed, y: time.total, label: [values.time] },
        },
      ],
    },
  };
}
