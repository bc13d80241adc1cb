/** Torque against the travel of the tap: in, through or to the stop, and the way back. */

import type { StrokeBend } from '../../core/load/stroke-curve';
import type { StrokeBand } from '../../core/plan/stroke-band';
import { mmToInch } from '../../core/units';
import { decimals, lengthNumber, significant, torque, type Unit } from '../words/format';
import { fill } from '../words/template';
import type { Chart, Series, Zone } from './types';
import { STROKE_CHART as WORDS } from '../words/en/charts/stroke';

export interface StrokeChartModel {
  band: StrokeBand;
  /** Thread, material, tap and hole in a few words. */
  conditions: string;
  /** What a form tap or a worn one is called here; `cut` reads of chips and teeth. */
  process: 'cut' | 'form';
  blind: boolean;
  unit: Unit;
}

/** What the curve shows first: the finding. */
function titleOf({ band, process, blind }: StrokeChartModel): string {
  const buried = band.bends.some(({ at }) => at === 'buried');
  if (band.crossed) return WORDS.titles.crossed;
  if (!buried) return WORDS.titles.thin;
  if (process === 'form') return WORDS.titles.form;
  return blind ? WORDS.titles.blind : WORDS.titles.through;
}

/** The stages of the stroke between its bends, named under the axis. */
function stages({ bends, points }: StrokeBand, at: (mm: number) => number): Zone[] {
  const end = points[points.length - 1]?.travel ?? 0;
  const travelOf = (bend: StrokeBend) => bends.find((each) => each.at === bend)?.travel;
  const [buried, noseOut, out] = [
    travelOf('buried'),
    travelOf('nose-out'),
    travelOf('chamfer-out'),
  ];
  const entered = Math.min(buried ?? Infinity, noseOut ?? Infinity, end);
  const zone = (from: number, to: number, name: keyof typeof WORDS.stages): Zone[] =>
    to - from > end / 50 ? [{ from: at(from), to: at(to), label: WORDS.stages[name] }] : [];
  return [
    ...zone(0, entered, 'enters'),
    ...(buried === undefined ? [] : zone(buried, noseOut ?? end, 'full')),
    ...(noseOut === undefined ? [] : zone(noseOut, out ?? end, 'leaves')),
  ];
}

/** Builds the chart; travel in mm, torque in N·m. */
export function strokeChart(model: StrokeChartModel): Chart {
  const { band, unit, conditions, blind } = model;
  const at = (mm: number) => (unit === 'mm' ? mm : mmToInch(mm));
  const inward: Series = {
    label: WORDS.inward,
    strong: true,
    look: 0,
    data: band.points.map(({ travel, low, expected, high }) => ({
      x: at(travel),
      low,
      mid: expected,
      high,
    })),
  };
  const whole: Series = {
    label: WORDS.whole,
    look: 1,
    data: band.points.map((point) => ({ x: at(point.travel), mid: point.whole })),
  };
  const back: Series = {
    label: WORDS.back,
    look: 2,
    data: band.points.map((point) => ({ x: at(point.travel), mid: point.back })),
  };
  const peak = torque(band.peak.torque, unit);
  return {
    title: titleOf(model),
    subtitle: fill(WORDS.subtitle, { conditions }, unit),
    description: WORDS.descriptions[blind ? 'blind' : 'through'],
    bands: WORDS.bands[model.process],
    x: {
      label: WORDS.x,
      unit,
      write: (value) => (unit === 'mm' ? lengthNumber(value, 'mm') : decimals(value, 3, 3)),
    },
    panels: [
      {
        y: {
          label: WORDS.y,
          unit: 'N·m',
          write: (value) => (value === 0 ? '0' : significant(value, 2)),
        },
        series: band.crossed ? [inward, whole, back] : [inward, back],
        here: {
          x: at(band.peak.travel),
          y: band.peak.torque,
          label: [fill(WORDS.peak, { torque: peak }, unit)],
        },
      },
    ],
    zones: stages(band, at),
  };
}
