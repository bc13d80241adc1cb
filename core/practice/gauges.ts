/** What the gauges did, and what that means. */

import { readGauges, type GaugeFindingCode, type GaugeReading } from '../gauge/reading';
import type { Draw } from '../seeded';
import { mixed, oneOf } from './draw';
import { drawThread } from './pools';
import type { Level, Made } from './types';

const THREAD_TURNS = 10;

/** Turns that both rules allow, that only one does, and that none does. */
const FEW = [0, 0.5, 1, 1.5];
const BETWEEN = [2.25, 2.5, 2.75];
const MANY = [5, 6, 7, 8];

const CASES: Partial<Record<GaugeFindingCode, (draw: Draw) => Omit<GaugeReading, 'threadTurns'>>> =
  {
    'pitch-in-class': (draw) => ({
      go: 'all',
      notGoTurns: oneOf(draw, FEW),
      minorGo: true,
      minorNotGo: false,
    }),
    'pitch-small': () => ({ go: 'none', notGoTurns: 0, minorGo: true, minorNotGo: false }),
    'go-stops': () => ({ go: 'part', notGoTurns: 0, minorGo: true, minorNotGo: false }),
    'pitch-large': (draw) => ({
      go: 'all',
      notGoTurns: oneOf(draw, MANY),
      minorGo: true,
      minorNotGo: false,
    }),
    'rules-disagree': (draw) => ({
      go: 'all',
      notGoTurns: oneOf(draw, BETWEEN),
      minorGo: true,
      minorNotGo: false,
    }),
    'minor-large': (draw) => ({
      go: 'all',
      notGoTurns: oneOf(draw, FEW),
      minorGo: true,
      minorNotGo: true,
    }),
    'minor-small': (draw) => ({
      go: 'all',
      notGoTurns: oneOf(draw, FEW),
      minorGo: false,
      minorNotGo: false,
    }),
  };

const BY_LEVEL: Record<Level, readonly GaugeFindingCode[]> = {
  1: ['pitch-in-class', 'pitch-small', 'pitch-large'],
  2: ['pitch-in-class', 'go-stops', 'pitch-large', 'minor-large'],
  3: ['rules-disagree', 'minor-large', 'minor-small', 'go-stops'],
};

/** The finding that decides: what is wrong, or that nothing is. Null where several are wrong at once. No unit. Source: derived. */
export function decidingFinding(findings: readonly GaugeFindingCode[]): GaugeFindingCode | null {
  const faults = findings.filter((code) => code !== 'pitch-in-class');
  if (faults.length > 1) return null;
  return faults[0] ?? 'pitch-in-class';
}

/** Four readings of the same gauges' work, exactly one of which fits. Turns. Sources: `asme-b1-2`, `iso-1502`. */
export function makeGauges(draw: Draw, level: Level): Made {
  const thread = drawThread(draw, level);
  const wanted = oneOf(draw, BY_LEVEL[level]);
  const reading = { ...CASES[wanted]!(draw), threadTurns: THREAD_TURNS };
  const read = readGauges(reading);
  if (!read.ok || decidingFinding(read.value.findings) !== wanted) return null;
  const others = (Object.keys(CASES) as GaugeFindingCode[]).filter((code) => code !== wanted);
  const options = mixed(draw, [wanted, ...mixed(draw, others).slice(0, 3)]);
  return {
    variant: 'reading',
    given: {
      thread: thread.designation,
      go: reading.go,
      notGoTurns: reading.notGoTurns,
      minorGo: reading.minorGo ? 'yes' : 'no',
      minorNotGo: reading.minorNotGo ? 'yes' : 'no',
    },
    working: Object.fromEntries(read.value.rules.map(({ rule, turns }) => [rule, turns])),
    ask: { type: 'choice', answer: wanted, options: options.map((id) => ({ id, facts: {} })) },
  };
}
