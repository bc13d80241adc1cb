/** The gauges of a thread: what each stands for, what it proves, and both rules of turns. */

import { Scroll } from '../calculators/Scroll';
import type { GaugeSet } from '../../core/gauge/members';
import { depthByTurns } from '../../core/gauge/reading';
import { decimals, length, type Unit } from '../words';
import { GAUGES, GAUGE_TABLE, HEADINGS, PROOFS, TURN_RULES } from '../words/en/reference';
import { fill } from '../words/template';
import { limitIn } from './limits';

/** Turns allowed by each rule, with the depth they make: both rules side by side. */
export function turnsText(set: GaugeSet, pitch: number, unit: Unit): string | null {
  if (set.turns.length === 0) return null;
  const rules = set.turns.map(({ rule, turns }) =>
    fill(
      GAUGE_TABLE.rule,
      {
        turns: decimals(turns, 2),
        depth: length(depthByTurns(turns, pitch), unit),
        name: TURN_RULES[rule],
      },
      unit,
    ),
  );
  return fill(GAUGE_TABLE.turns, { rules: rules.join('; ') }, unit);
}

export function GaugeTable({ set, pitch, unit }: { set: GaugeSet; pitch: number; unit: Unit }) {
  return (
    <>
      <Scroll label={HEADINGS.gauges}>
        <table class="facts">
          <thead>
            <tr>
              <th scope="col">{GAUGE_TABLE.gauge}</th>
              <th scope="col" class="number">
                {fill(GAUGE_TABLE.size, { unit }, unit)}
              </th>
              <th scope="col">{GAUGE_TABLE.proves}</th>
            </tr>
          </thead>
          <tbody>
            {set.gauges.map((gauge) => (
              <tr key={gauge.member}>
                <th scope="row">{GAUGES[gauge.member]}</th>
                <td class="number">{limitIn(gauge.size, gauge.unit, unit)}</td>
                <td>{gauge.proves.map((proof) => PROOFS[proof]).join('; ')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p class="small">
        {turnsText(set, pitch, unit)} {GAUGE_TABLE.note}
      </p>
    </>
  );
}
