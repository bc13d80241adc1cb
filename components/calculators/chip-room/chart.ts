/** The chart of the chip-room calculator, from the core's own curve. */

import { LOOSE_BULKING } from '../../../core/chips/room';
import { mmToInch } from '../../../core/units';
import type { Chart, Zone } from '../../chart/types';
import { spoken } from '../../result/AnswerLine';
import { decimals, threadRange, type Unit } from '../../words/format';
import { fill } from '../../words/template';
import { roughLength, unbroken } from '../numbers';
import { answerParts, CHART } from '../../words/en/calculators/chip-room/sentences';
import type { RoomAnswer } from './state';

/** The stretches of loose chips as a guide gives them, to set the packed ones against. */
function zones(): Zone[] {
  return (['fine', 'broken', 'coils'] as const).map((kind) => {
    const { min, max } = LOOSE_BULKING[kind];
    const range = unbroken(threadRange({ min, max }));
    return {
      from: min,
      to: max,
      label: { short: CHART[kind], long: CHART[`${kind}Long`].replace('{range}', range) },
    };
  });
}

/** Free hole that chips want, against how loosely they lie. */
export function chartOf(answer: RoomAnswer, unit: Unit): Chart {
  const { study, fullThread } = answer;
  const { curve, fit, own, thread, hole } = study;
  const show = (mm: number) => (unit === 'mm' ? mm : mmToInch(mm));
  const values = {
    thread: thread.designation,
    fullThread,
    hole,
    free: fit.free,
    needed: roughLength(own.needed, unit),
    sentence: spoken(answerParts(answer, unit)),
  };
  return {
    title: CHART.title,
    subtitle: fill(CHART.subtitle, values, unit),
    description: fill(CHART.description, values, unit),
    x: { label: CHART.x, unit: CHART.xUnit, write: (value) => decimals(value, 1) },
    panels: [
      {
        y: {
          label: CHART.y,
          unit,
          write: (value) => (unit === 'mm' ? decimals(value, 1) : decimals(value, 3)),
        },
        series: [
          {
            label: { short: CHART.line, long: CHART.lineLong },
            look: 0,
            strong: true,
            data: curve.map(({ factor, needed }) => ({ x: factor, mid: show(needed) })),
          },
        ],
        references: [{ at: show(fit.free), label: fill(CHART.free, values, unit), tone: 'amber' }],
        here: { x: own.factor, y: show(own.needed), label: [fill(CHART.here, values, unit)] },
      },
    ],
    zones: zones(),
  };
}
