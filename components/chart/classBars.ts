/** The chamfer classes side by side: torque with its band, and the load on the heaviest tooth. */

import type { TapLoad } from '../../core/plan/tap-load';
import { significant, threadRange, type Unit } from '../words/format';
import { fill } from '../words/template';
import type { Bars } from './bars';
import { CLASS_BARS as WORDS } from '../words/en/charts/classBars';

export type Compared = 'torque' | 'tooth';

/**
 * Builds the bars for one comparison. `loads`: one for each class, longest chamfer first; `chosen` its
 * index; `conditions` says thread, material and tap in a few words.
 */
export function classBars(
  loads: readonly TapLoad[],
  what: Compared,
  conditions: string,
  unit: Unit,
  chosen?: number,
): Bars {
  return {
    title: WORDS.titles[what],
    subtitle: fill(WORDS.subtitle[what], { conditions }, unit),
    description: WORDS.descriptions[what],
    rowsAre: WORDS.rowsAre,
    axis: { ...WORDS.axis[what], write: (value) => significant(value, 2) },
    rows: loads.map(({ chamfer, torque, toothLoad }, index) => ({
      label: fill(
        WORDS.row,
        { name: WORDS.names[chamfer.class], threads: threadRange(chamfer.threads) },
        unit,
      ),
      ...(what === 'torque'
        ? { low: torque.low, mid: torque.expected, high: torque.high }
        : { low: 0, high: toothLoad }),
      strong: index === chosen,
    })),
    fromZero: true,
    ...(what === 'torque' ? { bands: WORDS.bands } : {}),
  };
}
