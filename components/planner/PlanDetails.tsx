/** What stands below the answer: warnings in full, the other taps, the drills, what was assumed. */

import { useMemo } from 'preact/hooks';
import type { HolePlan, HoleRequest } from '../../core/plan/types';
import { useFollowing } from '../state/useFollowing';
import { assumptionText, bestTap, cautionText, NOT_A_RATING, type Unit } from '../words';
import { IN_ENGLISH } from '../words/elsewhere';
import { cautionsFor } from './cautions';
import { TEXT } from '../words/en/planner';
import { PlanDrills } from './PlanDrills';
import { PlanNotices } from './PlanNotices';
import { PlanRemedies } from './PlanRemedies';
import { PlanTaps } from './PlanTaps';

function Assumed({ plan, unit }: { plan: HolePlan; unit: Unit }) {
  return (
    <section class="assumed" aria-labelledby="assumed-heading">
      <h2 id="assumed-heading">{TEXT.assumed}</h2>
      <ul>
        {plan.assumptions.map((assumption) => (
          <li key={assumption.code}>{assumptionText(assumption, unit)}</li>
        ))}
      </ul>
      <p>
        <strong>{NOT_A_RATING.short}</strong>
      </p>
    </section>
  );
}

function AtTheMachine({ request }: { request: HoleRequest }) {
  return (
    <section class="at-machine" aria-labelledby="machine-heading">
      <h2 id="machine-heading">{TEXT.machine}</h2>
      <ul>
        {cautionsFor(request).map((id) => (
          <li key={id}>{cautionText(id).title}.</li>
        ))}
      </ul>
      <p>
        {NOT_A_RATING.defer}{' '}
        <a href="/safety/" hreflang={IN_ENGLISH}>
          {TEXT.safety}
        </a>
      </p>
    </section>
  );
}

function Details({ plan, request, unit, lessons, notRead }: PlanDetailsProps) {
  return (
    <>
      <PlanNotices plan={plan} unit={unit} lessons={lessons} notRead={notRead} />
      {bestTap(plan) && <PlanRemedies plan={plan} unit={unit} />}
      <PlanTaps taps={plan.taps} system={plan.thread.system} unit={unit} />
      <PlanDrills plan={plan} unit={unit} />
      <div class="ground">
        <Assumed plan={plan} unit={unit} />
        <AtTheMachine request={request} />
      </div>
    </>
  );
}

export interface PlanDetailsProps {
  plan: HolePlan;
  request: HoleRequest;
  unit: Unit;
  lessons: readonly string[];
  /** Words of the hole's callout that were not understood. */
  notRead?: readonly string[] | undefined;
}

/** Pause in the typing after which the details follow, ms: a slow PC must first paint the answer. */
const FOLLOWS = 120;

/**
 * The details follow the answer once the keys rest. Until then what stands there speaks of the
 * hole before, so it is not to be seen.
 */
export function PlanDetails(current: PlanDetailsProps) {
  const { value, fresh } = useFollowing(current, current.plan, FOLLOWS);
  // The same element again costs nothing to draw.
  const details = useMemo(() => value && <Details {...value} />, [value]);
  return <div class={fresh ? undefined : 'of-the-hole-before'}>{details}</div>;
}
