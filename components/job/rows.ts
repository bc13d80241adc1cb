/** The card's lines: what to put in the machine, each number with its datum. */

import { torqueLimit } from '../../core/job/torque-limit';
import type { HolePlan, HoleRequest, TapChoice } from '../../core/plan/types';
import { holeLimits, nose, sensible } from '../planner/numbers';
import { ROWS } from '../words/en/card';
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
  tapSteel,
  threadPercent,
  torque,
  torqueBand,
  type Unit,
} from '../words';
import { say } from '../words/say';

export interface CardRow {
  name: string;
  value: string;
  beside: string;
}

type Rows = (plan: HolePlan, request: HoleRequest, tap: TapChoice, unit: Unit) => CardRow[];

const other = (unit: Unit): Unit => (unit === 'mm' ? 'in' : 'mm');

/** A datum that is not the face is named, and the depth from the face stands beside it. */
function datumText(usual: string, below: string, face: number | undefined, unit: Unit): string {
  return face === undefined ? usual : say(below, { face: length(face, unit) });
}

/** A depth in the reader's unit, the other unit and its datum beside it. */
function depthRow(name: string, mm: number, unit: Unit, datum: string): CardRow {
  return { name, value: length(mm, unit), beside: `${length(mm, other(unit))}; ${datum}` };
}

const toolRows: Rows = (plan, request, tap) => {
  const rows: CardRow[] = [
    {
      name: ROWS.tap,
      value: `${styleName(tap.style)}, ${handName(tap.hand)}`,
      beside: [
        say(ROWS.chamfer, { chamfer: chamferText(tap.chamfer, plan.thread.system) }),
        ...(request.tool ? [tapSteel(request.tool)] : []),
      ].join('; '),
    },
  ];
  if (tap.drill) {
    const allowed = tap.process === 'cut' ? holeLimits(plan) : null;
    rows.push({
      name: ROWS.drill,
      value: drillName(tap.drill),
      beside: [say(ROWS.shopBase, { percent: threadPercent(tap.drill.percent.shop) }), allowed]
        .filter((text) => text !== null)
        .join('; '),
    });
  }
  return rows;
};

const depthRows: Rows = (_plan, request, { depth }, unit) => {
  const face = depth.fromFace;
  const row = (
    name: string,
    at: 'shoulder' | 'point' | 'tip' | 'fullThread',
    usual: string,
    below: string,
  ) => depthRow(name, depth[at], unit, datumText(usual, below, face?.[at], unit));
  const tapTo = say(ROWS.tapBelow, { nose: nose(request) });
  return [
    ...(request.hole.kind === 'blind'
      ? [
          row(ROWS.drillTo, 'shoulder', ROWS.shoulder, ROWS.shoulderBelow),
          row(ROWS.pointAt, 'point', ROWS.point, ROWS.pointBelow),
        ]
      : [row(ROWS.drillTo, 'shoulder', ROWS.through, ROWS.throughBelow)]),
    row(ROWS.tapTo, 'tip', nose(request), tapTo),
    row(ROWS.fullThread, 'fullThread', ROWS.sure, ROWS.sureBelow),
  ];
};

const runRows: Rows = ({ cycle }, _request, _tap, unit) =>
  cycle
    ? [
        {
          name: ROWS.speed,
          value: rpm(cycle.rpm),
          beside: sensible(cycle.rpmRange.min, cycle.rpmRange.max),
        },
        {
          name: ROWS.feed,
          value: feedPerRev(cycle.feedPerRev, unit),
          beside: say(ROWS.exactly, { feed: feed(cycle.feedPerMinute, unit) }),
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
  return [
    {
      name: ROWS.torque,
      value: torque(tap.torque.expected),
      beside: say(ROWS.ofBreaking, {
        band: torqueBand(tap.torque.low, tap.torque.high, unit),
        sharp: percent(tap.tapShare.sharp),
        worn: percent(tap.tapShare.worn),
      }),
    },
    {
      name: ROWS.letGo,
      value: limit ? limitText(limit) : ROWS.noSetting,
      beside: limit ? ROWS.clutch : ROWS.tooNear,
    },
  ];
};

const careRows: Rows = (plan, request, tap) => [
  { name: ROWS.chips, value: CHIPS[tap.chips.goes], beside: '' },
  { name: ROWS.fluid, value: fluidText(request.material), beside: ROWS.dataSheet },
  { name: ROWS.gauge, value: gaugeText(plan.thread), beside: '' },
];

/** What the machine is set by, top to bottom. */
export const cardRows: Rows = (plan, request, tap, unit) =>
  [toolRows, depthRows, runRows, torqueRows, careRows].flatMap((rows) =>
    rows(plan, request, tap, unit),
  );
