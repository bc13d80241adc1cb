/** A hole in section for a sheet of many: the picture and its depths from the face, no more. */

import type { Unit } from '../words/format';
import { column, columnFloor } from './columns';
import { holeFrame, SHEET } from './holeFrame';
import type { HoleFacts } from './holeFacts';
import { levelLabels, levelMarks } from './holeLevels';
import { group, type Picture } from './marks';
import { bodyMarks, describeSection } from './sectionMarks';
import { SECTION_TEXT } from '../words/en/pictures';
import { say } from '../words/say';

/** Room over the face for the tap that comes in. */
const ABOVE = 44;
const LEFT = 18;
/** Shallow holes are given the height of a deep one, or they would be drawn wider beside it. */
const TALL = 370;

/** Draws the section without the chain of lengths and the words over it, which the sheet's table has. */
export function smallSection(facts: HoleFacts, unit: Unit): Picture {
  const frame = holeFrame(facts);
  const labels = levelLabels(facts, frame, unit);
  const bottom = Math.max(frame.floor, columnFloor(labels));
  const kind = facts.through ? SECTION_TEXT.through : SECTION_TEXT.blind;
  const top = SHEET.face - ABOVE;
  return {
    corner: [LEFT, top],
    width: SHEET.block.right + 6 - LEFT,
    height: Math.max(TALL, Math.ceil(bottom + 6 - top)),
    title: say(SECTION_TEXT.title, { designation: facts.designation, kind }),
    description: describeSection(facts, unit, frame.gaps.length > 0),
    marks: [
      ...bodyMarks(facts, frame),
      group('dw-dimensions', [...levelMarks(facts, frame), ...column(labels, 'left', bottom)]),
    ].filter((mark) => mark !== null),
  };
}
