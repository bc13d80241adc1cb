import { FieldLink } from '../fields/FieldLink';
import { NEEDED, TEXT } from '../words/en/planner';
import type { PlannerState } from './useForm';

/** The old answer is gone; what is wanted for the next one stands in its place. */
export function Waiting({ planner }: { planner: PlannerState }) {
  const { attempt, shown } = planner;
  const problems = attempt?.problems ?? [];
  const needed = problems.filter(({ missing }) => missing).map(({ field }) => field);
  const wrong = shown.filter(({ field }) => !needed.includes(field));
  return (
    <div class="waiting">
      <p class="answer quiet">{attempt ? TEXT.blocked : TEXT.loading}</p>
      {needed.length > 0 && (
        <>
          <h2>{TEXT.waitingFor}</h2>
          <ul>
            {needed.map((field) => (
              <li key={field}>
                <FieldLink field={field}>{NEEDED[field] ?? field}</FieldLink>
              </li>
            ))}
          </ul>
        </>
      )}
      {wrong.length > 0 && (
        <>
          <h2>{TEXT.mend}</h2>
          <ul>
            {wrong.map(({ field, text }) => (
              <li key={field}>
                <FieldLink field={field}>{text}</FieldLink>
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
