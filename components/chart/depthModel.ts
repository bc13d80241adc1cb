/** Full thread a hole can hold against how deep it is drilled, one band for each chamfer class. */

import { mmToInch } from '../../core/units';
import { say } from '../words/say';
import { decimals, length, lengthNumber, threadRange, type Unit } from '../words/format';
import type { Chart, Datum, Look, Series } from './types';
import { DEPTH_CHART } from '../words/en/charts/shared';

/**
 * mm throughout. Give the corners where an edge leaves zero among the points, for the lines between
 * points are straight. x is the shoulder's depth, low and high the full thread with the longest and shortest chamfer.
 */
export interface ChamferBand {
  threads: { min: number; max: number };
  /** The class in the trade's word. */
  name: string;
  data: readonly { x: number; low: number; mid?: number; high: number }[];
}

export interface DepthChartModel {
  title: string;
  subtitle: string;
  description: string;
  unit: Unit;
  bands: readonly ChamferBand[];
  /** Index of the band the plan uses. */
  chosen?: number;
  asked?: number;
  /** Deepest shoulder the drawing allows. */
  limit?: number;
  here?: { shoulder: number; fullThread: number };
  /** Part of the plane to show, mm; from zero to the data's end when missing. */
  domain?: { shoulder: readonly [number, number]; fullThread: readonly [number, number] };
}

function seriesOf(band: ChamferBand, index: number, chosen: boolean, unit: Unit): Series {
  const show = (mm: number) => (unit === 'mm' ? mm : mmToInch(mm));
  const threads = threadRange(band.threads);
  const data = band.data.map(({ x, low, mid, high }): Datum => {
    const datum = { x: show(x), low: show(low), high: show(high) };
    return mid === undefined ? datum : { ...datum, mid: show(mid) };
  });
  return {
    label: {
      short: say(DEPTH_CHART.threads, { threads }),
      long: say(DEPTH_CHART.threadsLong, { threads, name: band.name }),
    },
    data,
    look: (index % 5) as Look,
    strong: chosen,
  };
}

/** Builds the chart; lengths in mm, shown in the reader's unit. */
export function depthChart(model: DepthChartModel): Chart {
  const { unit } = model;
  const show = (mm: number) => (unit === 'mm' ? mm : mmToInch(mm));
  const axis = (label: string, domain?: readonly [number, number]) => ({
    ...(domain ? { domain: [show(domain[0]), show(domain[1])] as const } : {}),
    label,
    unit,
    write: (value: number) => decimals(value, unit === 'mm' ? 2 : 3),
  });
  return {
    title: model.title,
    subtitle: model.subtitle,
    description: model.description,
    bands: DEPTH_CHART.bands,
    x: axis(DEPTH_CHART.x, model.domain?.shoulder),
    panels: [
      {
        y: axis(DEPTH_CHART.y, model.domain?.fullThread),
        series: model.bands.map((band, i) => seriesOf(band, i, i === model.chosen, unit)),
        ...(model.asked === undefined
          ? {}
          : {
              references: [
                {
                  at: show(model.asked),
                  label: say(DEPTH_CHART.asked, { depth: lengthNumber(model.asked, unit) }),
                  tone: 'quiet' as const,
                },
              ],
            }),
        ...(model.here
          ? {
              here: {
                x: show(model.here.shoulder),
                y: show(model.here.fullThread),
                label: [
                  DEPTH_CHART.here,
                  say(DEPTH_CHART.hereHole, { shoulder: length(model.here.shoulder, unit) }),
                  say(DEPTH_CHART.hereThread, { fullThread: length(model.here.fullThread, unit) }),
                ],
              },
            }
          : {}),
      },
    ],
    ...(model.limit === undefined
      ? {}
      : {
          references: [
            {
              at: show(model.limit),
              label: say(DEPTH_CHART.limit, { depth: lengthNumber(model.limit, unit) }),
              tone: 'stop' as const,
            },
          ],
        }),
  };
}
