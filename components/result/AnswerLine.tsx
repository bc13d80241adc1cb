/** The answer as one sentence, large enough to read from two metres; what is carried to the machine stands out. */

import type { Part } from '../words';
import { Sign } from './Sign';

export interface AnswerLineProps {
  parts: readonly Part[];
  /** Nothing fits: a stop, with its sign. */
  stop?: boolean;
}

export function AnswerLine({ parts, stop = false }: AnswerLineProps) {
  return (
    <p class={stop ? 'answer stop' : 'answer'}>
      {stop && <Sign level="stop" />}
      <span>
        {parts.map(({ text, strong }) =>
          strong ? (
            <em key={text} class={/\d/.test(text) ? 'unbroken' : undefined}>
              {text}
            </em>
          ) : (
            text
          ),
        )}
      </span>
    </p>
  );
}

/** The same sentence for a reader that has no use for emphasis. */
export function spoken(parts: readonly Part[]): string {
  return parts.map(({ text }) => text).join('');
}
