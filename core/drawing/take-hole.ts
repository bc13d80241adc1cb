/** Counts, circles, diameters, countersinks and counterbores, taken where they stand. */

import { STOCKED_DRILLS } from '../drill/sizes';
import * as holes from './hole-patterns';
import type { RawLength } from './length';
import { EDGE } from './normalise';
import { newHole, type RawHole, type Reading, type Span } from './reading';

type Groups = Readonly<Record<string, string | undefined>>;

/** A plain length by the name of its group. */
export function lengthOf(groups: Groups | undefined, name: string): RawLength | undefined {
  const text = groups?.[name];
  return text === undefined ? undefined : { text, unit: groups?.[`${name}Unit`] };
}

const FIRST_CELL = new RegExp(`^(\\d{1,4})\\s*(?=${EDGE})`);

/** Takes how many holes there are. Source: common practice; no unit. */
export function takeCount(reading: Reading): boolean {
  const first = reading.takenAt < 0 ? reading.take(FIRST_CELL) : null;
  const taken = first ?? reading.takeOne(holes.COUNT);
  if (!taken) return false;
  const count = Number(taken.found.slice(1).find((group) => group !== undefined));
  if (reading.count === undefined) reading.count = count;
  // Another number of holes: nobody can know which is meant.
  else if (reading.count !== count) reading.mark(taken.span, 'notRead');
  return true;
}

/** Takes the circle that holes lie on. Source: common practice; no unit. */
export function takeCircle(reading: Reading): boolean {
  if (!reading.takeOne(holes.CIRCLE)) return false;
  reading.subject = reading.subject === 'none' ? 'none' : reading.subject;
  return true;
}

/** A frame of geometric tolerance is not acted on. */
export function takeFrame(reading: Reading): boolean {
  return reading.take(holes.FRAME, 'notRead') !== null;
}

/** Degrees of a countersink; what no cutter has is no angle. */
function sinkAngle(text: string | undefined): number | undefined {
  const angle = Number(text);
  return angle > 0 && angle < 180 ? angle : undefined;
}

/** Takes a countersink or a bevel. Source: common practice; no unit. */
export function takeSink(reading: Reading): boolean {
  const taken = reading.takeOne(holes.COUNTERSINK) ?? reading.takeOne(holes.BARE_SINK);
  if (taken) {
    const { groups } = taken.found;
    const diameter = lengthOf(groups, 'sink');
    if (reading.sink) reading.mark(taken.span, 'notRead');
    else
      reading.sink = {
        ...(diameter && { diameter }),
        angle: sinkAngle(groups?.['angle'] ?? groups?.['later']),
      };
    return true;
  }
  const bevel = reading.takeOne(holes.CHAMFER);
  if (!bevel) return false;
  const width = lengthOf(bevel.found.groups, 'width')!;
  if (reading.sink || reading.chamfer) reading.mark(bevel.span, 'notRead');
  else reading.chamfer = { width, side: Number(bevel.found.groups!['side']) };
  return true;
}

/** Takes a counterbore or spotface. Source: common practice; no unit. */
export function takeBore(reading: Reading): boolean {
  const taken = reading.takeOne(holes.COUNTERBORE);
  if (!taken) return false;
  const { groups } = taken.found;
  const diameter = lengthOf(groups, 'bore')!;
  const depth = lengthOf(groups, 'floor') ?? lengthOf(groups, 'floorAfter');
  if (depth && !reading.fields.counterbore) reading.fields.counterbore = { diameter, depth };
  else {
    reading.note('counterbore-not-planned', { text: reading.textOf(taken.span) });
    reading.mark(taken.span, 'notRead');
  }
  return true;
}

function drillNamed(name: string): RawLength | undefined {
  const size = STOCKED_DRILLS.find((drill) => drill.name === name)?.diameter;
  return size === undefined ? undefined : { text: String(size), unit: 'mm' };
}

/** Gives a diameter to the hole that a drill word has just opened, or opens another. */
function drilled(reading: Reading, diameter: RawLength, said: boolean, span: Span): RawHole {
  const { subject } = reading;
  const open =
    typeof subject === 'object' && subject.diameter === undefined && subject.depth === undefined;
  const hole = open ? subject : newHole(reading, said, span);
  if (open) hole.spans.push(span);
  hole.diameter = diameter;
  hole.said ||= said;
  return hole;
}

/** `#7 DRILL`, `letter F drill`, `7/16 DRILL`, `TAP DRILL: F`: the hole by the name of its drill. */
export function takeNamedDrill(reading: Reading): boolean {
  for (const pattern of [holes.NAMED_DRILL, holes.DRILL_NAMED]) {
    const found = pattern.exec(reading.rest);
    if (!found) continue;
    const { sign, number, letter, lettered } = found.groups ?? {};
    const name = sign === undefined ? (letter ?? lettered)?.toUpperCase() : `#${Number(number)}`;
    const diameter = name === undefined ? lengthOf(found.groups, 'size') : drillNamed(name);
    if (!diameter) continue;
    drilled(reading, diameter, true, reading.advance(found[0].length, 'read'));
    return true;
  }
  const taken = reading.takeOne([holes.DRILL_DIAMETER, holes.DRILL_SIZE]);
  if (taken) drilled(reading, lengthOf(taken.found.groups, 'size')!, true, taken.span);
  return taken !== null;
}

/** Takes a diameter, the drill or something else. Source: common practice; no unit. */
export function takeDiameter(reading: Reading): boolean {
  const found = holes.DIAMETER.exec(reading.rest);
  if (!found) return false;
  const after = reading.rest.slice(found[0].length);
  const word = holes.DRILL_AFTER.exec(after)?.[0] ?? '';
  if (word === '' && holes.NO_DRILL.test(after)) {
    reading.advance(found[0].length, 'notRead');
    reading.subject = 'other';
    return true;
  }
  const span = reading.advance(found[0].length + word.length, 'read');
  const size = found.groups?.['size'] === undefined ? 'before' : 'size';
  drilled(reading, lengthOf(found.groups, size)!, word !== '', span);
  return true;
}
