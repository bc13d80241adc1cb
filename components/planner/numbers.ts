/** The plan's numbers, each with the unit and whatever keeps it honest, ready for a list or a card. */

import type { HolePlan, HoleRequest, TapChoice } from '../../core/plan/types';
import {
  drillName,
  feed,
  feedPerRev,
  force,
  length,
  limitLength,
  percent,
  rpm,
  seconds,
  threadPercent,
  torque,
  torqueBand,
  type Unit,
} from '../words';
import { FACTS } from '../words/en/numbers';
import { CHIPS } from '../words/en/planner';
import { say } from '../words/say';

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
  const top = max === undefined ? FACTS.noTop : max.toFixed(digits);
  return say(FACTS.allows, { min: min.toFixed(digits), max: top, unit: plan.limits.unit });
}

const drillFacts: Facts = (plan, _request, tap, unit) => {
  const { drill } = tap;
  if (!drill) return [];
  // A taper thread's height changes with depth: a percentage of it would mean nothing.
  const beside = plan.limits
    ? [
        say(FACTS.bases, {
          shop: threadPercent(drill.percent.shop),
          iso: threadPercent(drill.percent.iso),
        }),
      ]
    : [];
  const limits = tap.process === 'cut' ? holeLimits(plan) : null;
  if (limits) beside.push(limits);
  beside.push(say(FACTS.likely, { size: limitLength(drill.likely, unit) }));
  return [{ name: FACTS.drill, value: drillName(drill), beside }];
};

const middle = (mm: number, unit: Unit) => say(FACTS.middle, { depth: length(mm, unit) });

/** The same depth from the face, where depths count from below it. */
function face(mm: number | undefined, unit: Unit): string[] {
  return mm === undefined ? [] : [say(FACTS.fromFace, { depth: length(mm, unit) })];
}

const blindFacts: Facts = (_plan, request, { depth }, unit) => {
  return [
    {
      name: FACTS.shoulder,
      value: length(depth.shoulder, unit),
      beside: [
        ...face(depth.fromFace?.shoulder, unit),
        middle(depth.nominal.shoulder, unit),
        say(FACTS.pointAt, { depth: length(depth.point, unit) }),
      ],
    },
    {
      name: FACTS.tapTo,
      value: length(depth.tip, unit),
      beside: [...face(depth.fromFace?.tip, unit), middle(depth.nominal.tip, unit), nose(request)],
    },
  ];
};

const throughFacts: Facts = (_plan, request, { depth }, unit) => [
  {
    name: FACTS.tapTo,
    value: length(depth.tip, unit),
    beside: [...face(depth.fromFace?.tip, unit), middle(depth.nominal.tip, unit), nose(request)],
  },
];

/** Which end of the tap the depth is measured to. */
export function nose(request: HoleRequest): string {
  return request.externalCentre ? FACTS.centre : FACTS.flat;
}

const depthFacts: Facts = (plan, request, tap, unit) => [
  ...(request.hole.kind === 'blind' ? blindFacts : throughFacts)(plan, request, tap, unit),
  {
    name: FACTS.fullThread,
    value: length(tap.depth.fullThread, unit),
    beside:
      tap.depth.nominal.fullThread > tap.depth.fullThread
        ? [middle(tap.depth.nominal.fullThread, unit)]
        : [],
  },
];

/** The range of turns that is sensible, for beside the one that is planned. */
export function sensible(min: number, max: number): string {
  return say(FACTS.sensible, { min: rpm(min).split(' ')[0] ?? '', max: rpm(max) });
}

const cycleFacts: Facts = (plan, _request, _tap, unit) => {
  const { cycle } = plan;
  if (!cycle) return [];
  const { min, max } = cycle.rpmRange;
  return [
    {
      name: FACTS.speed,
      value: rpm(cycle.rpm),
      beside: [sensible(min, max)],
    },
    {
      name: FACTS.feed,
      value: feedPerRev(cycle.feedPerRev, unit),
      beside: [
        say(FACTS.atThatSpeed, { feed: feed(cycle.feedPerMinute, unit) }),
        say(FACTS.inAndOut, { time: seconds(cycle.seconds) }),
      ],
    },
  ];
};

const forceFacts: Facts = (_plan, _request, tap, unit) => {
  if (tap.process === 'mill') return [];
  const facts: Fact[] = [
    {
      name: FACTS.torque,
      value: torque(tap.torque.expected, unit),
      beside: [
        say(FACTS.expected, { band: torqueBand(tap.torque.low, tap.torque.high, unit) }),
        ...(tap.toothLoad > 0 ? [say(FACTS.tooth, { force: force(tap.toothLoad, unit) })] : []),
      ],
    },
    {
      name: FACTS.ofBreaking,
      value: percent(tap.tapShare.sharp),
      beside: [say(FACTS.worn, { share: percent(tap.tapShare.worn) })],
      share: tap.tapShare,
    },
  ];
  if (tap.spindleShare !== undefined) {
    facts.push({
      name: FACTS.ofSpindle,
      value: percent(tap.spindleShare),
      beside: [FACTS.sharpTap],
      share: { sharp: tap.spindleShare },
    });
  }
  return facts;
};

const chipFacts: Facts = (_plan, request, { chips }, unit) => {
  const wants =
    request.hole.kind === 'blind' && chips.neededRoom > 0
      ? [say(FACTS.room, { length: length(chips.neededRoom, unit) })]
      : [];
  const checks = chips.fits === 'check' ? [FACTS.mayPack] : [];
  return [{ name: FACTS.chips, value: CHIPS[chips.goes], beside: [...wants, ...checks] }];
};

/** Every number of one tap's plan, in the order a setter uses them. */
export const planFacts: Facts = (plan, request, tap, unit) =>
  [drillFacts, depthFacts, cycleFacts, forceFacts, chipFacts].flatMap((facts) =>
    facts(plan, request, tap, unit),
  );
