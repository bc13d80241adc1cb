/** The answer of the thread-limits calculator in words. English. */

import { limitIn, limitsText } from '../../../../reference/limits';
import { notesText } from '../../../../reference/notes';
import type { Part } from '../../../answer';
import { decimals, length, type Unit } from '../../../format';
import { readingText } from '../../../thread';
import type { LimitsAnswer } from '../../../../calculators/thread-limits/state';

export const TEXT = {
  hole: 'Hole (minor diameter)',
  pitch: 'Pitch diameter',
  major: 'Major diameter',
  atLeast: 'at least {limit}, no upper limit',
  long: 'In a long engagement',
  classes: 'Every class',
  gauge: 'Gauge and drills',
  relatives: 'Same size, another hole',
  taper: 'A taper pipe thread',
  drill: 'Which drill?',
  gauges: 'Which gauges, and what do they say?',
  plating: 'Will it be coated?',
  page: 'All of this thread on one page',
  plan: 'Plan a hole with it',
} as const;

const strong = (text: string): Part => ({ text, strong: true });

export function answerParts({ study, thread }: LimitsAnswer, unit: Unit): Part[] {
  const { limits } = study.reference;
  if (!limits) {
    return [
      { text: `${thread.designation} has ` },
      strong('no limits of diameter'),
      { text: ': a gauge decides by how far it goes in.' },
    ];
  }
  return [
    { text: 'Hole ' },
    strong(limitsText(limits, 'minor', unit)),
    { text: ', pitch diameter ' },
    strong(limitsText(limits, 'pitch', unit)),
    { text: '.' },
  ];
}

export function becauseText({ study, thread }: LimitsAnswer, unit: Unit): string {
  return [`${readingText(thread)}.`, notesText(study.reference.notes, unit)]
    .filter((text) => text !== '')
    .join(' ');
}

/** What the length of engagement changes; null where it was not asked. */
export function engagementText(
  { study, engagement, thread }: LimitsAnswer,
  unit: Unit,
): string | null {
  if (engagement === undefined) return null;
  const { group, long, longFactor } = study;
  const asked = length(engagement, unit);
  if (long) {
    return `${asked} is a long engagement: the tolerance of the pitch diameter is ${decimals(longFactor, 2)} times the usual, so up to ${limitIn(long.pitch.max, long.unit, unit)} ${unit}.`;
  }
  if (!group) return `${asked} of engagement changes nothing in these limits.`;
  const normal = `${length(group.normal.min, unit)} to ${length(group.normal.max, unit)}`;
  const usual = `${group.usualClass} is the usual medium class there`;
  if (group.group === 'N') return `${asked} is a normal engagement (${normal}): ${usual}.`;
  const kind = group.group === 'S' ? 'short' : 'long';
  const drawn = `The limits follow the class on the drawing, ${thread.class}, not the length.`;
  return `${asked} is a ${kind} engagement (normal is ${normal}): ${usual}. ${drawn}`;
}

export function askedParts({ thread, engagement }: LimitsAnswer, unit: Unit): string[] {
  const engaged = engagement === undefined ? '' : `${length(engagement, unit)} in engagement`;
  return [thread.designation, engaged];
}

export function assumed({ thread }: LimitsAnswer): string[] {
  return [
    ...(thread.classGiven || thread.class === ''
      ? []
      : [`Class ${thread.class}, since none was given.`]),
    'Limits are for the finished thread, measured at 20 °C. Unified limits hold after coating, metric ones before it, unless the drawing says otherwise.',
    'Computed to the standard, not certified to it.',
  ];
}
