/** Changes that would help, cheapest first, and where nothing fits the note to send. */

import type { HolePlan } from '../../core/plan/types';
import { bestTap, remedyText, type Unit } from '../words';
import { TEXT } from '../words/en/planner';

export function PlanRemedies({ plan, unit }: { plan: HolePlan; unit: Unit }) {
  if (plan.remedies.length === 0) return null;
  return (
    <section class="remedies" aria-labelledby="remedies-heading">
      <h2 id="remedies-heading">{bestTap(plan) ? TEXT.helps : TEXT.remedies}</h2>
      <ol>
        {plan.remedies.map((remedy) => {
          const { title, text } = remedyText(remedy, unit);
          return (
            <li key={remedy.code}>
              <strong>{title}.</strong> {text}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
