/**
 * What is kept of jobs, and its shape: the same in the browser's store and in a file. A hole is kept as
 * the planner's inputs, never as an answer: answers are worked out anew. What cannot be read is kept
 * beside what can, and written back untouched.
 */

import * as v from 'valibot';
import { CHAMFER_CLASSES } from '../../core/chamfer/chamfer';
import { INPUT_NAMES, type InputName } from '../planner/inputs';
import type { Shelf } from '../state/shelf';
import { isObject, openVersioned, type Loose } from '../state/versioned';

export const FORMAT = 'tapped-hole-handbook jobs';
export const VERSION = 4;

/** Longer than anything a person types; a hand-edited file must not fill the store by itself. */
const TEXT = v.pipe(v.string(), v.maxLength(500));

const INPUTS = v.record(v.picklist(INPUT_NAMES), TEXT);

/** `answer`: the sentence that stood there when the hole was kept, in mm, and the site's version then. */
const HOLE = v.object({
  inputs: INPUTS,
  answer: v.optional(v.object({ version: TEXT, text: v.pipe(v.string(), v.maxLength(2000)) })),
});

const JOB = v.object({
  id: v.pipe(v.string(), v.minLength(1), v.maxLength(80)),
  /** Counts the times it was changed: two tabs see by it that they would overwrite each other. */
  revision: v.pipe(v.number(), v.integer(), v.minValue(0)),
  job: TEXT,
  part: TEXT,
  operation: TEXT,
  machine: TEXT,
  holes: v.pipe(v.array(HOLE), v.maxLength(400)),
});

export const OWNED_STYLES = ['spiral-point', 'spiral-flute', 'straight-flute', 'form'] as const;

const TAP = v.object({
  thread: TEXT,
  style: v.picklist(OWNED_STYLES),
  chamfer: v.picklist(CHAMFER_CLASSES),
});

const DRILL = v.object({ name: TEXT });

const MACHINE = v.object({
  name: TEXT,
  drive: v.picklist(['synchronous', 'floating', 'reversing-head', 'hand']),
  torque: v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(100_000))),
  rpm: v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(100_000))),
});

export type KeptHole = v.InferOutput<typeof HOLE>;
export type Job = v.InferOutput<typeof JOB>;
export type OwnedTap = v.InferOutput<typeof TAP>;
export type OwnedDrill = v.InferOutput<typeof DRILL>;
export type Machine = v.InferOutput<typeof MACHINE>;

export interface Drawer {
  taps: OwnedTap[];
  drills: OwnedDrill[];
  machines: Machine[];
}

export interface Contents {
  jobs: Job[];
  drawer: Drawer;
  /** Pieces that could not be read, as they stood. */
  unread: unknown[];
}

export type Read =
  | { state: 'read'; contents: Contents; from: number }
  /** Not ours, or broken: the text must be set aside, never written over. */
  | { state: 'damaged' }
  /** Written by a later version: leave it alone. */
  | { state: 'newer' };

export const EMPTY: Contents = {
  jobs: [],
  drawer: { taps: [], drills: [], machines: [] },
  unread: [],
};

/** Readable items apart from the others. */
function sorted<Schema extends v.GenericSchema>(
  schema: Schema,
  items: unknown,
): [good: v.InferOutput<Schema>[], bad: unknown[]] {
  const [good, bad]: [v.InferOutput<Schema>[], unknown[]] = [[], []];
  if (items !== undefined && !Array.isArray(items)) return [good, [items]];
  for (const item of (items as unknown[] | undefined) ?? []) {
    const found = v.safeParse(schema, item);
    if (found.success) good.push(found.output);
    else bad.push(item);
  }
  return [good, bad];
}

const list = (data: unknown): unknown[] => (Array.isArray(data) ? data : []);

/** A planner's query as inputs; names the planner does not know are left out. */
export function inputsOf(query: unknown): Partial<Record<InputName, string>> {
  const pairs = [...new URLSearchParams(String(query).replace(/^[^?]*\?/, ''))];
  return Object.fromEntries(
    pairs.filter(([name]) => (INPUT_NAMES as readonly string[]).includes(name)),
  );
}

/** From each version to the next. 1: bare addresses of plans. 2: jobs of addresses. 3: no tap drawer. */
const UPGRADES: Record<number, (data: Loose) => Loose> = {
  1: (data) => ({
    ...data,
    version: 2,
    jobs: list(data['cards']).map((card) => ({ name: '', holes: [card] })),
  }),
  2: (data) => ({
    ...data,
    version: 3,
    jobs: list(data['jobs']).map((job, index) =>
      isObject(job)
        ? {
            id: `older-${index + 1}`,
            job: job['name'] ?? '',
            part: '',
            operation: '',
            machine: '',
            holes: list(job['holes']).map((query) => ({ inputs: inputsOf(query) })),
          }
        : job,
    ),
  }),
  3: (data) => ({
    ...data,
    version: 4,
    jobs: list(data['jobs']).map((job) => (isObject(job) ? { revision: 0, ...job } : job)),
  }),
};

/** Reads a store's or a file's text. Never throws. */
export function readContents(text: string): Read {
  const opened = openVersioned(text, VERSION, FORMAT);
  if (opened.state !== 'read') return opened;
  const { data, from } = opened;
  let current = data;
  for (let version = from; version < VERSION; version += 1) current = UPGRADES[version]!(current);

  const [jobs, badJobs] = sorted(JOB, current['jobs']);
  const drawer = isObject(current['drawer']) ? current['drawer'] : {};
  const [taps, badTaps] = sorted(TAP, drawer['taps']);
  const [drills, badDrills] = sorted(DRILL, drawer['drills']);
  const [machines, badMachines] = sorted(MACHINE, drawer['machines']);
  const odd = current['drawer'] !== undefined && !isObject(current['drawer']);
  const unread = [
    ...list(current['unread']),
    ...badJobs,
    ...badTaps,
    ...badDrills,
    ...badMachines,
    ...(odd ? [current['drawer']] : []),
  ];
  return { state: 'read', from, contents: { jobs, drawer: { taps, drills, machines }, unread } };
}

/** The text of a store or file. */
export function writeContents(contents: Contents, spaces = 0): string {
  const { jobs, drawer, unread } = contents;
  const data = {
    format: FORMAT,
    version: VERSION,
    jobs,
    drawer,
    ...(unread.length > 0 && { unread }),
  };
  return JSON.stringify(data, null, spaces);
}

export const JOBS: Shelf<Contents> = {
  key: 'tapped-hole-handbook-jobs',
  empty: EMPTY,
  read: readContents,
  write: writeContents,
};
