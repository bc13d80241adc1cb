/** Words of the part around the hole: what is done to it, what it carries, what crosses it, how it begins. */

import * as features from './feature-patterns';
import * as holes from './hole-patterns';
import { lengthOf } from './take-hole';
import type { Reading } from './reading';

/** `TAP AFTER PLATING`: then it is no later process, and the thread meets what the process left. */
function tappedAfter(reading: Reading): boolean {
  return /tap(?:ped|ping)?\s*$|thread(?:ed|s)?\s*$|drill(?:ed)?\s*(?:&|and)\s*tap\s*$/i.test(
    reading.line.text.slice(0, reading.at),
  );
}

function takeProcess(reading: Reading, instead = false): boolean {
  for (const [pattern, process] of features.LATER) {
    const taken = reading.take(pattern, instead ? 'notRead' : 'read');
    if (!taken) continue;
    if (!instead) reading.fields.later.add(process);
    reading.take(/^(?:after(?:wards)?|later)\b(?!\s+[a-z])/i);
    return true;
  }
  return false;
}

/** Takes what is done to the part after tapping. Source: common practice; no unit. */
export function takeLater(reading: Reading): boolean {
  if (takeProcess(reading)) return true;
  const start = reading.at;
  const fresh = tappedAfter(reading);
  const turn = reading.take(features.AFTER_LATER) ?? reading.take(features.BEFORE_LATER);
  if (!turn) return false;
  const after = features.AFTER_LATER.test(turn.found[0]);
  const instead = after && fresh;
  if (takeProcess(reading, instead)) {
    if (instead) reading.mark(turn.span, 'notRead');
    return true;
  }
  const noun = reading.take(features.PLATE_NOUN, instead ? 'notRead' : 'read');
  if (noun) {
    if (!instead) reading.fields.later.add('plate');
    else reading.mark(turn.span, 'notRead');
    return true;
  }
  // `PRIOR TO TAP` is the order of the work, as everybody does it.
  if (!after && reading.take(/^tap(?:ping|ped)?\b/i)) return true;
  reading.at = start;
  return false;
}

/** Takes what the thread carries. Source: common practice; no unit. */
export function takeDuty(reading: Reading): boolean {
  for (const [pattern, duty] of features.DUTIES) {
    const taken = reading.take(pattern);
    if (!taken) continue;
    if (reading.fields.duty && reading.fields.duty !== duty) reading.mark(taken.span, 'notRead');
    reading.fields.duty ??= duty;
    return true;
  }
  return false;
}

/** Takes what the hole opens into, and where chips may not fall. Source: common practice; no unit. */
export function takeOpening(reading: Reading): boolean {
  // What opens into another hole or may not take chips has no field that holds all of it: acted on, and quoted.
  const opens =
    reading.take(features.OPENS_INTO, 'notRead') ??
    reading.take(features.NO_CHIPS, 'notRead') ??
    reading.take(features.GALLERY, 'notRead');
  if (!opens) return false;
  reading.chipsMayNotFall = true;
  if (!features.NO_CHIPS.test(opens.found[0])) {
    reading.opens = true;
  }
  return true;
}

/** Takes a hole or slot across this one. Source: common practice; no unit. */
export function takeCrossing(reading: Reading): boolean {
  const taken = reading.takeOne(features.CROSSING);
  if (taken) {
    const { groups } = taken.found;
    const width = lengthOf(groups, 'width')!;
    if (reading.fields.crossing) reading.mark(taken.span, 'notRead');
    else reading.fields.crossing = { kind: groups?.['slot'] ? 'slot' : 'bore', width };
    reading.subject = 'other';
    return true;
  }
  if (!reading.take(features.BARE_CROSSING)) return false;
  reading.fields.interrupted = true;
  reading.subject = 'other';
  return true;
}

/** Takes the slope of the face. Source: common practice; no unit. */
export function takeEntry(reading: Reading): boolean {
  if (reading.take(features.SQUARE_ENTRY, 'harmless')) return true;
  const taken = reading.takeOne(features.ENTRY);
  if (!taken) return false;
  const typed = Number(taken.found.groups?.['angle']);
  const toFace = /face|surface/i.test(taken.found.groups?.['from'] ?? '');
  const angle = toFace && typed > 45 ? 90 - typed : typed;
  if (angle >= 0 && angle <= 60 && !reading.fields.entry) reading.fields.entry = { angle };
  else reading.mark(taken.span, 'notRead');
  return true;
}

/** Takes that the hole is cast in. Source: common practice; no unit. */
export function takeCored(reading: Reading): boolean {
  if (!reading.take(features.CORED)) return false;
  reading.fields.cored = true;
  return true;
}

/** Takes BLIND, a flat bottom, the angle of the drill point. Source: common practice; no unit. */
export function takeShape(reading: Reading): boolean {
  if (reading.take(holes.BLIND)) {
    reading.blind = true;
    return true;
  }
  if (reading.take(holes.FLAT_BOTTOM)) {
    reading.fields.drillPoint = 180;
    return true;
  }
  const point = reading.take(holes.DRILL_POINT);
  if (!point) return false;
  const angle = Number(point.found.groups?.['before'] ?? point.found.groups?.['after']);
  if (angle >= 60 && angle <= 180) reading.fields.drillPoint = angle;
  else reading.mark(point.span, 'notRead');
  return true;
}
