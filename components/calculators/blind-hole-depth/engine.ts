/** What reckons and answers a blind hole: loads at the first touch of the form. */

import { spoken } from '../../result/AnswerLine';
import type { Engine } from '../calculator';
import { complaints } from '../problems';
import { fromCallout, reading, system } from '../reading';
import { Result } from './Answer';
import type { Name } from './inputs';
import { WORDS } from '../../words/en/calculators/blind-hole-depth/messages';
import { answerParts } from '../../words/en/calculators/blind-hole-depth/sentences';
import { attempt, type DepthAnswer } from './state';

export const engine: Engine<Name, DepthAnswer> = {
  attempt,
  Result,
  spoken: (answer, unit) => spoken(answerParts(answer, unit)),
  subject: ({ study }) => study.thread.designation,
  complaint: complaints(WORDS),
  fromCallout,
  reading,
  system,
};
