/** How a field was understood, read back under it. */

import { readLength } from '../fields/readLength';
import { readTorque } from '../fields/readTorque';
import { noteText, readingText, torque, type Unit } from '../words';
import { baseUnit, isLength, type InputName, type Inputs } from './inputs';
import { bothUnits } from './messages';
import type { Attempt } from './state';

/** Notes whose matter the reading itself says. */
const IN_THE_READING: readonly string[] = ['class-assumed', 'coarse-assumed'];

export function readingOf(name: InputName, values: Inputs, unit: Unit, attempt: Attempt): string {
  const text = values[name].trim();
  if (text === '') return '';
  if (name === 'thread') {
    const { thread } = attempt;
    if (!thread.ok) return '';
    const notes = thread.notes
      .filter(({ code }) => !IN_THE_READING.includes(code))
      .map((note) => noteText(note, unit));
    return [`Read as ${readingText(thread.value)}.`, ...notes].join(' ');
  }
  if (isLength(name)) {
    const read = readLength(text, baseUnit(name, unit));
    if (!read) return '';
    return read.unit === 'µm' ? bothUnits(read.mm, 'mm') : bothUnits(read.mm, read.unit);
  }
  if (name === 'torque' || name === 'measured') {
    const read = readTorque(text);
    return read === null ? '' : torque(read, 'in');
  }
  return '';
}
