import { describe, expect, test } from 'vitest';
import { drawingNote, questionShort } from '../../components/words/drawing';
import { planDrawing } from '../../core';

/** A clamp flange of Copperfell Works, drawn by somebody who has never tapped. */
const LINES = [
  '6× M10×1.5-6H ↧15 / Ø8.5 ↧16.5',
  'M6x1-6H ↧12',
  '7/16 DRILL THRU 1/2-13 UNC-2B THRU',
  'M8-6H 20/25',
];

describe('the note to the designer', () => {
  const drawing = planDrawing(LINES, { material: 'al-wrought', thickness: 20 });
  const note = drawingNote(drawing, 'CF-118', 'mm');

  test('names the part, each hole with a question, and no other', () => {
    expect(note[0]).toContain('CF-118');
    expect(note[0]).toContain('3 of its threaded holes');
    const text = note.join('\n');
    expect(text).toContain('6 × M10x1.5-6H');
    expect(text).toContain('1/2-13 UNC-2B');
    expect(text).not.toContain('M6x1-6H');
  });

  test('gives millimetres and pitches, and ranks what would help', () => {
    const text = note.join('\n');
    expect(text).toContain('1.5 mm stay below the thread: 1 pitch.');
    expect(text).toContain('needs 21.0 mm to the shoulder, 4.5 mm more than drawn');
    expect(text).toMatch(/\(1\) Drill deeper[\s\S]*\(2\) /);
    expect(note.at(-1)).toMatch(/in writing/);
  });

  test('is whole: no number is missing from it, nor from what stands beside the holes', () => {
    const short = drawing.questions.map((question) => questionShort(question, 'in'));
    for (const text of [...note, ...short])
      expect(text).not.toMatch(/not known|undefined|NaN|[{}]/);
  });

  test('is empty when nothing needs asking', () => {
    expect(drawingNote(planDrawing(['M6x1-6H ↧12'], { material: 'al-wrought' }), '', 'mm')).toEqual(
      [],
    );
  });
});
