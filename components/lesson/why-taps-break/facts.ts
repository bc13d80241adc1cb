/** Every number in the lesson on broken taps, from the plans of its jobs. */

import { diagnose } from '../../../core/diagnose/finder';
import { FIGURES } from '../../../core/diagnose/figures';
import { roomInPitches } from '../../../core/hole/rules';
import { tipDepth } from '../../../core/hole/depth';
import { dangerOverM10 } from '../../../core/tap/danger';
import { WORN } from '../../../core/tap/styles';
import { WATCH } from '../../../core/tap/twist';
import { BREAKS } from '../../words/en/bench';
import { bothLengths, decimals, force, length, percent, threadRange, torque } from '../../words';
import { fill } from '../../words/template';
import { checkText } from '../../words/trouble';
import type { Pick } from '../PickOne';
import { planned, tapOf } from '../planned';
import { JOBS, TRIED, triedIn } from './jobs';

const cover = planned(JOBS.cover);
const coverTap = tapOf(cover, 'spiral-flute', 'semi-bottoming');
const pitch = cover.thread.pitch;
const asked = JOBS.cover.fullThread ?? 0;
const limit = JOBS.cover.hole.kind === 'blind' ? (JOBS.cover.hole.limit?.depth ?? 0) : 0;
const longest = coverTap.chamfer.threads.max;
const wantedTip = tipDepth(asked, { pitch, chamferThreads: longest, centre: 0, clearance: 0 });
const flange = planned(JOBS.flange);
const flangeTap = tapOf(flange, 'spiral-flute', 'semi-bottoming');
const flangeShort = tapOf(flange, 'spiral-flute', 'bottoming');
const flangeLong = tapOf(flange, 'spiral-flute', 'plug');

export const tried = TRIED.map((text) => {
  const plan = planned(triedIn(text));
  const { tapShare } = tapOf(plan, 'spiral-flute', 'semi-bottoming');
  const { diameter, pitch: own, designation } = plan.thread;
  return { designation, ...tapShare, danger: dangerOverM10(own, diameter) };
});

export const picks: readonly Pick[] = tried.map(({ designation, sharp, worn }) => {
  const said = (unit: 'mm' | 'in') => fill(BREAKS.told, { sharp, worn }, unit);
  return {
    value: designation,
    label: designation,
    said: { mm: said('mm'), in: said('in') },
    share: { sharp, worn },
  };
});

/** What the finder would look at first for a break at the bottom. */
function firstCheck(): string {
  const found = diagnose({ symptom: 'broke-bottom', answers: [] });
  if (!found.ok || !found.value.next) throw new Error('Nothing to check.');
  return checkText(found.value.next, 'mm').ask;
}

const of = (start: string) => tried.find(({ designation }) => designation.startsWith(start))!;

export const facts = {
  firstCheck: firstCheck(),
  worn: decimals(WORN, 2),
  watchSharp: percent(WATCH.sharp),
  watchWorn: percent(WATCH.worn),
  runout: bothLengths(FIGURES.runout),
  life: `${decimals(FIGURES.life, 0)} %`,
  worst: {
    danger: decimals(of('#6').danger, 1),
    sharp: percent(of('#6').sharp),
    worn: percent(of('#6').worn),
  },
  ten: { sharp: percent(of('M10').sharp), worn: percent(of('M10').worn) },
  cover: {
    asked: bothLengths(asked),
    limit: bothLengths(limit),
    room: decimals(roomInPitches(limit, asked, pitch), 1),
    wants: decimals(coverTap.depth.roomInPitches, 1),
    chamfer: threadRange(coverTap.chamfer.threads),
    chamferLength: longest * pitch,
    chamferText: length(longest * pitch, 'mm'),
    beyond: wantedTip - limit,
    beyondText: bothLengths(wantedTip - limit),
    tip: wantedTip,
    gap: limit - asked,
  },
  flange: {
    torque: torque(flangeTap.torque.expected, 'in'),
    worn: torque(flangeTap.torque.expected * WORN, 'in'),
    spindle: torque(JOBS.flange.spindle?.torque ?? 0, 'in'),
    sharpShare: percent(flangeTap.tapShare.sharp),
    wornShare: percent(flangeTap.tapShare.worn),
    short: force(flangeShort.toothLoad, 'in'),
    long: force(flangeLong.toothLoad, 'in'),
    times: decimals(flangeShort.toothLoad / flangeLong.toothLoad, 1),
    shortThreads: threadRange(flangeShort.chamfer.threads),
    longThreads: threadRange(flangeLong.chamfer.threads),
  },
} as const;
