/** The plan's numbers, each with the unit and whatever keeps it honest, ready for a list or a card. */

import type { HolePlan, HoleRequest, TapChoice } from '../../core/plan/types';
import {
  drillName,
  feed,
  feedPerRev,
  force,
  length,
  limitLength,
  lengthNumber,
  percent,
  rpm,
  seconds,
  threadPercent,
  torque,
  torqueBand,
  type Unit,
} from '../words';
import { CHIPS } from '../words/en/planner';

export interface Fact {
  name: string;
  value: string;
  beside: string[];
  share?: { sharp: number; worn?: number };
}

type Facts = (plan: HolePlan, request: HoleRequest, tap: TapChoice, unit: Unit) => Fact[];

/** What the class allows the hole, in the unit its standard states, and in the reader's where that differs. */
export function holeLimits(plan: HolePlan): string | null {
  if (!plan.limits) return null;
  const { min, max } = plan.limits.minor;
  const digits = plan.limits.unit === 'mm' ? 3 : 4;
  const top = max === undefined ? 'no upper limit known' : max.toFixed(digits);
  return `class allows ${min.toFixed(digits)}–${top} ${plan.limits.unit}`;
}

const drillFacts: Facts = (plan, _request, tap, unit) => {
  const { drill } = tap;
  if (!drill) return [];
  // A taper thread's height changes with depth: a percentage of it would mean nothing.
  const beside = plan.limits
    ? [
        `${threadPercent(drill.percent.shop)} thread, shop base; ${threadPercent(drill.percent.iso)}, ISO base`,
      ]
    : [];
  const limits = tap.process === 'cut' ? holeLimits(plan) : null;
  if (limits) beside.push(limits);
  beside.push(`likely to leave ${limitLength(drill.likely, unit)}`);
  return [{ name: 'Drill', value: drillName(drill), beside }];
};

const blindFacts: Facts = (_plan, request, { depth }, unit) => {
  const middle = (mm: number) => `middle of the class: ${length(mm, unit)}`;
  return [
    {
      name: 'Drill shoulder at',
      value: length(depth.shoulder, unit),
      beside: [middle(depth.nominal.shoulder), `point at ${length(depth.point, unit)}`],
    },
    {
      name: 'Tap to',
      value: length(depth.tip, unit),
      beside: [middle(depth.nominal.tip), nose(request)],
    },
  ];
};

const throughFacts: Facts = (_plan, request, { depth }, unit) => [
  {
    name: 'Tap to',
    value: length(depth.tip, unit),
    beside: [`middle of the class: ${length(depth.nominal.tip, unit)}`, nose(request)],
  },
];

/** Which end of the tap the depth is measured to. */
export function nose(request: HoleRequest): string {
  return request.externalCentre
    ? 'to the tip of the centre, from the face'
    : 'flat nose, from the face';
}

const depthFacts: Facts = (plan, request, tap, unit) => [
  ...(request.hole.kind === 'blind' ? blindFacts : throughFacts)(plan, request, tap, unit),
  {
    name: 'Full thread',
    value: length(tap.depth.fullThread, unit),
    beside:
      tap.depth.nominal.fullThread > tap.depth.fullThread
        ? [`middle of the class: ${length(tap.depth.nominal.fullThread, unit)}`]
        : [],
  },
];

const cycleFacts: Facts = (plan, _request, _tap, unit) => {
  const { cycle } = plan;
  if (!cycle) return [];
  const { min, max } = cycle.rpmRange;
  return [
    {
      name: 'Speed',
      value: rpm(cycle.rpm),
      beside: [`${rpm(min).split(' ')[0]}–${rpm(max)} is sensible`],
    },
    {
      name: 'Feed',
      value: feedPerRev(cycle.feedPerRev, unit),
      beside: [
        `${feed(cycle.feedPerMinute, unit)} at that speed`,
        `${seconds(cycle.seconds)} in and out`,
      ],
    },
  ];
};

const forceFacts: Facts = (_plan, _request, tap, unit) => {
  if (tap.process === 'mill') return [];
  const facts: Fact[] = [
    {
      name: 'Torque, sharp',
      value: torque(tap.torque.expected, unit),
      beside: [
        `${torqueBand(tap.torque.low, tap.torque.high, unit)} expected`,
        ...(tap.toothLoad > 0 ? [`${force(tap.toothLoad, unit)} on the heaviest tooth`] : []),
      ],
    },
    {
      name: 'Of what breaks the tap',
      value: percent(tap.tapShare.sharp),
      beside: [`worn ${percent(tap.tapShare.worn)}`],
      share: tap.tapShare,
    },
  ];
  if (tap.spindleShare !== undefined) {
    facts.push({
      name: 'Of the spindle',
      value: percent(tap.spindleShare),
      beside: ['sharp tap'],
      share: { sharp: tap.spindleShare },
    });
  }
  return facts;
};

const chipFacts: Facts = (_plan, request, { chips }, unit) => {
  const wants =
    request.hole.kind === 'blind' && chips.neededRoom > 0
      ? [`want ${lengthNumber(chips.neededRoom, unit)} ${unit} of free hole below the tap`]
      : [];
  const checks = chips.fits === 'check' ? ['may pack: look at the first hole'] : [];
  return [{ name: 'Chips', value: CHIPS[chips.goes], beside: [...wants, ...checks] }];
};

/** Every number of one tap's plan, in the order a setter uses them. */
export const planFacts: Facts = (plan, request, tap, unit) =>
  [drillFacts, depthFacts, cycleFacts, forceFacts, chipFacts].flatMap((facts) =>
    facts(plan, request, tap, unit),
  );
