/** From a thread and its coating to what must be tapped before it. Pure. */

import { platingStudy, type PlatingStudy } from '../../../core/plan/plating-study';
import type { PlatingRule } from '../../../core/gauge/plating';
import type { Thread } from '../../../core/thread/thread';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name, RULES } from './inputs';

export interface PlatingAnswer {
  thread: Thread;
  thickness: [min: number, max: number];
  rule: (typeof RULES)[number];
  study: PlatingStudy;
}

const REFUSED = ['plating-no-room', 'taper-pipe', 'no-limits-held', 'outside-tolerances'];

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, PlatingAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const least = reader.needed('least', reader.length('least', 'zero'));
  const most = reader.needed('most', reader.length('most', 'zero'));
  const rule = reader.choice<PlatingAnswer['rule']>('rule') ?? 'usual';
  const { problems } = reader;
  if (problems.length > 0 || !thread || least === undefined || most === undefined) {
    return { answer: null, problems };
  }
  const asked: PlatingRule | undefined = rule === 'usual' ? undefined : rule;
  const study = platingStudy(thread, [least, most], asked);
  if (!study.ok) {
    const refusal = study.problems.find(({ code }) => REFUSED.includes(code));
    if (refusal) return { answer: null, problems, refusal };
    reader.lay(study.problems, ({ field }) => (field === 'thickness' ? 'most' : 'thread'));
    return { answer: null, problems };
  }
  return { answer: { thread, thickness: [least, most], rule, study: study.value }, problems };
}
