/**
 * Every number in the text of the lesson, taken from the plans of its jobs, as words with units.
 * The lesson itself types none of them.
 */

import { quarterRuleDepth, roomInPitches } from '../../../core/hole/rules';
import type { HolePlan, HoleRequest } from '../../../core/plan/types';
import * as words from '../../words';
import { decimals, drillName, threadRange } from '../../words';
import { numberOf, planned, tapOf } from '../planned';
import { JOBS } from './jobs';

const count = (value: number) => decimals(value, 2);

/** In running text a number must not part from its unit at the end of a line. */
const tied = (text: string) => text.replace(/(\d) (mm|in)\b/g, '$1\u00a0$2');
const length = (mm: number, unit: words.Unit) => tied(words.length(mm, unit));
const bothLengths = (mm: number) => tied(words.bothLengths(mm));

function limitOf(request: HoleRequest): number {
  if (request.hole.kind !== 'blind' || !request.hole.limit) throw new Error('No limit.');
  return request.hole.limit.depth;
}

function asked(request: HoleRequest): number {
  if (request.fullThread === undefined) throw new Error('No full thread.');
  return request.fullThread;
}

function roomOf(plan: HolePlan, request: HoleRequest): number {
  return roomInPitches(limitOf(request), asked(request), plan.thread.pitch);
}

const housing = planned(JOBS.housing);
const housingTap = tapOf(housing, 'spiral-flute', 'semi-bottoming');
const housingPlug = tapOf(housing, 'spiral-flute', 'plug');
const floating = tapOf(
  planned({ ...JOBS.housing, hole: { kind: 'blind' }, spindle: { drive: 'floating' } }),
  'spiral-flute',
  'semi-bottoming',
);
const foot = planned(JOBS.foot);
const footTap = tapOf(foot, 'straight-flute', 'semi-bottoming');
const cover = planned(JOBS.cover);
const coverShortest = tapOf(cover, 'spiral-flute', 'bottoming');
const coverUsual = tapOf(cover, 'spiral-flute', 'semi-bottoming');
const bracket = planned(JOBS.bracket);
const bracketTap = tapOf(bracket, 'spiral-flute', 'semi-bottoming');

export const facts = {
  housing: {
    fullThread: bothLengths(asked(JOBS.housing)),
    fullThreadMm: length(asked(JOBS.housing), 'mm'),
    limit: bothLengths(limitOf(JOBS.housing)),
    quarter: length(quarterRuleDepth(asked(JOBS.housing)), 'mm'),
    onePitchMore: length(asked(JOBS.housing) + housing.thread.pitch, 'mm'),
    shoulder: bothLengths(housingTap.depth.shoulder),
    shoulderMm: length(housingTap.depth.shoulder, 'mm'),
    middle: length(housingTap.depth.nominal.shoulder, 'mm'),
    tip: bothLengths(housingTap.depth.tip),
    room: count(housingTap.depth.roomInPitches),
    chamfer: threadRange(housingTap.chamfer.threads),
    longer: threadRange(housingPlug.chamfer.threads),
    longerNeeds: bothLengths(numberOf(housingPlug.reasons, 'does-not-reach', 'needed')),
    floating: bothLengths(floating.depth.shoulder),
    floatingRoom: count(floating.depth.roomInPitches),
    drill: housing.drill ? drillName(housing.drill) : '',
  },
  foot: {
    fullThread: length(asked(JOBS.foot), 'mm'),
    rule: length(limitOf(JOBS.foot), 'mm'),
    room: count(roomOf(foot, JOBS.foot)),
    obtainable: length(footTap.depth.fullThread, 'mm'),
    needs: length(numberOf(footTap.reasons, 'does-not-reach', 'needed'), 'mm'),
  },
  cover: {
    fullThread: length(asked(JOBS.cover), 'mm'),
    limit: length(limitOf(JOBS.cover), 'mm'),
    room: count(roomOf(cover, JOBS.cover)),
    shortest: threadRange(coverShortest.chamfer.threads),
    shortestNeeds: length(numberOf(coverShortest.reasons, 'does-not-reach', 'needed'), 'mm'),
    shortestGives: length(coverShortest.depth.fullThread, 'mm'),
    usualGives: length(coverUsual.depth.fullThread, 'mm'),
    usualNeeds: length(numberOf(coverUsual.reasons, 'does-not-reach', 'needed'), 'mm'),
  },
  bracket: {
    fullThread: bothLengths(asked(JOBS.bracket)),
    chamfer: threadRange(bracketTap.chamfer.threads),
    shoulder: bracketTap.depth.shoulder,
    shoulderText: bothLengths(bracketTap.depth.shoulder),
    middle: bracketTap.depth.nominal.shoulder,
    tip: bracketTap.depth.tip,
    quarter: quarterRuleDepth(asked(JOBS.bracket)),
    full: asked(JOBS.bracket),
    onePitchMore: asked(JOBS.bracket) + bracket.thread.pitch,
    point: bracketTap.depth.point,
    chamferLength: length(bracketTap.depth.tip - asked(JOBS.bracket), 'mm'),
    clearance: length(bracketTap.depth.shoulder - bracketTap.depth.tip, 'mm'),
  },
} as const;
