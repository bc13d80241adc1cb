/** What reckons and answers where chips go: loads at the first touch of the form. */

import { spoken } from '../../result/AnswerLine';
import type { Engine } from '../calculator';
import { complaints } from '../problems';
import { Result } from './Answer';
import type { Name } from './inputs';
import { WORDS } from '../../words/en/calculators/chip-direction/messages';
import { answerParts, tapNamed } from '../../words/en/calculators/chip-direction/sentences';
import { attempt, type ChipAnswer } from './state';

export const engine: Engine<Name, ChipAnswer> = {
  attempt,
  Result,
  spoken: (answer) => spoken(answerParts(answer)),
  subject: tapNamed,
  complaint: complaints(WORDS),
  reading: () => '',
  system: () => 'metric',
  fromCallout: () => null,
};
