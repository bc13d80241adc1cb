/** How what was typed is understood: a thread by the core, lengths in both units. Part of the engines. */

import { inchSystem } from '../../core/thread/inch-system';
import { readThread } from '../../core/thread/read';
import type { Thread } from '../../core/thread/thread';
import { calloutTyped } from '../fields/calloutTyped';
import { readLength } from '../fields/readLength';
import { readTorque } from '../fields/readTorque';
import { exactLength } from '../address/exact';
import { noteText } from '../words/codes';
import { length, torque, type Unit } from '../words/format';
import { readingText } from '../words/thread';
import type { CalloutPlaces, Kind } from './calculator';
import type { Reader } from './reader';
import { calloutText } from '../words/drawing';
import { NOT_READ, READ_AS } from '../words/en/calculators/shared';
import { say } from '../words/say';

/** Notes whose matter the reading itself says. */
const IN_THE_READING: readonly string[] = ['class-assumed', 'coarse-assumed'];

/** A whole callout read back, with the words of it that nobody understood. */
function calloutSaid(text: string, unit: Unit): string {
  const typed = calloutTyped(text);
  if (!typed) return '';
  const { notRead } = typed.callout;
  const said = say(READ_AS, { thread: calloutText(typed.callout, unit) });
  return notRead.length === 0 ? said : `${said} ${say(NOT_READ, { words: notRead.join(' ') })}`;
}

/**
 * What a callout typed where the thread goes puts into the fields that a calculator has for it. `kept`: what
 * stands in the thread's field afterwards: words that were not understood stay with the thread.
 */
export function fromCallout<Name extends string>(
  text: string,
  unit: Unit,
  places: CalloutPlaces<Name>,
): { thread: string; kept: string; others: Partial<Record<Name, string>> } | null {
  const typed = calloutTyped(text);
  if (!typed) return null;
  const { thread, notRead, fullThread, through, thickness, hole } = typed.callout;
  const assumed = typed.notes.some(({ code }) => /^(?:through-a|depth-u)/.test(code));
  const deep = fullThread ?? (through ? thickness : undefined);
  const shoulder = hole?.at === 'shoulder' ? hole.depth : undefined;
  const put = (name: Name | undefined, mm: number | undefined) =>
    name === undefined || mm === undefined ? [] : [[name, exactLength(mm, unit)]];
  const kind =
    places.kind === undefined || assumed ? [] : [[places.kind, through ? 'through' : 'blind']];
  const filled = [
    ...put(places.full, deep),
    ...put(places.hole, shoulder),
    ...put(places.thickness, thickness),
    ...kind,
  ];
  const others = Object.fromEntries(filled) as Partial<Record<Name, string>>;
  return { thread, kept: [thread, ...notRead].join(' '), others };
}

function threadText(text: string, unit: Unit): string {
  const read = readThread(text);
  if (!read.ok) return calloutSaid(text, unit);
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
  const read = readThread(calloutTyped(text)?.callout.thread ?? text.trim());
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
