/**
 * The planner's inputs: every one is the text that was typed or the word that was chosen, under
 * the name it has in the address. Nothing here is read or judged yet.
 */

import { CHAMFER_CLASSES } from '../../core/chamfer/chamfer';
import { MATERIAL_IDS } from '../../core/material/material';
import type { LengthUnit } from '../fields/readLength';
import type { AddressField, Values } from '../state/address';
import type { Unit } from '../words';

export const INPUT_NAMES = [
  'thread',
  'hole',
  'depth',
  'limit',
  'at',
  'thickness',
  'below',
  'fall',
  'partial',
  'designation',
  'material',
  'drive',
  'torque',
  'rpm',
  'acceleration',
  'point',
  'drills',
  'web',
  'centre',
  'interrupted',
  'entry',
  'entry-flat',
  'crossing',
  'crossing-width',
  'crossing-from',
  'crossing-cut',
  'bore-diameter',
  'bore-depth',
  'cored',
  'later',
  'duty',
  'substrate',
  'coated',
  'coat-min',
  'coat-max',
  'measured',
  'measured-style',
  'measured-chamfer',
  'measured-worn',
  'learned',
  'learned-band',
  'own',
  'kc',
  'mc',
  'hardness',
  'units',
  'job',
  'part',
  'operation',
  'machine',
  'holes',
] as const;

export type InputName = (typeof INPUT_NAMES)[number];
export type Inputs = Values<InputName>;

export const MEASURED_STYLES = ['spiral-point', 'spiral-flute', 'straight-flute', 'form'] as const;

export const LATER_PROCESSES = ['harden', 'plate', 'anodise', 'weld'] as const;
export const DUTIES = ['lifting', 'pressure', 'structure', 'vehicle', 'medical'] as const;
export const SUBSTRATES = ['hss', 'hss-e', 'pm', 'carbide'] as const;

const CHOICES: Partial<Record<InputName, readonly string[]>> = {
  hole: ['blind', 'through'],
  at: ['shoulder', 'point'],
  fall: ['yes', 'no'],
  material: MATERIAL_IDS,
  drive: ['synchronous', 'floating', 'reversing-head', 'hand'],
  interrupted: ['yes'],
  'entry-flat': ['yes'],
  crossing: ['bore', 'slot'],
  'crossing-cut': ['before', 'after'],
  cored: ['yes'],
  duty: DUTIES,
  substrate: SUBSTRATES,
  coated: ['yes'],
  'measured-style': MEASURED_STYLES,
  'measured-chamfer': CHAMFER_CLASSES,
  'measured-worn': ['yes'],
  units: ['mm', 'in'],
};

/** Settings that have a usual answer; everything else starts empty. */
const INITIAL: Partial<Record<InputName, string>> = {
  at: 'shoulder',
  fall: 'yes',
  drive: 'synchronous',
  'crossing-cut': 'before',
};

export const FIELDS: readonly AddressField<InputName>[] = INPUT_NAMES.map((name) => ({
  name,
  initial: INITIAL[name] ?? '',
  ...(CHOICES[name] ? { choices: CHOICES[name] } : {}),
}));

/** Typed only for the job card; carried along so that nothing is lost on the way. */
export const CARD_NAMES = ['job', 'part', 'operation', 'machine', 'holes'] as const;

/** What is said of the part around the hole, one step away; the order of a crossing says nothing alone. */
export const PART_NAMES: readonly InputName[] = [
  'interrupted',
  'entry',
  'entry-flat',
  'crossing',
  'crossing-width',
  'crossing-from',
  'bore-diameter',
  'bore-depth',
  'cored',
  'later',
  'duty',
];

/** Inputs one step away. */
export const MORE_NAMES: readonly InputName[] = [
  'point',
  'drills',
  'web',
  'centre',
  'substrate',
  'coated',
  'coat-min',
  'coat-max',
  'measured',
  'measured-style',
  'measured-chamfer',
  'measured-worn',
  'learned',
  'learned-band',
  'own',
  'kc',
  'mc',
  'hardness',
];

const COATING: readonly InputName[] = ['coat-min', 'coat-max'];
const LENGTHS: readonly InputName[] = [
  'depth',
  'limit',
  'thickness',
  'below',
  'partial',
  'web',
  'centre',
  'crossing-width',
  'crossing-from',
  'bore-diameter',
  'bore-depth',
  ...COATING,
];

/** The unit a bare number in this field stands for. Coatings are thin: µm, where lengths are in mm. */
export function baseUnit(name: InputName, unit: Unit): LengthUnit {
  return COATING.includes(name) && unit === 'mm' ? 'µm' : unit;
}

export function isLength(name: InputName): boolean {
  return LENGTHS.includes(name);
}

/** True once anything that bears on the plan stands in the form. */
export function isStarted(values: Inputs): boolean {
  return FIELDS.some(
    ({ name, initial }) =>
      name !== 'units' &&
      !(CARD_NAMES as readonly InputName[]).includes(name) &&
      values[name] !== initial,
  );
}

/** The drills in the drawer: an empty text means all, `none` means none. */
export const DRILL_CHOICES = ['metric', 'fraction', 'number', 'letter'] as const;

export function drillsChosen(text: string): string[] {
  if (text === '') return [...DRILL_CHOICES];
  return DRILL_CHOICES.filter((series) => text.split(',').includes(series));
}

export function drillsText(chosen: readonly string[]): string {
  if (chosen.length === DRILL_CHOICES.length) return '';
  return chosen.length === 0 ? 'none' : chosen.join(',');
}

/** What is done to the part later, as a list in one field. */
export function laterChosen(text: string): (typeof LATER_PROCESSES)[number][] {
  const known: readonly string[] = LATER_PROCESSES;
  return text
    .split(',')
    .filter((each): each is (typeof LATER_PROCESSES)[number] => known.includes(each));
}
