/** The change to try now, how to know that it worked, and the way on where it did not. */

import type { RankedCause } from '../../core/diagnose/finder';
import { TROUBLE } from '../words/en/trouble';
import type { Unit } from '../words/format';
import { sourceMark } from '../words/sources';
import { causeText } from '../words/trouble';

export interface ChangeProps {
  leader: RankedCause;
  settled: boolean;
  unit: Unit;
  onTried: () => void;
}

export function Change({ leader, settled, unit, onTried }: ChangeProps) {
  const { name, change, proof } = causeText(leader.cause, unit);
  return (
    <section class={settled ? 'change settled' : 'change'} aria-labelledby="change-heading">
      <p class="label">{settled ? TROUBLE.tryThis : TROUBLE.tryFirst}</p>
      <h3 id="change-heading" tabIndex={-1}>
        {name}
      </h3>
      <p class="change-text">{change}</p>
      <p>
        <strong>{TROUBLE.proof}:</strong> {proof}{' '}
        <span class="quiet">({sourceMark(leader.source)})</span>
      </p>
      <p class="actions no-print">
        <button type="button" class="button plain" onClick={onTried}>
          {TROUBLE.tried}
        </button>
      </p>
    </section>
  );
}
