/** A whole drawing in words: what each hole needs, and one note for its designer. */

import type { DrawingPlan, PlannedHole, Question } from '../../core/drawing/types';
import { remedyText } from './codes';
import { CALLOUT, NOTE, QUESTIONS } from './en/drawing';
import { length, type Unit } from './format';
import { materialShort } from './names';
import { say } from './say';
import { fill, readable } from './template';

export { VERDICTS } from './en/drawing';

/** A question in a few words, for beside its hole. */
export function questionShort(question: Question, unit: Unit): string {
  return fill(QUESTIONS[question.code]?.short ?? readable(question.code), question.numbers, unit);
}

/** A question as it is put to the designer. */
export function questionText(question: Question, unit: Unit): string {
  const text = QUESTIONS[question.code]?.text ?? readable(question.code);
  return fill(text, question.numbers, unit).trim();
}

/** A callout as it was read, in words: `6 × M10x1.5-6H, 15.0 mm of full thread, hole 8.5 mm, 16.5 mm deep`. */
export function calloutText({ callout }: Pick<PlannedHole, 'callout'>, unit: Unit): string {
  if (!callout.ok) return '';
  const { count, thread, fullThread, through, hole, countersink } = callout.value;
  const sizes = hole && [
    hole.diameter === undefined
      ? CALLOUT.hole
      : say(CALLOUT.holeSize, { size: length(hole.diameter, unit) }),
    ...(hole.depth === undefined
      ? []
      : [say(CALLOUT.deepTo[hole.at ?? 'shoulder'], { depth: length(hole.depth, unit) })]),
  ];
  const parts = [
    count > 1 ? `${count} × ${thread}` : thread,
    ...(through ? [CALLOUT.through] : []),
    ...(fullThread === undefined
      ? []
      : [say(CALLOUT.fullThread, { length: length(fullThread, unit) })]),
    ...(sizes ? [sizes.join(', ')] : []),
    ...(countersink
      ? [
          say(CALLOUT.countersink, {
            diameter: length(countersink.diameter, unit),
            angle: String(Math.round(countersink.angle)),
          }),
        ]
      : []),
  ];
  return parts.join(', ');
}

/** Changes that only the shop can make, and need no word from a designer. */
const OURS = ['finish-by-hand', 'change-tap-early', 'bigger-spindle', 'form-tap-instead'];

function optionsOf(hole: PlannedHole, unit: Unit): string[] {
  const remedies = hole.plan?.ok ? hole.plan.value.remedies : [];
  return remedies
    .filter(({ code }) => !OURS.includes(code))
    .map((remedy, index) => {
      const { title, text } = remedyText(remedy, unit);
      return `   (${index + 1}) ${title}. ${text}`;
    });
}

function holeLines(drawing: DrawingPlan, index: number, number: number, unit: Unit): string[] {
  const hole = drawing.holes[index];
  if (!hole?.request) return [];
  const asked = drawing.questions.filter((question) => question.hole === index);
  const options = optionsOf(hole, unit);
  const values = {
    number: String(number),
    callout: calloutText(hole, unit),
    material: materialShort(hole.request.material),
  };
  return [
    `${fill(NOTE.hole, values, unit)} (“${hole.line.trim()}”)`,
    ...asked.map((question) => `   ${questionText(question, unit)}`),
    ...(options.length > 0 ? [`   ${NOTE.options}`, ...options] : []),
    '',
  ];
}

function opening(count: number, part: string): string {
  const one = part === '' ? NOTE.openingOneUnnamed : NOTE.openingOne;
  const many = part === '' ? NOTE.openingUnnamed : NOTE.opening;
  return fill(count === 1 ? one : many, { count: String(count), part }, 'mm');
}

/** One note for all that only the designer can settle: plain text, a line each. Empty when there is nothing. */
export function drawingNote(drawing: DrawingPlan, part: string, unit: Unit): string[] {
  const holes = [...new Set(drawing.questions.map(({ hole }) => hole))].sort((a, b) => a - b);
  if (holes.length === 0) return [];
  return [
    opening(holes.length, part),
    '',
    ...holes.flatMap((hole, at) => holeLines(drawing, hole, at + 1, unit)),
    fill(NOTE.assumed, { clearance: NOTE.clearance }, unit),
    NOTE.closing,
  ];
}
