/** Where heading and cells do not agree, what stands under the heading decides. */

import { readCallout } from './callout';
import type { Column, ColumnKind } from './columns';
import { columnOf, distinct, WHOLE, type Body, type Known } from './table-body';

/** Tags, running numbers and coordinates, which say which hole it is and nothing of it. */
const WHICH = /^[-+±]?[A-Z]{0,4}[ .-]?\d*(?:[.,/-]\d+)*[A-Z]?(?:\s?mm)?$/i;
/** A heading that says no more than that numbers stand under it. */
const NUMBERS = /^(?:no|nr|n[º°]?|#|num|number|nummer|numero|número)\.?$/i;

/**
 * The kind of a headed column, settled by what stands under it: a size that is no thread is the drill's, numbers
 * that repeat do not count rows, and words may matter wherever they stand. Source: common practice; no unit.
 */
export function settledKind(column: Column, body: Body, at: number, all: Known): ColumnKind {
  const { kind, name } = column;
  const cells = columnOf(body, at);
  const others = all.flatMap((other, each) => (other && each !== at ? [other.kind] : []));
  const anyThread = cells.some(({ cell }) => readCallout(cell).ok);
  if (kind === 'thread' && cells.length > 0 && !anyThread && others.includes('thread')) {
    return others.includes('drill') ? 'remark' : 'drill';
  }
  if (kind !== 'item' && kind !== 'tool') return kind;
  const numbers = cells.length > 1 && cells.every(({ cell }) => WHOLE.test(cell));
  if (numbers && NUMBERS.test(name) && !distinct(cells) && !others.includes('quantity')) {
    return 'quantity';
  }
  if (cells.every(({ cell }) => WHICH.test(cell))) return kind;
  return anyThread && !others.includes('thread') ? 'thread' : 'remark';
}
