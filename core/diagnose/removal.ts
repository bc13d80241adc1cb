/**
 * Getting a broken tap out: which ways there are for this tap in this part, in the order to try them.
 * Times and risks are common practice: for choosing, not for quoting.
 */

import type { MaterialId } from '../material/material';
import { findMaterial } from '../material/table';
import { answer, refuse, type Outcome } from '../outcome';
import type { TapStyle } from '../tap/tap';

export const REMOVAL_METHODS = [
  'turn-out',
  'extractor',
  'rock-loose',
  'mill-out',
  'spark-out',
  'trepan',
  'dissolve',
  'scrap',
] as const;

export type RemovalMethod = (typeof REMOVAL_METHODS)[number];

export interface StuckTap {
  /** Size of the tap, mm, above 0. */
  diameter: number;
  style: Exclude<TapStyle, 'thread-mill'>;
  /** What the part is made of. */
  material: MaterialId;
  /** Whether a steel or iron part is fitted that cannot be taken out: a dowel, a wire insert. */
  steelFitted?: boolean;
  /** `proud`: enough sticks out to grip; `flush`: at the face; `deep`: below it. */
  stub: 'proud' | 'flush' | 'deep';
  /** `loose`: it rocks; `wedged`: it does not move. */
  hold: 'loose' | 'wedged';
  /** Whether a rigid machine reaches it with the hole on its axis. */
  machine: boolean;
  /** Whether the boss leaves room to cut round the tap. */
  wideBoss: boolean;
  /** What the part is worth, in whatever money `spark` is given in. */
  partValue?: number;
  /** What the sure way, sparking, would cost, in the same money. */
  removalCost?: number;
}

export const REMOVAL_REASONS = [
  'nothing-to-grip',
  'wedged-tight',
  'too-small-for-fingers',
  'flutes-not-straight',
  'no-flutes',
  'no-rigid-machine',
  'too-small-to-mill',
  'part-would-dissolve',
  'steel-would-dissolve',
  'not-known-to-work',
  'no-room-round',
  'part-too-hard',
  'worth-more-than-removal',
  'value-not-said',
] as const;

export type RemovalReason = (typeof REMOVAL_REASONS)[number];

export interface RemovalChoice {
  method: RemovalMethod;
  verdict: 'try' | 'no';
  /** Why not, or for scrap why not yet. */
  reasons: RemovalReason[];
  /** Minutes, least and most; null where there is nothing to time. */
  minutes: readonly [number, number] | null;
  risk: 'low' | 'some' | 'high' | 'none';
  /** What it takes in time and in risk to the part, in the money of the values; null where they are not both said. */
  expected: number | null;
}

/** Smallest taps for extractor fingers and for a cutter down the core, mm. Common practice. */
const SMALLEST = { fingers: 6, mill: 4, weldedNut: 8 } as const;

/** A part worth less than this many times its removal is scrap, where no date presses. Common practice. */
export const SCRAP_BELOW = 2;

/** Parent metals that stand a hot alum bath while the tap goes. Common practice. */
const STANDS_ALUM: readonly MaterialId[] = [
  'al-wrought',
  'al-high-strength',
  'al-cast',
  'al-cast-high-si',
  'brass-free',
  'bronze',
  'copper',
];

/** Chance that a way spoils the part or its thread. A setter's estimates, common practice. */
const SPOILS: Record<RemovalMethod, number> = {
  'turn-out': 0.02,
  extractor: 0.03,
  'rock-loose': 0.1,
  'mill-out': 0.2,
  'spark-out': 0.03,
  trepan: 0.35,
  dissolve: 0.1,
  scrap: 0,
};

/** Time and risk of each way. Common practice. */
const USUAL: Record<RemovalMethod, Pick<RemovalChoice, 'minutes' | 'risk'>> = {
  'turn-out': { minutes: [5, 20], risk: 'low' },
  extractor: { minutes: [10, 30], risk: 'low' },
  'rock-loose': { minutes: [10, 30], risk: 'some' },
  'mill-out': { minutes: [20, 90], risk: 'high' },
  'spark-out': { minutes: [60, 180], risk: 'low' },
  trepan: { minutes: [30, 60], risk: 'high' },
  dissolve: { minutes: [240, 4320], risk: 'some' },
  scrap: { minutes: null, risk: 'none' },
};

/** True where a nut may be welded to a stub that stands proud; `diameter` mm. Common practice. */
export function nutMayBeWelded(diameter: number): boolean {
  return diameter >= SMALLEST.weldedNut;
}

function extractorReasons(tap: StuckTap): RemovalReason[] {
  if (tap.style === 'form') return ['no-flutes'];
  return [
    ...(tap.style === 'spiral-flute' ? (['flutes-not-straight'] as const) : []),
    ...(tap.diameter < SMALLEST.fingers ? (['too-small-for-fingers'] as const) : []),
    ...(tap.hold === 'wedged' ? (['wedged-tight'] as const) : []),
  ];
}

function dissolveReasons({ material, steelFitted }: StuckTap): RemovalReason[] {
  const found = findMaterial(material);
  if (STANDS_ALUM.includes(material)) return steelFitted ? ['steel-would-dissolve'] : [];
  const iron = found !== undefined && ['P', 'M', 'K', 'H'].includes(found.group);
  return [iron ? 'part-would-dissolve' : 'not-known-to-work'];
}

function scrapReasons({ partValue, removalCost }: StuckTap): RemovalReason[] {
  if (partValue === undefined || removalCost === undefined) return ['value-not-said'];
  return partValue >= SCRAP_BELOW * removalCost ? ['worth-more-than-removal'] : [];
}

function reasonsFor(method: RemovalMethod, tap: StuckTap): RemovalReason[] {
  switch (method) {
    case 'turn-out':
      return [
        ...(tap.stub === 'proud' || tap.hold === 'loose' ? [] : (['nothing-to-grip'] as const)),
        ...(tap.hold === 'wedged' ? (['wedged-tight'] as const) : []),
      ];
    case 'extractor':
      return extractorReasons(tap);
    case 'rock-loose':
      return tap.hold === 'loose' ? [] : ['wedged-tight'];
    case 'mill-out':
      return [
        ...(tap.machine ? [] : (['no-rigid-machine'] as const)),
        ...(tap.diameter < SMALLEST.mill ? (['too-small-to-mill'] as const) : []),
      ];
    case 'spark-out':
      return [];
    case 'trepan':
      return [
        ...(tap.wideBoss ? [] : (['no-room-round'] as const)),
        ...(tap.machine ? [] : (['no-rigid-machine'] as const)),
        ...(findMaterial(tap.material)?.speed === null ? (['part-too-hard'] as const) : []),
      ];
    case 'dissolve':
      return dissolveReasons(tap);
    case 'scrap':
      return scrapReasons(tap);
  }
}

/**
 * Time at the rate of sparking, and the share of the part's value that is at risk. So cutting leads while the part
 * is worth little more than its removal, and a dear part is sparked before it is struck or milled.
 */
function expectedCost(method: RemovalMethod, { partValue, removalCost }: StuckTap): number | null {
  if (partValue === undefined || removalCost === undefined) return null;
  if (method === 'scrap') return partValue;
  const middle = ([least, most]: readonly [number, number]) => (least + most) / 2;
  const { minutes } = USUAL[method];
  const time = minutes ? middle(minutes) / middle(USUAL['spark-out'].minutes!) : 0;
  return removalCost * time + SPOILS[method] * partValue;
}

/**
 * The ways to get a broken tap out, those worth trying first and in the order of least harm to part and purse;
 * the rest follow with the reason against them. Scrap leads where the part is worth less than twice its removal.
 * Where both values are said, the ways are in the order of what they take in time and in risk to the part.
 *
 * @param tap size in mm; values in one money.
 * @returns every way once. Refuses `diameter-not-positive`, `money-negative`. Source: `common-practice`.
 */
export function removalChoices(tap: StuckTap): Outcome<RemovalChoice[]> {
  if (!(tap.diameter > 0) || !Number.isFinite(tap.diameter)) {
    return refuse({ code: 'diameter-not-positive', field: 'diameter' });
  }
  for (const field of ['partValue', 'removalCost'] as const) {
    const value = tap[field];
    if (value !== undefined && !(value >= 0)) return refuse({ code: 'money-negative', field });
  }
  const all = REMOVAL_METHODS.map((method): RemovalChoice => {
    const reasons = reasonsFor(method, tap);
    const verdict = reasons.length === 0 ? 'try' : 'no';
    return { method, verdict, reasons, ...USUAL[method], expected: expectedCost(method, tap) };
  });
  const place = ({ method, verdict }: RemovalChoice) =>
    verdict === 'no' ? 2 : method === 'scrap' ? 0 : 1;
  return answer(
    all.sort(
      (a, b) =>
        place(a) - place(b) || (a.verdict === 'no' ? 0 : (a.expected ?? 0) - (b.expected ?? 0)),
    ),
  );
}

/** What is never done to a broken tap, whatever the part. Common practice; the cautions name their own sources. */
export const NEVER = [
  'force-wedged',
  'hardened-hammer',
  'screw-extractor',
  'hand-drill',
  'fingers-on-spiral',
  'acid-on-steel',
  'spark-alone',
  'hands-before-lockout',
  'second-tap-first',
] as const;

export type NeverId = (typeof NEVER)[number];
