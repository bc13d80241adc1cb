/** What reckons and answers what the gauges said: loads at the first touch of the form. */

import { spoken } from '../../result/AnswerLine';
import type { Engine } from '../calculator';
import { complaints } from '../problems';
import { fromCallout, reading, system } from '../reading';
import { Result } from './Answer';
import type { Name } from './inputs';
import { WORDS } from '../../words/en/calculators/gauging/messages';
import { answerParts } from '../../words/en/calculators/gauging/sentences';
import { attempt, type GaugeAnswer } from './state';

export const engine: Engine<Name, GaugeAnswer> = {
  attempt,
  Result,
  spoken: (answer) => spoken(answerParts(answer)),
  subject: ({ thread }) => thread.designation,
  complaint: complaints(WORDS),
  fromCallout,
  reading,
  system,
};
