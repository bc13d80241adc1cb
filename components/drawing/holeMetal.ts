/** The metal of a hole section: hatching, edges, thread lines, what lies beneath. */

import { freehand, hatching } from './geometry';
import type { HoleFacts } from './holeFacts';
import { SHEET, type Frame } from './holeFrame';
import { group, line, path, polyline, type Mark, type Point } from './marks';

const { axis, block, face } = SHEET;

/** Outline of the hole without its thread, from face to floor, as a ring. */
function cavity(facts: HoleFacts, frame: Frame): Point[] {
  const { minor, y } = frame;
  if (facts.through) {
    const far = y(facts.shoulder);
    return [
      [axis - minor, face],
      [axis - minor, far],
      [axis + minor, far],
      [axis + minor, face],
    ];
  }
  return [
    [axis - minor, face],
    [axis - minor, y(facts.shoulder)],
    [axis, y(facts.point)],
    [axis + minor, y(facts.shoulder)],
    [axis + minor, face],
  ];
}

/** The piece of metal shown: straight where it has a face, freehand where the drawing only stops. */
function piece(facts: HoleFacts, frame: Frame): { ring: Point[]; broken: Point[][] } {
  const bottom = facts.through ? frame.y(facts.shoulder) : frame.floor;
  const right = freehand([block.right, face], [block.right, bottom]);
  const below = facts.through ? [] : freehand([block.right, bottom], [block.left, bottom]);
  const left = freehand([block.left, bottom], [block.left, face]);
  return {
    ring: [...right, ...below, ...left],
    broken: facts.through ? [right, left] : [[...right, ...below, ...left]],
  };
}

function edges(facts: HoleFacts, frame: Frame): Mark[] {
  const { minor, y } = frame;
  const shoulder = y(facts.shoulder);
  const ring = cavity(facts, frame);
  const marks: Mark[] = [
    line('dw-thick', [block.left, face], [axis - minor, face]),
    line('dw-thick', [axis + minor, face], [block.right, face]),
  ];
  if (facts.through) {
    marks.push(
      line('dw-thick', ring[0]!, ring[1]!),
      line('dw-thick', ring[3]!, ring[2]!),
      line('dw-thick', [block.left, shoulder], [axis - minor, shoulder]),
      line('dw-thick', [axis + minor, shoulder], [block.right, shoulder]),
    );
  } else {
    marks.push(path('dw-thick', polyline(ring)));
    marks.push(line('dw-thick', [axis - minor, shoulder], [axis + minor, shoulder]));
  }
  return marks;
}

/** Where the chamfer's cone leaves the metal: below it no mark of a thread is left. */
export function runOutEnd(facts: HoleFacts, frame: Frame): Point | null {
  const { tap } = facts;
  if (!tap || tap.nose <= tap.body) return null;
  const share = (frame.major - frame.minor) / (frame.major - noseRadius(facts, frame));
  return [frame.minor, tap.body + share * (tap.nose - tap.body)];
}

/** Half-width of the tap's nose on the sheet: a little under the hole, so that it enters. */
export function noseRadius(facts: HoleFacts, frame: Frame): number {
  return Math.max(0.8 * frame.minor, frame.minor - 0.1 * facts.pitch * frame.scale);
}

/**
 * ISO 6410-1: crests thick (the hole's wall), roots thin, the end of the full thread a thick line
 * across; here the incomplete threads are drawn too, since they are what the room is for.
 */
function thread(facts: HoleFacts, frame: Frame): Mark[] {
  const { major, minor, y } = frame;
  const end = Math.min(facts.fullThread, facts.shoulder);
  if (end <= 0) return [];
  const out = runOutEnd(facts, frame);
  const runsOut = out && facts.tap!.body < facts.shoulder - 1e-6;
  const marks: Mark[] = [];
  for (const side of [-1, 1]) {
    const roots: Point[] = [
      [axis + side * major, face],
      [axis + side * major, y(end)],
    ];
    if (runsOut) {
      const stop = Math.min(out[1], facts.shoulder);
      const t = (stop - facts.tap!.body) / (out[1] - facts.tap!.body);
      roots.push([axis + side * (major + t * (minor - major)), y(stop)]);
    }
    marks.push(path('dw-thin', polyline(roots)));
    if (!facts.through || end < facts.shoulder - 1e-6) {
      marks.push(line('dw-thick', [axis + side * minor, y(end)], [axis + side * major, y(end)]));
    }
  }
  return marks;
}

/** What stands below a through hole, lined the other way: another part. */
function obstacle(facts: HoleFacts, frame: Frame): Mark[] {
  if (!frame.obstacle || facts.clearBelow === null) return [];
  const top = frame.y(facts.shoulder + facts.clearBelow);
  const ring: Point[] = [
    [block.left, top],
    [block.right, top],
    ...freehand([block.right, frame.floor], [block.left, frame.floor]),
  ];
  return [
    path('dw-hatch', hatching([ring], 9, -1)),
    line('dw-thick', [block.left, top], [block.right, top]),
  ];
}

/** The section itself: metal, hole, thread, and what lies beneath. */
export function metalMarks(facts: HoleFacts, frame: Frame): Mark {
  const { ring, broken } = piece(facts, frame);
  return group('dw-metal', [
    path('dw-hatch', hatching([ring, cavity(facts, frame)], 8)),
    ...obstacle(facts, frame),
    ...broken.map((points) => path('dw-thin', polyline(points))),
    ...thread(facts, frame),
    ...edges(facts, frame),
  ]);
}
