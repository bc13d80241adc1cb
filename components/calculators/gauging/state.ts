/** From what the gauges did to what it means. Pure. */

import type { GaugeReading } from '../../../core/gauge/reading';
import type { PlainReading } from '../../../core/gauge/plain';
import { gaugeStudy, type GaugeQuestion, type GaugeStudy } from '../../../core/plan/gauge-study';
import type { Thread } from '../../../core/thread/thread';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';

export interface GaugeAnswer {
  thread: Thread;
  question: GaugeQuestion;
  study: GaugeStudy;
}

const TURNS = { min: 0, max: 200 };

const REFUSED = ['gauge-taper', 'gauge-pipe', 'no-limits-held', 'outside-tolerances'];

const FIELD_OF: Record<string, Name> = { notGoTurns: 'turns', goTurns: 'made' };

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, GaugeAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const go = reader.needed('go', reader.choice<GaugeReading['go']>('go'));
  const notGoTurns = reader.needed('turns', reader.threads('turns', TURNS));
  const plain = reader.choice<PlainReading>('plain') ?? 'untried';
  const goTurns = reader.threads('made', TURNS);
  const fullThread = reader.length('full');
  const { problems } = reader;
  if (problems.length > 0 || !thread || !go || notGoTurns === undefined) {
    return { answer: null, problems };
  }
  const question: GaugeQuestion = { thread, go, notGoTurns, plain, goTurns, fullThread };
  const study = gaugeStudy(question);
  if (!study.ok) {
    const refusal = study.problems.find(({ code }) => REFUSED.includes(code));
    if (refusal) return { answer: null, problems, refusal };
    reader.lay(study.problems, ({ field }) => FIELD_OF[field ?? ''] ?? 'thread');
    return { answer: null, problems };
  }
  return { answer: { thread, question, study: study.value }, problems };
}
