/** Which input moves the answer most: one bar an input, from the answer at one end of its spread to the other. */

import type { DoubtfulInput } from '../../core/tap/torque-doubt';
import type { TapStudy } from '../../core/plan/tap-study';
import { decimals, limitNumber, percent, significant, type Unit } from '../words/format';
import { fill } from '../words/template';
import type { Bars } from './bars';
import { DOUBT_BARS as WORDS } from '../words/en/charts/doubtBars';

/** `torque`: of a sharp tap, N·m. `share`: of a worn tap, of what breaks it. */
export type Doubtful = 'torque' | 'share';

/** An input's name with the spread that was taken for it. */
function labelOf(input: DoubtfulInput, { doubt }: TapStudy, unit: Unit): string {
  const { low, high } = doubt.inputs[input];
  const size = input === 'hole' || input === 'web';
  const write = (value: number) => (size ? limitNumber(value, unit) : decimals(value, 2));
  return fill(WORDS.inputs[input], { low: write(low), high: write(high), unit }, unit);
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Builds the bars for one answer; `conditions` says thread, material and tap in a few words. */
export function doubtBars(study: TapStudy, what: Doubtful, conditions: string, unit: Unit): Bars {
  const { doubt } = study;
  const swings = what === 'torque' ? doubt.torqueSwings : doubt.shareSwings;
  const first = swings[0]?.input ?? 'material';
  const expected = what === 'torque' ? study.torque.expected : study.worn.share;
  // Shares are drawn in percent.
  const scale = what === 'torque' ? 1 : 100;
  const write = (value: number) => (what === 'torque' ? significant(value, 2) : decimals(value, 0));
  return {
    title: fill(WORDS.titles[what], { Input: capital(WORDS.most[first]) }, unit),
    subtitle: fill(WORDS.subtitle[what], { conditions }, unit),
    description: fill(WORDS.description, { input: WORDS.most[first] }, unit),
    rowsAre: WORDS.rowsAre,
    axis: { ...WORDS.axis[what], write },
    rows: swings.map(({ input, low, high }, index) => ({
      label: labelOf(input, study, unit),
      low: low * scale,
      high: high * scale,
      strong: index === 0,
    })),
    reference: {
      at: expected * scale,
      label: fill(
        WORDS.reference,
        {
          value: what === 'torque' ? `${significant(expected, 2)} N·m` : percent(expected),
        },
        unit,
      ),
    },
    fromZero: false,
    bands: WORDS.bands,
  };
}
