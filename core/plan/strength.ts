/** How much thread this material needs under the usual screw, and what this hole has. */

import { ENGAGEMENT_MARGIN, matchingEngagement, SCREW_TENSILE } from '../engagement/strip';
import { externalMajorMin } from '../limits/external';
import type { Job } from './job';
import { lostIn } from './part-judge';

export interface StripCheck {
  /** Engagement that matches the screw, and with the least margin, mm. */
  matching: number;
  wanted: number;
  /** Engagement there is: the full thread less what a crossing takes, mm; and what it takes. */
  have: number;
  lost: number;
  /** Tensile strength of the screw reckoned with, N/mm². */
  tensile: number;
}

/** The usual screw for this thread and material: A2-70 in stainless, else 8.8 or SAE grade 5. Common practice. */
function usualTensile(job: Job): number {
  if (job.material.group === 'M') return SCREW_TENSILE.stainless;
  return job.thread.system === 'unified' ? SCREW_TENSILE.inch : SCREW_TENSILE.metric;
}

/**
 * Strip check of the thread, or null where the parent metal's strength or the screw's size is not known
 * (pipe, wire inserts). mm. Source: `fed-std-h28`.
 */
export function stripCheck(job: Job): StripCheck | null {
  const { thread, limits, material } = job;
  if (!limits || material.shear === undefined || thread.insert || thread.system === 'pipe')
    return null;
  const screwMajorMin = externalMajorMin(thread);
  const tensile = usualTensile(job);
  const matching = matchingEngagement({
    diameter: thread.diameter,
    system: thread.system === 'unified' ? 'inch' : 'metric',
    pitch: thread.pitch,
    screwMajorMin,
    holePitchMax: limits.pitch.max * (limits.unit === 'in' ? 25.4 : 1),
    shear: material.shear,
    tensile,
  });
  const lost = lostIn(job);
  const wanted = matching * ENGAGEMENT_MARGIN.least;
  return { matching, wanted, have: job.fullThread - lost, lost, tensile };
}
