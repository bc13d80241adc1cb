/** An exercise in words: what the page asks, what it answers to each try, and the full working. Pure. */

import type { ChamferClass } from '../../core/chamfer/chamfer';
import type { CauseId } from '../../core/diagnose/causes';
import type { CheckId } from '../../core/diagnose/checks';
import type { SymptomId } from '../../core/diagnose/symptoms';
import type { DrillSeries } from '../../core/drill/drill';
import type { MaterialId } from '../../core/material/material';
import { JOBS_IN_STEPS, type JobInSteps } from '../../core/practice/order';
import type { ChoiceAsk, Exercise, Facts } from '../../core/practice/types';
import type { TapStyle } from '../../core/tap/tap';
import type { ThreadSystem } from '../../core/thread/thread';
import {
  bothLengths,
  decimals,
  drillName,
  feedPerRev,
  length,
  limitLength,
  materialShort,
  reasonText,
  rpm,
  tapName,
  threadPercent,
  threadRange,
  type Unit,
} from '../words';
import {
  CHOOSE,
  DIAGNOSE,
  DRAWING,
  DRILL,
  ERROR,
  GAUGES,
  ORDERS,
  REACH,
} from '../words/en/exercises';
import { SYMPTOM_WORDS } from '../words/en/symptoms';
import { fill } from '../words/template';
import { answerText, causeText, checkText } from '../words/trouble';
import type { Option } from '../lesson/Choose';
import type { Step } from '../lesson/Order';

export type SaidExercise =
  | { type: 'choice'; question: string; options: Option[] }
  | {
      type: 'length';
      question: string;
      answer: number;
      tolerance: number;
      slips: { value: number; why: string }[];
      working: string;
    }
  | { type: 'order'; question: string; steps: Step[]; start: number[] };

const num = (facts: Facts, name: string) => Number(facts[name]);
const text = (facts: Facts, name: string) => String(facts[name] ?? '');

function first(exercise: Exercise): Unit {
  return exercise.given['system'] === 'unified' ? 'in' : 'mm';
}

function saidReach(exercise: Exercise): SaidExercise {
  const { given, working, ask, variant } = exercise;
  if (ask.type !== 'length') throw new Error('A reach asks for a length.');
  const kind = variant as keyof typeof REACH.working;
  const both = (mm: number) => bothLengths(mm, first(exercise));
  const values = {
    thread: text(given, 'thread'),
    full: both(num(given, 'fullThread')),
    limit: both(num(given, 'limit')),
    threads: threadRange({ min: num(given, 'threadsMin'), max: num(given, 'threadsMax') }),
    drive: REACH.drives[text(given, 'drive') as keyof typeof REACH.drives],
    chamfer: both(num(working, 'chamferLength')),
    stop: both(num(working, 'stopLength')),
    needed: both(num(working, 'needed')),
    gives: both(num(working, 'obtainable')),
  };
  return {
    type: 'length',
    question: fill(REACH[kind], values, 'mm'),
    answer: ask.answer,
    tolerance: ask.tolerance,
    slips: ask.slips.map(({ value, code }) => ({
      value,
      why: REACH.slips[code as keyof typeof REACH.slips],
    })),
    working: fill(REACH.working[kind], values, 'mm'),
  };
}

/** Options of a choice, each with its words. */
function choice(
  question: string,
  ask: ChoiceAsk,
  said: (id: string, facts: Facts, right: boolean) => { text: string; why: string },
): SaidExercise {
  return {
    type: 'choice',
    question,
    options: ask.options.map(({ id, facts }) => {
      const right = id === ask.answer;
      return { ...said(id, facts, right), ...(right && { right }) };
    }),
  };
}

function drillOf(name: string): string {
  const [series = 'metric', ...rest] = name.split(' ');
  return drillName({ name: rest.join(' '), series: series as DrillSeries });
}

function saidDrill(exercise: Exercise, ask: ChoiceAsk): SaidExercise {
  const { given, working } = exercise;
  const unit = first(exercise);
  const limit = (mm: number) => limitLength(mm, unit);
  const common = { min: limit(num(given, 'min')), max: limit(num(given, 'max')) };
  return choice(
    fill(DRILL.ask, { thread: text(given, 'thread') }, 'mm'),
    ask,
    (id, facts, right) => {
      const values = {
        ...common,
        likely: limit(num(facts, 'likely')),
        size: limit(num(facts, 'diameter')),
        percent: threadPercent(num(working, 'shop')),
      };
      const small = num(facts, 'diameter') < num(given, 'min');
      const why = right ? DRILL.inside : small ? DRILL.small : DRILL.large;
      return { text: drillOf(id), why: fill(why, values, 'mm') };
    },
  );
}

function saidChoose(exercise: Exercise, ask: ChoiceAsk): SaidExercise {
  const { given, variant } = exercise;
  const system = text(given, 'system') as ThreadSystem;
  const question = fill(
    CHOOSE[variant as 'blind' | 'through' | 'clean'],
    {
      thread: text(given, 'thread'),
      depth: bothLengths(num(given, 'depth'), first(exercise)),
      material: materialShort(text(given, 'material') as MaterialId),
    },
    'mm',
  );
  return choice(question, ask, (_, facts, right) => {
    const numbers = Object.fromEntries(
      Object.entries(facts).flatMap(([name, value]) =>
        typeof value === 'number' ? [[name, value]] : [],
      ),
    );
    const reason = { code: text(facts, 'why'), numbers, source: 'derived' };
    const why = reasonText(reason as Parameters<typeof reasonText>[0], first(exercise));
    const style = text(facts, 'style') as TapStyle;
    return {
      text: tapName(
        {
          style,
          hand: text(facts, 'hand') as 'left' | 'right',
          process: style === 'form' ? 'form' : 'cut',
          chamfer: {
            class: text(facts, 'chamfer') as ChamferClass,
            form: text(facts, 'form'),
            threads: { min: num(facts, 'min'), max: num(facts, 'max') },
          },
        } as Parameters<typeof tapName>[0],
        system,
      ),
      why: fill(right ? CHOOSE.right : CHOOSE.wrong, { why }, 'mm'),
    };
  });
}

function sheetValue(line: string, value: number | string, unit: Unit): string {
  if (line === 'drill') return drillOf(String(value));
  if (line === 'feed') return feedPerRev(Number(value), unit);
  if (line === 'speed') return rpm(Number(value));
  return typeof value === 'string' ? value : length(value, unit);
}

function saidError(exercise: Exercise, ask: ChoiceAsk): SaidExercise {
  const { given, working } = exercise;
  const unit = first(exercise);
  const question = fill(
    ERROR.ask,
    {
      thread: text(given, 'thread'),
      full: length(num(given, 'fullThread'), unit),
      threads: decimals(num(given, 'threadsMax'), 1),
    },
    unit,
  );
  return choice(question, ask, (id, facts, wrong) => {
    const right = sheetValue(id, working[id]!, unit);
    const range = { min: rpm(num(working, 'min')), max: rpm(num(working, 'max')) };
    const fine = id === 'speed' ? ERROR.speedFine : ERROR.fine;
    return {
      text: fill(
        ERROR.lines[id as keyof typeof ERROR.lines],
        { value: sheetValue(id, facts['value']!, unit) },
        unit,
      ),
      why: fill(wrong ? ERROR.wrong : fine, { right, ...range }, unit),
    };
  });
}

function turnsText(turns: number): string {
  if (turns === 0) return GAUGES.turns.none;
  return turns === 1
    ? GAUGES.turns.one
    : fill(GAUGES.turns.many, { turns: decimals(turns, 2) }, 'mm');
}

function saidGauges({ given, working }: Exercise, ask: ChoiceAsk): SaidExercise {
  const question = fill(
    GAUGES.ask,
    {
      thread: text(given, 'thread'),
      go: GAUGES.go[text(given, 'go') as keyof typeof GAUGES.go],
      turns: turnsText(num(given, 'notGoTurns')),
      minorGo: GAUGES.minor[text(given, 'minorGo') as 'yes' | 'no'],
      minorNotGo: GAUGES.minor[text(given, 'minorNotGo') as 'yes' | 'no'],
    },
    'mm',
  );
  const rules = fill(
    GAUGES.rules,
    { b12: num(working, 'asme-b1-2'), iso: num(working, 'iso-1502') },
    'mm',
  );
  return choice(question, ask, (id) => ({ text: GAUGES.findings[id] ?? id, why: rules }));
}

function saidDiagnose({ given }: Exercise, ask: ChoiceAsk): SaidExercise {
  const check = text(given, 'check') as CheckId;
  const end = (sentence: string) => (/[.?!]$/.test(sentence) ? sentence : `${sentence}.`);
  const question = fill(
    DIAGNOSE.ask,
    {
      symptom: end(SYMPTOM_WORDS[text(given, 'symptom') as SymptomId].name),
      check: checkText(check, 'mm').ask,
      answer: answerText(check, text(given, 'seen')),
    },
    'mm',
  );
  return choice(question, ask, (id, _, right) => {
    const { name, change } = causeText(id as CauseId, 'mm');
    return { text: name, why: right ? fill(DIAGNOSE.right, { change }, 'mm') : DIAGNOSE.wrong };
  });
}

function saidDrawing({ working }: Exercise, ask: ChoiceAsk): SaidExercise {
  return choice(DRAWING.ask, ask, (id, _, right) => {
    const unit: Unit = /^\d+X M/.test(id) ? 'mm' : 'in';
    const values = {
      needed: length(num(working, 'needed'), unit),
      have: length(num(working, 'have'), unit),
    };
    return { text: id, why: right ? fill(DRAWING.right, values, unit) : DRAWING.wrong };
  });
}

function saidOrder({ variant, ask }: Exercise): SaidExercise {
  if (ask.type !== 'order') throw new Error('An order asks for an order.');
  const job = variant as JobInSteps;
  const { ask: question, steps } = ORDERS[job];
  if (steps.length !== JOBS_IN_STEPS[job]) throw new Error(`${job} has other steps in words.`);
  return {
    type: 'order',
    question,
    steps: steps.map(([step, why]) => ({ text: step, why })),
    start: ask.steps.map((id) => ask.answer.indexOf(id)),
  };
}

/** The exercise in words. Lengths are said in both units, or in the unit of their drawing. */
export function saidExercise(exercise: Exercise): SaidExercise {
  const { kind, ask } = exercise;
  if (kind === 'reach') return saidReach(exercise);
  if (kind === 'order') return saidOrder(exercise);
  if (ask.type !== 'choice') throw new Error(`${kind} asks for a choice.`);
  const say = {
    drill: saidDrill,
    choose: saidChoose,
    error: saidError,
    gauges: saidGauges,
    diagnose: saidDiagnose,
    drawing: saidDrawing,
  }[kind];
  return say(exercise, ask);
}
