/**
 * Changes of the jobs on the device's shelf. Every change rereads first and touches one thing, so two tabs
 * do not undo each other; a job that was changed in both is kept twice.
 */

import {
  changeShelf,
  openShelf,
  type OnShelf,
  type Outcome,
  type Store,
  type Unkept,
} from '../state/shelf';
import { JOBS, type Contents, type Drawer, type Job } from './shape';

export type Change =
  | {
      kind: 'job';
      job: Job;
      /** The revision it was read at; missing for a new one. */ seen?: number;
    }
  | { kind: 'remove'; id: string }
  | {
      kind: 'drawer';
      drawer: Drawer;
      /** The drawer that the typing began from; missing where it is put there whole. */ seen?: Drawer;
    }
  | { kind: 'add'; contents: Contents };

/** `twice`: another tab had changed the same job, so both are kept. */
export type Kept = { ok: true; twice: boolean } | { ok: false; why: Unkept };

/** An id that no other job has. Not for secrets: only for telling jobs apart. */
export function freshId(taken: readonly string[], random: () => number = Math.random): string {
  for (;;) {
    const id = `job-${Math.floor(random() * 36 ** 8).toString(36)}`;
    if (!taken.includes(id)) return id;
  }
}

/** An empty job, with what the planner’s form says of it. */
export function newJob(
  jobs: readonly Job[],
  head: Partial<Pick<Job, 'job' | 'part' | 'operation' | 'machine'>> = {},
): Job {
  const { job = '', part = '', operation = '', machine = '' } = head;
  const id = freshId(jobs.map((each) => each.id));
  return { id, revision: 0, job, part, operation, machine, holes: [] };
}

const sameJob = (a: Job, b: Job) =>
  JSON.stringify({ ...a, id: '', revision: 0 }) === JSON.stringify({ ...b, id: '', revision: 0 });

/** Jobs of a file put beside those that are there: the same one once, a different one under a new id. */
function joined(jobs: readonly Job[], more: readonly Job[]): Job[] {
  const all = [...jobs];
  for (const job of more) {
    if (all.some((each) => sameJob(each, job))) continue;
    const ids = all.map(({ id }) => id);
    all.push(ids.includes(job.id) ? { ...job, id: freshId(ids) } : job);
  }
  return all;
}

function joinedLists<Item>(items: readonly Item[], more: readonly Item[]): Item[] {
  const seen = new Set(items.map((item) => JSON.stringify(item)));
  return [...items, ...more.filter((item) => !seen.has(JSON.stringify(item)))];
}

/** The drawer as typed, and after it what another tab put into it since the typing began. */
function withMeanwhile(typed: Drawer, seen: Drawer | undefined, there: Drawer): Drawer {
  if (!seen) return typed;
  const added = <Item>(now: readonly Item[], before: readonly Item[]): Item[] => {
    const known = new Set(before.map((item) => JSON.stringify(item)));
    return now.filter((item) => !known.has(JSON.stringify(item)));
  };
  const taps = joinedLists(typed.taps, added(there.taps, seen.taps));
  const drills = joinedLists(typed.drills, added(there.drills, seen.drills));
  const machines = joinedLists(typed.machines, added(there.machines, seen.machines));
  const more =
    taps.length + drills.length + machines.length >
    typed.taps.length + typed.drills.length + typed.machines.length;
  return more ? { taps, drills, machines } : typed;
}

/** Contents with a change made, and whether a job had to be kept twice. Pure. */
export function changed(
  contents: Contents,
  change: Change,
): { contents: Contents; twice: boolean } {
  const { jobs, drawer, unread } = contents;
  switch (change.kind) {
    case 'drawer': {
      const both = withMeanwhile(change.drawer, change.seen, drawer);
      return { contents: { ...contents, drawer: both }, twice: both !== change.drawer };
    }
    case 'remove':
      return {
        contents: { ...contents, jobs: jobs.filter(({ id }) => id !== change.id) },
        twice: false,
      };
    case 'add': {
      const added = change.contents;
      return {
        contents: {
          jobs: joined(jobs, added.jobs),
          drawer: {
            taps: joinedLists(drawer.taps, added.drawer.taps),
            drills: joinedLists(drawer.drills, added.drawer.drills),
            machines: joinedLists(drawer.machines, added.drawer.machines),
          },
          unread: joinedLists(unread, added.unread),
        },
        twice: false,
      };
    }
    default: {
      const { job, seen } = change;
      const there = jobs.find(({ id }) => id === job.id);
      const next = { ...job, revision: (there?.revision ?? 0) + 1 };
      if (!there) return { contents: { ...contents, jobs: [...jobs, next] }, twice: false };
      if (there.revision !== seen && !sameJob(there, job)) {
        const copy = { ...job, id: freshId(jobs.map(({ id }) => id)), revision: 1 };
        return { contents: { ...contents, jobs: [...jobs, copy] }, twice: true };
      }
      return {
        contents: { ...contents, jobs: jobs.map((each) => (each.id === job.id ? next : each)) },
        twice: false,
      };
    }
  }
}

/** Makes one change by way of `change`, which gives it what is kept now. */
export function keepBy(
  change: (make: (contents: Contents) => Contents) => Outcome,
  wanted: Change,
): Kept {
  let twice = false;
  const why = change((contents) => {
    const next = changed(contents, wanted);
    twice = next.twice;
    return next.contents;
  });
  return why === 'kept' ? { ok: true, twice } : { ok: false, why };
}

/** Makes one change to what is kept now, whatever another tab has done meanwhile. */
export function keepChange(store: Store | null, change: Change): Kept {
  return keepBy((make) => changeShelf(store, JOBS, make), change);
}

/** What is kept, and how the store stands. */
export function openJobs(store: Store | null): OnShelf<Contents> {
  return openShelf(store, JOBS);
}
