/** Every number in the lesson on gauging, from the core. */

import { gaugeSet, readThread, threadLimits } from '../../../core';
import { GAUGE_START, provedDepth } from '../../../core/gauge/advice';
import { TURN_RULES } from '../../../core/gauge/members';
import { inchToMm } from '../../../core/units';
import { bothLengths, decimals, length, limitLength, limitRange, threadRange } from '../../words';
import { FROM_TO } from '../../words/en/lesson';
import { ORDERS } from '../../words/en/exercises';
import { say } from '../../words/say';

function limitsOf(text: string) {
  const read = readThread(text);
  if (!read.ok) throw new Error(`Not a thread: ${text}`);
  const limits = threadLimits(read.value);
  if (!limits.ok) throw new Error(`No limits: ${text}`);
  return { thread: read.value, limits: limits.value, gauges: gaugeSet(read.value, limits.value) };
}

const housing = limitsOf('M8x1.25-6H');
const flange = limitsOf('3/8-16 UNC-2B');

/** The gauge table's thread. */
export const shown = housing;

const turnsOf = (rule: string) => TURN_RULES.find((each) => each.rule === rule)?.turns ?? 0;

const TURNS_MADE = 9.5;
const proved = provedDepth(TURNS_MADE, housing.thread.pitch);
const flangeProved = provedDepth(12, flange.thread.pitch);
const inches = (value: number) => limitLength(inchToMm(value), 'in');

export const facts = {
  /** The order of gauging, as practice asks for it. */
  order: ORDERS['gauge-it'].steps.map(([text, why]) => ({ text, why })),
  b12: decimals(turnsOf('asme-b1-2'), 0),
  iso: decimals(turnsOf('iso-1502'), 0),
  between: decimals((turnsOf('asme-b1-2') + turnsOf('iso-1502')) / 2, 1),
  start: threadRange(GAUGE_START),
  housing: {
    pitch: limitRange(housing.limits.pitch.min, housing.limits.pitch.max, 'mm'),
    minor: limitRange(housing.limits.minor.min, housing.limits.minor.max ?? 0, 'mm'),
    turns: decimals(TURNS_MADE, 1),
    least: proved.min,
    most: proved.max,
    leastText: bothLengths(proved.min),
    mostText: bothLengths(proved.max),
    bare: TURNS_MADE * housing.thread.pitch,
    bareText: length(TURNS_MADE * housing.thread.pitch, 'mm'),
    pitchText: length(housing.thread.pitch, 'mm'),
    asked: bothLengths(11),
  },
  flange: {
    minor: say(FROM_TO, {
      from: inches(flange.limits.minor.min),
      to: inches(flange.limits.minor.max ?? 0),
    }),
    turns: '12',
    least: bothLengths(flangeProved.min, 'in'),
    most: bothLengths(flangeProved.max, 'in'),
    asked: bothLengths(inchToMm(0.625), 'in'),
  },
} as const;
