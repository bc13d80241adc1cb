/** What reckons and answers a chamfer: loads at the first touch of the form. */

import { spoken } from '../../result/AnswerLine';
import type { Engine } from '../calculator';
import { complaints } from '../problems';
import { fromCallout, reading, system } from '../reading';
import { Result } from './Answer';
import type { Name } from './inputs';
import { WORDS } from '../../words/en/calculators/chamfer/messages';
import { answerParts } from '../../words/en/calculators/chamfer/sentences';
import { attempt, type ChamferAnswer } from './state';

export const engine: Engine<Name, ChamferAnswer> = {
  attempt,
  Result,
  spoken: (answer, unit) => spoken(answerParts(answer, unit)),
  subject: ({ thread }) => thread.designation,
  complaint: complaints(WORDS),
  fromCallout,
  reading,
  system,
};
