/** A whole drawing in words: what each hole needs, and one note for its designer. */

import type { HoleRequest } from '../../core/plan/types';
import type { Thread } from '../../core/thread/thread';
import type { Callout, DrawingPlan, PlannedHole, Question } from '../../core/drawing/types';
import { remedyText } from './codes';
import { CALLOUT, NOTE, QUESTIONS } from './en/drawing';
import { length, limitLength, type Unit } from './format';
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
export function calloutText(callout: Callout, unit: Unit): string {
  const { count, thread, fullThread, through, hole, countersink, thickness, fields } = callout;
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
    ...(thickness === undefined ? [] : [say(CALLOUT.thick, { length: length(thickness, unit) })]),
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
    ...(fields ? fieldsText(fields, unit) : []),
  ];
  return parts.join(', ');
}

type Fields = Partial<HoleRequest>;

/** What the plan was told of the hole in its part, a phrase each. */
function fieldsText(fields: Fields, unit: Unit): string[] {
  const { entry, crossing, interrupted, counterbore, cored, later = [], duty } = fields;
  const sized = (mm: number) => length(mm, unit);
  return [
    ...(entry ? [say(CALLOUT.entry, { angle: String(entry.angle) })] : []),
    ...(crossing ? [say(CALLOUT.crossing[crossing.kind], { width: sized(crossing.width) })] : []),
    ...(interrupted ? [CALLOUT.crossed] : []),
    ...(counterbore
      ? [
          say(CALLOUT.counterbore, {
            diameter: sized(counterbore.diameter),
            depth: sized(counterbore.depth),
          }),
        ]
      : []),
    ...(cored ? [CALLOUT.cored] : []),
    ...later.map((process) => CALLOUT.later[process]),
    ...(duty ? [CALLOUT.duty[duty]] : []),
  ];
}

/** What the sheet must say of a hole beside its numbers: hand, insert, coating, what comes after. */
export function holeMarks(thread: Thread, request: HoleRequest, unit: Unit): string[] {
  const { coating } = request;
  const [least, most] = coating?.thickness ?? [0, 0];
  return [
    ...(thread.hand === 'left' ? [CALLOUT.left] : []),
    ...(thread.insert ? [CALLOUT.insert] : []),
    ...(coating
      ? [say(CALLOUT.coating, { least: limitLength(least, unit), most: limitLength(most, unit) })]
      : []),
    ...fieldsText(request, unit),
  ];
}

/** A line as it is shown: the edges of columns as upright strokes. */
export function shownLine(line: string): string {
  return line.trim().replace(/ *\t */g, ' | ');
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
  const notRead = hole.callout.ok ? hole.callout.value.notRead : [];
  const options = optionsOf(hole, unit);
  const values = {
    number: String(number),
    callout: hole.callout.ok ? calloutText(hole.callout.value, unit) : '',
    material: materialShort(hole.request.material),
  };
  return [
    `${fill(NOTE.hole, values, unit)} (“${hole.line.split('\n').map(shownLine).join(' / ')}”)`,
    ...asked.map((question) => `   ${questionText(question, unit)}`),
    ...(notRead.length > 0 ? [`   ${say(NOTE.notRead, { words: notRead.join(' ') })}`] : []),
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
  const unread = drawing.holes.flatMap(({ callout }, index) =>
    callout.ok && callout.value.notRead.length > 0 ? [index] : [],
  );
  const asked = drawing.questions.map(({ hole }) => hole);
  const holes = [...new Set([...asked, ...unread])].sort((a, b) => a - b);
  if (holes.length === 0) return [];
  return [
    opening(holes.length, part),
    '',
    ...holes.flatMap((hole, at) => holeLines(drawing, hole, at + 1, unit)),
    fill(NOTE.assumed, { clearance: NOTE.clearance }, unit),
    NOTE.closing,
  ];
}
