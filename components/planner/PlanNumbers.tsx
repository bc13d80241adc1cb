import type { HolePlan, HoleRequest, TapChoice } from '../../core/plan/types';
import { NumberList } from '../result/NumberList';
import { ShareBar } from '../result/ShareBar';
import type { Unit } from '../words';
import { TEXT } from '../words/en/planner';
import { planFacts } from './numbers';

export interface PlanNumbersProps {
  plan: HolePlan;
  request: HoleRequest;
  tap: TapChoice;
  unit: Unit;
}

/** The numbers of the first choice, what is promised first, the middle of the class under it. */
export function PlanNumbers({ plan, request, tap, unit }: PlanNumbersProps) {
  const rows = planFacts(plan, request, tap, unit).map(({ share, ...fact }) => ({
    ...fact,
    ...(share ? { picture: <ShareBar {...share} /> } : {}),
  }));
  return (
    <section class="plan-numbers" aria-labelledby="numbers-heading">
      <h2 id="numbers-heading" class="unseen">
        {TEXT.numbers}
      </h2>
      <NumberList rows={rows} />
    </section>
  );
}
