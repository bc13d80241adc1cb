/** Numbers of the lesson on special threads, from the core's own limits, gauges and plans. */

import { minorLimitsMm, threadLimits } from '../../../core';
import { PIPE_TAPER, pipeNotes } from '../../../core/gauge/pipe';
import { PLATING_FACTOR } from '../../../core/gauge/plating';
import type { HoleRequest } from '../../../core/plan/types';
import { MM_PER_INCH } from '../../../core/units';
import { limitsOf, threadOf } from '../../rules/reckon';
import {
  bothLengths,
  bothLimits,
  decimals,
  drillName,
  limitLength,
  limitRange,
  type Unit,
} from '../../words';
import { tapName } from '../../words/names';
import { PICK_SPECIAL } from '../../words/en/specialThreads';
import { fill, type Values } from '../../words/template';
import type { Pick } from '../PickOne';
import { planned } from '../planned';
import { INSERT_PAIRS, SPECIAL_JOBS } from './jobs';

const drillOf = (request: HoleRequest): string => {
  const { drill } = planned(request);
  if (!drill) throw new Error(`No drill for ${request.thread}.`);
  return drillName(drill);
};

/** Minor limits, mm. */
export function minorOf(text: string): { min: number; max: number } {
  const { min, max } = minorLimitsMm(limitsOf(text));
  if (max === undefined) throw new Error(`${text} has no largest minor diameter.`);
  return { min, max };
}

const limitedBy = (text: string): Values => ({ ...minorOf(text) });

function pick(request: HoleRequest, kind: keyof typeof PICK_SPECIAL.said, values: Values): Pick {
  const label = threadOf(request.thread).designation;
  const all = { drill: drillOf(request), ...values };
  const said = (unit: Unit) => fill(PICK_SPECIAL.said[kind], all, unit);
  return { value: label, label, said: { mm: said('mm'), in: said('in') } };
}

const port = pipeNotes(threadOf(SPECIAL_JOBS.port.thread));
if (!port?.gauge) throw new Error('A taper pipe thread has a gauge.');
const plated = limitsOf(SPECIAL_JOBS.clamp.thread);

export const specialPicks: readonly Pick[] = [
  pick(SPECIAL_JOBS.link, 'left', {}),
  pick(SPECIAL_JOBS.drain, 'parallel', limitedBy(SPECIAL_JOBS.drain.thread)),
  pick(SPECIAL_JOBS.port, 'taper', { turns: port.gauge.turns }),
  pick(SPECIAL_JOBS.cover, 'insert', limitedBy(SPECIAL_JOBS.cover.thread)),
  pick(SPECIAL_JOBS.clamp, 'plated', { pitchMin: plated.pitch.min, pitchMax: plated.pitch.max }),
];

/** One row a size: the plain hole, the insert's, its drill, and the largest diameter that is cut. */
export const insertRows = INSERT_PAIRS.map(([plain, insert]) => {
  const limits = limitsOf(insert);
  const unit: Unit = limits.unit;
  const said = (text: string) => {
    const { min, max } = minorOf(text);
    return limitRange(min, max, unit);
  };
  const major = limits.unit === 'in' ? limits.majorMin * MM_PER_INCH : limits.majorMin;
  return {
    screw: plain,
    plain: said(plain),
    insert: said(insert),
    drill: drillOf({ thread: insert, hole: { kind: 'blind' }, material: 'al-cast' }),
    major: bothLengths(major, unit),
  };
});

/** The largest minor diameter that some makers of inserts allow, mm. */
function closerMinor(text: string): number {
  const outcome = threadLimits(threadOf(text));
  const notes = outcome.ok ? outcome.notes : [];
  const max = notes.find(({ code }) => code === 'insert-minor-closer')?.numbers?.['minorMax'];
  if (max === undefined) throw new Error(`Nothing is known of a closer hole for ${text}.`);
  return max;
}

/** A name in the middle of a sentence. */
const lower = (name: string) => name.charAt(0).toLowerCase() + name.slice(1);

const link = planned(SPECIAL_JOBS.link);
const linkTap = link.taps.find(({ verdict }) => verdict === 'best');
if (!linkTap) throw new Error('No tap suits the link.');
const cover = minorOf(SPECIAL_JOBS.cover.thread);
const coverInch = minorOf(SPECIAL_JOBS.coverInch.thread);
const plain = minorOf('M8x1.25-6H');
const bare = limitsOf('M8x1.25-6H');
/** A zinc layer of the lesson, mm on each surface. */
const LAYER = 0.008;

export const specialFacts = {
  link: { tap: lower(tapName(linkTap, link.thread.system)), drill: drillOf(SPECIAL_JOBS.link) },
  drain: {
    drill: drillOf(SPECIAL_JOBS.drain),
    limits: limitRange(
      minorOf(SPECIAL_JOBS.drain.thread).min,
      minorOf(SPECIAL_JOBS.drain.thread).max,
      'mm',
    ),
  },
  port: {
    turns: decimals(port.gauge.turns, 0),
    travel: bothLengths(port.gauge.travel, 'in'),
    taper: decimals(1 / PIPE_TAPER, 0),
    drill: drillOf(SPECIAL_JOBS.port),
  },
  cover: {
    limits: limitRange(cover.min, cover.max, 'mm'),
    plain: limitRange(plain.min, plain.max, 'mm'),
    closer: limitLength(closerMinor(SPECIAL_JOBS.cover.thread), 'mm'),
    drill: drillOf(SPECIAL_JOBS.cover),
    inchDrill: drillOf(SPECIAL_JOBS.coverInch),
    inchLimits: limitRange(coverInch.min, coverInch.max, 'in'),
  },
  plating: {
    times: decimals(PLATING_FACTOR.pitch, 0),
    layer: bothLimits(LAYER),
    shrink: PLATING_FACTOR.pitch * LAYER,
    shrinkText: bothLimits(PLATING_FACTOR.pitch * LAYER),
    once: LAYER,
    twice: 2 * LAYER,
    bare: limitRange(bare.pitch.min, bare.pitch.max, 'mm'),
    raised: limitRange(plated.pitch.min, plated.pitch.max, 'mm'),
  },
} as const;
