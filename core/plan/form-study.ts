/** The hole before a form tap: for this thread, in this metal, and what a measured hole would give. */

import type { DrillSeries } from '../drill/drill';
import { formTapHole, type FormHole } from '../drill/form-hole';
import { oversizeShare } from '../drill/oversize';
import { formPercent } from '../drill/percent';
import type { Material } from '../material/material';
import { answer, refuse, type Outcome } from '../outcome';
import { tapMajor } from '../tap/major';
import type { Thread } from '../thread/thread';

export interface FormQuestion {
  thread: Thread;
  material?: Material | undefined;
  series?: readonly DrillSeries[] | undefined;
  /** A hole as measured, mm. */
  hole?: number | undefined;
}

export interface MeasuredHole {
  /** mm */
  hole: number;
  /** Percent of thread on the form-tap scale. */
  percent: number;
  /** `tight`: more thread than 75 %, hard on the tap; `thin`: less than 60 %. */
  verdict: 'inside' | 'tight' | 'thin';
}

export interface FormStudy {
  thread: Thread;
  /** Major diameter of the tap, mm. */
  major: number;
  form: FormHole;
  measured: MeasuredHole | null;
}

function measuredHole(hole: number, major: number, pitch: number, form: FormHole): MeasuredHole {
  const percent = formPercent(major, pitch, hole);
  const { min, max } = form.window;
  const verdict = hole < min - 1e-9 ? 'tight' : hole > max + 1e-9 ? 'thin' : 'inside';
  return { hole, percent, verdict };
}

/**
 * The hole for a forming tap.
 *
 * @param question lengths mm; the hole above 0 and below the tap's major diameter.
 * @returns mm. Refuses `form-other-thread` (pipe threads, wire inserts: no rule held), `not-formable` (the metal
 *   breaks instead of flowing) and `hole-out-of-range`. Sources: as `formTapHole`.
 */
export function formStudy({ thread, material, series, hole }: FormQuestion): Outcome<FormStudy> {
  const { designation, pitch } = thread;
  if (thread.system === 'pipe' || thread.insert) {
    return refuse({ code: 'form-other-thread', field: 'thread', data: { designation } });
  }
  if (material?.forming === 'no') {
    return refuse({ code: 'not-formable', field: 'material', data: { material: material.id } });
  }
  const major = tapMajor(thread);
  if (hole !== undefined && !(hole > 0 && hole < major)) {
    return refuse({ code: 'hole-out-of-range', field: 'hole' });
  }
  const share = material ? oversizeShare(material) : 1;
  const system = thread.system === 'metric' ? 'metric' : 'inch';
  const form = formTapHole({ major, pitch }, { series, system, oversizeShare: share });
  const measured = hole === undefined ? null : measuredHole(hole, major, pitch, form);
  return answer({ thread, major, form, measured });
}
