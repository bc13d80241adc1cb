/** Whether a spindle has the torque for one tap, at which speeds, and what power has to do with it. */

import type { ChamferClass } from '../chamfer/chamfer';
import { tappingSpeed } from '../cycle/speed';
import { spindleCurve, torqueAt, type SpindleCurve, type SpindlePoint } from '../cycle/spindle';
import {
  sharedSpeeds,
  spindleLoad,
  speedsWithTorque,
  type SpindleLoad,
} from '../cycle/spindle-speeds';
import { answer, refuse, type Outcome } from '../outcome';
import { WORN } from '../tap/styles';
import type { Range } from '../units';
import { jobOf } from './prepare';
import { tapLoads, usualChamfer, type LoadedStyle, type TapLoad } from './tap-load';
import type { HoleRequest } from './types';
import { SPINDLE_WATCH } from './warnings';

export interface SpindleQuestion {
  request: HoleRequest;
  style: LoadedStyle;
  chamfer?: ChamferClass | undefined;
  points: readonly SpindlePoint[];
  /** Speed that is meant to be run, rev/min; from the material's range if left out. */
  rpm?: number | undefined;
  /** Sharp torque as measured, N·m, in place of the predicted one. */
  torque?: number | undefined;
}

/**
 * `in`: a worn tap leaves a tenth over; `tight`: it does not, but the spindle still turns it; `over`: it
 * stalls; `off-curve`: the points say nothing of this speed.
 */
export type SpindleVerdict = 'in' | 'tight' | 'over' | 'off-curve';

export interface SpindleStudy {
  load: TapLoad;
  curve: SpindleCurve;
  /** N·m, sharp and worn; `measured` where it was not predicted. */
  needed: { sharp: number; worn: number; measured: boolean };
  /** rev/min: the material's range, the speed looked at and whether it was chosen for the reader. */
  range: Range;
  rpm: number;
  rpmGiven: boolean;
  sharp: SpindleLoad;
  worn: SpindleLoad;
  verdict: SpindleVerdict;
  /** Speeds with a tenth over for a worn tap, at all and within the material's range, rev/min. */
  speeds: Range[];
  within: Range[];
}

function verdictOf(worn: SpindleLoad): SpindleVerdict {
  if (worn.share === null) return 'off-curve';
  if (worn.share > 1) return 'over';
  return worn.share > SPINDLE_WATCH ? 'tight' : 'in';
}

/** The usual speed, or a shop speed near it at which the spindle has the torque. */
function speedFor(usual: number, within: readonly Range[]): number {
  const nearest = within
    .map(({ min, max }) => {
      if (usual >= min && usual <= max) return usual;
      const step = max < 100 ? 5 : 10;
      const [up, down] = [Math.ceil(min / step) * step, Math.floor(max / step) * step];
      if (up > down) return (min + max) / 2;
      return usual < min ? up : down;
    })
    .sort((a, b) => Math.abs(a - usual) - Math.abs(b - usual))[0];
  return nearest ?? usual;
}

/**
 * Sets one tap's torque against a spindle's curve. Lengths mm, N·m, rev/min; for ranges see `HoleRequest` and `spindleCurve`. Refuses as `tapLoads` and
 * `spindleCurve` do, and with `tap-not-planned` where that tap is never made.
 * Sources: `tap-chip-model`, `speed-charts`, `common-practice`, derived.
 */
export function spindleStudy(question: SpindleQuestion): Outcome<SpindleStudy> {
  const { request, style, points } = question;
  const curve = spindleCurve(points);
  if (!curve.ok) return curve;
  const job = jobOf(request);
  if (!job.ok) return job;
  const { material, major, fullThread } = job.value;
  const loads = tapLoads(request, question.chamfer ?? usualChamfer(request));
  if (!loads.ok) return loads;
  const load = loads.value.find((each) => each.style === style);
  const speed = tappingSpeed(material, major, fullThread, request.spindle?.maxRpm);
  if (!load || !speed) return refuse({ code: 'tap-not-planned', field: 'tap' });
  const sharp = question.torque ?? load.torque.expected;
  const needed = { sharp, worn: WORN * sharp, measured: question.torque !== undefined };
  const wanted = needed.worn / SPINDLE_WATCH;
  const within = sharedSpeeds(curve.value, wanted, speed.range);
  const rpm = question.rpm ?? speedFor(speed.rpm, within);
  const worn = spindleLoad(curve.value, needed.worn, rpm);
  return answer(
    {
      load,
      curve: curve.value,
      needed,
      range: speed.range,
      rpm,
      rpmGiven: question.rpm !== undefined,
      sharp: spindleLoad(curve.value, needed.sharp, rpm),
      worn,
      verdict: verdictOf(worn),
      speeds: speedsWithTorque(curve.value, wanted),
      within,
    },
    job.notes,
  );
}

/**
 * The curve in points close enough to draw straight lines through: rev/min and N·m. Source: derived from
 * the points typed.
 */
export function drawnCurve(curve: SpindleCurve, count = 60): SpindlePoint[] {
  const { points } = curve;
  const [first, last] = [points[0], points[points.length - 1]];
  if (!first || !last || points.length === 1) return [...points];
  const even = Array.from(
    { length: count + 1 },
    (_, index) => first.rpm + ((last.rpm - first.rpm) * index) / count,
  );
  const speeds = [...even.slice(1, -1), ...points.map(({ rpm }) => rpm)].sort((a, b) => a - b);
  return [...new Set(speeds)].flatMap((rpm) => {
    const torque = torqueAt(curve, rpm);
    return torque === null ? [] : [{ rpm, torque }];
  });
}
