/** How a field was understood, read back under it. */

import { readLength, type LengthUnit } from '../fields/readLength';
import { readTorque } from '../fields/readTorque';
import { length, limitLength, noteText, readingText, torque, type Unit } from '../words';
import { TEXT } from '../words/en/planner';
import { materialReadText } from '../words/material';
import { say } from '../words/say';
import { baseUnit, isLength, type InputName, type Inputs } from './inputs';
import type { Attempt } from './state';

/** Notes whose matter the reading itself says. */
const IN_THE_READING: readonly string[] = ['class-assumed', 'coarse-assumed'];

/** A length in both units, the one it was typed in first; coatings to the last digit. */
function bothUnits(mm: number, typedIn: LengthUnit): string {
  const show = typedIn === 'µm' ? limitLength : length;
  return typedIn === 'in'
    ? `${show(mm, 'in')} = ${show(mm, 'mm')}`
    : `${show(mm, 'mm')} = ${show(mm, 'in')}`;
}

export function readingOf(name: InputName, values: Inputs, unit: Unit, attempt: Attempt): string {
  const text = values[name].trim();
  if (text === '') return '';
  if (name === 'thread') {
    const { thread, callout } = attempt;
    if (callout) return callout.said;
    if (!thread.ok) return '';
    const notes = thread.notes
      .filter(({ code }) => !IN_THE_READING.includes(code))
      .map((note) => noteText(note, unit));
    return [say(TEXT.readAs, { reading: readingText(thread.value) }), ...notes].join(' ');
  }
  if (name === 'designation') return materialReadText(text, values.material);
  if (isLength(name)) {
    const read = readLength(text, baseUnit(name, unit));
    return read ? bothUnits(read.mm, read.unit) : '';
  }
  if (name === 'torque' || name === 'measured') {
    const read = readTorque(text);
    return read === null ? '' : torque(read, 'in');
  }
  return '';
}
