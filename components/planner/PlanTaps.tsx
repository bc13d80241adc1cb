/** The taps that were not chosen, best first, each with the reason and what would change it. */

import type { TapChoice } from '../../core/plan/types';
import type { ThreadSystem } from '../../core/thread/thread';
import { Fold } from '../fields/Fold';
import { Sign } from '../result/Sign';
import { reasonText, tapName, type Unit } from '../words';
import { TAP_TABLE, TEXT } from '../words/en/planner';

const SIGNS = { best: 'good', works: 'good', no: 'stop' } as const;

interface TapTableProps {
  taps: readonly TapChoice[];
  system: ThreadSystem;
  unit: Unit;
  caption: string;
}

function TapRow({ tap, system, unit }: { tap: TapChoice; system: ThreadSystem; unit: Unit }) {
  return (
    <tr class={`verdict-${tap.verdict}`}>
      <th scope="row">{tapName(tap, system)}</th>
      <td>
        <span class="verdict">
          <Sign level={SIGNS[tap.verdict]} />
          {TAP_TABLE.verdicts[tap.verdict]}
        </span>{' '}
        {tap.reasons.map((reason) => reasonText(reason, unit)).join(' ')}
      </td>
    </tr>
  );
}

function TapTable({ taps, system, unit, caption }: TapTableProps) {
  return (
    <table class="taps">
      <caption class="unseen">{caption}</caption>
      <thead class="unseen">
        <tr>
          <th scope="col">{TAP_TABLE.tap}</th>
          <th scope="col">{TAP_TABLE.why}</th>
        </tr>
      </thead>
      <tbody>
        {taps.map((tap) => (
          <TapRow key={tap.style + tap.chamfer.class} tap={tap} system={system} unit={unit} />
        ))}
      </tbody>
    </table>
  );
}

/** Shown at once: the other two that work best, and of every style that will not do, its nearest miss. */
export function worthSaying(taps: readonly TapChoice[]): TapChoice[] {
  const others = taps.filter(({ verdict }) => verdict !== 'best');
  const working = others.filter(({ verdict }) => verdict === 'works').slice(0, 2);
  const missed = others.filter(
    ({ verdict, style }, index) =>
      verdict === 'no' &&
      others.findIndex((tap) => tap.style === style && tap.verdict === 'no') === index,
  );
  return [...working, ...missed];
}

export interface PlanTapsProps {
  taps: readonly TapChoice[];
  system: ThreadSystem;
  unit: Unit;
}

export function PlanTaps({ taps, system, unit }: PlanTapsProps) {
  return (
    <section aria-labelledby="taps-heading">
      <h2 id="taps-heading">{TEXT.taps}</h2>
      <TapTable taps={worthSaying(taps)} system={system} unit={unit} caption={TEXT.taps} />
      <Fold drawn="at-opening-live" summary={`${TEXT.allTaps} (${taps.length})`}>
        <TapTable taps={taps} system={system} unit={unit} caption={TEXT.allTaps} />
      </Fold>
    </section>
  );
}
