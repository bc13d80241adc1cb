/**
 * Least sizes of the usual screw that goes into the hole: ISO 6g, Unified 2A.
 * For reckoning engagement; the screw itself is not this handbook's subject.
 */

import { EXTERNAL_MAJOR_TOLERANCE_6, EXTERNAL_PITCH_TOLERANCE_6 } from '../data/iso-965-tolerances';
import { diameterStep } from '../thread/metric-series';
import { PITCH_DROP } from '../thread/profile';
import type { Thread } from '../thread/thread';
import { tenThousandths } from '../thread/unified-series';
import { inchToMm, roundHalfUp, roundToR40 } from '../units';
import { deviationG, externalPitchToleranceSix } from './metric';
import { pitchMultiple, pitchToleranceTwoA } from './unified-tolerances';

/** Allowance of class 2A, as a share of its pitch-diameter tolerance. */
const ALLOWANCE_TWO_A = 0.3;

const fourPlaces = (inches: number) => roundHalfUp(inches, 0.0001);

interface UnifiedScrew {
  /** Largest major diameter: basic less the allowance. Inches. */
  majorMax: number;
  pitchTolerance: number;
  tpi: number;
}

function unifiedScrew(inch: { diameter: number; tpi: number }): UnifiedScrew {
  const diameter = tenThousandths(inch.diameter) / 10000;
  const pitchTolerance = pitchToleranceTwoA(diameter, inch.tpi);
  const majorMax = fourPlaces(diameter - fourPlaces(ALLOWANCE_TWO_A * pitchTolerance));
  return { majorMax, pitchTolerance, tpi: inch.tpi };
}

/**
 * Least major diameter of a 6g or 2A screw for this thread, mm; `thread` from `readThread`. Never refuses.
 * 6g: deviation of position g and the tolerance of ISO 965-1 grade 6 (from memory; where it has no cell
 * 180 P^(2/3) - 3.15/P^(1/2), nearest preferred number). 2A: allowance 0.3 and tolerance 0.060 P^(2/3) by
 * ASME B1.1, rounded in inches; also for 3B holes, since a 2A screw may go into one.
 * Pipe threads have no such screw: their basic major diameter.
 */
export function externalMajorMin(thread: Thread): number {
  const { diameter, pitch } = thread;
  if (thread.system === 'unified' && thread.inch) {
    const { majorMax, tpi } = unifiedScrew(thread.inch);
    const tolerance = roundHalfUp(0.06 * roundHalfUp(1 / tpi, 1e-8) ** (2 / 3), 1e-6);
    return inchToMm(fourPlaces(majorMax - tolerance));
  }
  if (thread.system !== 'metric') return diameter;
  const formula = () => roundToR40(180 * pitch ** (2 / 3) - 3.15 / Math.sqrt(pitch));
  const tolerance = EXTERNAL_MAJOR_TOLERANCE_6[pitch] ?? formula();
  return roundHalfUp(diameter - (deviationG(pitch).value + tolerance) / 1000, 0.001);
}

/**
 * Least pitch diameter of a 6g or 2A screw for this thread, mm; `thread` from `readThread`. Never refuses. Sources: those of
 * `externalMajorMin`; of pipe threads the basic pitch diameter of a 60 degree profile.
 */
export function externalPitchMin(thread: Thread): number {
  const { diameter, pitch } = thread;
  if (thread.system === 'unified' && thread.inch) {
    const { majorMax, pitchTolerance, tpi } = unifiedScrew(thread.inch);
    const pitchMax = fourPlaces(majorMax - pitchMultiple(0.64951905, tpi) / 1e6);
    return inchToMm(fourPlaces(pitchMax - pitchTolerance));
  }
  const basic = roundHalfUp(diameter - PITCH_DROP * pitch, 0.001);
  if (thread.system !== 'metric') return basic;
  const table = EXTERNAL_PITCH_TOLERANCE_6[diameterStep(diameter)]?.[pitch];
  const tolerance = table ?? roundToR40(externalPitchToleranceSix(diameter, pitch));
  return roundHalfUp(basic - (deviationG(pitch).value + tolerance) / 1000, 0.001);
}
