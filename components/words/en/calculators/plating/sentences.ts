/** The answer of the plating calculator in words. English. */

import { PLATING_FACTOR } from '../../../../../core/gauge/plating';
import { limitPair, windowText } from '../../../../reference/limits';
import type { Part } from '../../../answer';
import { LIMITS } from '../../reference';
import { decimals, drillName, limitNumber, type Unit } from '../../../format';
import { RULE_LABELS } from './messages';
import type { PlatingAnswer } from '../../../../calculators/plating/state';

export const TEXT = {
  windows: 'Before and after',
  diameter: 'Diameter',
  drawn: 'Class as drawn, {unit}',
  bare: 'Bare, before coating, {unit}',
  pitch: 'Pitch diameter',
  hole: 'Hole (minor diameter)',
  major: 'Major diameter, at least',
  taps: 'Tap limits that suit the bare thread',
  usualTaps: 'The ones lists name for the bare class',
  drills: 'Drills for the bare hole',
  noTaps: 'No list of tap limits reaches this thread: order the tap by its pitch diameter.',
  limits: 'All limits of this thread',
  gauges: 'What do the gauges say?',
  plan: 'Plan this hole',
} as const;

const strong = (text: string): Part => ({ text, strong: true });

/** Pitch diameters to tap to, in the reader's unit. */
export function tapTo({ study }: PlatingAnswer, unit: Unit): string {
  const { pitch, unit: own } = study.before;
  return `${limitPair(pitch, own, unit, LIMITS.open)} ${unit}`;
}

export function answerParts(answer: PlatingAnswer, unit: Unit): Part[] {
  const { best, drill } = answer.study;
  const taps = best.map(({ name }) => name);
  return [
    { text: 'Tap to a pitch diameter of ' },
    strong(tapTo(answer, unit)),
    ...(taps.length > 0 ? [{ text: ', with ' }, strong(taps.join(' or '))] : []),
    ...(drill ? [{ text: '; drill ' }, strong(drillName(drill))] : []),
    { text: '.' },
  ];
}

export function becauseText({ study, thickness }: PlatingAnswer, unit: Unit): string {
  const { before } = study;
  const [thin, thick] = thickness.map((each) => limitNumber(each, unit));
  const steps = before.extraSteps === 1 ? 'one step' : `${decimals(before.extraSteps, 0)} steps`;
  const rule =
    before.rule === 'after'
      ? 'The class holds after coating, so both ends of the bare thread move up.'
      : 'The class holds before coating, and a GO of the basic size must still enter after it, so only the lower end moves.';
  return `A layer on 60° flanks moves the pitch diameter by ${PLATING_FACTOR.pitch} times its thickness, the hole by ${PLATING_FACTOR.minor} times. ${thin}–${thick} ${unit} a surface costs up to ${steps} of half a thousandth of an inch. ${rule}`;
}

export function askedParts({ thread, thickness, rule }: PlatingAnswer, unit: Unit): string[] {
  const [thin, thick] = thickness.map((each) => limitNumber(each, unit));
  return [
    thread.designation,
    `each surface grows ${thin}–${thick} ${unit}`,
    `limits hold: ${RULE_LABELS[rule].toLowerCase()}`,
  ];
}

export function holeText({ study }: PlatingAnswer, unit: Unit): string {
  return windowText(study.hole, unit);
}

export function assumed(): string[] {
  return [
    'An even layer on flanks, crest and root. Barrel and rack plating build up at the mouth and starve a blind hole: measure, or mask.',
    'Which rule holds is from memory of ASME B1.1 and ISO 965-1. The drawing rules.',
    'The coating process and its chemicals are the plater’s: the safety data sheet and local rules come first.',
  ];
}
