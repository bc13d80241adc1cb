/** From a thread and a metal to the hole before a form tap. Pure. */

import type { MaterialId } from '../../../core/material/material';
import { findMaterial } from '../../../core/material/table';
import { formStudy, type FormStudy } from '../../../core/plan/form-study';
import type { Thread } from '../../../core/thread/thread';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { SERIES_OF, type Drawer } from '../drawer';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';

export interface FormAnswer {
  thread: Thread;
  material: MaterialId | undefined;
  drawer: Drawer;
  study: FormStudy;
}

const REFUSED = ['not-formable', 'form-other-thread'];

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, FormAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const material = reader.material('material');
  const drawer = reader.choice<Drawer>('drills') ?? 'all';
  const hole = reader.length('hole');
  const { problems } = reader;
  if (problems.length > 0 || !thread) return { answer: null, problems };
  const series = SERIES_OF[drawer];
  const study = formStudy({ thread, material: material && findMaterial(material), series, hole });
  if (!study.ok) {
    const refusal = study.problems.find(({ code }) => REFUSED.includes(code));
    if (refusal) return { answer: null, problems, refusal };
    reader.lay(study.problems, ({ field }) => (field === 'hole' ? 'hole' : 'thread'));
    return { answer: null, problems };
  }
  return { answer: { thread, material, drawer, study: study.value }, problems };
}
