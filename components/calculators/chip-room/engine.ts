/** What reckons and answers the chip room: loads at the first touch of the form. */

import { spoken } from '../../result/AnswerLine';
import type { Engine } from '../calculator';
import { complaints } from '../problems';
import { fromCallout, reading, system } from '../reading';
import { Result } from './Answer';
import type { Name } from './inputs';
import { WORDS } from '../../words/en/calculators/chip-room/messages';
import { answerParts } from '../../words/en/calculators/chip-room/sentences';
import { attempt, type RoomAnswer } from './state';

export const engine: Engine<Name, RoomAnswer> = {
  attempt,
  Result,
  spoken: (answer, unit) => spoken(answerParts(answer, unit)),
  subject: ({ study }) => study.thread.designation,
  complaint: complaints(WORDS),
  fromCallout,
  reading,
  system,
};
