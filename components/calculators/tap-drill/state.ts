/** From a thread, a metal and a drawer to the drill. Pure. */

import type { MaterialId } from '../../../core/material/material';
import { findMaterial } from '../../../core/material/table';
import { drillStudy, type DrillStudy } from '../../../core/plan/drill-study';
import type { Thread } from '../../../core/thread/thread';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { SERIES_OF, type Drawer } from '../drawer';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';

export interface DrillAnswer {
  thread: Thread;
  material: MaterialId | undefined;
  drawer: Drawer;
  oversize: number | undefined;
  study: DrillStudy;
}

/** Not the reader's mistake: the method has nothing to judge by. */
const REFUSED = ['taper-pipe', 'no-limits-held', 'outside-tolerances'];

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, DrillAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const material = reader.material('material');
  const drawer = reader.choice<Drawer>('drills') ?? 'all';
  const oversize = reader.length('oversize', 'zero');
  const { problems } = reader;
  if (problems.length > 0 || !thread) return { answer: null, problems };
  const study = drillStudy({
    thread,
    material: material && findMaterial(material),
    series: SERIES_OF[drawer],
    oversize,
  });
  if (!study.ok) {
    const refusal = study.problems.find(({ code }) => REFUSED.includes(code));
    if (refusal) return { answer: null, problems, refusal };
    reader.lay(study.problems, ({ field }) => (field === 'oversize' ? 'oversize' : 'thread'));
    return { answer: null, problems };
  }
  return { answer: { thread, material, drawer, oversize, study: study.value }, problems };
}
