/** A load meter's reading as torque: what it shows above idling, of what the spindle gives at that speed. */

import { answer, refuse, type Outcome } from '../outcome';
import { torqueAt, type SpindleCurve } from './spindle';

export interface MeterReading {
  /** Highest reading in the cut and reading with the spindle turning free, percent. */
  percent: number;
  idle: number;
  /** rev/min */
  rpm: number;
}

export const METER_PROBLEM_CODES = [
  'meter-out-of-range',
  'meter-idle-over-reading',
  'meter-speed-off-curve',
] as const;

/** A meter that shows more than this is read wrongly, percent. */
const MOST = 250;

/**
 * Torque behind a reading, N·m. Meters are slow and coarse, so a tap's short peak reads low: use the
 * highest of several holes. `percent` and `idle` 0 to 250. Refuses with `METER_PROBLEM_CODES`.
 * Source: `common-practice`.
 */
export function torqueFromMeter(reading: MeterReading, curve: SpindleCurve): Outcome<number> {
  const { percent, idle, rpm } = reading;
  const inside = (value: number) => Number.isFinite(value) && value >= 0 && value <= MOST;
  if (!inside(percent) || percent === 0 || !inside(idle)) {
    const data = { typed: String(inside(percent) && percent > 0 ? idle : percent) };
    return refuse({ code: 'meter-out-of-range', field: 'percent', data });
  }
  if (idle >= percent) {
    return refuse({
      code: 'meter-idle-over-reading',
      field: 'idle',
      data: { typed: String(idle) },
    });
  }
  const given = torqueAt(curve, rpm);
  if (given === null) {
    return refuse({ code: 'meter-speed-off-curve', field: 'rpm', data: { typed: String(rpm) } });
  }
  return answer(((percent - idle) / 100) * given);
}
