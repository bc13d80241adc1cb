/** What reckons and answers a spindle: loads at the first touch of the form. */

import { spoken } from '../../result/AnswerLine';
import type { Engine } from '../calculator';
import { complaints } from '../problems';
import { fromCallout, reading, system } from '../reading';
import { Result } from './Answer';
import type { Name } from './inputs';
import { WORDS } from '../../words/en/calculators/spindle/messages';
import { answerParts, subjectOf } from '../../words/en/calculators/spindle/sentences';
import { attempt, type SpindleAnswer } from './state';

export const engine: Engine<Name, SpindleAnswer> = {
  attempt,
  Result,
  spoken: (answer, unit) => spoken(answerParts(answer, unit)),
  subject: subjectOf,
  complaint: complaints(WORDS),
  fromCallout,
  reading,
  system,
};
