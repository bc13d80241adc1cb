/** The drawing page between what was pasted, what a person says of it, and the core. */
import { describe, expect, test } from 'vitest';
import { EXAMPLE } from '../../components/part/examples';
import { readColumns, writeColumns, type PartInputs } from '../../components/part/inputs';
import { followSaid, readLines, sayOf, writeLines } from '../../components/part/lines';
import { attempt } from '../../components/part/state';
import { drawingNote, shownLine } from '../../components/words/drawing';
import {
  answerParts,
  holeNumber,
  notReadText,
  reasons,
} from '../../components/words/en/partSentences';
import { spoken } from '../../components/result/AnswerLine';

const part = (lines: string[], more: Partial<PartInputs> = {}) =>
  attempt({ ...EXAMPLE, holes: lines.join('\n'), ...more }, 'mm');
const holes = (lines: string[], more: Partial<PartInputs> = {}) => part(lines, more).drawing!.holes;

describe('what a person says of lines', () => {
  test('is written and read back, and nonsense is left out', () => {
    const said = sayOf(sayOf({}, 4, 'joined', true), 7, 'tapped', true);
    expect(readLines(writeLines(said))).toEqual({ 4: ['joined'], 7: ['tapped'] });
    expect(sayOf(said, 4, 'parted', true)[4]).toEqual(['parted']);
    expect(sayOf(said, 7, 'tapped', false)[7]).toEqual([]);
    expect(readLines('x;4z;;99999j;-1p')).toEqual({});
    expect(readColumns(writeColumns(['quantity', undefined, 'depth']))).toEqual([
      'quantity', undefined, 'depth',
    ]); // prettier-ignore
  });

  test('goes along with its line', () => {
    const said = { 2: ['parted'] } as const;
    expect(followSaid(said, 'M6\nM8', 'M5\nM6\nM8')).toEqual({ 3: ['parted'] });
    expect(followSaid(said, 'M6\nM8', 'M6')).toEqual({});
  });

  test('parts lines that were joined, and joins lines that were not', () => {
    const lines = ['4 × Ø6.8 ↧20', 'M8x1.25-6H ↧16'];
    expect(holes(lines).map(({ lines: at }) => at)).toEqual([[1, 2]]);
    expect(holes(lines, { lines: '2p' }).map(({ lines: at }) => at)).toEqual([[1], [2]]);
    expect(holes(['M8x1.25-6H', '', '16 DEEP'], { lines: '3j' })[0]!.lines).toEqual([1, 3]);
  });

  test('makes a threaded hole of a line that was set apart', () => {
    const lines = ['M6 CLEARANCE HOLE'];
    expect(holes(lines)[0]).toMatchObject({ apart: 'clearance', verdict: 'unread' });
    expect(holes(lines, { lines: '1t' })[0]).toMatchObject({ verdict: 'caution' });
  });

  test('a change of one hole finds it by its line, past headings, blanks and joined lines', () => {
    const lines = ['Qty\tThread', '4\tM8 ↧16', '2\tM6 THRU'];
    const changed = holes(lines, { changes: '3.material=iron-grey' });
    expect(changed.map(({ request }) => request?.material)).toEqual(['al-wrought', 'iron-grey']);
    const joined = ['4 × Ø6.8 ↧20', 'M8x1.25-6H ↧16', '', 'M6 THRU'];
    const after = holes(joined, { changes: '4.material=iron-grey' });
    expect(after.map(({ request }) => request?.material)).toEqual(['al-wrought', 'iron-grey']);
  });
});

describe('what was not read', () => {
  const { drawing } = part(['TITLE: LID', 'M8x1.25-6H ↧12 ZINGO', 'M6-6H ↧10']);

  test('stands beside the verdict and in the note to the designer', () => {
    expect(drawing!.holes[1]!.verdict).toBe('caution');
    expect(notReadText(drawing!.holes[1]!)).toBe('Not understood: “ZINGO”.');
    expect(reasons(drawing!, 1, 'mm').join(' ')).toContain('Not understood: “ZINGO”.');
    expect(drawingNote(drawing!, '', 'mm').join('\n')).toContain('We could not read “ZINGO”');
  });

  test('lines that were set apart are counted by themselves, and no hole is numbered after them', () => {
    expect(holeNumber(drawing!, 1)).toBe(1);
    expect(spoken(answerParts(drawing!))).toMatch(
      /^1 of 2 is ready and 1 needs care\..* 1 line was set apart\.$/,
    );
  });

  test('the edges of columns are shown', () => {
    expect(shownLine('4\tM8\t16')).toBe('4 | M8 | 16');
  });
});
