/** What a column of a hole table may be. */

export const COLUMN_KINDS = [
  /** A running number, a letter on the drawing, coordinates: says which hole, nothing of it. */
  'item',
  'quantity',
  /** A thread, or a whole callout. */
  'thread',
  'pitch',
  'class',
  'depth',
  'through',
  'thickness',
  'drill',
  'drill-depth',
  'countersink',
  'tool',
  /** Words to be read like any other of the callout. */
  'remark',
  /** Numbers that may mean several things: read as words, so that they are asked about. */
  'unclear',
  /** Left out because a person said so. */
  'left-out',
] as const;

export type ColumnKind = (typeof COLUMN_KINDS)[number];

export interface Column {
  kind: ColumnKind;
  /** Its heading as typed; empty where it has none. */
  name: string;
  /** Unit that the heading gives. */
  unit?: 'mm' | 'in';
  /** The heading is not known: its words are read with each cell. */
  unknown?: boolean;
}
