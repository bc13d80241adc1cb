/**
 * The core's codes as sentences. A code without words is shown readable, never dropped:
 * a warning that nobody has worded yet still has to be seen.
 */

import type { Note, Problem } from '../../core/outcome';
import type { Assumption, Reason, Remedy, Warning, WarningLevel } from '../../core/plan/types';
import { ASSUMPTIONS } from './en/assumptions';
import { NOTES } from './en/notes';
import { FAMILIES, OR, PROBLEMS } from './en/problems';
import { REASONS, ROUGH_REASONS } from './en/reasons';
import { REMEDIES } from './en/remedies';
import { NEAR_SPINDLE, WARNINGS, type WarningWords } from './en/warnings';
import type { Unit } from './format';
import { fill, readable } from './template';

/** How loud a notice looks; the core's word for amber is caution. */
export type Level = 'note' | 'amber' | 'stop';

const LOUDNESS: Record<WarningLevel, Level> = { note: 'note', caution: 'amber', stop: 'stop' };

function sentence(
  table: Readonly<Record<string, string | undefined>>,
  code: string,
  values: object,
  unit: Unit,
): string {
  const template = table[code];
  return template === undefined
    ? readable(code)
    : fill(template, values as Record<string, number | string>, unit);
}

/** `a, b, c` as `a, b or c`; a family of threads by its name. */
function echoed(data: Record<string, string>): Record<string, string> {
  const { offers, family } = data;
  const names: Record<string, string> = FAMILIES;
  return {
    ...data,
    ...(offers !== undefined && { offers: offers.replace(/, ([^,]*)$/, `${OR}$1`) }),
    ...(family !== undefined && { family: names[family] ?? family }),
  };
}

/** What is wrong with an input and what to type instead, for beside its field. */
export function problemText(problem: Problem, unit: Unit): string {
  return sentence(PROBLEMS, problem.code, echoed(problem.data ?? {}), unit);
}

/** Something to know about an answer that was given. */
export function noteText(note: Note, unit: Unit): string {
  return sentence(NOTES, note.code, { ...note.data, ...note.numbers }, unit);
}

/** Why a tap leads, works or will not do. */
export function reasonText(reason: Reason, unit: Unit): string {
  const rough = reason.source === 'packed-chips' && ROUGH_REASONS[reason.code] !== undefined;
  return sentence(rough ? ROUGH_REASONS : REASONS, reason.code, reason.numbers, unit);
}

/** Something taken for granted, short enough for a list on the card. */
export function assumptionText(assumption: Assumption, unit: Unit): string {
  return sentence(ASSUMPTIONS, assumption.code, assumption.numbers, unit);
}

/** A warning's title, what to do about it, how loud, and the lesson that explains it. */
export function warningText(warning: Warning, unit: Unit): WarningWords & { level: Level } {
  const words = (WARNINGS as Record<string, WarningWords | undefined>)[warning.code];
  const level = LOUDNESS[warning.level] ?? 'amber';
  if (!words) return { title: readable(warning.code), text: '', level };
  const { worn = 0, spindle = 0 } = warning.numbers;
  if (warning.code === 'spindle-over' && worn <= spindle) {
    return { ...NEAR_SPINDLE, level, text: fill(NEAR_SPINDLE.text, warning.numbers, unit) };
  }
  return { ...words, level, text: fill(words.text, warning.numbers, unit) };
}

/** A change that would help: its name and what to ask for. */
export function remedyText(remedy: Remedy, unit: Unit): { title: string; text: string } {
  const words = (REMEDIES as Record<string, (typeof REMEDIES)[Remedy['code']] | undefined>)[
    remedy.code
  ];
  if (!words) return { title: readable(remedy.code), text: '' };
  return { title: words.title, text: fill(words.text, remedy.numbers, unit) };
}
