/** Reads a thread of the lesson and its class while the page is built; one that cannot be read stops the build. */

import { readThread } from '../../../core';
import { findMaterial } from '../../../core/material/table';
import { drillStudy, type DrillStudy } from '../../../core/plan/drill-study';
import type { DrillJob } from './jobs';
import type { HoleCase } from './percent';
import { tapMajor } from '../../../core/tap/major';

/** Which drill for this thread in this metal; without a metal, in steel. */
export function study(text: string, material?: DrillJob['material']): DrillStudy {
  const read = readThread(text);
  if (!read.ok) throw new Error(`The lesson cannot read its own thread ${text}.`);
  const found = drillStudy({
    thread: read.value,
    ...(material && { material: findMaterial(material) }),
  });
  if (!found.ok) throw new Error(`No drills can be judged for ${text}.`);
  return found.value;
}

/** A thread as the live chart needs it. Lengths mm. */
export function holeCase(text: string): HoleCase {
  const { thread, window } = study(text);
  return {
    designation: thread.designation,
    class: thread.class,
    major: tapMajor(thread),
    pitch: thread.pitch,
    min: window.hole.min,
    max: window.hole.max,
  };
}
