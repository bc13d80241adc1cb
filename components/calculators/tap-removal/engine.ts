/** What answers how a broken tap comes out: loads at the first touch of the form. */

import { spoken } from '../../result/AnswerLine';
import type { Engine } from '../calculator';
import { complaints } from '../problems';
import { fromCallout, reading, system } from '../reading';
import { Result } from './Answer';
import type { Name } from './inputs';
import { WORDS } from '../../words/en/calculators/tap-removal/messages';
import { answerParts } from '../../words/en/calculators/tap-removal/sentences';
import { attempt, type RemovalAnswer } from './state';

export const engine: Engine<Name, RemovalAnswer> = {
  attempt,
  Result,
  spoken: (answer) => spoken(answerParts(answer)),
  subject: ({ thread }) => thread.designation,
  complaint: complaints(WORDS),
  fromCallout,
  reading,
  system,
};
