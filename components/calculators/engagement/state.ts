/** From a thread, a screw and a metal to the full thread that is enough. Pure. */

import type { Purpose } from '../../../core/engagement/purposes';
import type { ScrewGrade } from '../../../core/engagement/screws';
import type { MaterialId } from '../../../core/material/material';
import { findMaterial } from '../../../core/material/table';
import { engagementStudy, type EngagementStudy } from '../../../core/plan/engagement-study';
import type { Problem } from '../../../core/outcome';
import type { Thread } from '../../../core/thread/thread';
import { readPlain } from '../../fields/readNumber';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';

export interface EngagementAnswer {
  thread: Thread;
  screw: ScrewGrade;
  material: MaterialId;
  shearGiven: boolean;
  study: EngagementStudy;
}

const REFUSED = [
  'not-rated',
  'strength-unknown',
  'engagement-other-thread',
  'engagement-minor-unknown',
  'taper-pipe',
  'outside-tolerances',
];

const STRENGTH = ['n/mm²', 'n/mm2', 'mpa'];

function strengthOf(reader: Reader<Name>): number | undefined {
  const text = reader.text('shear');
  if (text === '') return undefined;
  return readPlain(text, STRENGTH) ?? reader.complain('shear', { code: 'not-a-strength' });
}

function fieldOf({ field }: Problem): Name {
  return field === 'shear' || field === 'have' ? field : 'thread';
}

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, EngagementAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const screw = reader.needed('screw', reader.choice<ScrewGrade>('screw'));
  const id = reader.needed('material', reader.material('material'));
  const purpose = reader.choice<Purpose>('purpose') ?? 'static';
  const have = reader.length('have');
  const shear = strengthOf(reader);
  const { problems } = reader;
  const material = id && findMaterial(id);
  if (problems.length > 0 || !thread || !screw || !id || !material) {
    return { answer: null, problems };
  }
  const study = engagementStudy({ thread, screw, material, shear, purpose, have });
  if (!study.ok) {
    const refusal = study.problems.find(({ code }) => REFUSED.includes(code));
    if (refusal) return { answer: null, problems, refusal };
    reader.lay(study.problems, fieldOf);
    return { answer: null, problems };
  }
  const shearGiven = shear !== undefined;
  return { answer: { thread, screw, material: id, shearGiven, study: study.value }, problems };
}
