/** What reckons and answers, in one piece that loads at the first touch. */

import { spoken } from '../../result/AnswerLine';
import type { Engine } from '../calculator';
import { complaints } from '../problems';
import { fromCallout, reading, system } from '../reading';
import { Result } from './Answer';
import type { Name } from './inputs';
import { WORDS } from '../../words/en/calculators/speed-and-cycle/messages';
import { answerParts } from '../../words/en/calculators/speed-and-cycle/sentences';
import { attempt, type CycleAnswer } from './state';

export const engine: Engine<Name, CycleAnswer> = {
  attempt,
  Result,
  spoken: (answer) => spoken(answerParts(answer)),
  subject: ({ study }) => study.thread.designation,
  complaint: complaints(WORDS),
  fromCallout,
  reading,
  system,
};
