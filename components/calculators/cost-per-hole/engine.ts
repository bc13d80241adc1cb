/** What reckons and answers, in one piece that loads at the first touch. */

import { spoken } from '../../result/AnswerLine';
import type { Engine } from '../calculator';
import { complaints } from '../problems';
import { Result } from './Answer';
import type { Name } from './inputs';
import { WORDS } from '../../words/en/calculators/cost-per-hole/messages';
import { answerParts, money } from '../../words/en/calculators/cost-per-hole/sentences';
import { attempt, type CostAnswer } from './state';

export const engine: Engine<Name, CostAnswer> = {
  attempt,
  Result,
  spoken: (answer) => spoken(answerParts(answer)),
  subject: ({ cost }) => money(cost.total),
  complaint: complaints(WORDS),
  reading: () => '',
  system: () => 'metric',
  fromCallout: () => null,
};
