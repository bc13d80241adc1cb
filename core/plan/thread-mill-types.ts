/** The question asked of a thread mill, and the whole of the answer. */

import type { Rows } from '../mill/path';
import type { MaterialId } from '../material/material';
import type { HoleKind, Reason, Warning } from './types';

export interface ThreadMillRequest {
  /** As typed. */
  thread: string;
  /** mm; default 1.5 D, through: the thickness. */
  fullThread?: number;
  hole: HoleKind;
  material: MaterialId;
  /** Hole before milling, mm; default the tap drill. */
  drill?: number;
  /** mm; `rows`: one row of teeth or a comb of that length; `reach`: what the neck lets in, mm from the face. */
  cutter: { diameter: number; teeth: number; rows: Rows; reach?: number };
  /** m/min; default the middle of the range for the metal. */
  speed?: number;
  /** mm; default the middle of the range for the cutter and the metal. */
  feedPerTooth?: number;
  /** Passes in depth of thread; default by the metal. */
  passes?: number;
  /** Diameter the last pass reaches, mm; default the basic major diameter. */
  cutTo?: number;
  spindle?: { maxRpm?: number };
  /** What the control takes F for while it offsets the radius; default the cutter's centre. */
  controlFeed?: 'centre' | 'teeth';
  unit?: 'mm' | 'in';
}

export interface ThreadMillPlan {
  rpm: number;
  /** mm/min at the edge and at the cutter's centre, in the last pass. */
  feedAtTeeth: number;
  feedAtCentre: number;
  /** Diameter of the circle that the centre goes round in the last pass, mm. */
  pathDiameter: number;
  /** Diameter reached by each pass, mm. */
  majors: number[];
  /** Turns of each pass. */
  turns: number;
  /** In the cut, all passes, without approach. */
  seconds: number;
  /** Growth of the pitch diameter by the sweep of the teeth, mm: an upper bound. */
  pitchGrowth: number;
  verdict: 'best' | 'works' | 'no';
  reasons: Reason[];
  warnings: Warning[];
  /** Blocks of an example, `_` for what only the shop knows. */
  programme: string[];
}
