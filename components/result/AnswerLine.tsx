/** The answer as one sentence, large enough to read from two metres; what is carried to the machine stands out. */

import type { Part } from '../words';

export function AnswerLine({ parts }: { parts: readonly Part[] }) {
  return (
    <p class="answer">
      {parts.map((part, index) => (part.strong ? <em key={index}>{part.text}</em> : part.text))}
    </p>
  );
}

/** The same sentence for a reader that has no use for emphasis. */
export function spoken(parts: readonly Part[]): string {
  return parts.map(({ text }) => text).join('');
}
