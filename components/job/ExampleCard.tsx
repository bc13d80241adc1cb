/** The card of the worked example, for the page to hold as plain HTML. Marked: nobody shall drill to it. */

import { EXAMPLE, EXAMPLE_CARD } from '../planner/examples';
import { attempt } from '../planner/state';
import { Card } from './Card';

export function ExampleCard() {
  const { plan, request } = attempt(EXAMPLE, 'mm');
  if (!plan || !request) throw new Error('The worked example of the planner has no plan.');
  return (
    <Card
      plan={plan}
      request={request}
      values={{ ...EXAMPLE, ...EXAMPLE_CARD }}
      unit="mm"
      example
      address=""
      made=""
    />
  );
}
