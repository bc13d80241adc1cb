/** One check: what to look at, how, and what may be found, each a button for a gloved finger. */

import { answersOf, type CheckId } from '../../core/diagnose/checks';
import { CANNOT_CHECK } from '../../core/diagnose/finder';
import { TROUBLE } from '../words/en/trouble';
import type { Unit } from '../words/format';
import { answerText, checkText } from '../words/trouble';

export interface NextCheckProps {
  check: CheckId;
  unit: Unit;
  onAnswer: (answer: string) => void;
}

export function NextCheck({ check, unit, onAnswer }: NextCheckProps) {
  const { ask, how } = checkText(check, unit);
  return (
    <section class="next-check" aria-labelledby="check-heading">
      <p class="label">{TROUBLE.check}</p>
      <h3 id="check-heading" tabIndex={-1}>
        {ask}
      </h3>
      <p id="check-how">{how}</p>
      <ul class="answers" aria-describedby="check-how">
        {[...answersOf(check), CANNOT_CHECK].map((said) => (
          <li key={said}>
            <button
              type="button"
              class={said === CANNOT_CHECK ? 'button plain cannot' : 'button plain'}
              onClick={() => onAnswer(said)}
            >
              {answerText(check, said)}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
