/** The chart of the blind-hole calculator, from the core's own bands. */

import { CHAMFER_CLASSES } from '../../../core/chamfer/chamfer';
import type { DepthChartModel } from '../../chart/depthModel';
import { spoken } from '../../result/AnswerLine';
import { CHAMFERS } from '../../words/en/names';
import type { Unit } from '../../words/format';
import { fill } from '../../words/template';
import { answerParts, CHART } from '../../words/en/calculators/blind-hole-depth/sentences';
import type { DepthAnswer } from './state';

/** Full thread against hole depth, a band for each class, with this hole as a point. */
export function chartOf(answer: DepthAnswer, unit: Unit): DepthChartModel {
  const { study, chamfer } = answer;
  const { promised, thread, clearance } = study;
  const chosen = CHAMFER_CLASSES.findIndex((name) => name === chamfer?.choice);
  const values = {
    thread: thread.designation,
    clearance,
    sentence: spoken(answerParts(answer, unit)),
  };
  return {
    title: CHART.title,
    subtitle: fill(CHART.subtitle, values, unit),
    description: fill(CHART.description, values, unit),
    unit,
    bands: study.bands.map((band) => ({
      threads: band.chamfer.threads,
      name: CHAMFERS[band.chamfer.class],
      data: band.points.map(({ shoulder, sure, atBest }) => ({
        x: shoulder,
        low: sure,
        high: atBest,
      })),
    })),
    ...(chosen < 0 ? {} : { chosen }),
    here: { shoulder: promised.shoulder, fullThread: promised.fullThread },
  };
}
