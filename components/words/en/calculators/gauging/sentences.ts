/** The answer of the gauging calculator in words. English. */

import type { DepthFindingCode, GaugeAction } from '../../../../../core/gauge/advice';
import type { GaugeFindingCode } from '../../../../../core/gauge/reading';
import { depthPair } from '../../../../reference/limits';
import type { Part } from '../../../answer';
import { TURN_RULES } from '../../reference';
import { decimals, length, type Unit } from '../../../format';
import { fill } from '../../../template';
import { GO_LABELS, PLAIN_LABELS } from './messages';
import type { GaugeAnswer } from '../../../../calculators/gauging/state';

export const TEXT = {
  finder: 'Find the cause, one check at a time',
  rules: 'Under each rule',
  rule: 'Rule',
  allows: 'NOT GO may make',
  verdict: 'This hole',
  accepts: 'passes',
  refuses: 'fails',
  steps: 'What to do now',
  gauges: 'The gauges of this thread',
  turns: '{turns} turns',
  proved: 'Full thread proved',
  limits: 'All limits of this thread',
  drill: 'Which drill?',
  plan: 'Plan this hole',
} as const;

export const FINDINGS: Record<GaugeFindingCode | DepthFindingCode, string> = {
  'pitch-in-class': 'The pitch diameter is in its class under both rules.',
  'pitch-small':
    'The GO will not start: pitch diameter small, or pitch and angle wrong, or chips and burrs in the way.',
  'go-stops':
    'The GO stops part of the way: chips at the bottom, too little full thread, or a thread that narrows.',
  'pitch-large': 'The NOT GO goes too far under every rule: the pitch diameter is too large.',
  'rules-disagree':
    'The NOT GO goes further than one rule allows and less than the other does: the drawing or the contract must say which holds.',
  'both-wrong':
    'GO refused and NOT GO in: not a matter of size. Wrong gauge, wrong pitch, or a torn thread.',
  'minor-small': 'The plain GO will not enter: the hole was drilled too small, or closed in.',
  'minor-large': 'The plain NOT GO enters: the hole was drilled too large.',
  'minor-unchecked':
    'No plain plug was tried, so nothing is known of the drilled hole: thread plugs do not see it.',
  'depth-reached': 'The turns of the GO prove the full thread asked for.',
  'depth-doubtful':
    'The GO’s own start decides whether the full thread is there: measure how much of it shows no full thread.',
  'depth-short': 'The turns of the GO are too few for the full thread asked for.',
  'depth-unchecked': 'How deep the full thread is has not been gauged.',
};

export const ACTIONS: Record<GaugeAction, string> = {
  'clean-and-retry': 'Clean the thread with a brush or a flush, wipe the gauge, and try again.',
  'never-force': 'Do not force the gauge: it tells nothing then, and wears.',
  'second-gauge': 'Try a second gauge, or one just calibrated.',
  'ask-which-rule': 'Ask which rule of turns the drawing or the contract holds to.',
  'try-plain-plugs': 'Try the plain plugs in the minor diameter.',
  'count-turns': 'Turn the GO in again and count its turns.',
  'measure-start': 'Measure the threads at the GO’s nose that are not full, or cut a sample open.',
  'stop-and-hold': 'Stop, and hold the parts made since the last good one.',
  'fresh-tap': 'Try a fresh tap of the same limit before you change the limit.',
  'check-feed-and-limit':
    'Check that feed is the pitch exactly, that the tap runs true, and its limit number.',
  'check-drill': 'Measure the drill and the hole it cuts.',
  'check-depths': 'Check the hole’s depth, the chips in it, the tap’s chamfer and its travel.',
  'record-and-run': 'Write it down and run on.',
};

const strong = (text: string): Part => ({ text, strong: true });

export function answerParts({ study, thread }: GaugeAnswer): Part[] {
  const { passes, findings } = study.advice;
  const of = { text: `${thread.designation}: ` };
  if (passes === true) return [of, strong('it passes'), { text: ' under both rules.' }];
  if (passes === false) return [of, strong('it does not pass'), { text: '.' }];
  if (findings.includes('rules-disagree')) {
    return [of, strong('it depends on the rule'), { text: '.' }];
  }
  return [of, strong('not settled'), { text: ': passes as far as it was gauged.' }];
}

export function becauseText({ study }: GaugeAnswer): string {
  const { findings, depth } = study.advice;
  return [...findings, depth].map((code) => FINDINGS[code]).join(' ');
}

export function askedParts({ question, thread }: GaugeAnswer, unit: Unit): string[] {
  const { go, notGoTurns, plain, goTurns, fullThread } = question;
  return [
    thread.designation,
    `GO: ${GO_LABELS[go].toLowerCase()}`,
    `NOT GO: ${decimals(notGoTurns, 2)} turns`,
    `plain plugs: ${PLAIN_LABELS[plain]}`,
    goTurns === undefined ? '' : `GO made ${decimals(goTurns, 2)} turns`,
    fullThread === undefined ? '' : `${length(fullThread, unit)} asked for`,
  ];
}

/** `up to 3 turns`. */
export function turnsOf(turns: number): string {
  return fill(TEXT.turns, { turns: `up to ${decimals(turns, 2)}` }, 'mm');
}

export function provedText({ study }: GaugeAnswer, unit: Unit): string | null {
  return study.proved ? `${depthPair(study.proved, unit)} ${unit}` : null;
}

export function assumed({ study }: GaugeAnswer): string[] {
  const { usual } = study.set;
  return [
    ...(usual
      ? [`Where the drawing names no rule, ${TURN_RULES[usual]} goes with this thread.`]
      : []),
    'Gauges clean, in date, at the temperature of the part, turned in by hand.',
    'A part thinner than the turns allowed: a NOT GO that passes right through is too far, however few its turns.',
    'At the GO’s start, half a thread to one whole thread is not full (common practice).',
  ];
}
