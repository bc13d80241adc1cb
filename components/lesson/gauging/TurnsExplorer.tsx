/** Turns of a NOT GO, and what each rule makes of them. */

import { useState } from 'preact/hooks';
import { readGauges } from '../../../core/gauge/reading';
import { TURNS } from '../../words/en/bench';
import { decimals } from '../../words/format';
import { CountStepper } from '../Stepper';

/** Threads in the hole that is gauged, and the most the control counts to. */
const THREADS = 10;
const MOST = 8;

/** What both rules say of so many turns, a sentence each, and whether they differ. */
export function turnsSaid(turns: number): { lines: string[]; differ: boolean } {
  const read = readGauges({ go: 'all', notGoTurns: turns, threadTurns: THREADS, minorGo: true });
  if (!read.ok) return { lines: [], differ: false };
  const { rules } = read.value;
  return {
    lines: rules.map(({ rule, turns: allowed, accepts }) =>
      TURNS.rule
        .replace('{rule}', TURNS.rules[rule])
        .replace('{turns}', decimals(allowed, 1))
        .replace('{verdict}', accepts ? TURNS.passes : TURNS.fails),
    ),
    differ: new Set(rules.map(({ accepts }) => accepts)).size > 1,
  };
}

export function TurnsExplorer() {
  const [turns, setTurns] = useState<number | null>(1);
  const said = turns === null ? null : turnsSaid(turns);
  return (
    <div class="explorer">
      <div class="explorer-controls needs-script">
        <CountStepper
          name="not-go-turns"
          label={TURNS.label}
          unit={TURNS.unit}
          hint={TURNS.hint}
          value={turns}
          min={0}
          max={MOST}
          step={0.5}
          onChange={setTurns}
        />
      </div>
      <div class={said?.differ ? 'told short' : 'told'} role="status">
        {said?.lines.map((text) => (
          <p key={text}>{text}</p>
        ))}
        {said?.differ && <p>{TURNS.differ}</p>}
      </div>
    </div>
  );
}
