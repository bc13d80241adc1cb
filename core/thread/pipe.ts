/** Reads pipe threads: G, Rp, Rc, NPT and their dryseal and straight kin; refuses the male R. */

import { AMERICAN_PIPE, PARALLEL_ONLY, WHITWORTH_PIPE, type PipeSize } from '../data/pipe-sizes';
import { answer, refuse, type Note, type Outcome } from '../outcome';
import { inchToMm, MM_PER_INCH, mmToInch, roundHalfUp } from '../units';
import { fractionName } from './inch-size';
import { Tail, plainNumber, threadNote, threadProblem, type Parts } from './parts';
import type { Thread, ThreadForm } from './thread';

type PipeForm = Extract<ThreadForm, 'G' | 'Rp' | 'Rc' | 'NPT' | 'NPTF' | 'NPSM' | 'NPSF'>;

/** Names by which pipe threads go; `ask` and `male` are not one internal thread. */
const FORMS: Readonly<Record<string, PipeForm | 'ask' | 'male'>> = {
  ...{ G: 'G', BSPP: 'G', PF: 'G', RP: 'Rp', PS: 'Rp', RC: 'Rc', BSPT: 'Rc', PT: 'Rc' },
  ...{ R: 'male', BSP: 'ask', NPT: 'NPT', NPTF: 'NPTF', NPSM: 'NPSM', NPSF: 'NPSF' },
};

const NAME = '(NPTF|NPT|NPSM|NPSF|BSPP|BSPT|BSP|RP|RC|PF|PT|PS|G|R)';
const SIZE = '((?:\\d+[\\s-])?\\d+/\\d+|\\d*\\.\\d+|\\d+)"?';
const TPI = '(?:[\\s-]+(\\d{1,2}(?:\\.5)?(?:[\\s-]1/2)?))?';
const LEADING = new RegExp(`^${NAME}[\\s-]*${SIZE}${TPI}(?![\\d./])`);
const TRAILING = new RegExp(`^${SIZE}${TPI}[\\s-]*(?:DRYSEAL\\s)?${NAME}(?![A-Z])`);

interface Reading {
  name: string;
  size: string;
  tpi: string;
  rest: string;
}

function scan(text: string): Reading | null {
  const leading = LEADING.exec(text);
  if (leading) {
    const [all, name = '', size = '', tpi = ''] = leading;
    return { name, size, tpi, rest: text.slice(all.length) };
  }
  const trailing = TRAILING.exec(text);
  if (!trailing) return null;
  const [all, size = '', tpi = '', name = ''] = trailing;
  return { name, size, tpi, rest: text.slice(all.length) };
}

/** `1 1/4`, `1.25` and `1-1/4` are one size; an improper fraction stays as typed and fits none. */
function sizeName(typed: string): string {
  const mixed = typed.replace(/\s/, '-');
  if (!/^\d*\.\d+$/.test(mixed)) return mixed;
  const sixtyFourths = Number(mixed) * 64;
  return Number.isInteger(sixtyFourths) ? fractionName(sixtyFourths) : mixed;
}

function tpiOf(typed: string): number {
  return Number(typed.replace(/[\s-]1\/2/, '.5'));
}

const isAmerican = (form: PipeForm) => form.startsWith('NP');

function findSize(form: PipeForm, size: string): PipeSize | undefined {
  const listed = (isAmerican(form) ? AMERICAN_PIPE : WHITWORTH_PIPE).find(
    (row) => row.size === size,
  );
  const missing = (form === 'Rp' || form === 'Rc') && PARALLEL_ONLY.includes(size);
  return missing ? undefined : listed;
}

/** Canonical spelling without class and hand: `G1/4`, `1/4-18 NPT`. */
function pipeName(form: PipeForm, row: PipeSize): string {
  return isAmerican(form) ? `${row.size}-${plainNumber(row.tpi)} ${form}` : `${form}${row.size}`;
}

function build(parts: Parts, form: PipeForm, row: PipeSize, grade: string): Thread {
  const inchDiameter = isAmerican(form)
    ? row.diameter
    : roundHalfUp(mmToInch(row.diameter), 0.0001);
  const pieces = [pipeName(form, row), grade, parts.hand === 'left' ? 'LH' : ''].filter(Boolean);
  return {
    designation: pieces.join('-'),
    system: 'pipe',
    form,
    diameter: isAmerican(form) ? inchToMm(row.diameter) : row.diameter,
    pitch: MM_PER_INCH / row.tpi,
    inch: { size: row.size, diameter: inchDiameter, tpi: row.tpi },
    series: form,
    standard: true,
    class: grade,
    classGiven: grade !== '',
    hand: parts.hand,
    insert: false,
  };
}

/** What stands after size and name: a dryseal class is kept, a screw's class refused. */
function readRest(parts: Parts, form: PipeForm, row: PipeSize, rest: string): Outcome<string> {
  const tail = new Tail(rest.replace(/[()]/g, ' '));
  const outside = tail.take(/^[\s-]*([AB])(?![A-Z0-9])/);
  const suggestion = build(parts, form, row, '').designation;
  if (outside) {
    const data = { class: outside[1] ?? '', suggestion };
    return refuse(threadProblem('external-class', parts.typed, data));
  }
  const dryseal = form === 'NPTF' || form === 'NPSF';
  const grade = dryseal ? tail.take(/^[\s-]*(?:CLASS\s)?([12])(?![A-Z0-9./])/)?.[1] : undefined;
  if (tail.left) {
    const data = { extra: tail.left, suggestion };
    return refuse(threadProblem('extra-words', parts.typed, data));
  }
  return answer(grade ?? '');
}

function settle(parts: Parts, reading: Reading, form: PipeForm): Outcome<Thread> {
  const size = sizeName(reading.size);
  const row = findSize(form, size);
  if (!row) {
    const split = /^(\d)(\d\/\d)$/.exec(size);
    if (split && findSize(form, `${split[1]}-${split[2]}`)) {
      const offers = `${form}${split[1]}-${split[2]}`;
      return refuse(threadProblem('improper-fraction', parts.typed, { fraction: size, offers }));
    }
    return refuse(threadProblem('no-such-pipe-size', parts.typed, { size, form }));
  }
  if (reading.tpi && tpiOf(reading.tpi) !== row.tpi) {
    return refuse(
      threadProblem('series-pitch-mismatch', parts.typed, {
        size,
        series: form,
        tpi: plainNumber(tpiOf(reading.tpi)),
        seriesTpi: plainNumber(row.tpi),
        offers: pipeName(form, row),
      }),
    );
  }
  const grade = readRest(parts, form, row, reading.rest);
  if (!grade.ok) return grade;
  const notes: Note[] =
    reading.name === form.toUpperCase()
      ? []
      : [threadNote('pipe-name', { typed: reading.name, form })];
  return answer(build(parts, form, row, grade.value), notes);
}

/** Reads a pipe thread; null when the text is none. Sources: ISO 228-1, ISO 7-1, ASME B1.20.1. */
export function readPipe(parts: Parts): Outcome<Thread> | null {
  const reading = scan(parts.text);
  if (!reading) return null;
  const form = FORMS[reading.name];
  if (form === undefined) return null;
  const size = sizeName(reading.size);
  if (form === 'male') {
    const data = { size, offers: `Rc${size}, Rp${size}` };
    return refuse(threadProblem('external-pipe', parts.typed, data));
  }
  if (form === 'ask') {
    const data = { size, offers: `G${size}, Rc${size}` };
    return refuse(threadProblem('which-pipe', parts.typed, data));
  }
  return settle(parts, reading, form);
}
