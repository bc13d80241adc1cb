/** The chart of the chamfer calculator, from the core's own curve. */

import { CHAMFER_CLASSES } from '../../../core/chamfer/chamfer';
import { chamferOf } from '../../../core/chamfer/classes';
import type { ChamferPoint } from '../../../core/load/chamfer-curve';
import type { TorqueChartModel, TorqueLine } from '../../chart/torqueModel';
import { spoken } from '../../result/AnswerLine';
import { CHAMFERS } from '../../words/en/names';
import type { Unit } from '../../words/format';
import { materialShort, styleBefore } from '../../words/names';
import { fill } from '../../words/template';
import { answerParts, becauseText, CHART } from '../../words/en/calculators/chamfer/sentences';
import type { ChamferAnswer } from './state';

/** One line alone needs no name: the axis has it. */
const UNNAMED = { short: '', long: '' } as const;

function line(
  points: readonly ChamferPoint[],
  label: TorqueLine['label'],
  strong: boolean,
): TorqueLine {
  const data = points.map(({ threads, torque: { low, expected, high } }) => ({
    x: threads,
    low,
    mid: expected,
    high,
  }));
  return { label, strong, data };
}

/** Torque and tooth load against the chamfer's length; null where no material was said. */
export function chartOf(answer: ChamferAnswer, unit: Unit): TorqueChartModel | null {
  const { study, material, thread, style, thickness = 0, system } = answer;
  if (!study || !material) return null;
  const thin = study.thick.length > 0;
  const values = {
    thread: thread.designation,
    hole: study.hole,
    material: materialShort(material),
    style: styleBefore(style).toLowerCase(),
    flutes: String(study.flutes),
    thickness,
    sentence: spoken(answerParts(answer, unit)) + ' ' + becauseText(answer, unit),
  };
  const own = { short: CHART.work, long: fill(CHART.workLong, values, unit) };
  const thick = { short: CHART.thick, long: CHART.thickLong };
  return {
    title: thin ? CHART.titleThin : CHART.title,
    subtitle: fill(CHART.subtitle, values, unit),
    description: fill(CHART.description, values, unit),
    unit,
    torque: thin
      ? [line(study.curve, own, true), line(study.thick, thick, false)]
      : [line(study.curve, UNNAMED, true)],
    load: [
      {
        label: UNNAMED,
        strong: true,
        data: study.curve.map(({ threads, toothLoad }) => ({ x: threads, mid: toothLoad })),
      },
    ],
    classes: CHAMFER_CLASSES.map((name) => ({
      threads: chamferOf(name, system).threads,
      name: CHAMFERS[name],
    })),
    thinFrom: study.thinFrom,
    here: {
      threads: study.here.threads,
      torque: study.here.torque.expected,
      load: study.here.toothLoad,
    },
  };
}
