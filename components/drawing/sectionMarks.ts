/** A tapped hole in section, to scale, in drawing convention: from facts to marks. */

import { decimals, length, lengthNumber, type Unit } from '../words/format';
import { arrowhead, freehand, hatching } from './geometry';
import { dimensionMarks, wordsFloor } from './holeDimensions';
import type { HoleFacts } from './holeFacts';
import { holeFrame, SHEET, type Frame } from './holeFrame';
import { metalMarks } from './holeMetal';
import { tapMarks } from './holeTap';
import { group, line, path, polyline, text, type Mark, type Picture, type Point } from './marks';
import { SECTION, SECTION_NOTES, SECTION_TEXT } from '../words/en/pictures';
import { say } from '../words/say';

const { axis, block, face, width } = SHEET;

/** A line of words at the top, underlined, with an arrow to what it names. */
function callout(words: string, side: 'left' | 'right', aim: Point): Mark[] {
  const role = side === 'left' ? 'title' : 'value';
  const x = side === 'left' ? 4 : width - 4;
  // The line bends clear of the words over the two columns.
  const inner = side === 'left' ? 104 : 252;
  const bend: Point = [inner, 25];
  const [dx, dy] = [aim[0] - bend[0], aim[1] - bend[1]];
  const long = Math.hypot(dx, dy);
  return [
    text(role, [x, 19], words, { anchor: side === 'left' ? 'start' : 'end' }),
    path('dw-thin', polyline([[x, 25], bend, aim])),
    path('dw-solid', arrowhead(aim, [dx / long, dy / long], 9)),
  ];
}

function callouts(facts: HoleFacts, frame: Frame, drilled: boolean): Mark {
  const shallow = Math.min(34, 0.3 * (frame.y(Math.max(facts.fullThread, facts.pitch)) - face));
  const words = `${drilled ? SECTION.drill : SECTION.bore} ${facts.drill}`;
  return group('dw-callouts', [
    ...callout(facts.designation, 'left', [axis - frame.major, face + shallow]),
    ...callout(words, 'right', [axis + frame.minor, face + shallow + 8]),
    facts.hand === 'left' ? text('value', [4, 43], SECTION.leftHand, { tone: 'blue' }) : null,
  ]);
}

/** The thread that was asked for and cannot be cut: the stretch is outlined and crossed. */
function missing(facts: HoleFacts, frame: Frame): Mark | null {
  if (facts.short === 0) return null;
  const [top, bottom] = [frame.y(facts.fullThread), frame.y(facts.asked)];
  const boxes = [-1, 1].map((side): Point[] => [
    [axis + side * frame.minor, top],
    [axis + side * (frame.major + 3), top],
    [axis + side * (frame.major + 3), bottom],
    [axis + side * frame.minor, bottom],
  ]);
  return group('dw-missing', [
    ...boxes.map((box) => path('dw-missing-box', polyline(box, true))),
    path('dw-missing-lines', ...boxes.map((box) => hatching([box], 4, -1))),
  ]);
}

function struck(facts: HoleFacts, frame: Frame): Mark | null {
  if (facts.strikes === 0 || facts.clearBelow === null || !facts.tap) return null;
  const [top, bottom] = [frame.y(facts.shoulder + facts.clearBelow), frame.y(facts.tap.tip)];
  const r = frame.minor;
  const box: Point[] = [
    [axis - r, top],
    [axis + r, top],
    [axis + r, bottom],
    [axis - r, bottom],
  ];
  return group('dw-missing', [
    path('dw-missing-box', polyline(box, true)),
    path('dw-missing-lines', hatching([box], 5, 1)),
  ]);
}

/** Bands of bare paper where parts of a very deep hole are left out. */
function leftOut(frame: Frame): Mark[] {
  const [l, r] = [block.left - 4, block.right + 4];
  return frame.gaps.map((gap) => {
    const upper = freehand([l, gap.top + 2], [r, gap.top + 2], 2.2);
    const lower = freehand([l, gap.bottom - 2], [r, gap.bottom - 2], 2.2);
    return group('dw-gap', [
      path('dw-gap-paper', polyline([...upper, ...[...lower].reverse()], true)),
      path('dw-thin', polyline(upper), polyline(lower)),
    ]);
  });
}

export function describeSection(facts: HoleFacts, unit: Unit, broken: boolean): string {
  const { tap } = facts;
  const written = (mm: number) => length(mm, unit);
  const values: Record<string, string> = {
    drill: facts.drill,
    fullThread: written(facts.fullThread),
    short: written(facts.short),
    asked: written(facts.asked),
    tip: written(tap?.tip ?? 0),
    chamfer: written(tap?.chamfer ?? 0),
    threads: decimals(tap?.threads.max ?? 0, 1),
    shoulder: written(facts.shoulder),
    point: written(facts.point),
    clearance: written(facts.shoulder - (tap?.tip ?? 0)),
    at: facts.limit ? SECTION_TEXT.limitWords[facts.limit.at] : '',
    limit: written(facts.limit?.depth ?? 0),
    thickness: written(facts.shoulder),
    clear: written(facts.clearBelow ?? 0),
    strikes: written(facts.strikes),
  };
  const parts: (string | false)[] = [
    SECTION_TEXT.hole,
    SECTION_TEXT.thread,
    facts.short > 0 && SECTION_TEXT.short,
    tap !== null && SECTION_TEXT.tap,
    facts.through ? SECTION_TEXT.throughEnd : SECTION_TEXT.blindEnd,
    !facts.through && tap !== null && facts.shoulder > tap.tip && SECTION_TEXT.clearance,
    facts.limit !== null && SECTION_TEXT.limit,
    facts.clearBelow !== null && SECTION_TEXT.clear,
    facts.strikes > 0 && SECTION_TEXT.strikes,
    facts.hand === 'left' && SECTION_TEXT.left,
    broken && SECTION_TEXT.broken,
  ];
  return say(parts.filter((part) => part !== false).join(' '), values);
}

/** The hole, the tap in it and its axis, without a word or a dimension. */
export function bodyMarks(facts: HoleFacts, frame: Frame): (Mark | null)[] {
  const axisEnd = frame.y(Math.max(facts.point, facts.tap?.tip ?? 0)) + 14;
  return [
    metalMarks(facts, frame),
    tapMarks(facts, frame),
    missing(facts, frame),
    struck(facts, frame),
    ...leftOut(frame),
    line('dw-centre', [axis, 30], [axis, axisEnd]),
  ];
}

/** Draws the section. `drilled` false: no drill suits and the hole is to be bored. */
export function holeSection(facts: HoleFacts, unit: Unit, drilled = true): Picture {
  const frame = holeFrame(facts);
  const bottom = Math.max(frame.floor, wordsFloor(facts, frame, unit));
  const note =
    facts.short > 0 ? SECTION_NOTES.short : facts.strikes > 0 ? SECTION_NOTES.strikes : null;
  const kind = facts.through ? SECTION_TEXT.through : SECTION_TEXT.blind;
  const values = {
    short: lengthNumber(facts.short, unit),
    asked: length(facts.asked, unit),
    strikes: length(facts.strikes, unit),
  };
  const marks = [
    ...bodyMarks(facts, frame),
    dimensionMarks(facts, frame, unit, bottom),
    callouts(facts, frame, drilled),
    note
      ? text('value', [width / 2, bottom + 24], say(note, values), {
          anchor: 'middle',
          tone: 'stop',
        })
      : null,
  ];
  return {
    width,
    height: Math.ceil(bottom + (note ? 34 : 6)),
    title: say(SECTION_TEXT.title, { designation: facts.designation, kind }),
    description: describeSection(facts, unit, frame.gaps.length > 0),
    marks: marks.filter((mark) => mark !== null),
  };
}
