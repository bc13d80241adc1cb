/** What is asked about a whole part: its callouts, and once for all of them what they are made in and on. */

import { COLUMN_KINDS, type ColumnKind } from '../../core/drawing/columns';
import { MATERIAL_IDS } from '../../core/material/material';
import type { AddressField, Values } from '../state/address';

export const PART_NAMES = [
  'holes',
  'designation',
  'material',
  'thickness',
  'drive',
  'torque',
  'rpm',
  'changes',
  'columns',
  'lines',
  'job',
  'part',
  'operation',
  'machine',
  'units',
] as const;

export type PartName = (typeof PART_NAMES)[number];
export type PartInputs = Values<PartName>;

export const DRIVES = ['synchronous', 'floating', 'reversing-head', 'hand'] as const;

const CHOICES: Partial<Record<PartName, readonly string[]>> = {
  material: MATERIAL_IDS,
  drive: DRIVES,
  units: ['mm', 'in'],
};

export const PART_FIELDS: readonly AddressField<PartName>[] = PART_NAMES.map((name) => ({
  name,
  initial: name === 'drive' ? 'synchronous' : '',
  ...(CHOICES[name] ? { choices: CHOICES[name] } : {}),
}));

/** Most lines that are planned at once. */
export const MOST_LINES = 200;

/** Only printed. */
export const HEAD_NAMES = ['job', 'part', 'operation', 'machine'] as const;

export const CHANGE_NAMES = ['material', 'thickness', 'torque'] as const;
export type ChangeName = (typeof CHANGE_NAMES)[number];

/** What differs for single holes, as typed, by the number of the hole's first line, counted from 1. */
export type Changes = Readonly<Record<number, Partial<Record<ChangeName, string>>>>;

/** `2.material=iron-grey;2.thickness=8` as an object; what cannot be read is left out. */
export function readChanges(text: string): Changes {
  const changes: Record<number, Partial<Record<ChangeName, string>>> = {};
  for (const piece of text.split(';')) {
    const [, number, name, value] = /^(\d{1,3})\.([a-z]+)=(.+)$/.exec(piece.trim()) ?? [];
    if (!number || !value || !(CHANGE_NAMES as readonly string[]).includes(name!)) continue;
    changes[Number(number)] = { ...changes[Number(number)], [name as ChangeName]: value };
  }
  return changes;
}

export function writeChanges(changes: Changes): string {
  return Object.entries(changes)
    .flatMap(([number, each]) =>
      CHANGE_NAMES.flatMap((name) => {
        const value = each[name]?.replace(/;/g, ',').trim();
        return value ? [`${number}.${name}=${value}`] : [];
      }),
    )
    .join(';');
}

/** Every line as typed, blank ones too: a line's number is what a person counts. */
export function allLines(text: string): string[] {
  return text.split(/\r\n?|\n|\u2028|\u2029/);
}

/** The lines that hold anything. */
export function linesOf(text: string): string[] {
  return allLines(text).filter((line) => line.trim() !== '');
}

/** What a person says the columns of a table are: `quantity,,depth`; an empty place is left to the reader. */
export function readColumns(text: string): (ColumnKind | undefined)[] {
  const known: readonly string[] = COLUMN_KINDS;
  return text.split(',').map((kind) => (known.includes(kind) ? (kind as ColumnKind) : undefined));
}

export function writeColumns(columns: readonly (ColumnKind | undefined)[]): string {
  return columns
    .map((kind) => kind ?? '')
    .join(',')
    .replace(/,+$/, '');
}

/** A choice of columns belongs to one table: it goes when another is pasted, which another first line tells. */
export function sameTable(before: string, after: string): boolean {
  return linesOf(before)[0] === linesOf(after)[0];
}

/** What differs for a hole follows its line when lines are put in, taken out or moved. */
export function followLines(changes: Changes, before: string, after: string): Changes {
  const [old, now] = [allLines(before), allLines(after)];
  const moved: Record<number, Partial<Record<ChangeName, string>>> = {};
  for (const [number, each] of Object.entries(changes)) {
    const index = Number(number) - 1;
    const line = old[index];
    if (line === undefined) continue;
    const nth = old.slice(0, index).filter((other) => other === line).length;
    const places = now.flatMap((other, at) => (other === line ? [at] : []));
    // An edited line keeps its place; a vanished one takes its changes along.
    const at = places[nth] ?? places.at(-1) ?? (old.length === now.length ? index : undefined);
    if (at !== undefined) moved[at + 1] = each;
  }
  return moved;
}
