/** The numbers of a thread that people come for, at the head of its page. Pure. */

import type { ThreadReference } from '../../core/plan/reference';
import type { NumberRow } from '../result/NumberList';
import { drillName, limitLength, threadPercent, type Unit } from '../words';
import { PAGE, PIPE_HOLES, VERDICTS } from '../words/en/reference';
import { fill } from '../words/template';
import { limitsText } from './limits';
import { say } from '../words/say';

const other = (unit: Unit): Unit => (unit === 'mm' ? 'in' : 'mm');

function drillRow({ drill, thread, pipe }: ThreadReference): NumberRow | null {
  if (drill) {
    const percent =
      thread.system === 'pipe'
        ? []
        : [say(PAGE.shopBase, { percent: threadPercent(drill.percent.shop) })];
    return {
      name: PAGE.drill,
      value: drillName(drill),
      beside: [[...percent, VERDICTS[drill.verdict].word].join('; ')],
    };
  }
  const straight = pipe?.drills.at(-1);
  if (straight)
    return { name: PAGE.drill, value: drillName(straight), beside: [PIPE_HOLES[straight.hole]] };
  return thread.system === 'pipe' ? null : { name: PAGE.drill, value: PAGE.noDrill };
}

/** Drill, hole, pitch diameter, form-tap drill: each in the thread's own unit, the limits in the other beside it. */
export function leadRows(reference: ThreadReference, unit: Unit): NumberRow[] {
  const { limits, thread, form } = reference;
  const name = thread.class || thread.form;
  const rows: (NumberRow | null)[] = [drillRow(reference)];
  if (limits) {
    const both = (which: 'minor' | 'pitch', label: string): NumberRow => ({
      name: fill(label, { class: name }, unit),
      value: limitsText(limits, which, unit),
      beside: [limitsText(limits, which, other(unit))],
    });
    rows.push(both('minor', PAGE.hole), both('pitch', PAGE.pitch));
  }
  if (form?.drill) {
    rows.push({
      name: PAGE.formDrill,
      value: drillName(form.drill),
      beside: [
        `${limitLength(form.drill.diameter, form.drill.series === 'metric' ? 'in' : 'mm')}; ${VERDICTS[form.drill.verdict].word}`,
      ],
    });
  }
  return rows.filter((row) => row !== null);
}
