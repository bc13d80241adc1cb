/** Everything that keeps the form from an answer, on top of it, in the words that stand at the fields. */

import { useEffect, useRef } from 'preact/hooks';
import { Sign } from '../result/Sign';
import { FieldLink } from './FieldLink';

export interface ErrorSummaryProps {
  heading: string;
  problems: readonly { field: string; text: string }[];
  /** Counts the times the form was sent: each time the summary takes the focus. */
  attempt: number;
}

export function ErrorSummary({ heading, problems, attempt }: ErrorSummaryProps) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (attempt > 0) box.current?.focus();
  }, [attempt]);
  return (
    <div class="summary" role="alert" tabIndex={-1} ref={box}>
      <h2>
        <Sign level="stop" />
        {heading}
      </h2>
      <ul>
        {problems.map(({ field, text }) => (
          <li key={field}>
            <FieldLink field={field}>{text}</FieldLink>
          </li>
        ))}
      </ul>
    </div>
  );
}
