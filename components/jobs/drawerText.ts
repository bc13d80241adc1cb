/**
 * The drawer as lines of text, typed or out of a spreadsheet: `tap; M8; spiral flute; 2-3`,
 * `drill; 6.8`, `machine; VMC-B; synchronous; 30; 4000`. Every line is read or says why not.
 */

import type { ChamferClass } from '../../core/chamfer/chamfer';
import { STOCKED_DRILLS } from '../../core/drill/sizes';
import type { SpindleDrive } from '../../core/plan/types';
import { readThread } from '../../core/thread/read';
import { readPlain } from '../fields/readNumber';
import { readTorque } from '../fields/readTorque';
import { problemText } from '../words';
import { readTable, writeTable } from './csv';
import type { Drawer, Machine, OwnedTap } from './shape';
import { READING } from '../words/en/drawerLines';
import { say } from '../words/say';

export interface DrawerRow {
  /** The row as it stood. */
  text: string;
  /** What it was read as, or why it could not be. */
  said: string;
  ok: boolean;
}

export interface ReadDrawer {
  drawer: Drawer;
  rows: DrawerRow[];
}

const STYLES: readonly [RegExp, OwnedTap['style']][] = [
  [/point|gun|^sp$/i, 'spiral-point'],
  [/spiral|helix|^sf$/i, 'spiral-flute'],
  [/straight|hand|^st$/i, 'straight-flute'],
  [/form|roll|press|^f$/i, 'form'],
];

/** Words, ISO or DIN letters and counts of threads that name a class. */
const CHAMFERS: readonly [RegExp, ChamferClass][] = [
  [/^(?:semi[- ]?bottoming|c|2\s*[-–]\s*3)$/i, 'semi-bottoming'],
  [/^(?:taper|a|first|7\s*[-–]\s*10|6\s*[-–]\s*8)$/i, 'taper'],
  [/^(?:plug|b|d|second|3\s*[-–]\s*5|3[.,]5\s*[-–]\s*5[.,]5)$/i, 'plug'],
  [/^(?:bottoming|e|f|1[.,]5\s*[-–]\s*2|1\s*[-–]\s*2)$/i, 'bottoming'],
];

const DRIVES: readonly [RegExp, SpindleDrive][] = [
  [/^(?:sync|rigid)/i, 'synchronous'],
  [/^(?:float|tension)/i, 'floating'],
  [/^(?:rever)/i, 'reversing-head'],
  [/^(?:hand|bench)/i, 'hand'],
];

type Found<T> = { item: T; said: string } | { why: string };

function readTap([, thread = '', style = '', chamfer = '']: string[]): Found<OwnedTap> {
  const read = readThread(thread);
  if (!read.ok) return { why: problemText(read.problems[0]!, 'mm') };
  const [, kind] = STYLES.find(([pattern]) => pattern.test(style)) ?? [];
  if (!kind) {
    return {
      why: say(READING.notStyle, { typed: style }),
    };
  }
  const [, name] = CHAMFERS.find(([pattern]) => pattern.test(chamfer)) ?? [];
  if (!name) {
    return {
      why: say(READING.notChamfer, { typed: chamfer }),
    };
  }
  const { designation } = read.value;
  return {
    item: { thread: designation, style: kind, chamfer: name },
    said: say(READING.tap, {
      thread: designation,
      style: READING.styles[kind],
      chamfer: READING.chamfers[name],
    }),
  };
}

function readDrill([, typed = '']: string[]): Found<{ name: string }> {
  const bare = typed
    .replace(/\s*mm$/i, '')
    .replace(/"|\s*in$/i, '')
    .replace(/^letter\s*/i, '')
    .trim();
  const metric = /^\d+(?:[.,]\d+)?$/.test(bare) ? Number(bare.replace(',', '.')) : null;
  const drill = STOCKED_DRILLS.find(
    ({ name, series, diameter }) =>
      name.toLowerCase() === bare.toLowerCase() ||
      (metric !== null && series === 'metric' && Math.abs(diameter - metric) < 1e-9),
  );
  if (!drill) return { why: say(READING.notDrill, { typed }) };
  return { item: { name: drill.name }, said: say(READING.drill, { name: drill.name }) };
}

function readMachine([, name = '', drive = '', torque = '', rpm = '']: string[]): Found<Machine> {
  if (name === '') return { why: READING.noMachine };
  const kind = DRIVES.find(([pattern]) => pattern.test(drive))?.[1];
  if (!kind)
    return {
      why: say(READING.notDrive, { typed: drive }),
    };
  const newtonMetres = torque === '' ? undefined : readTorque(torque);
  if (newtonMetres === null) return { why: say(READING.notTorque, { typed: torque }) };
  const speed = rpm === '' ? undefined : readPlain(rpm, ['rpm', 'rev/min']);
  if (speed === null) return { why: say(READING.notSpeed, { typed: rpm }) };
  const item: Machine = {
    name,
    drive: kind,
    ...(newtonMetres === undefined ? {} : { torque: newtonMetres }),
    ...(speed === undefined ? {} : { rpm: speed }),
  };
  return { item, said: say(READING.machine, { name }) };
}

const isHeader = (row: readonly string[], at: number) =>
  at === 0 && /^(?:kind|what|type)$/i.test(row[0] ?? '');

/** Reads the drawer, row by row. */
export function readDrawer(text: string): ReadDrawer {
  const drawer: Drawer = { taps: [], drills: [], machines: [] };
  const rows = readTable(text).flatMap((row, at): DrawerRow[] => {
    if (isHeader(row, at)) return [];
    const shown = row.join('; ');
    const keep = <T>(list: T[], found: Found<T>): DrawerRow[] => {
      if ('why' in found) return [{ text: shown, said: found.why, ok: false }];
      list.push(found.item);
      return [{ text: shown, said: found.said, ok: true }];
    };
    if (/^taps?$/i.test(row[0] ?? '')) return keep(drawer.taps, readTap(row));
    if (/^drills?$/i.test(row[0] ?? '')) return keep(drawer.drills, readDrill(row));
    if (/^machines?$/i.test(row[0] ?? '')) return keep(drawer.machines, readMachine(row));
    return [{ text: shown, said: READING.notKind, ok: false }];
  });
  return { drawer, rows };
}

/** The drawer as a table, to save and to type in. */
export function drawerRows({ taps, drills, machines }: Drawer): string[][] {
  return [
    ...taps.map(({ thread, style, chamfer }) => ['tap', thread, style.replace('-', ' '), chamfer]),
    ...drills.map(({ name }) => ['drill', name]),
    ...machines.map(({ name, drive, torque, rpm }) => [
      'machine',
      name,
      drive.replace('-', ' '),
      torque === undefined ? '' : String(torque),
      rpm === undefined ? '' : String(rpm),
    ]),
  ];
}

/** The drawer as the lines of its field. */
export function drawerText(drawer: Drawer): string {
  return drawerRows(drawer)
    .map((row) => row.join('; ').replace(/[; ]+$/, ''))
    .join('\n');
}

export function drawerCsv(drawer: Drawer): string {
  return writeTable([READING.head, ...drawerRows(drawer)]);
}
