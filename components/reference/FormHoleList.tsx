/** The hole before a form tap: the drill, the window, and how sharply the thread answers to it. */

import { percentLost, type FormHole } from '../../core/drill/form-hole';
import { NumberList } from '../result/NumberList';
import { decimals, drillName, limitLength, threadPercent, type Unit } from '../words';
import { FORM, VERDICTS } from '../words/en/reference';
import { fill } from '../words/template';
import { windowText } from './limits';

/** Step of hole that the sensitivity is told for, mm: .02 mm, or a thousandth of an inch. */
export const STEP: Record<Unit, number> = { mm: 0.02, in: 0.0254 };

export function FormHoleList({ form, unit }: { form: FormHole; unit: Unit }) {
  const { drill } = form;
  const thread = (percent: number) => fill(FORM.thread, { percent: threadPercent(percent) }, unit);
  return (
    <>
      <NumberList
        rows={[
          {
            name: FORM.drill,
            value: drill ? drillName(drill) : FORM.none,
            beside: drill
              ? [
                  `${thread(drill.percent)}; ${FORM.likely.toLowerCase()}, ${limitLength(drill.likely, unit)}: ${thread(drill.likelyPercent)}, ${VERDICTS[drill.verdict].word}`,
                ]
              : [],
          },
          { name: FORM.window, value: windowText(form.window, unit) },
          {
            name: fill(FORM.sensitivity, { step: unit === 'mm' ? '0.02 mm' : '0.001 in' }, unit),
            value: `${decimals(percentLost(form, STEP[unit]), 1, 1)} %`,
          },
          { name: FORM.balance, value: limitLength(form.balance, unit) },
        ]}
      />
      <p class="small">{FORM.scale}</p>
    </>
  );
}
