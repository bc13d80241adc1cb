/** What reckons and answers torque: loads at the first touch of the form. */

import { spoken } from '../../result/AnswerLine';
import type { Engine } from '../calculator';
import { complaints } from '../problems';
import { fromCallout, reading, system } from '../reading';
import { Result } from './Answer';
import type { Name } from './inputs';
import { WORDS } from '../../words/en/calculators/torque/messages';
import { answerParts, subjectOf } from '../../words/en/calculators/torque/sentences';
import { attempt, type TorqueAnswer } from './state';

export const engine: Engine<Name, TorqueAnswer> = {
  attempt,
  Result,
  spoken: (answer, unit) => spoken(answerParts(answer, unit)),
  subject: subjectOf,
  complaint: complaints(WORDS),
  fromCallout,
  reading,
  system,
};
