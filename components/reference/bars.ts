/** The tolerance bars of a thread: where its drill must land, and its tap. Pure. */

import type { ThreadReference } from '../../core/plan/reference';
import type { ReferenceDrill } from '../../core/plan/reference-drills';
import type { TapLimitChoice } from '../../core/tap/limits-judge';
import { inchToMm, mmToInch } from '../../core/units';
import type { BarRow, LimitBarModel } from '../chart/limitBarMarks';
import { drillName, limitNumber, type Unit } from '../words';
import { BAR } from '../words/en/reference';
import { fill } from '../words/template';
import { limitIn } from './limits';

/** At most so many drills: the bar is for seeing, the table for looking up. */
const MOST = 8;

function own(drill: ReferenceDrill, metric: boolean): boolean {
  return (drill.series === 'metric') === metric;
}

/** What the bar of a hole is drawn from: a thread's page, or a calculator's answer. */
export type HoleBarFacts = Pick<
  ThreadReference,
  'thread' | 'window' | 'classes' | 'drills' | 'drill'
>;

/** The thread's own drills that serve, the first one that does not, and those a list or a trap names. */
function barDrills({ drills, drill, thread }: HoleBarFacts): ReferenceDrill[] {
  const metric = thread.system !== 'unified';
  const serves = (each: ReferenceDrill) => each.verdict !== 'outside';
  const ownOnes = drills.filter((each) => own(each, metric));
  const below = ownOnes.filter(
    (each) => !serves(each) && each.likely < (drills.find(serves)?.diameter ?? 0),
  );
  const last = below.at(-1);
  const wanted = drills.filter(
    (each) =>
      (own(each, metric) && serves(each)) ||
      each === last ||
      each.trap ||
      each.listed ||
      each.name === drill?.name,
  );
  // In large threads many serve: keep the named ones and the smallest of the rest.
  const named = (each: ReferenceDrill) =>
    Boolean(each.trap || each.listed || each.name === drill?.name);
  let room = MOST - wanted.filter(named).length;
  return wanted.filter((each) => named(each) || (room -= 1) >= 0);
}

function names(drills: readonly ReferenceDrill[], verdict: ReferenceDrill['verdict']): string {
  return drills
    .filter((each) => each.verdict === verdict)
    .map(drillName)
    .join(', ');
}

/** Where the drill must land for the class; null where there are no limits or no drills near them. */
export function holeBar(reference: HoleBarFacts, unit: Unit): LimitBarModel | null {
  const { window, thread, classes, drill } = reference;
  const drills = barDrills(reference);
  if (!window || drills.length === 0) return null;
  const name = thread.class || thread.form;
  const compared = new Set(drills[0]?.classes.map((each) => each.class));
  const others = classes.flatMap(({ class: other, limits }) => {
    if (other === thread.class || !compared.has(other) || limits.minor.max === undefined) return [];
    const at = limits.unit === 'in' ? inchToMm(limits.minor.max) : limits.minor.max;
    return [{ at, label: `${other} ${BAR.upTo} ${limitNumber(at, unit)}` }];
  });
  const rows = drills.map((each): BarRow => ({
    name: drillName(each),
    at: each.diameter,
    to: each.likely,
    verdict: each.verdict,
    strong: each.name === drill?.name && each.series === drill.series,
  }));
  const list = (template: string, said: string) =>
    said === '' ? '' : fill(template, { drills: said }, unit);
  return {
    title: fill(BAR.title, { class: name }, unit),
    description: fill(
      BAR.description,
      {
        min: limitNumber(window.hole.min, unit),
        max: `${limitNumber(window.hole.max, unit)} ${unit}`,
        class: name,
        inside: list(BAR.insideList, names(drills, 'inside')),
        traps: list(BAR.trapList, names(drills, 'outside')),
      },
      unit,
    ),
    name: fill(BAR.hole, { class: name, unit }, unit),
    ...window.hole,
    others,
    rows,
    write: (value) => limitNumber(value, unit),
  };
}

/** The taps that have a row: the recommended ones and the ISO 2857 classes. */
function barTaps(taps: readonly TapLimitChoice[]): TapLimitChoice[] {
  return taps.filter(({ listed, system }) => listed !== null || system === 'ISO');
}

/** Where the tap's pitch diameter must lie; null where no list of tap limits speaks of the thread. */
export function pitchBar({
  limits,
  thread,
  taps,
}: Pick<ThreadReference, 'limits' | 'thread' | 'taps'>): LimitBarModel | null {
  const rows = barTaps(taps);
  if (!limits || rows.length === 0) return null;
  const { unit, pitch } = limits;
  const convert = (value: number, from: Unit) =>
    from === unit ? value : unit === 'in' ? mmToInch(value) : inchToMm(value);
  return {
    title: fill(BAR.pitchTitle, { class: thread.class, unit }, unit),
    description: fill(
      BAR.pitchDescription,
      {
        class: thread.class,
        min: limitIn(pitch.min, unit),
        max: `${limitIn(pitch.max, unit)} ${unit}`,
        taps: rows.map((tap) => `${tap.name} ${tap.verdict}`).join(', '),
      },
      unit,
    ),
    name: fill(BAR.pitchTitle, { class: thread.class, unit }, unit),
    ...pitch,
    others: [],
    rows: rows.map((tap) => ({
      name: tap.name,
      at: convert(tap.pitch.min, tap.unit),
      to: convert(tap.pitch.max, tap.unit),
      verdict: tap.verdict,
      strong: tap.listed !== null,
      span: true,
    })),
    write: (value) => limitIn(value, unit),
  };
}
