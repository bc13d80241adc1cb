/** Holes of the lesson on how deep is enough, from the work of an invented shop. Lengths in mm. */

import type { ScrewGrade } from '../../../core/engagement/screws';
import type { MaterialId } from '../../../core/material/material';
import type { HoleRequest } from '../../../core/plan/types';
import { inchToMm } from '../../../core/units';

export interface Joint {
  thread: string;
  screw: ScrewGrade;
  material: MaterialId;
  /** Full thread on the drawing, mm. */
  drawn: number;
}

/** A filter bracket in wrought aluminium, drawn four diameters deep. */
const bracket: Joint = {
  thread: 'M10x1.5-6H',
  screw: '8.8',
  material: 'al-wrought',
  drawn: 40,
};

/** A clamp block from an inch drawing. */
const block: Joint = {
  thread: '3/8-16 UNC-2B',
  screw: 'SAE 5',
  material: 'al-wrought',
  drawn: inchToMm(0.5),
};

export const JOINTS = { bracket, block } as const;

/** Metals on the chart, in the order of what they ask for. */
export const CHART_METALS = [
  'steel-medium',
  'iron-ductile',
  'steel-low',
  'al-wrought',
  'iron-grey',
  'copper',
  'al-cast',
] as const satisfies readonly MaterialId[];

export const TRY_METALS = ['steel-low', 'al-wrought', 'al-cast', 'iron-grey', 'plastic'] as const;

export const TRY_SCREWS = ['5.8', '8.8', '10.9', '12.9'] as const;

/** The pump foot whose hole ends too near its thread. */
export const FOOT: HoleRequest = {
  thread: 'M10x1.5-6H',
  fullThread: 15,
  hole: { kind: 'blind', limit: { at: 'shoulder', depth: 16.5 } },
  material: 'al-wrought',
};
