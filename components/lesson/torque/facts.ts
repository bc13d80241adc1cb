/** Numbers in the text of the lesson on torque, from the core's studies of its holes. */

import { powerOf } from '../../../core/cycle/spindle';
import {
  grooveGeometry,
  REFERENCE_CHAMFER,
  specificForce,
  toothGeometry,
} from '../../../core/load/torque';
import { readThread } from '../../../core/thread/read';
import { tapLoads, type LoadedStyle } from '../../../core/plan/tap-load';
import { strengthStudy } from '../../../core/plan/strength-study';
import { studyTap } from '../../../core/plan/tap-study';
import type { HoleRequest } from '../../../core/plan/types';
import { clutchSetting } from '../../../core/tap/clutch';
import { dangerIndex } from '../../../core/tap/danger';
import { WORN } from '../../../core/tap/styles';
import {
  decimals,
  percent,
  roughLength,
  significant,
  torque,
  torqueBand,
} from '../../words/format';
import { planned } from '../planned';
import { FRAME, GLAND, GLAND_INCH, SMALL_SPINDLE, SMALL_THREADS } from './jobs';

function studied(request: HoleRequest, style: LoadedStyle) {
  const chamfer = request.hole.kind === 'blind' ? 'semi-bottoming' : 'plug';
  const found = studyTap(request, { style, chamfer });
  if (!found.ok) throw new Error(`No study of ${request.thread}.`);
  return found.value;
}

function loadOf(request: HoleRequest, style: LoadedStyle) {
  const found = tapLoads(request, request.hole.kind === 'blind' ? 'semi-bottoming' : 'plug');
  const load = found.ok && found.value.find((each) => each.style === style);
  if (!load) throw new Error(`No load of ${request.thread}.`);
  return load;
}

const gland = studied(GLAND, 'spiral-flute');
const glandLoad = loadOf(GLAND, 'spiral-flute');
const frame = loadOf(FRAME, 'spiral-point');

/** The straight-flute tap's cut, part by part. */
const { major, pitch, cutHole, flutes, material } = gland.job;
const groove = { major, pitch, hole: cutHole };
const { area, centroidRadius } = grooveGeometry(groove);
const force = specificForce(material, toothGeometry(groove, REFERENCE_CHAMFER, flutes).chip);

function dangerOf(text: string): number {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  return dangerIndex(thread.value.pitch, thread.value.diameter);
}

const danger = {
  worst: dangerOf(SMALL_THREADS.worst),
  ordinary: dangerOf(SMALL_THREADS.ordinary),
};

/** A torque read on the machine, and what breaks that tap, for the reader to set a clutch by. N·m. */
const READ = 3;
const read = clutchSetting(READ, gland.breaks.expected);
if (!read) throw new Error('No clutch setting for the reading of the lesson.');

const arm = strengthStudy({ thread: 'M3', style: 'straight-flute' });
if (!arm.ok) throw new Error('No strength of M3.');

const rpm = planned(FRAME).cycle?.rpm ?? 0;

const inchLoad = loadOf(GLAND_INCH, 'spiral-flute');

export const torqueFacts = {
  inch: {
    sharp: torque(inchLoad.torque.expected, 'in'),
    band: torqueBand(inchLoad.torque.low, inchLoad.torque.high, 'in'),
    shareSharp: percent(inchLoad.share.sharp),
    shareWorn: percent(inchLoad.share.worn),
  },
  area: decimals(area, 3, 3),
  radius: decimals(centroidRadius, 2, 2),
  force: significant(force, 3),
  straight: torque((force * area * centroidRadius) / 1000),
  sharp: torque(glandLoad.torque.expected),
  band: torqueBand(glandLoad.torque.low, glandLoad.torque.high),
  worn: torque(glandLoad.worn.expected),
  breaks: torque(gland.breaks.expected),
  breaksBand: torqueBand(gland.breaks.low, gland.breaks.high),
  shareSharp: percent(glandLoad.share.sharp),
  shareWorn: percent(glandLoad.share.worn),
  shareLow: percent(gland.doubt.wornShare.low),
  shareHigh: percent(gland.doubt.wornShare.high),
  wornTimes: decimals(WORN, 2),
  dangerWorst: decimals(danger.worst, 3, 3),
  dangerOrdinary: decimals(danger.ordinary, 3, 3),
  dangerTimesText: decimals(danger.worst / danger.ordinary, 1, 1),
  frameSharp: torque(frame.torque.expected),
  frameWorn: torque(frame.worn.expected),
  frameSpindle: torque(SMALL_SPINDLE),
  frameTimes: decimals(frame.torque.expected / SMALL_SPINDLE, 1, 1),
  framePower: `${significant(powerOf(frame.torque.expected, rpm), 2)} kW`,
  frameRpm: decimals(rpm, 0),
  read: torque(READ),
  readValue: READ,
  clutchLow: read.low,
  clutchHigh: read.high,
  clutchHighText: torque(read.high),
  halfBreaks: torque(gland.breaks.expected / 2),
  arm: roughLength(arm.value.arm, 'mm'),
} as const;
