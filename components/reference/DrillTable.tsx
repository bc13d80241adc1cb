/** Drills near a thread's hole, each judged in the classes compared, and the trap drills named. */

import { Scroll } from '../calculators/Scroll';
import type { ReferenceDrill } from '../../core/plan/reference-drills';
import type { DrillChoice } from '../../core/drill/drill';
import { Notice } from '../result/Notice';
import { decimals, drillName, limitNumber, limitLength, threadPercent, type Unit } from '../words';
import { DRILLS, HEADINGS, TRAPS } from '../words/en/reference';
import { fill } from '../words/template';
import { nearest } from './near';
import { Verdict } from './Verdict';

interface Props {
  drills: readonly ReferenceDrill[];
  chosen: DrillChoice | null;
  /** Unit of the likely hole; the drill itself is given in both. */
  unit: Unit;
  /** False where percent of thread means nothing: pipe threads. */
  percents?: boolean;
}

interface RowProps {
  drill: ReferenceDrill;
  chosen: boolean;
  unit: Unit;
  percents: boolean;
}

function DrillRow({ drill, chosen, unit, percents }: RowProps) {
  const { percent } = drill;
  return (
    <tr class={chosen ? 'chosen' : undefined}>
      <th scope="row">
        {drillName(drill)}
        {drill.listed && '*'}
      </th>
      {drill.classes.map((each) => (
        <td key={each.class}>
          <Verdict verdict={each.verdict} />
        </td>
      ))}
      <td class="number">{decimals(drill.diameter, 2, 2)}</td>
      <td class="number">{limitNumber(drill.diameter, 'in')}</td>
      {percents && (
        <td class="number">
          {decimals(percent.shop, 0)} / {decimals(percent.iso, 0)}
        </td>
      )}
      <td class="number">{limitNumber(drill.likely, unit)}</td>
    </tr>
  );
}

export function DrillTable({ drills, chosen, unit, percents = true }: Props) {
  const near = nearest(drills);
  const classes = near[0]?.classes ?? [];
  return (
    <>
      <Scroll label={HEADINGS.drills}>
        <table class="facts drills">
          <thead>
            <tr>
              <th scope="col">{DRILLS.drill}</th>
              {classes.map((each) => (
                <th scope="col" key={each.class}>
                  {each.class || DRILLS.verdict}
                </th>
              ))}
              <th scope="col" class="number">
                {DRILLS.mm}
              </th>
              <th scope="col" class="number">
                {DRILLS.in}
              </th>
              {percents && (
                <th scope="col" class="number">
                  {DRILLS.percent}
                </th>
              )}
              <th scope="col" class="number">
                {fill(DRILLS.likely, { unit }, unit)}
              </th>
            </tr>
          </thead>
          <tbody>
            {near.map((drill) => (
              <DrillRow
                key={drill.series + drill.name}
                drill={drill}
                chosen={drill.name === chosen?.name && drill.series === chosen.series}
                unit={unit}
                percents={percents}
              />
            ))}
          </tbody>
        </table>
      </Scroll>
      <p class="small">
        {near.some(({ listed }) => listed) && `* ${DRILLS.listed}. `}
        {DRILLS.note}
      </p>
    </>
  );
}

function trapText(drill: ReferenceDrill, unit: Unit): string {
  const { trap, percent, diameter, series } = drill;
  if (!trap) return '';
  return fill(
    TRAPS[trap.kind],
    {
      drill: drillName(drill),
      ...(series === 'metric' && unit === 'mm' ? {} : { size: limitLength(diameter, unit) }),
      percent: threadPercent(percent.shop),
      classes: trap.classes.join(' and '),
    },
    unit,
  );
}

/** The drills that fool people, by name. */
export function TrapDrills({ drills, unit }: Pick<Props, 'drills' | 'unit'>) {
  const traps = drills.filter(({ trap }) => trap !== null);
  if (traps.length === 0) return null;
  return (
    <Notice level="amber" title={traps.length > 1 ? TRAPS.title : TRAPS.title1}>
      {traps.map((drill) => (
        <p key={drill.series + drill.name}>{trapText(drill, unit)}</p>
      ))}
    </Notice>
  );
}
