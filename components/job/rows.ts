/** The card's lines: what to put in the machine, each number with its datum. */

import { torqueLimit } from '../../core/job/torque-limit';
import type { HolePlan, HoleRequest, TapChoice } from '../../core/plan/types';
import { holeLimits, nose } from '../planner/numbers';
import { CHIPS } from '../words/en/planner';
import {
  chamferText,
  drillName,
  feed,
  feedPerRev,
  fluidText,
  gaugeText,
  handName,
  length,
  percent,
  rpm,
  styleName,
  threadPercent,
  torque,
  torqueBand,
  type Unit,
} from '../words';

export interface CardRow {
  name: string;
  value: string;
  beside: string;
}

type Rows = (plan: HolePlan, request: HoleRequest, tap: TapChoice, unit: Unit) => CardRow[];

const other = (unit: Unit): Unit => (unit === 'mm' ? 'in' : 'mm');

/** A depth in the reader's unit, the other unit and its datum beside it. */
function depthRow(name: string, mm: number, unit: Unit, datum: string): CardRow {
  return { name, value: length(mm, unit), beside: `${length(mm, other(unit))}; ${datum}` };
}

const toolRows: Rows = (plan, _request, tap) => {
  const rows: CardRow[] = [
    {
      name: 'Tap',
      value: `${styleName(tap.style)}, ${handName(tap.hand)}`,
      beside: `chamfer ${chamferText(tap.chamfer, plan.thread.system)}`,
    },
  ];
  if (tap.drill) {
    const allowed = tap.process === 'cut' ? holeLimits(plan) : null;
    rows.push({
      name: 'Drill',
      value: drillName(tap.drill),
      beside: [`${threadPercent(tap.drill.percent.shop)} thread, shop base`, allowed]
        .filter((text) => text !== null)
        .join('; '),
    });
  }
  return rows;
};

const depthRows: Rows = (_plan, request, { depth }, unit) => {
  const rows =
    request.hole.kind === 'blind'
      ? [
          depthRow('Drill to', depth.shoulder, unit, 'shoulder, from the face'),
          depthRow('Point then at', depth.point, unit, 'tip of the drill, from the face'),
        ]
      : [depthRow('Drill', request.hole.thickness, unit, 'right through')];
  return [
    ...rows,
    depthRow('Tap to (Z)', depth.tip, unit, nose(request)),
    depthRow(
      'Full thread',
      depth.fullThread,
      unit,
      'from the face, sure with any tap of the class',
    ),
  ];
};

const runRows: Rows = ({ cycle }, _request, _tap, unit) =>
  cycle
    ? [
        {
          name: 'Speed',
          value: rpm(cycle.rpm),
          beside: `${rpm(cycle.rpmRange.min).split(' ')[0]}–${rpm(cycle.rpmRange.max)} is sensible`,
        },
        {
          name: 'Feed',
          value: feedPerRev(cycle.feedPerRev, unit),
          beside: `${feed(cycle.feedPerMinute, unit)} at that speed, exactly`,
        },
      ]
    : [];

/** A range, or one number where half of the tap's strength leaves no range. */
function limitText(limit: { low: number; high: number }): string {
  return torque(limit.low) === torque(limit.high)
    ? torque(limit.high)
    : torqueBand(limit.low, limit.high);
}

const torqueRows: Rows = (_plan, _request, tap, unit) => {
  if (tap.process === 'mill') return [];
  const limit = torqueLimit(tap);
  const ofBreaking = `${percent(tap.tapShare.sharp)} of what breaks the tap`;
  return [
    {
      name: 'Torque, sharp',
      value: torque(tap.torque.expected),
      beside: `${torqueBand(tap.torque.low, tap.torque.high, unit)}; ${ofBreaking}, worn ${percent(tap.tapShare.worn)}`,
    },
    {
      name: 'Let go at',
      value: limit ? limitText(limit) : 'No safe setting',
      beside: limit
        ? 'clutch or load limit; better from a torque measured here'
        : 'the tap runs too near its strength',
    },
  ];
};

const careRows: Rows = (plan, request, tap) => [
  { name: 'Chips', value: CHIPS[tap.chips.goes], beside: '' },
  { name: 'Fluid', value: fluidText(request.material), beside: 'the safety data sheet rules' },
  { name: 'Gauge', value: gaugeText(plan.thread), beside: '' },
];

/** What the machine is set by, top to bottom. */
export const cardRows: Rows = (plan, request, tap, unit) =>
  [toolRows, depthRows, runRows, torqueRows, careRows].flatMap((rows) =>
    rows(plan, request, tap, unit),
  );
