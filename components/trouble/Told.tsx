/** What was checked and what was tried, each to be taken back. */

import type { CauseId } from '../../core/diagnose/causes';
import type { CheckAnswer } from '../../core/diagnose/finder';
import { TROUBLE } from '../words/en/trouble';
import type { Unit } from '../words/format';
import { answerText, causeText, checkText } from '../words/trouble';

export function Told(props: {
  answers: readonly CheckAnswer[];
  onChange: (answer: CheckAnswer) => void;
}) {
  if (props.answers.length === 0) return null;
  return (
    <section aria-labelledby="told-heading">
      <h3 id="told-heading">{TROUBLE.told}</h3>
      <ul class="told-list">
        {props.answers.map((each) => (
          <li key={each.check}>
            <span>
              {checkText(each.check, 'mm').ask}{' '}
              <strong>{answerText(each.check, each.answer)}</strong>
            </span>{' '}
            <button
              type="button"
              class="link-button no-print"
              onClick={() => props.onChange(each)}
              aria-label={`${TROUBLE.change}: ${checkText(each.check, 'mm').ask}`}
            >
              {TROUBLE.change}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

export interface TriedProps {
  causes: readonly CauseId[];
  unit: Unit;
  onUndo: (cause: CauseId) => void;
}

export function Tried({ causes, unit, onUndo }: TriedProps) {
  if (causes.length === 0) return null;
  return (
    <section aria-labelledby="tried-heading">
      <h3 id="tried-heading">{TROUBLE.triedList}</h3>
      <ul class="told-list">
        {causes.map((cause) => (
          <li key={cause}>
            <span>{causeText(cause, unit).name}</span>{' '}
            <button
              type="button"
              class="link-button no-print"
              aria-label={`${TROUBLE.undo}: ${causeText(cause, unit).name}`}
              onClick={() => onUndo(cause)}
            >
              {TROUBLE.undo}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
