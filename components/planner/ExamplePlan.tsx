/** The worked example, for the page to hold as plain HTML: there before any script, and without it. */

import { attempt } from './state';
import { cardAddress, EXAMPLE, EXAMPLE_CARD } from './examples';
import { TEXT } from '../words/en/planner';
import { PlanResult } from './PlanResult';

export function ExamplePlan({ lessons }: { lessons: readonly string[] }) {
  const { plan, request } = attempt(EXAMPLE, 'mm');
  if (!plan || !request) throw new Error('The worked example of the planner has no plan.');
  return (
    <>
      <p class="example-mark">
        <strong>{TEXT.example}</strong> {TEXT.exampleText}{' '}
        <span class="needs-script">{TEXT.exampleGoes}</span>
      </p>
      <PlanResult
        plan={plan}
        request={request}
        notes={[]}
        unit="mm"
        lessons={lessons}
        card={cardAddress({ ...EXAMPLE, ...EXAMPLE_CARD })}
      />
    </>
  );
}
