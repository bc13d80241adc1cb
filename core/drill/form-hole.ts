/**
 * The hole before a forming tap: where it must lie, and how sharply the thread answers to it.
 * A cutting tap removes what the hole leaves; a forming tap pushes it up, so the hole decides the crest.
 */

import type { DrillSeries } from './drill';
import { judgeDrill, type HoleWindow } from './judge';
import { FORM_SLOPE, FORM_WINDOW, formHole, formPercent, PERCENT_BASE } from './percent';
import { drillsBetween, type StockedDrill } from './sizes';
import type { Range } from '../units';

export interface FormDrill {
  name: string;
  series: DrillSeries;
  /** mm */
  diameter: number;
  /** Percent of thread on the form-tap scale: of the drill as named, and of the hole it likely cuts. */
  percent: number;
  likelyPercent: number;
  /** Hole it likely cuts, mm. */
  likely: number;
  verdict: 'inside' | 'risk' | 'outside';
}

export interface FormHole {
  /** Hole sizes for 75 down to 60 % on the form-tap scale, mm. */
  window: Range;
  /** Hole for 65 %, mm. */
  usual: number;
  /** Hole that a volume balance gives for 65 % of thread on the shop base, mm: smaller, so try before you run. */
  balance: number;
  /** Percent of thread lost for each mm the hole grows. */
  percentPerMm: number;
  /** Drills near the window, judged, smallest first; and the one nearest the usual hole. */
  drills: readonly FormDrill[];
  drill: FormDrill | null;
}

/** Form-tap drills are sold in steps of 0.05 mm (0.01 below 1 mm) beyond the ordinary stock. Common practice. */
function stepDrills(window: Range): StockedDrill[] {
  const step = window.min < 1 ? 1 : 5;
  const from = Math.ceil((window.min * 100) / step) * step;
  const drills: StockedDrill[] = [];
  for (let size = from; size <= window.max * 100; size += step) {
    const name = (size / 100).toFixed(2).replace(/0$/, '');
    drills.push({ name, series: 'metric', diameter: size / 100 });
  }
  return drills;
}

function nearDrills(window: Range, series: readonly DrillSeries[] | undefined): StockedDrill[] {
  const reach = (window.max - window.min) / 2;
  const from = window.min - reach;
  const to = window.max + reach;
  const stocked = drillsBetween(from, to, series);
  if (series && !series.includes('metric')) return stocked;
  const steps = stepDrills({ min: from, max: to }).filter(
    (drill) => !stocked.some(({ name }) => name === drill.name),
  );
  return [...stocked, ...steps].sort((a, b) => a.diameter - b.diameter);
}

function judgeForm(drill: StockedDrill, window: HoleWindow): FormDrill {
  const { name, series, diameter, likely, verdict } = judgeDrill(drill, window);
  const percent = (hole: number) => formPercent(window.major, window.pitch, hole);
  return {
    name,
    series,
    diameter,
    likely,
    verdict,
    percent: percent(diameter),
    likelyPercent: percent(likely),
  };
}

/**
 * Hole that leaves as much metal as the formed thread needs, mm: the profile's metal pressed flat, curvature and
 * spring-back left out. `percent` on the shop base, lengths mm. Source: derived.
 */
export function balancedFormHole(major: number, pitch: number, percent: number): number {
  const height = (percent / 200) * PERCENT_BASE.shop * pitch;
  const grooveArea = (height * pitch) / 8 + (height * height) / Math.sqrt(3);
  const crownHeight = (pitch * height - grooveArea) / pitch;
  return major - 2 * crownHeight;
}

export interface FormHoleOptions {
  /** Drills in stock; default all four series. */
  series?: readonly DrillSeries[] | undefined;
  /** Share of the likely oversize that stays in this material, 0 to 1; default 1. */
  oversizeShare?: number | undefined;
  /** Series the shop reaches for first: the thread's own system. */
  system?: 'metric' | 'inch' | undefined;
}

/** The usable drill nearest the usual hole, of the wished system where it has one; of two equally near the smaller. */
function nearest(drills: FormDrill[], usual: number, system?: 'metric' | 'inch'): FormDrill | null {
  const usable = drills.filter((drill) => drill.verdict !== 'outside');
  const own = usable.filter((drill) => (drill.series === 'metric') === (system === 'metric'));
  const pool = system && own.length > 0 ? own : usable;
  const off = (drill: FormDrill) => Math.abs(drill.diameter - usual);
  return pool.reduce<FormDrill | null>(
    (best, each) => (best === null || off(each) < off(best) - 1e-9 ? each : best),
    null,
  );
}

/**
 * The hole for a forming tap of this thread.
 *
 * @param thread major diameter of the tap and pitch, mm, above 0. Never refuses.
 * @returns window, usual hole, sensitivity and the drills near it. A drill at risk cuts, as drills usually do,
 *   past the window: ream, or measure what it cuts. Sources: `from-memory` of the handbook for the scale;
 *   `drill-oversize`; the balance derived.
 *
 * @example
 * formTapHole({ major: 6, pitch: 1 }).usual.toFixed(2) // '5.56'
 */
export function formTapHole(
  thread: { major: number; pitch: number },
  options: FormHoleOptions = {},
): FormHole {
  const { major, pitch } = thread;
  const at = (percent: number) => formHole(major, pitch, percent);
  const window = { min: at(FORM_WINDOW.max), max: at(FORM_WINDOW.min) };
  const judging = { ...window, major, pitch, oversizeShare: options.oversizeShare ?? 1 };
  const drills = nearDrills(window, options.series).map((drill) => judgeForm(drill, judging));
  const usual = at(FORM_WINDOW.usual);
  return {
    window,
    usual,
    balance: balancedFormHole(major, pitch, FORM_WINDOW.usual),
    percentPerMm: 1 / (FORM_SLOPE * pitch),
    drills,
    drill: nearest(drills, usual, options.system),
  };
}

/** Percent of thread lost when the hole grows by `step` mm. Source: `from-memory` of the handbook's scale. */
export function percentLost(form: Pick<FormHole, 'percentPerMm'>, step: number): number {
  return form.percentPerMm * step;
}
