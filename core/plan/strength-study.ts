/** What twists one tap off, what a torque is of that, where a clutch should let go, how long a wrench may be. */

import type { Problem } from '../outcome';
import { answer, refuse, type Outcome } from '../outcome';
import type { Spread } from '../spread';
import { clutchSetting, type ClutchSetting } from '../tap/clutch';
import { dangerIndex, dangerOverM10 } from '../tap/danger';
import { tapMajor } from '../tap/major';
import { WEAR, WORN } from '../tap/styles';
import { breakingBand, judgeShare, type ShareJudgement } from '../tap/twist';
import { measuredWeb, webSpread, type TwistedStyle } from '../tap/web';
import { wrenchArm } from '../tap/wrench';
import { referenceFlutes } from '../load/torque';
import { readThread } from '../thread/read';
import type { Thread } from '../thread/thread';
import type { Warning } from './types';
import { shareWarnings } from './warnings';

export interface StrengthQuestion {
  thread: string;
  style: TwistedStyle;
  /** Flutes of a straight-flute tap; usual for the size if left out. */
  flutes?: number | undefined;
  /** Web as measured across the bottoms of the flutes, mm. */
  web?: number | undefined;
  /** Torque of the sharp tap, N·m, measured or worked out elsewhere. */
  torque?: number | undefined;
}

export interface StrengthShare {
  sharp: number;
  worn: number;
  /** Worn tap at twice the sharp torque against the weakest tap of the band. */
  worst: number;
  judgement: ShareJudgement;
}

export interface StrengthStudy {
  thread: Thread;
  web: Spread;
  webMeasured: boolean;
  flutes: number;
  breaks: { low: number; expected: number; high: number };
  danger: { index: number; overM10: number };
  torque?: {
    sharp: number;
    worn: { low: number; expected: number; high: number };
    share: StrengthShare;
    warnings: Warning[];
    /** The most that wear makes of the torque against the weakest tap of the kind. */
    gap: 'clear' | 'near' | 'over';
  };
  /** Null where no setting serves; missing where no torque is known. */
  clutch?: ClutchSetting | null;
  /** mm from the axis to the hand. */
  arm: number;
}

/** From this share of the weakest tap on, the bands are close. Common practice. */
const NEAR = 0.85;

/** Threads that every trade knows, safest shape first, to lay another beside. */
export const FAMILIAR = [
  'M30x3.5',
  'M10x1.5',
  'M6x1',
  'M3x0.5',
  '#10-24',
  '#4-40',
  '#6-32',
] as const;

/** Danger index of the familiar threads. No unit. Source: derived. */
export function familiarDangers(): { designation: string; index: number }[] {
  return FAMILIAR.map((designation) => {
    const thread = readThread(designation);
    const index = thread.ok ? dangerIndex(thread.value.pitch, thread.value.diameter) : 0;
    return { designation, index };
  });
}

function shareOf(sharp: number, breaks: StrengthStudy['breaks']): StrengthShare {
  const shares = { sharp: sharp / breaks.expected, worn: (WORN * sharp) / breaks.expected };
  const worst = (WEAR.high * sharp) / breaks.low;
  return { ...shares, worst, judgement: judgeShare(shares) };
}

function loadOf(sharp: number, breaks: StrengthStudy['breaks']): StrengthStudy['torque'] {
  const share = shareOf(sharp, breaks);
  const worn = { low: WEAR.low * sharp, expected: WORN * sharp, high: WEAR.high * sharp };
  const gap = share.worst > 1 ? 'over' : share.worst > NEAR ? 'near' : 'clear';
  return { sharp, worn, share, warnings: shareWarnings(share), gap };
}

/**
 * Studies a tap's strength. mm and N·m. Refuses as `readThread` does, and with `web-out-of-range`
 * (outside 0.2 to 0.95 of the major diameter). Sources: `common-practice`, `from-memory`, derived.
 */
export function strengthStudy(question: StrengthQuestion): Outcome<StrengthStudy> {
  const reading = readThread(question.thread);
  if (!reading.ok) return reading;
  const thread = reading.value;
  const major = tapMajor(thread);
  const { style, web: measured, torque } = question;
  const flutes = question.flutes ?? referenceFlutes(major);
  const given = measured === undefined ? null : measuredWeb(measured, major);
  if (measured !== undefined && !given) {
    const problem: Problem = { code: 'web-out-of-range', field: 'web' };
    return refuse({ ...problem, data: { typed: String(measured) } });
  }
  const web = given ?? webSpread(style, major, major - 1.0825 * thread.pitch, flutes);
  const breaks = breakingBand(web);
  const { pitch } = thread;
  return answer(
    {
      thread,
      web,
      webMeasured: given !== null,
      flutes,
      breaks,
      danger: { index: dangerIndex(pitch, major), overM10: dangerOverM10(pitch, major) },
      ...(torque === undefined
        ? {}
        : {
            torque: loadOf(torque, breaks),
            clutch: clutchSetting(torque, breaks.expected),
          }),
      arm: wrenchArm(breaks.expected),
    },
    reading.notes,
  );
}
