/** How what was typed is understood: a thread by the core, lengths in both units. Part of the engines. */

import { inchSystem } from '../../core/thread/inch-system';
import { readThread } from '../../core/thread/read';
import type { Thread } from '../../core/thread/thread';
import { readLength } from '../fields/readLength';
import { readTorque } from '../fields/readTorque';
import { noteText } from '../words/codes';
import { length, torque, type Unit } from '../words/format';
import { readingText } from '../words/thread';
import type { Kind } from './calculator';
import type { Reader } from './reader';
import { READ_AS } from '../words/en/calculators/shared';
import { say } from '../words/say';

/** Notes whose matter the reading itself says. */
const IN_THE_READING: readonly string[] = ['class-assumed', 'coarse-assumed'];

function threadText(text: string, unit: Unit): string {
  const read = readThread(text);
  if (!read.ok) return '';
  const notes = read.notes
    .filter(({ code }) => !IN_THE_READING.includes(code))
    .map((note) => noteText(note, unit));
  return [say(READ_AS, { thread: readingText(read.value) }), ...notes].join(' ');
}

function lengthText(text: string, unit: Unit): string {
  const read = readLength(text, unit);
  if (!read || read.unit === 'µm') return '';
  return `${length(read.mm, read.unit)} = ${length(read.mm, read.unit === 'mm' ? 'in' : 'mm')}`;
}

/** A field read back to whoever typed it; empty where it cannot be read. */
export function reading(kind: Kind, text: string, unit: Unit): string {
  const typed = text.trim();
  if (typed === '') return '';
  if (kind === 'thread') return threadText(typed, unit);
  if (kind === 'length') return lengthText(typed, unit);
  const read = readTorque(typed);
  return read === null ? '' : torque(read, 'in');
}

/** Which system's chamfer classes go with a thread as typed; metric until it can be read. */
export function system(text: string): 'metric' | 'inch' {
  const read = readThread(text.trim());
  return read.ok && inchSystem(read.value) ? 'inch' : 'metric';
}

/** The thread a field names, read by the core. */
export function threadOf<Name extends string>(
  reader: Reader<Name>,
  name: Name,
): Thread | undefined {
  const text = reader.text(name);
  if (text === '') return reader.complain(name, { code: 'missing' }, true);
  const read = readThread(text);
  if (read.ok) return read.value;
  for (const problem of read.problems) reader.complain(name, problem);
  return undefined;
}
