/** Every near drill, judged against the class by the hole it is likely to leave. */

import type { DrillChoice } from '../../core/drill/drill';
import type { HolePlan } from '../../core/plan/types';
import { Fold } from '../fields/Fold';
import { Sign } from '../result/Sign';
import { drillName, limitNumber, threadPercent, type Unit } from '../words';
import { DRILL_TABLE, TEXT } from '../words/en/planner';
import { say } from '../words/say';
import { holeLimits } from './numbers';

const SIGNS = { inside: 'good', risk: 'amber', outside: 'stop' } as const;

interface DrillTableProps {
  caption: string;
  drills: readonly DrillChoice[];
  plan: HolePlan;
  unit: Unit;
}

interface DrillRowProps {
  drill: DrillChoice;
  chosen: boolean;
  unit: Unit;
  /** True where the thread's height changes with depth, and a percentage of it would mean nothing. */
  tapered: boolean;
}

function DrillRow({ drill, chosen, unit, tapered }: DrillRowProps) {
  const verdict = DRILL_TABLE.verdicts[drill.verdict];
  return (
    <tr class={chosen ? 'chosen' : undefined}>
      <th scope="row">{drillName(drill)}</th>
      <td class="number">{limitNumber(drill.diameter, unit)}</td>
      <td class="number">{tapered ? '–' : threadPercent(drill.percent.shop)}</td>
      <td class="number">{limitNumber(drill.likely, unit)}</td>
      <td>
        <span class="verdict">
          <Sign level={SIGNS[drill.verdict]} />
          {chosen ? say(DRILL_TABLE.chosen, { verdict }) : verdict}
        </span>
      </td>
    </tr>
  );
}

/** The drills that serve or nearly serve, with one on either side that does not. */
export function nearDrills(drills: readonly DrillChoice[]): readonly DrillChoice[] {
  const serves = drills.map(({ verdict }) => verdict !== 'outside');
  const [first, last] = [serves.indexOf(true), serves.lastIndexOf(true)];
  return first < 0 ? drills : drills.slice(Math.max(0, first - 1), last + 2);
}

function DrillTable({ drills, plan, unit, caption }: DrillTableProps) {
  return (
    // A frame that scrolls must be reachable by keyboard.
    <div class="scroll" tabIndex={0} role="region" aria-label={caption}>
      <table class="drills">
        <caption class="unseen">{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{DRILL_TABLE.drill}</th>
            <th scope="col" class="number">
              {say(DRILL_TABLE.size, { unit })}
            </th>
            <th scope="col" class="number">
              {DRILL_TABLE.thread}
            </th>
            <th scope="col" class="number">
              {say(DRILL_TABLE.likely, { unit })}
            </th>
            <th scope="col">{DRILL_TABLE.verdict}</th>
          </tr>
        </thead>
        <tbody>
          {drills.map((drill) => (
            <DrillRow
              key={drill.series + drill.name}
              drill={drill}
              chosen={drill.name === plan.drill?.name}
              unit={unit}
              tapered={plan.limits === null}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

export function PlanDrills({ plan, unit }: { plan: HolePlan; unit: Unit }) {
  if (plan.drills.length === 0) return null;
  const near = nearDrills(plan.drills);
  const limits = holeLimits(plan);
  return (
    <section aria-labelledby="drills-heading">
      <h2 id="drills-heading">{TEXT.drills}</h2>
      {limits && <p class="quiet">{say(DRILL_TABLE.minor, { limits })}</p>}
      <DrillTable caption={TEXT.nearDrills} drills={near} plan={plan} unit={unit} />
      {near.length < plan.drills.length && (
        <Fold drawn="at-opening-live" summary={`${TEXT.allDrills} (${plan.drills.length})`}>
          <DrillTable caption={TEXT.allDrills} drills={plan.drills} plan={plan} unit={unit} />
        </Fold>
      )}
    </section>
  );
}
