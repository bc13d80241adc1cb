/** All that the handbook knows of one thread, gathered: what its page prints. */

import { formTapHole, type FormHole } from '../drill/form-hole';
import type { DrillChoice } from '../drill/drill';
import { neededEngagement, type Engagement } from '../engagement/needed';
import { commonScrews, type ScrewGrade } from '../engagement/screws';
import { gaugeSet, type GaugeSet } from '../gauge/members';
import { pipeNotes, type PipeNotes } from '../gauge/pipe';
import { holesByEngagement, type EngagementHole } from '../hole/by-engagement';
import { roomTable, type RoomTable } from '../hole/room-table';
import type { ThreadLimits } from '../limits/limits';
import { threadLimits } from '../limits/thread-limits';
import type { MaterialId } from '../material/material';
import { findMaterial } from '../material/table';
import { answer, refuse, type Note, type Outcome } from '../outcome';
import { judgeTapLimits, type TapLimitChoice } from '../tap/limits-judge';
import { tapMajor } from '../tap/major';
import { inchSystem } from '../thread/inch-system';
import { basicDiameters, type BasicDiameters } from '../thread/profile';
import { readThread } from '../thread/read';
import type { Thread } from '../thread/thread';
import { referenceDrills, usualDrill, type ReferenceDrill } from './reference-drills';
import { TAPER_CHAMFER } from './taper';
import { relativesOf, type Relatives } from './reference-relatives';
import { comparedWindows, windowFacts, windowOf, type HoleWindowFacts } from './reference-window';

export interface ClassLimits {
  class: string;
  limits: ThreadLimits;
}

export interface EngagementRow {
  material: MaterialId;
  screws: readonly { screw: ScrewGrade; needed: Engagement }[];
}

export interface ThreadReference {
  thread: Thread;
  /** Basic sizes of the screw, mm. */
  basic: BasicDiameters;
  /** Null for a taper pipe thread and where no limits are held. */
  limits: ThreadLimits | null;
  /** What to know about the reading and the limits. */
  notes: readonly Note[];
  /** Limits in every class that its standard tabulates, own class included. */
  classes: readonly ClassLimits[];
  window: HoleWindowFacts | null;
  drills: readonly ReferenceDrill[];
  drill: DrillChoice | null;
  /** Closer hole sizes by length of engagement; Unified threads only. */
  holes: readonly EngagementHole[];
  /** Null for pipe threads and wire inserts. */
  form: FormHole | null;
  room: RoomTable;
  taps: readonly TapLimitChoice[];
  gauges: GaugeSet | null;
  pipe: PipeNotes | null;
  engagement: readonly EngagementRow[];
  relatives: Relatives;
}

/** Classes a page compares. 1B is made in UNC and UNF from 1/4 in only (from memory). */
const METRIC_CLASSES = ['4H', '5H', '6H', '7H', '8H', '6G', '7G'];

/** Metals a tapped hole is most often asked about. Common practice. */
const ENGAGEMENT_MATERIALS: readonly MaterialId[] = [
  'al-wrought',
  'al-cast',
  'brass-free',
  'iron-grey',
  'steel-low',
  'steel-medium',
  'stainless-austenitic',
];

function comparedClasses(thread: Thread): string[] {
  if (thread.form === 'M') return METRIC_CLASSES;
  if (thread.form !== 'UN') return [];
  const coarseOrFine = thread.series === 'UNC' || thread.series === 'UNF';
  return coarseOrFine && thread.diameter >= 6.35 ? ['1B', '2B', '3B'] : ['2B', '3B'];
}

function classTable(thread: Thread, own: ThreadLimits): ClassLimits[] {
  const others = comparedClasses(thread).flatMap((name) => {
    const found = threadLimits({ ...thread, class: name });
    if (!found.ok) return [];
    const held = thread.system !== 'metric' || found.value.basis === 'tabulated';
    return held ? [{ class: name, limits: found.value }] : [];
  });
  const listed = others.some((each) => each.class === thread.class);
  return listed ? others : [{ class: thread.class, limits: own }, ...others];
}

function engagementRows(thread: Thread, limits: ThreadLimits): EngagementRow[] {
  return ENGAGEMENT_MATERIALS.flatMap((id) => {
    const material = findMaterial(id)!;
    const screws = commonScrews(thread.system).flatMap((screw) => {
      const needed = neededEngagement({ thread, limits, screw, material });
      return needed.ok ? [{ screw, needed: needed.value }] : [];
    });
    return screws.length > 0 ? [{ material: id, screws }] : [];
  });
}

/** Percent of thread and form taps speak of 60 degree threads only. */
const isSixtyDegrees = (thread: Thread) => thread.system !== 'pipe';

type Held = Pick<
  ThreadReference,
  'limits' | 'classes' | 'window' | 'drills' | 'drill' | 'holes' | 'taps' | 'gauges' | 'engagement'
>;

const NOTHING_HELD: Held = {
  limits: null,
  classes: [],
  window: null,
  drills: [],
  drill: null,
  holes: [],
  taps: [],
  gauges: null,
  engagement: [],
};

function heldBy(thread: Thread, limits: ThreadLimits): Held {
  const window = windowOf(thread, limits);
  const classes = classTable(thread, limits);
  const drills = referenceDrills(thread, comparedWindows(thread, limits));
  return {
    limits,
    classes,
    window: windowFacts(window, limits),
    drills,
    drill: usualDrill(thread, window, drills),
    holes: thread.insert ? [] : holesByEngagement(limits),
    taps: judgeTapLimits(thread, limits),
    gauges: gaugeSet(thread, limits),
    engagement: engagementRows(thread, limits),
  };
}

/**
 * The same for a thread already read. Lengths mm, limits in their standard's unit. Refuses what `threadLimits`
 * refuses, but for pipe threads, which come with gauge and drill notes and `limits: null`.
 * Sources: as the parts it calls.
 */
export function referenceOf(thread: Thread): Outcome<ThreadReference> {
  const limits = threadLimits(thread);
  if (!limits.ok && thread.system !== 'pipe')
    return refuse(limits.problems[0]!, ...limits.problems.slice(1));
  const major = tapMajor(thread);
  const pipe = pipeNotes(thread);
  const taper = pipe?.taper === true;
  const formable = isSixtyDegrees(thread) && !thread.insert;
  const system = thread.system === 'metric' ? 'metric' : 'inch';
  const reference: ThreadReference = {
    thread,
    basic: basicDiameters(thread),
    notes: limits.ok
      ? limits.notes
      : limits.problems.map(({ code, data }) => ({ code, ...(data ? { data } : {}) })),
    ...(limits.ok ? heldBy(thread, limits.value) : NOTHING_HELD),
    form: formable ? formTapHole({ major, pitch: thread.pitch }, { system }) : null,
    room: roomTable(
      thread.pitch,
      inchSystem(thread) ? 'inch' : 'metric',
      taper ? TAPER_CHAMFER : undefined,
    ),
    pipe,
    relatives: relativesOf(thread),
  };
  return answer(reference);
}

/**
 * Everything the handbook holds for one thread, as its page prints it: limits in every class, the hole's window in
 * both percent bases, drills judged with the trap drills named, the form-tap hole, chamfer room, tap limits judged
 * against the class, gauges, pipe notes, engagement for common screws and metals.
 *
 * @param designation as typed, e.g. `M8`, `1/4-20 UNC-3B`, `G1/4`.
 * @returns lengths in mm, limits in their standard's unit. Refuses what `readThread` and `threadLimits` refuse.
 *   Sources: as the parts it calls.
 */
export function threadReference(designation: string): Outcome<ThreadReference> {
  const reading = readThread(designation);
  if (!reading.ok) return reading;
  const found = referenceOf(reading.value);
  if (!found.ok) return found;
  return answer({ ...found.value, notes: [...reading.notes, ...found.value.notes] });
}
