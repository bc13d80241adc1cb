/** A small picture for each thing that goes wrong with a tap, a gauge or a thread: drawn, not to scale. */

import type { SymptomId } from '../../core/diagnose/symptoms';
import { GAUGE_MARKS, SYMPTOM_WORDS } from '../words/en/symptoms';
import { dot } from './geometry';
import { group, path, polyline, text, type Mark, type Picture, type Point } from './marks';
import {
  arrow,
  AXIS,
  curls,
  edge,
  FACE,
  gauge,
  hole,
  largeThreads,
  onThread,
  PITCH,
  SMALL,
  SOUND,
  tap,
} from './symptomParts';

const blind = { shoulder: 94, threadTo: 88 } as const;

/** Places of chips in the two flutes. */
const IN_FLUTES: readonly Point[] = [50, 59, 68, 77].flatMap((y): Point[] => [
  [AXIS - 6, y],
  [AXIS + 7, y + 3],
]);

function toothed(points: readonly Point[], teeth: readonly number[]): Point[] {
  return points.flatMap((point, i): Point[] => (teeth.includes(i) ? [] : [point]));
}

/** The end of a tap, large, with its chamfer at the right. Points 1, 3, 5 … are tips of teeth. */
const LARGE_TAP: readonly Point[] = [
  [10, 40],
  [20, 26],
  [32, 40],
  [42, 26],
  [54, 40],
  [64, 26],
  [76, 40],
  [86, 30],
  [96, 42],
  [106, 37],
  [116, 47],
  [126, 45],
  [136, 54],
  [142, 54],
];

function largeTap(missing: readonly number[] = [], marks: readonly Mark[] = []): Mark[] {
  const upper = toothed(LARGE_TAP, missing);
  const mirrored = LARGE_TAP.map(([x, y]): Point => [x, 134 - y]).reverse();
  return [
    path('sy-tool', polyline([...upper, ...mirrored], true)),
    path(
      'dw-thin',
      polyline([
        [10, 67],
        [142, 67],
      ]),
    ),
    ...marks,
  ];
}

const wave = (x: number, swing: number): string =>
  polyline(
    Array.from({ length: 13 }, (_, i): Point => {
      const angle = -0.9 + (1.8 * i) / 12;
      return [x + swing * Math.cos(angle), 60 + swing * 1.5 * Math.sin(angle)];
    }),
  );

const bell = (side: -1 | 1): Point[] => {
  const points = edge(side, FACE, 92);
  return points.map(([x, y]): Point => [x + side * Math.max(0, 12 - (y - FACE) * 0.42), y]);
};

const ring = (y: number): string =>
  polyline([
    [AXIS - 12, y],
    [AXIS + 12, y + 1.5],
  ]);

const DRAWN: Record<SymptomId, () => Mark[]> = {
  'broke-bottom': () => [hole(blind), tap({ tip: 95, broken: 62 }), arrow([112, 106], [93, 97])],
  'broke-entry': () => [
    hole({ ...blind, threadTo: FACE + 2 * PITCH }),
    tap({ tip: 46, lean: 9, shift: 4, broken: 27 }),
    arrow([128, 12], [110, 24]),
  ],
  'broke-middle': () => [hole(), tap({ tip: 84, broken: FACE - 2 }), curls(IN_FLUTES)],
  'broke-reversing': () => [
    hole(blind),
    tap({ tip: 86, broken: 56 }),
    curls([
      [AXIS - 19, 78],
      [AXIS + 19, 76],
    ]),
    arrow([132, 30], [132, 6]),
  ],
  'broke-unseen': () => [
    path(
      'sy-tool',
      polyline(
        [
          [20, 8],
          [58, 8],
          [58, 62],
          [20, 92],
        ],
        true,
      ),
    ),
    path(
      'sy-fault',
      polyline([
        [20, 92],
        [30, 80],
        [46, 74],
        [58, 62],
      ]),
    ),
    path(
      'sy-tool',
      polyline(
        [
          [98, 8],
          [136, 8],
          [136, 76],
          [98, 79],
        ],
        true,
      ),
    ),
    path(
      'sy-fault',
      polyline([
        [98, 79],
        [108, 75],
        [124, 77],
        [136, 70],
      ]),
    ),
    path(
      'dw-thin',
      polyline([
        [34, 10],
        [34, 76],
      ]),
      polyline([
        [46, 10],
        [46, 68],
      ]),
    ),
    path(
      'dw-thin',
      polyline([
        [112, 10],
        [112, 74],
      ]),
      polyline([
        [124, 10],
        [124, 74],
      ]),
    ),
    text('title', [39, 112], '1', { anchor: 'middle' }),
    text('title', [117, 112], '2', { anchor: 'middle' }),
  ],
  'teeth-chipped': () =>
    largeTap(
      [7, 9],
      [
        path(
          'sy-fault',
          polyline([
            [76, 40],
            [82, 44],
            [88, 41],
            [96, 42],
          ]),
        ),
        path(
          'sy-fault',
          polyline([
            [96, 42],
            [102, 47],
            [109, 45],
            [116, 47],
          ]),
        ),
        arrow([120, 16], [100, 36]),
      ],
    ),
  'wears-fast': () => [
    ...largeTap(
      [1, 3, 5, 7, 9, 11],
      [
        path(
          'sy-fault',
          ...[10, 32, 54, 76, 96, 116].map((x, i) =>
            polyline([
              [x, 40 + (i > 3 ? (i - 3) * 4 : 0)],
              [x + 8, 34 + (i > 3 ? (i - 3) * 5 : 0)],
              [x + 14, 34 + (i > 3 ? (i - 3) * 5 : 0)],
              [x + 21, 41 + (i > 3 ? (i - 3) * 4 : 0)],
            ]),
          ),
        ),
      ],
    ),
  ],
  'not-go-goes': () => [
    hole(),
    gauge(88),
    text('title', [AXIS, 12], GAUGE_MARKS.notGo, { anchor: 'middle' }),
    arrow([132, 40], [132, 90]),
  ],
  'go-refuses': () => [
    hole({}),
    gauge(FACE - 1, false, 20, 18),
    text('title', [116, 22], GAUGE_MARKS.go),
    path(
      'sy-fault',
      polyline([
        [54, FACE],
        [106, FACE],
      ]),
    ),
  ],
  'go-stops': () => [
    hole(),
    gauge(66),
    text('title', [100, 22], GAUGE_MARKS.go),
    path(
      'sy-fault',
      polyline([
        [56, 68],
        [104, 68],
      ]),
    ),
    arrow([AXIS, 108], [AXIS, 74]),
  ],
  'bell-mouth': () => [
    hole({
      walls: [
        [...bell(-1), [AXIS - 16, 114]],
        [...bell(1), [AXIS + 16, 114]],
      ],
    }),
    arrow([AXIS - 2, 22], [AXIS - 28, 22]),
    arrow([AXIS + 2, 22], [AXIS + 28, 22]),
  ],
  'torn-flanks': () =>
    largeThreads([
      [0, 0],
      [0.1, 0],
      [0.16, 0.28],
      [0.26, 0.3],
      [0.24, 0.55],
      [0.38, 0.6],
      [0.4, 0.92],
      [0.5, 1],
      [0.6, 0.9],
      [0.66, 0.62],
      [0.78, 0.58],
      [0.74, 0.32],
      [0.86, 0.26],
      [0.9, 0],
      [1, 0],
    ]),
  'thin-thread': () => {
    const shaved = SOUND.map(([x, y]): Point => [x === 0.9 ? 0.97 : x === 0.55 ? 0.68 : x, y]);
    const was = [0, 1, 2].map((n) => polyline([onThread(n, 0.55, 1), onThread(n, 0.9, 0)]));
    return largeThreads(shaved, [
      path('sy-was', ...was),
      arrow(onThread(1, 0.4, 0.35), onThread(1, 0.86, 0.35)),
    ]);
  },
  'minor-wrong': () => [
    hole({ walls: [low(-1), low(1)] }),
    gauge(74, true, 16),
    arrow([AXIS + 44, 56], [AXIS + 20, 56]),
  ],
  'chips-wrap': () => [
    hole({ ...blind }),
    tap({ tip: 40, top: 2 }),
    curls(
      [
        [62, 20],
        [70, 14],
        [98, 22],
        [92, 12],
        [60, 30],
        [102, 31],
        [84, 26],
        [74, 26],
      ],
      10,
    ),
  ],
  galling: () =>
    largeTap(
      [],
      [
        path(
          'sy-lump',
          ...(
            [
              [27, 32],
              [48, 33],
              [71, 32],
              [92, 36],
            ] as Point[]
          ).map((at) => dot(at, 5)),
        ),
        arrow([120, 14], [98, 31]),
      ],
    ),
  'out-of-square': () => [
    hole({ lean: 12 }),
    path(
      'dw-centre',
      polyline([
        [AXIS, 6],
        [AXIS, 116],
      ]),
    ),
    path(
      'sy-mark',
      polyline([
        [AXIS + 7, 4],
        [AXIS - 16, 112],
      ]),
    ),
  ],
  'double-start': () => [
    hole(),
    path('sy-fault', polyline(edge(-1, FACE, 92, { shift: PITCH / 2 - 0.01 }))),
    path('sy-fault', polyline(edge(1, FACE, 92, { shift: -PITCH / 2 + 0.01 }))),
  ],
  'form-incomplete': () =>
    largeThreads(
      [
        [0, 0.12],
        [0.04, 0.5],
        [0.08, 0.12],
        [0.14, 0.1],
        [0.45, 1],
        [0.55, 1],
        [0.86, 0.1],
        [0.92, 0.12],
        [0.96, 0.5],
        [1, 0.12],
      ],
      [arrow([onThread(1, 0, 0)[0], 8], onThread(1, 0, 0))],
    ),
  'spindle-alarm': () => [
    hole(blind),
    tap({ tip: 84, top: 26 }),
    path('dw-thick', arc(128, 26, 20)),
    path(
      'sy-fault',
      polyline([
        [128, 26],
        [144, 15],
      ]),
    ),
    path(
      'dw-thin',
      polyline([
        [139, 10],
        [144, 5],
      ]),
    ),
  ],
  squeal: () => [
    hole(blind),
    tap({ tip: 84 }),
    path('sy-mark', wave(112, 12), wave(112, 22), wave(112, 32)),
  ],
  'screw-strips': () => [
    hole({
      walls: [
        [
          [AXIS - 22, FACE],
          [AXIS - 22, 80],
          [AXIS - 16, 80],
          [AXIS - 16, 114],
        ],
        [
          [AXIS + 22, FACE],
          [AXIS + 22, 80],
          [AXIS + 16, 80],
          [AXIS + 16, 114],
        ],
      ],
    }),
    screw(),
    arrow([132, 30], [132, 4]),
  ],
  'tight-after-coating': () => {
    const layer = SOUND.map(([x, y]): Point => [x, y - 0.14]);
    const coat = [0, 1, 2].flatMap((n) => layer.map(([x, y]) => onThread(n, x, y)));
    return largeThreads(SOUND, [
      path('sy-mark', polyline(coat)),
      path(
        'sy-limit',
        polyline([
          [8, 52],
          [152, 52],
        ]),
      ),
    ]);
  },
  'tap-slips': () => [
    path(
      'sy-tool',
      polyline(
        [
          [48, 4],
          [112, 4],
          [106, 52],
          [54, 52],
        ],
        true,
      ),
    ),
    path(
      'sy-tool',
      polyline(
        [
          [AXIS - 12, 24],
          [AXIS + 12, 24],
          [AXIS + 12, 112],
          [AXIS - 12, 112],
        ],
        true,
      ),
    ),
    path('sy-fault', ring(34), ring(42), ring(60), ring(70)),
    arrow([126, 60], [126, 96]),
  ],
};

/** Wall of a hole drilled so large that the crests are low. */
function low(side: -1 | 1): Point[] {
  return [...edge(side, FACE, 92, { inner: 19 }), [AXIS + side * 19, 114]];
}

function screw(): Mark {
  const [half, top] = [20, 10];
  const head: Point[] = [
    [AXIS - 32, 2],
    [AXIS + 32, 2],
    [AXIS + 32, top],
    [AXIS - 32, top],
  ];
  const sides = (side: -1 | 1) => edge(side, top, 62, { inner: half - 4, outer: half, pitch: 7 });
  return group('sy-screw', [
    path('sy-tool', polyline(head, true)),
    path('sy-tool', polyline([...sides(-1), ...sides(1).reverse()], true)),
    curls([
      [AXIS - 20, 22],
      [AXIS + 20, 26],
      [AXIS - 20, 74],
      [AXIS + 20, 72],
    ]),
  ]);
}

function arc(x: number, y: number, radius: number): string {
  return polyline(
    Array.from({ length: 21 }, (_, i): Point => {
      const angle = Math.PI + (Math.PI * i) / 20;
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
    }),
  );
}

/** The picture of a symptom, with the words that stand for it. */
export function symptomPicture(symptom: SymptomId): Picture {
  const { name, picture } = SYMPTOM_WORDS[symptom];
  return { ...SMALL, title: name, description: picture, marks: DRAWN[symptom]() };
}
