/** From what was typed to a studied cycle. Pure. */

import type { FeedMode, ProgramUnit } from '../../../core/cycle/feed';
import type { CycleFluid, Substrate, TapCoating } from '../../../core/cycle/tool-speed';
import type { Problem } from '../../../core/outcome';
import { cycleStudy, type CycleQuestion, type CycleStudy } from '../../../core/plan/cycle-study';
import type { SpindleDrive } from '../../../core/plan/types';
import { readPlain } from '../../fields/readNumber';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';

export interface CycleAnswer {
  question: CycleQuestion;
  study: CycleStudy;
}

const RPM = ['rpm', 'rev/min', 'r/min', 'u/min', '1/min'];
const FEED = ['mm/min', 'in/min', 'ipm', 'mm/rev', 'in/rev', 'ipr', 'mm', 'in'];

const EXAMPLES: Partial<Record<Name, string>> = {
  rpm: '500',
  feed: '24.6',
  acceleration: '100',
  most: '3000',
  retract: '2',
};

function numberOf(reader: Reader<Name>, name: Name, units: readonly string[]): number | undefined {
  const text = reader.text(name);
  if (text === '') return undefined;
  const value = readPlain(text.replace(/^F\s*/i, ''), units);
  const data = { example: EXAMPLES[name] ?? '5' };
  if (value === null) return reader.complain(name, { code: 'not-a-number', data });
  return value > 0 ? value : reader.complain(name, { code: 'number-outside', data });
}

const FIELD_OF: Record<string, Name> = {
  fullThread: 'full',
  tip: 'tip',
  start: 'start',
  acceleration: 'acceleration',
  maxRpm: 'most',
  retract: 'retract',
  rpm: 'rpm',
  feed: 'feed',
  material: 'material',
};

function questionOf(reader: Reader<Name>): Omit<CycleQuestion, 'material'> {
  const { values } = reader;
  return {
    thread: reader.text('thread'),
    fullThread: reader.length('full'),
    tip: reader.length('tip'),
    start: reader.length('start'),
    substrate: values.substrate as Substrate,
    coating: values.coating as TapCoating,
    fluid: values.fluid as CycleFluid,
    drive: values.drive as SpindleDrive,
    acceleration: numberOf(reader, 'acceleration', ['rev/s²', 'rev/s2', 'r/s²', '1/s²']),
    maxRpm: numberOf(reader, 'most', RPM),
    retract: numberOf(reader, 'retract', ['x', '×', 'times']),
    unit: values.program as ProgramUnit,
    mode: values.mode as FeedMode,
    rpm: numberOf(reader, 'rpm', RPM),
    feed: numberOf(reader, 'feed', FEED),
  };
}

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, CycleAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const material = reader.needed('material', reader.material('material'));
  const rest = questionOf(reader);
  const { problems } = reader;
  if (problems.length > 0 || !thread || !material) return { answer: null, problems };
  const question = { ...rest, material };
  const study = cycleStudy(question);
  if (study.ok) return { answer: { question, study: study.value }, problems };
  const refusal = study.problems.find(({ code }) => code === 'no-tapping-speed');
  if (refusal) return { answer: null, problems, refusal };
  reader.lay(study.problems, ({ field }: Problem) => FIELD_OF[field ?? ''] ?? 'thread');
  return { answer: null, problems };
}
