/** What reckons and answers how deep is enough: loads at the first touch of the form. */

import { spoken } from '../../result/AnswerLine';
import type { Engine } from '../calculator';
import { complaints } from '../problems';
import { fromCallout, reading, system } from '../reading';
import { Result } from './Answer';
import type { Name } from './inputs';
import { WORDS } from '../../words/en/calculators/engagement/messages';
import { answerParts } from '../../words/en/calculators/engagement/sentences';
import { attempt, type EngagementAnswer } from './state';

export const engine: Engine<Name, EngagementAnswer> = {
  attempt,
  Result,
  spoken: (answer, unit) => spoken(answerParts(answer, unit)),
  subject: ({ thread }) => thread.designation,
  complaint: complaints(WORDS),
  fromCallout,
  reading,
  system,
};
