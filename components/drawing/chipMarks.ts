/** A tap in its hole with the cutting face turned: which way the face pushes, and where the chip goes. */

import { decimals } from '../words/format';
import { curl, pieces } from './chips';
import {
  AXIS,
  BLOCK,
  course,
  FACE,
  FLOOR,
  NOSE,
  PITCH,
  RADIUS,
  sceneOf,
  WIDTH,
  type ChipModel,
  type Scene,
} from './chipScene';
import { arrowhead, freehand, hatching } from './geometry';
import { group, line, path, polyline, text, type Mark, type Picture, type Point } from './marks';
import { tapBody } from './tapBody';
import { CHIP } from '../words/en/pictures';
import { say } from '../words/say';

export type { ChipModel } from './chipScene';

function metal({ model }: Scene): Mark {
  const wall = RADIUS - 0.6134 * PITCH + 1.5;
  const side = (sign: -1 | 1): Point[] => {
    const outer = sign === -1 ? BLOCK.left : BLOCK.right;
    const low = model.hole === 'through' ? FLOOR.through : FLOOR.bottom;
    const inner: Point[] =
      model.hole === 'through'
        ? [[AXIS + sign * wall, low]]
        : [
            [AXIS, low],
            [AXIS, FLOOR.cone],
            [AXIS + sign * wall, FLOOR.shoulder],
          ];
    return [[AXIS + sign * wall, FACE], ...freehand([outer, FACE], [outer, low]), ...inner];
  };
  const lines = ([-1, 1] as const).flatMap((sign) => {
    const outer = sign === -1 ? BLOCK.left : BLOCK.right;
    const edge: Point[] = [
      [outer, FACE],
      [AXIS + sign * wall, FACE],
    ];
    return model.hole === 'through'
      ? [
          path(
            'dw-thick',
            polyline([...edge, [AXIS + sign * wall, FLOOR.through], [outer, FLOOR.through]]),
          ),
        ]
      : [
          path(
            'dw-thick',
            polyline([...edge, [AXIS + sign * wall, FLOOR.shoulder], [AXIS, FLOOR.cone]]),
          ),
        ];
  });
  return group('dw-metal', [path('dw-hatch', hatching([side(-1), side(1)], 8)), ...lines]);
}

function chipMarks(scene: Scene): Mark {
  const { model } = scene;
  const points = course(scene);
  const d = model.chips === 'long' ? curl(points) : pieces(points);
  const heap: Point[] = [
    [AXIS - 30, 256],
    [AXIS + 30, 258],
  ];
  const packed = model.course === 'ahead' && model.hole === 'blind';
  return group('dw-chip', [
    path('dw-chip-rim', d),
    path('dw-chip-line', d),
    packed
      ? path('dw-chip-line', model.chips === 'long' ? curl(heap, 9, 7) : pieces(heap, 8))
      : null,
  ]);
}

/** The face picked out, its angle to the axis, and the push square to it. */
function faceMarks({ face, model, way }: Scene): Mark {
  const reach = face.filter(([, y]) => y > NOSE - 62);
  const at = face[8] ?? face[0]!;
  const angle = (model.lean * Math.PI) / 180;
  const push: Point = [way * Math.cos(angle), way * Math.sin(angle)];
  const tip: Point = [at[0] + push[0] * 50, at[1] + push[1] * 50];
  const arc = Array.from({ length: 9 }, (_, i): Point => {
    const turned = (angle * i) / 8;
    return [at[0] + 62 * Math.sin(turned), at[1] - 62 * Math.cos(turned)];
  });
  return group('dw-face', [
    path('dw-face-line', polyline(reach)),
    model.lean === 0 ? null : path('dw-thin', polyline([...arc, at])),
    line('dw-centre', [at[0], NOSE + 10], [at[0], NOSE - 96]),
    path('dw-push-rim', polyline([at, tip])),
    path('dw-push', polyline([at, [tip[0] - push[0] * 10, tip[1] - push[1] * 10]])),
    path('dw-push-head', arrowhead(tip, push, 15)),
  ]);
}

/** The way the tap turns: an arrow round its shank. */
function turning({ way }: Scene): Mark {
  const [rx, ry, y] = [46, 9, 24];
  const points = Array.from({ length: 15 }, (_, i): Point => {
    const angle = Math.PI * (0.08 + (0.84 * i) / 14);
    return [AXIS - way * rx * Math.cos(angle), y + ry * Math.sin(angle)];
  });
  const [before, tip] = [points.at(-2)!, points.at(-1)!];
  const long = Math.hypot(tip[0] - before[0], tip[1] - before[1]);
  const along: Point = [(tip[0] - before[0]) / long, (tip[1] - before[1]) / long];
  return group('dw-turning', [
    path('dw-turn', polyline(points)),
    path('dw-solid', arrowhead([tip[0] + along[0] * 6, tip[1] + along[1] * 6], along, 12)),
  ]);
}

function words(scene: Scene): Mark[] {
  const { model, face, flute, way } = scene;
  const faceAt = face[4] ?? face[0]!;
  const fluteAt = flute.find(([, y]) => y < NOSE - 14) ?? flute.at(-1)!;
  const faceLeft = way === 1;
  const label = (left: boolean, y: number, lines: readonly string[], to: Point): Mark[] => {
    const x = left ? 0 : WIDTH;
    const anchor = left ? 'start' : 'end';
    const inner = left ? 70 : WIDTH - 70;
    return [
      ...lines.map((one, i) => text('word', [x, y + i * 18], one, { anchor })),
      path('dw-leader', polyline([[inner, y - 5], to])),
    ];
  };
  const lean =
    model.lean === 0 ? CHIP.upright : say(CHIP.leans, { lean: decimals(Math.abs(model.lean), 0) });
  return [
    text('word', [0, 20], CHIP.cut[model.cut]),
    text('word', [WIDTH, 20], lean, { anchor: 'end' }),
    ...label(faceLeft, 190, CHIP.face, faceAt),
    ...label(!faceLeft, 212, CHIP.flute, fluteAt),
    text('title', [AXIS, 324], CHIP.course[model.course], { anchor: 'middle', tone: 'blue' }),
  ];
}

/** Draws the tap, its face and the chip's way. */
export function chipPath(model: ChipModel): Picture {
  const scene = sceneOf(model);
  return {
    width: WIDTH,
    height: 334,
    title: say(CHIP.title, { course: CHIP.course[model.course], cut: CHIP.cut[model.cut] }),
    description: say(CHIP.description, {
      lean: decimals(Math.abs(model.lean), 0),
      way: model.lean === 0 ? CHIP.way.none : model.lean > 0 ? CHIP.way.right : CHIP.way.left,
      chips: CHIP.chips[model.chips],
      hole: CHIP.hole[model.hole],
      course: CHIP.course[model.course],
    }),
    marks: [
      metal(scene),
      tapBody(scene.shape),
      faceMarks(scene),
      chipMarks(scene),
      turning(scene),
      ...words(scene),
    ],
  };
}
