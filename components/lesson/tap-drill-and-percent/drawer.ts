/** The drills of a drawer against a class, for drills that cut as large as the reader says. */

import type { DrillChoice } from '../../../core/drill/drill';
import { judgeDrill } from '../../../core/drill/judge';
import type { StockedDrill } from '../../../core/drill/sizes';
import { inchToMm } from '../../../core/units';
import type { LimitBarModel } from '../../chart/limitBarMarks';
import { DRAWER } from '../../words/en/percents';
import { BAR } from '../../words/en/reference';
import { drillName, limitNumber, type Unit } from '../../words/format';
import { fill } from '../../words/template';

/** What the bar needs of a thread and its drawer, read while the page is built. Lengths mm. */
export interface DrawerCase {
  major: number;
  pitch: number;
  /** The drawing's own class first. */
  classes: { name: string; min: number; max: number }[];
  drills: StockedDrill[];
  /** Name of the drill that lists print. */
  listed: string;
  /** What such a drill usually cuts large. */
  oversize: number;
}

export const OVERSIZE = { min: 0, max: 0.25 } as const;

/** For one press of a button, mm. */
export function oversizeStep(unit: Unit): number {
  return unit === 'mm' ? 0.02 : inchToMm(0.001);
}

export interface DrawerTrial {
  class: string;
  /** mm; null while what was typed is no such number. */
  oversize: number | null;
}

function judged(drawer: DrawerCase, trial: DrawerTrial): DrillChoice[] {
  const { major, pitch, classes, drills } = drawer;
  const { min, max } = classes.find(({ name }) => name === trial.class) ?? classes[0]!;
  const oversize = trial.oversize ?? drawer.oversize;
  return drills.map((drill) =>
    judgeDrill(drill, { min, max, major, pitch, oversizeShare: 1, oversize }),
  );
}

const names = (drills: readonly DrillChoice[], verdict: DrillChoice['verdict']) =>
  drills
    .filter((each) => each.verdict === verdict)
    .map(drillName)
    .join(', ');

function sentenceOf(
  drills: readonly DrillChoice[],
  trial: DrawerTrial,
  drawer: DrawerCase,
  unit: Unit,
) {
  const [inside, risk] = [names(drills, 'inside'), names(drills, 'risk')];
  const listed = drills.find(({ name }) => name === drawer.listed);
  const values = { over: trial.oversize ?? drawer.oversize, class: trial.class, inside };
  return [
    fill(inside === '' ? DRAWER.none : DRAWER.likely, values, unit),
    risk === '' ? '' : fill(DRAWER.risk, { drills: risk }, unit),
    listed
      ? fill(
          DRAWER.listed,
          { drill: drillName(listed), hole: listed.likely, fate: DRAWER.fates[listed.verdict] },
          unit,
        )
      : '',
  ]
    .filter(Boolean)
    .join(' ');
}

/** The bar of the class with every drill of the drawer on it, and what that means in words. */
export function drawerBar(
  drawer: DrawerCase,
  trial: DrawerTrial,
  unit: Unit,
): { bar: LimitBarModel; sentence: string; drills: DrillChoice[] } {
  const drills = judged(drawer, trial);
  const own = drawer.classes.find(({ name }) => name === trial.class) ?? drawer.classes[0]!;
  const best = drills.findLast(({ verdict }) => verdict === 'inside');
  const sentence = sentenceOf(drills, trial, drawer, unit);
  return {
    drills,
    sentence,
    bar: {
      title: fill(BAR.title, { class: own.name }, unit),
      description: sentence,
      name: fill(BAR.hole, { class: own.name, unit }, unit),
      min: own.min,
      max: own.max,
      others: drawer.classes
        .filter(({ name }) => name !== own.name)
        .map(({ name, max }) => ({
          at: max,
          label: `${name} ${BAR.upTo} ${limitNumber(max, unit)}`,
        })),
      rows: drills.map((drill) => ({
        name: drillName(drill),
        at: drill.diameter,
        to: drill.likely,
        verdict: drill.verdict,
        strong: drill === best,
      })),
      write: (value) => limitNumber(value, unit),
    },
  };
}
