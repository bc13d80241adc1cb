/** What the finder keeps in the address: the symptom, the answers, what was tried, and the hole as the planner asks it. */

import { CHAMFER_CLASSES } from '../../core/chamfer/chamfer';
import { CAUSE_IDS, type CauseId } from '../../core/diagnose/causes';
import { answersOf, CHECK_IDS, type CheckId } from '../../core/diagnose/checks';
import { CANNOT_CHECK, type CheckAnswer } from '../../core/diagnose/finder';
import { SYMPTOM_IDS } from '../../core/diagnose/symptoms';
import { FIELDS as HOLE_FIELDS, MEASURED_STYLES, type InputName } from '../planner/inputs';
import type { AddressField, Values } from '../state/address';

export type FinderName = 'symptom' | 'said' | 'tried' | 'tap' | 'chamfer' | 'ran';
export type Name = FinderName | InputName;
export type FinderValues = Values<Name>;

export const FIELDS: readonly AddressField<Name>[] = [
  { name: 'symptom', initial: '', choices: SYMPTOM_IDS },
  { name: 'said', initial: '' },
  { name: 'tried', initial: '' },
  { name: 'tap', initial: '', choices: MEASURED_STYLES },
  { name: 'chamfer', initial: '', choices: CHAMFER_CLASSES },
  { name: 'ran', initial: '' },
  ...HOLE_FIELDS,
];

/** `nose.shiny,flutes.packed` as answers; what this page does not know is left out. */
export function readSaid(text: string): CheckAnswer[] {
  const answers = text.split(',').flatMap((part): CheckAnswer[] => {
    const [name = '', answer = ''] = part.split('.');
    const check = CHECK_IDS.find((id) => id === name);
    const known = check && (answer === CANNOT_CHECK || answersOf(check).includes(answer));
    return check && known ? [{ check, answer }] : [];
  });
  // A check has one answer: the last one given.
  return answers.filter(
    ({ check }, at) => !answers.slice(at + 1).some((later) => later.check === check),
  );
}

export function writeSaid(answers: readonly CheckAnswer[]): string {
  return answers.map(({ check, answer }) => `${check}.${answer}`).join(',');
}

export function withAnswer(text: string, check: CheckId, answer: string | null): string {
  const others = readSaid(text).filter((each) => each.check !== check);
  return writeSaid(answer === null ? others : [...others, { check, answer }]);
}

export function readTried(text: string): CauseId[] {
  return CAUSE_IDS.filter((id) => text.split(',').includes(id));
}

export function withTried(text: string, cause: CauseId, tried: boolean): string {
  const others = readTried(text).filter((each) => each !== cause);
  return (tried ? [...others, cause] : others).join(',');
}

/** True once a hole was typed: then its plan is wanted. */
export function holeStarted(values: FinderValues): boolean {
  return values.thread.trim() !== '';
}
