/** What this shop read on its own machines with this thread and material, beside the plan's own torque. */

import type { HolePlan, HoleRequest } from '../../core/plan/types';
import { learnedByMachine } from '../calculators/torque/learned';
import { Readings, useReadings } from '../calculators/torque/Shop';
import { SHOP } from '../words/en/calculators/torque/shop';
import { Notice } from '../result/Notice';
import { NumberList } from '../result/NumberList';
import { bestTap, type Unit } from '../words';

interface Props {
  plan: HolePlan;
  request: HoleRequest;
  unit: Unit;
  /** On the card, which is printed: the numbers alone. */
  printed?: boolean;
}

/** Nothing where the shop has kept no reading of this thread in this material. */
export function ShopLine({ plan, request, unit, printed = false }: Props) {
  const { kept, remove } = useReadings();
  const best = bestTap(plan);
  if (!best || kept.length === 0) return null;
  const tap = {
    thread: plan.thread.designation,
    request,
    style: best.style,
    chamfer: best.chamfer.class,
    fluid: 'oil' as const,
  };
  const learned = learnedByMachine(tap, kept, unit);
  if (learned.length === 0) return null;
  return (
    <section class="shop">
      <h2>{SHOP.heading}</h2>
      {learned.map(({ machine, title, rows, used, disagree }) => (
        <div key={machine}>
          <h3>{title}</h3>
          {disagree && !printed && (
            <Notice level="amber" title={SHOP.disagree}>
              <p>{SHOP.disagreeText}</p>
            </Notice>
          )}
          <NumberList rows={rows} />
          {!printed && <Readings kept={used} unit={unit} onRemove={remove} />}
        </div>
      ))}
    </section>
  );
}
