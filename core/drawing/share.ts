/**
 * The fewest taps and drills for a part.
 *
 * Objective: fewest tools such that every hole keeps its best tap or one that also works, and a drill
 * that is surely inside its class (at risk only where none is inside). Among equals: what the shop has in
 * its drawer, then the tools that stand highest in the holes' own order.
 */

import type { DrillChoice } from '../drill/drill';
import type { HolePlan, TapChoice } from '../plan/types';
import { ownedKey, type OwnedTools } from './drawer';
import { fewestTools, type Option } from './fewest';

export interface SharedHole {
  index: number;
  plan: HolePlan;
}

function tapKey(tap: TapChoice): string {
  return `${tap.style} ${tap.chamfer.class}`;
}

const isOwned = (plan: HolePlan, tap: TapChoice, owned?: OwnedTools): boolean =>
  owned?.taps.has(ownedKey(plan.thread.designation, tap)) ?? false;

/** Taps that would do for a hole: those of the drawer first, each kind in the plan's own order. */
function usable(plan: HolePlan, owned?: OwnedTools): TapChoice[] {
  const taps = plan.taps.filter((tap) => tap.verdict !== 'no' && tap.process !== 'mill');
  const [have, lack] = [true, false].map((which) =>
    taps.filter((tap) => isOwned(plan, tap, owned) === which),
  );
  return [...have!, ...lack!];
}

export interface SharedTap {
  choice: TapChoice;
  holes: number[];
  /** Set where a drawer was given: whether this tap lies in it. */
  owned?: boolean;
}

export interface SharedDrill {
  drill: DrillChoice;
  holes: number[];
  owned?: boolean;
}

/** Taps for holes of one thread: chosen once, used by each hole that ranks them highest among the chosen. */
function shareOneThread(holes: readonly SharedHole[], owned?: OwnedTools): SharedTap[] {
  const options = holes.map(({ plan }) =>
    usable(plan, owned).map((tap, rank): Option => ({ key: tapKey(tap), rank })),
  );
  const chosen = fewestTools(options);
  const shared = new Map<string, SharedTap>();
  for (const { index, plan } of holes) {
    const choice = usable(plan, owned).find((tap) => chosen.includes(tapKey(tap)));
    if (!choice) continue;
    const key = tapKey(choice);
    const entry = shared.get(key) ?? {
      choice,
      holes: [],
      ...(owned && { owned: isOwned(plan, choice, owned) }),
    };
    entry.holes.push(index);
    shared.set(key, entry);
  }
  return [...shared.values()];
}

/** Fewest taps for a part. Only holes of one designation can share a tap. Source: derived. */
export function shareTaps(holes: readonly SharedHole[], owned?: OwnedTools): SharedTap[] {
  const byThread = new Map<string, SharedHole[]>();
  for (const hole of holes) {
    const key = hole.plan.thread.designation;
    byThread.set(key, [...(byThread.get(key) ?? []), hole]);
  }
  return [...byThread.values()].flatMap((each) => shareOneThread(each, owned));
}

export interface DrillWish extends SharedHole {
  /** Whether the hole's tap forms its thread: then only its own drill will do. */
  forms: boolean;
  /** Diameter the drawing calls for, mm. */
  drawn?: number | undefined;
}

function acceptable({ plan, forms, drawn }: DrillWish, owned?: OwnedTools): DrillChoice[] {
  if (!plan.drill) return [];
  if (forms) return [plan.drill];
  const inside = plan.drills.filter((drill) => drill.verdict === 'inside');
  const pool = inside.length > 0 ? inside : plan.drills.filter((drill) => drill.verdict === 'risk');
  const target = drawn ?? plan.drill.diameter;
  const system = plan.drill.series === 'metric';
  // The drawer first, then the thread's own system, then nearest to what the drawing or the plan wants.
  const far = (drill: DrillChoice) =>
    Math.abs(drill.diameter - target) +
    (owned?.drills.has(drill.name) ? 0 : 1000) +
    ((drill.series === 'metric') === system ? 0 : 100);
  return [...pool].sort((a, b) => far(a) - far(b));
}

/** Fewest drills for a part, across its threads. Source: derived. */
export function shareDrills(holes: readonly DrillWish[], owned?: OwnedTools): SharedDrill[] {
  const lists = holes.map((hole) => acceptable(hole, owned));
  const chosen: string[] = [];
  // Threads far apart cannot share: each cluster of overlapping lists is solved by itself.
  for (const cluster of clusters(lists)) {
    chosen.push(
      ...fewestTools(cluster.map((list) => list.map((drill, rank) => ({ key: drill.name, rank })))),
    );
  }
  const shared = new Map<string, SharedDrill>();
  holes.forEach(({ index }, at) => {
    const drill = lists[at]!.find((each) => chosen.includes(each.name));
    if (!drill) return;
    const entry = shared.get(drill.name) ?? {
      drill,
      holes: [],
      ...(owned && { owned: owned.drills.has(drill.name) }),
    };
    entry.holes.push(index);
    shared.set(drill.name, entry);
  });
  return [...shared.values()].sort((a, b) => a.drill.diameter - b.drill.diameter);
}

/** Groups lists that share a drill, directly or through others. */
function clusters(lists: readonly DrillChoice[][]): DrillChoice[][][] {
  const groups: { names: Set<string>; lists: DrillChoice[][] }[] = [];
  for (const list of lists.filter((each) => each.length > 0)) {
    const names = new Set(list.map(({ name }) => name));
    const touching = groups.filter((group) => list.some(({ name }) => group.names.has(name)));
    for (const group of touching) groups.splice(groups.indexOf(group), 1);
    groups.push({
      names: new Set([...names, ...touching.flatMap((group) => [...group.names])]),
      lists: [list, ...touching.flatMap((group) => group.lists)],
    });
  }
  return groups.map((group) => group.lists);
}
