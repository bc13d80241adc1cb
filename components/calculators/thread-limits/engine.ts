/** What reckons and answers the limits of a thread: loads at the first touch of the form. */

import { spoken } from '../../result/AnswerLine';
import type { Engine } from '../calculator';
import { complaints } from '../problems';
import { fromCallout, reading, system } from '../reading';
import { Result } from './Answer';
import type { Name } from './inputs';
import { WORDS } from '../../words/en/calculators/thread-limits/messages';
import { answerParts } from '../../words/en/calculators/thread-limits/sentences';
import { attempt, type LimitsAnswer } from './state';

export const engine: Engine<Name, LimitsAnswer> = {
  attempt,
  Result,
  spoken: (answer, unit) => spoken(answerParts(answer, unit)),
  subject: ({ thread }) => thread.designation,
  complaint: complaints(WORDS),
  fromCallout,
  reading,
  system,
};
