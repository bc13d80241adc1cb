/** Numbers in the text of the lesson on speed, feed and the cycle. */

import { powerOf } from '../../../core/cycle/spindle';
import { overrun } from '../../../core/cycle/reach';
import { checkFeed, exactFeed } from '../../../core/cycle/feed';
import { findMaterial } from '../../../core/material/table';
import { cycleStudy, type CycleQuestion } from '../../../core/plan/cycle-study';
import { tapLoads } from '../../../core/plan/tap-load';
import type { HoleRequest } from '../../../core/plan/types';
import { WORN } from '../../../core/tap/styles';
import {
  bothLengths,
  decimals,
  length,
  limitLength,
  percent,
  rpm,
  seconds,
  significant,
  torque,
} from '../../words';
import { BEARING, COVER, HUB, LEVER, MANIFOLD, MANIFOLD_FEED } from './jobs';
import { FROM_TO } from '../../words/en/lesson';
import { say } from '../../words/say';
import { PER_TURN } from '../../words/en/cycle';

export function studied(question: CycleQuestion) {
  const outcome = cycleStudy(question);
  if (!outcome.ok) throw new Error(`No cycle for ${question.thread}.`);
  return outcome.value;
}

/** A sharp straight-flute tap in a hole, N·m, and the speed in the middle of the range. */
export function turned(request: HoleRequest) {
  const loads = tapLoads(request, 'plug');
  const straight = loads.ok && loads.value.find(({ style }) => style === 'straight-flute');
  if (!straight) throw new Error(`No load for ${request.thread}.`);
  const fullThread = request.hole.kind === 'through' ? request.hole.thickness : undefined;
  const { thread, material } = request;
  const { rpm: speed } = studied({ ...MANIFOLD, thread, material, fullThread, rpm: undefined });
  const sharp = straight.torque.expected;
  return { sharp, worn: WORN * sharp, rpm: speed, power: powerOf(sharp, speed) };
}

const manifold = studied({ ...MANIFOLD, feed: MANIFOLD_FEED });
const wrong = manifold.typed!;
const hub = studied(HUB);
const cover = studied(COVER);
const lever = studied(LEVER);
const bearing = turned(BEARING);
const [clean] = manifold.clean;
if (!clean || cover.reachable === null) throw new Error('The cycles of the lesson say too little.');
/** What five per cent less than the pitch does over twenty turns. */
const short = checkFeed({
  pitch: lever.thread.pitch,
  rpm: 1,
  unit: 'mm',
  mode: 'per-revolution',
  programmed: 0.95 * lever.thread.pitch,
  thread: 20 * lever.thread.pitch,
});
const stainless = findMaterial('stainless-austenitic')!.speed!;
const inches = (feed: number, places: number) => `${decimals(feed, places)} in/min`;

export const cycleFacts = {
  rpm: rpm(MANIFOLD.rpm),
  rpmNumber: String(MANIFOLD.rpm),
  thread: length(MANIFOLD.fullThread, 'mm'),
  range: say(FROM_TO, { from: decimals(manifold.range.min, 0), to: rpm(manifold.range.max) }),
  exact: inches(manifold.exact, 4),
  exactMm: `${decimals(exactFeed(manifold.thread.pitch, MANIFOLD.rpm, 'mm', 'per-minute'), 1)} mm/min`,
  rounded: inches(manifold.rounded.programmed, 2),
  roundedDrift: limitLength(Math.abs(manifold.rounded.drift), 'mm'),
  wrong: inches(MANIFOLD_FEED, 0),
  wrongShare: percent(Math.abs(wrong.error)),
  wrongDrift: length(Math.abs(wrong.drift), 'mm'),
  wrongPitches: decimals(Math.abs(wrong.drift) / manifold.thread.pitch, 1),
  turns: decimals(manifold.rounded.turns, 0),
  cleanRpm: rpm(clean.rpm),
  cleanFeed: inches(clean.feed, clean.decimals),
  shortDrift: decimals(Math.abs(short.drift) / lever.thread.pitch, 1),
  hub: {
    thread: bothLengths(HUB.fullThread, 'in'),
    rpm: rpm(HUB.rpm),
    exact: inches(hub.exact, 4),
    rounded: inches(hub.rounded.programmed, 2),
    clean: hub.clean[0] ? `${rpm(hub.clean[0].rpm)}, ${inches(hub.clean[0].feed, 2)}` : '',
  },
  cover: {
    rpm: rpm(cover.rpm),
    reachable: rpm(cover.reachable),
    time: seconds(cover.time.total),
    overrun: length(overrun(cover.rpm, COVER.acceleration, cover.thread.pitch), 'mm'),
  },
  lever: {
    rpm: rpm(LEVER.rpm),
    feed: lever.exact,
    perTurn: lever.thread.pitch,
    backwards: LEVER.rpm / lever.thread.pitch,
    inch: exactFeed(lever.thread.pitch, LEVER.rpm, 'in', 'per-minute'),
    text: say(PER_TURN, {
      turns: decimals(LEVER.rpm, 0),
      pitch: decimals(lever.thread.pitch, 2),
      feed: decimals(lever.exact, 1),
    }),
  },
  stainless: `${say(FROM_TO, { from: decimals(stainless.min, 0), to: decimals(stainless.max, 0) })} m/min`,
  bearing: {
    sharp: torque(bearing.sharp),
    worn: torque(bearing.worn),
    power: `${significant(bearing.power, 2)} kW`,
    spindle: torque(BEARING.spindle!.torque!),
  },
} as const;
