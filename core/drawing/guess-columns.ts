/** What the columns of a table without headings are, by what stands in them. */

import { readThread } from '../thread/read';
import type { Thread } from '../thread/thread';
import { readCallout } from './callout';
import type { ColumnKind } from './columns';
import { lengthInMm } from './length';
import {
  columnOf,
  countsRows,
  distinct,
  WHOLE,
  type Body,
  type Known,
  type Placed,
} from './table-body';

const LENGTH = /^(\d+[- ]\d+\/\d+|\d+\/\d+|\d+(?:[.,]\d*)?|[.,]\d+)\s*(mm|in\.?|")?$/i;
const THROUGH = /^(?:thru|through|thro|durch\w*|d[ée]bouchant\w*|pasante|passante)(?:\s+all)?$/iu;
const CLASS = /^\d[A-Za-z]{1,2}$/;
const TAG = /^[A-Z]{1,3}[-.]?\d{0,3}$/i;
const TOOL = /^T\s?-?\d{1,4}$/i;

class Guess {
  readonly kinds: (ColumnKind | undefined)[];
  private readonly threads: (Thread | null)[];
  /** Rows whose thread cell says how deep or that it goes through. */
  private readonly saysDepth: boolean;

  constructor(
    readonly body: Body,
    readonly at: number,
    known: Known,
  ) {
    this.kinds = Array.from({ length: body.width }, (_, each) => known[each]?.kind);
    const callouts = body.rows.map((cells) => readCallout(cells[at] ?? ''));
    this.threads = callouts.map((callout) => {
      const read = callout.ok ? readThread(callout.value.thread) : callout;
      return read.ok ? read.value : null;
    });
    this.saysDepth = callouts.some(
      (callout) =>
        callout.ok && !callout.notes.some(({ code }) => /^(?:through-a|depth-u)/.test(code)),
    );
  }

  has(kind: ColumnKind): boolean {
    return this.kinds.includes(kind);
  }

  /** Whether every length of the column, in mm, suits its row's thread. */
  suits(cells: readonly Placed[], suit: (mm: number, thread: Thread) => boolean): boolean {
    const lengths = cells.flatMap(({ cell, row }) => {
      const thread = this.threads[row];
      const found = LENGTH.exec(cell);
      if (!thread || !found) return [];
      const inch = thread.system === 'unified' || thread.form.startsWith('NP');
      const read = lengthInMm(found[1]!.replace(',', '.'), found[2], inch, thread.diameter);
      return [{ mm: read?.value ?? 0, thread }];
    });
    return lengths.length > 0 && lengths.every(({ mm, thread }) => suit(mm, thread));
  }

  before(cells: readonly Placed[]): ColumnKind {
    const numbers = cells.every(({ cell }) => WHOLE.test(cell));
    if (countsRows(cells)) return 'item';
    if (numbers) {
      if (!this.has('quantity')) return 'quantity';
      return distinct(cells) ? 'item' : 'unclear';
    }
    if (cells.every(({ cell }) => TOOL.test(cell))) return 'tool';
    return cells.every(({ cell }) => TAG.test(cell)) ? 'item' : 'remark';
  }

  /** Numbers behind the thread: pitch, drill, depth, depth of the drill, or not to be told apart. */
  length(cells: readonly Placed[]): ColumnKind {
    const metric = this.threads.every((thread) => thread?.system !== 'unified');
    const bare = this.body.rows.every((cells_) => !/x|×|\*/i.test(cells_[this.at] ?? ''));
    if (metric && bare && !this.has('pitch')) {
      const coarsest = 0.35;
      const small = cells.every(({ cell, row }) => {
        const diameter = this.threads[row]?.diameter ?? 0;
        return Number(cell.replace(',', '.')) <= coarsest * diameter;
      });
      if (small) return 'pitch';
    }
    const wholes = cells.every(({ cell }) => WHOLE.test(cell));
    const drill = this.suits(
      cells,
      (mm, { diameter, pitch }) =>
        Math.abs(mm - (diameter - pitch)) < 0.03 * diameter + (wholes ? 0 : 0.05),
    );
    if (drill && !this.has('drill') && (!wholes || cells.length > 1)) return 'drill';
    const deep = this.suits(cells, (mm, { diameter }) => mm >= diameter / 2 && mm <= 6 * diameter);
    if (wholes && !this.has('quantity')) {
      if (this.saysDepth || !deep) return 'quantity';
      return 'unclear';
    }
    if (!deep || this.saysDepth || (drill && wholes)) return 'unclear';
    if (!this.has('depth')) return 'depth';
    return this.has('drill-depth') ? 'unclear' : 'drill-depth';
  }

  after(cells: readonly Placed[]): ColumnKind {
    if (cells.every(({ cell }) => THROUGH.test(cell)))
      return this.has('depth') ? 'through' : 'depth';
    if (cells.every(({ cell }) => LENGTH.test(cell) || THROUGH.test(cell)))
      return this.length(cells);
    if (cells.every(({ cell }) => CLASS.test(cell))) return 'class';
    if (cells.every(({ cell }) => TOOL.test(cell))) return 'tool';
    if (cells.every(({ cell }) => /^#\s?\d{1,2}$/.test(cell))) return 'drill';
    return 'remark';
  }

  fill(): ColumnKind[] {
    this.kinds[this.at] ??= 'thread';
    // The quantity stands nearest the thread, an item number before it.
    for (let at = this.at - 1; at >= 0; at -= 1) this.put(at, (cells) => this.before(cells));
    for (let at = this.at + 1; at < this.body.width; at += 1)
      this.put(at, (cells) => this.after(cells));
    return this.kinds.map((kind) => kind ?? 'remark');
  }

  private put(at: number, guess: (cells: readonly Placed[]) => ColumnKind): void {
    if (this.kinds[at]) return;
    const cells = columnOf(this.body, at);
    this.kinds[at] = cells.length === 0 ? 'remark' : guess(cells);
  }
}

/**
 * Kinds of all columns, those of `known` kept; `thread` is the column that holds the threads. Numbers that may be
 * a quantity as well as a depth stay `unclear`. Source: common practice.
 */
export function guessColumns(body: Body, thread: number, known: Known): ColumnKind[] {
  return new Guess(body, thread, known).fill();
}
