/** A row of a hole table as one callout in plain order, so that it is read like any other line. */

import { readThread } from '../thread/read';
import type { Column, ColumnKind } from './columns';

const NUMBER = String.raw`(?:\d+[- ]\d+/\d+|\d+/\d+|\d+(?:[.,]\d*)?|[.,]\d+)`;
const ALONE = new RegExp(`^${NUMBER}$`);
const FIRST = new RegExp(`^${NUMBER}`);
const COUNT =
  /^(\d{1,4})(?:[.,]0+)?\s*(?:[x×]|off|pcs?|pieces?|pl|plcs?|places?|ea|each|holes?|stk|st(?:ü|u)ck|uds?|pz|pezzi)?\.?$/i;
const YES = /^(?:yes|y|true|ok|ja|j|wahr|oui|o|vrai|s[ií]|sì|verdadero|vero|x|✓|✔|•|1)$/iu;
const NO = /^(?:no|n|false|nein|falsch|non|faux|falso|blind|sackloch|borgne|ciego|cieco|0)$/i;
const THROUGH_WORD =
  /\b(?:thru|through|thro|durch\w*|d[ée]bouch\w*|traversant\w*|pasante\w*|passante\w*)/iu;
const DEEP_WORD = /^[↧▽↓⤓]|^[a-zà-ÿ]/iu;
const DRILL_NAME = /^(?:#\s*|no\.?\s*|nr\.?\s*)(\d{1,2})$|^([A-Za-z])$/i;

/** A number that stands alone with the unit of its heading; any other words as they are. */
function withUnit(cell: string, { unit }: Column): string {
  return unit && ALONE.test(cell) ? `${cell} ${unit}` : cell;
}

/** The parts of a callout that a table may name, each empty where the row does not. */
class RowText {
  readonly cells = new Map<ColumnKind, { cell: string; column: Column }[]>();
  /** Words that are no part of a group: read last, as they stand. */
  readonly others: string[] = [];

  constructor(cells: readonly string[], columns: readonly Column[]) {
    cells.forEach((cell, at) => {
      const column = columns[at] ?? { kind: 'remark', name: '' };
      if (cell === '') return;
      if (column.unknown) this.others.push(`${column.name} ${cell}`);
      else this.cells.set(column.kind, [...this.all(column.kind), { cell, column }]);
    });
  }

  all(kind: ColumnKind): { cell: string; column: Column }[] {
    return this.cells.get(kind) ?? [];
  }

  /** The first cell of a kind as `write` has it; another cell of the same kind is a word like any other. */
  one(kind: ColumnKind, write: (cell: string, column: Column) => string): string {
    const [first, ...more] = this.all(kind);
    this.others.push(...more.map(({ cell }) => cell));
    return first ? write(first.cell, first.column) : '';
  }
}

function countOf(row: RowText): string {
  return row.one('quantity', (cell) => {
    const found = COUNT.exec(cell);
    return found ? `${Number(found[1])}x` : cell;
  });
}

/** `M8` with 1.25 is M8x1.25, `1/4` with 20 is 1/4-20; what has its pitch already keeps it. */
function withPitch(thread: string, pitch: string, row: RowText): string {
  if (pitch === '') return thread;
  const value = FIRST.exec(pitch)?.[0];
  const metric = /^(.*?\bMJ?\s*\d+(?:[.,]\d+)?)(?!\s*[x×*\d.,])(.*)$/i.exec(thread);
  if (value && metric) return `${metric[1]}x${pitch.replace(/\s*mm$/i, '')}${metric[2]}`;
  const inch = /^((?:#\s*)?\d+(?:[- ]\d+\/\d+|\/\d+)?"?|[.,]\d+"?)$/.exec(thread);
  if (value && inch) return `${thread.replace(/"$/, '')}-${value}`;
  if (!thread.replace(',', '.').includes(pitch.replace(',', '.'))) row.others.push(pitch);
  return thread;
}

function withClass(thread: string, name: string): string {
  if (name === '') return thread;
  const read = readThread(thread);
  if (read.ok && read.value.classGiven && read.value.class === name) return thread;
  const joined = `${thread}-${name.replace(/^-/, '')}`;
  return read.ok && !read.value.classGiven && readThread(joined).ok ? joined : `${thread} ${name}`;
}

function threadOf(row: RowText): string {
  const thread = row.one('thread', (cell) => cell);
  const pitch = row.one('pitch', (cell) => cell);
  return withClass(
    withPitch(thread, pitch, row),
    row.one('class', (cell) => cell),
  );
}

function depthOf(row: RowText): string {
  return row.one('depth', (cell, column) => {
    const text = withUnit(cell, column);
    return DEEP_WORD.test(text) || !FIRST.test(text) ? text : `↧${text}`;
  });
}

/** THRU, with how thick the part is there where the row says so. */
function throughOf(row: RowText, thread: string, depth: string): string {
  const word = row.one('through', (cell, column) => {
    if (YES.test(cell)) return 'THRU';
    if (NO.test(cell)) return depth === '' ? 'BLIND' : '';
    return FIRST.test(cell) ? `THRU ${withUnit(cell, column)}` : cell;
  });
  const thick = row.one('thickness', withUnit);
  if (thick === '') return word;
  if (word === 'THRU') return `THRU ${thick}`;
  if (THROUGH_WORD.test(`${thread} ${depth}`) && word === '') return `THRU ${thick}`;
  return `${word} THICKNESS ${thick}`.trim();
}

function drillOf(row: RowText): string {
  const drill = row.one('drill', (cell, column) => {
    const name = DRILL_NAME.exec(cell);
    if (name) return `${name[1] ? `#${name[1]}` : name[2]!.toUpperCase()} DRILL`;
    const text = withUnit(cell, column);
    return FIRST.test(text) ? `TAP DRILL Ø${text}` : text.replace(/^(?=[Ø⌀∅])/, 'TAP DRILL ');
  });
  const deep = row.one('drill-depth', (cell, column) => {
    const text = withUnit(cell, column);
    if (!FIRST.test(text)) return text;
    return drill === '' ? `DRILL ${text} DEEP` : `↧${text}`;
  });
  return `${drill} ${deep}`.trim();
}

function sinkOf(row: RowText): string {
  return row.one('countersink', (cell, column) =>
    FIRST.test(cell) && !cell.includes('°') ? `⌵ Ø${withUnit(cell, column)}` : cell,
  );
}

/**
 * One callout for a row: count, thread, depth, THRU, drill, countersink, then all other words as they stand.
 * Item numbers, places and tool numbers are not part of it. Lengths keep the unit of their heading, mm or in.
 * Source: common practice.
 */
export function rowText(cells: readonly string[], columns: readonly Column[]): string {
  const row = new RowText(cells, columns);
  const count = countOf(row);
  const thread = threadOf(row);
  const depth = depthOf(row);
  const through = throughOf(row, thread, depth);
  const groups = [`${count} ${thread} ${depth} ${through}`, drillOf(row), sinkOf(row)];
  const words = (['remark', 'unclear'] as const).flatMap((kind) =>
    row.all(kind).map(({ cell }) => cell),
  );
  return [...groups, ...words, ...row.others]
    .map((group) => group.replace(/\s+/g, ' ').trim())
    .filter((group) => group !== '')
    .join(' / ');
}
