/** What reckons and answers a tap's strength: loads at the first touch of the form. */

import { spoken } from '../../result/AnswerLine';
import type { Engine } from '../calculator';
import { complaints } from '../problems';
import { fromCallout, reading, system } from '../reading';
import { Result } from './Answer';
import type { Name } from './inputs';
import { WORDS } from '../../words/en/calculators/tap-strength/messages';
import { answerParts, subjectOf } from '../../words/en/calculators/tap-strength/sentences';
import { attempt, type StrengthAnswer } from './state';

export const engine: Engine<Name, StrengthAnswer> = {
  attempt,
  Result,
  spoken: (answer, unit) => spoken(answerParts(answer, unit)),
  subject: subjectOf,
  complaint: complaints(WORDS),
  fromCallout,
  reading,
  system,
};
