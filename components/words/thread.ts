/** A thread read back to whoever typed it, and the gauges it is checked with. */

import type { Thread } from '../../core/thread/thread';
import { GAUGE, READING } from './en/answer';
import { HANDS } from './en/names';
import { decimals } from './format';
import { fill } from './template';

function sizeAndPitch(thread: Thread): string {
  const names: Readonly<Record<string, string | undefined>> = READING.series;
  const series = thread.standard ? (names[thread.series] ?? thread.series) : READING.special;
  if (thread.system === 'pipe') {
    const name = thread.inch ? `${thread.form} ${thread.inch.size}` : thread.form;
    return fill(READING.pipe, { name }, 'mm');
  }
  if (thread.inch) {
    const template = thread.inch.size.startsWith('#') ? READING.number : READING.unified;
    const tpi = decimals(thread.inch.tpi, 2);
    return fill(template, { name: thread.inch.size, series, tpi }, 'mm');
  }
  const name = thread.form + decimals(thread.diameter, 2);
  return fill(READING.metric, { name, series, pitch: decimals(thread.pitch, 3) }, 'mm');
}

/** How a thread was read: `M8 coarse, pitch 1.25 mm, class 6H, right hand`. */
export function readingText(thread: Thread): string {
  const parts = [sizeAndPitch(thread)];
  if (thread.insert) parts.push(READING.insert);
  if (thread.class) {
    const template = thread.classGiven ? READING.class : READING.classAssumed;
    parts.push(fill(template, { class: thread.class }, 'mm'));
  }
  return [...parts, HANDS[thread.hand]].join(', ');
}

const TAPER_FORMS: readonly Thread['form'][] = ['Rc', 'NPT', 'NPTF'];

/** The gauges that pass or fail this thread. */
export function gaugeText(thread: Thread): string {
  const values = { designation: thread.designation };
  if (TAPER_FORMS.includes(thread.form)) return fill(GAUGE.taper, values, 'mm');
  return fill(GAUGE.plug, thread.hand === 'left' ? { ...values, hand: GAUGE.left } : values, 'mm');
}
