/** Dimensions of a hole section: depths from the face on the left, the chain of lengths on the right. */

import type { Unit } from '../words/format';
import { column, columnFloor } from './columns';
import { chainLabels, chainMarks } from './holeChain';
import type { HoleFacts } from './holeFacts';
import { SHEET, type Frame } from './holeFrame';
import { levelLabels, levelMarks } from './holeLevels';
import { group, text, type Mark } from './marks';
import { SECTION } from '../words/en/pictures';
import { say } from '../words/say';

const { face, rightText } = SHEET;

/** Lowest y the words would like to reach, so that the sheet is made tall enough. */
export function wordsFloor(facts: HoleFacts, frame: Frame, unit: Unit): number {
  return Math.max(
    columnFloor(levelLabels(facts, frame, unit)),
    columnFloor(chainLabels(facts, frame, unit)),
  );
}

/** Every dimension, with its words kept above `bottom` and apart from one another. */
export function dimensionMarks(facts: HoleFacts, frame: Frame, unit: Unit, bottom: number): Mark {
  return group('dw-dimensions', [
    text('word', [2, face - 12], say(SECTION.fromFace, { unit }), { tone: 'quiet' }),
    text('word', [rightText, face - 12], unit, { tone: 'quiet' }),
    ...levelMarks(facts, frame),
    ...column(levelLabels(facts, frame, unit), 'left', bottom),
    ...chainMarks(facts, frame),
    ...column(chainLabels(facts, frame, unit), 'right', bottom),
  ]);
}
