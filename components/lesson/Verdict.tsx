import type { ComponentChildren } from 'preact';
import { Sign } from '../result/Sign';
import { LESSON } from '../words/en/lesson';

export interface Said {
  right: boolean;
  text: string;
  /** Said in place of “Right” or “Not that”. */
  opening?: string;
}

/**
 * Feedback under a question, announced when it changes. The region is there from the start,
 * because a screen reader does not announce a region that arrives together with its text.
 */
export function Verdict({ said }: { said: Said | null }) {
  return (
    <div class="feedback" role="status">
      {said && (
        <p class={said.right ? 'said right' : 'said'}>
          <Sign level={said.right ? 'good' : 'note'} />
          <span>
            <strong>{said.opening ?? (said.right ? LESSON.right : LESSON.wrong)}</strong>{' '}
            {said.text}
          </span>
        </p>
      )}
    </div>
  );
}

/** The answer for whoever wants it, or has no script. */
export function Answer({ children }: { children: ComponentChildren }) {
  return (
    <details class="fold answer-fold">
      <summary>{LESSON.showAnswer}</summary>
      <div>{children}</div>
    </details>
  );
}
