/** A layer on one ridge of an internal thread: why a diameter moves by four thicknesses on the flanks and by two on the crest. */

import { arrowhead, hatching } from '../../drawing/geometry';
import { path, polyline, text, type Picture, type Point } from '../../drawing/marks';
import { LAYER_WORDS } from '../../words/en/tapLimits';

const SLOPE = Math.tan(Math.PI / 6);
/** Everything in the viewBox's units, the layer drawn many times too thick. */
const MIDDLE = 177;
const BASE = 250;
const POINT = 60;
const CREST = 110;
const THICK = 24;

/** Half the width of a ridge whose sharp point lies at `point`, at a height on the sheet. */
const half = (point: number, y: number) => (y - point) * SLOPE;

function ridge(point: number, crest: number): Point[] {
  return [
    [MIDDLE - half(point, BASE), BASE],
    [MIDDLE - half(point, crest), crest],
    [MIDDLE + half(point, crest), crest],
    [MIDDLE + half(point, BASE), BASE],
  ];
}

/** The ridge, bare and coated, with the thickness square to the flank and along the radius. */
export function layerPicture(): Picture {
  const bare = ridge(POINT, CREST);
  // On a 30° flank the layer moves the sharp point by t / sin 30°: twice its thickness.
  const coated = ridge(POINT - THICK / Math.sin(Math.PI / 6), CREST - THICK);
  const y = 190;
  const left: Point = [MIDDLE - half(POINT, y), y];
  const right: Point = [MIDDLE + half(POINT, y), y];
  const [cos, sin] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
  const out: Point = [right[0] + THICK * cos, right[1] - THICK * sin];
  const up: Point = [left[0], left[1] - 2 * THICK];
  return {
    width: 354,
    height: 262,
    title: LAYER_WORDS.title,
    description: LAYER_WORDS.description,
    marks: [
      path('lb-zone-hatch', hatching([bare], 9)),
      path('lb-edge', polyline(bare)),
      path('lb-other', polyline(coated)),
      path('lb-edge', polyline([right, out])),
      path('dw-solid', arrowhead(out, [cos, -sin], 9), arrowhead(right, [-cos, sin], 9)),
      text('value', [out[0] + 8, out[1] - 2], LAYER_WORDS.square),
      path('lb-edge', polyline([left, up])),
      path('dw-solid', arrowhead(up, [0, -1], 9), arrowhead(left, [0, 1], 9)),
      text('value', [left[0] - 12, up[1] - 6], LAYER_WORDS.radial, { anchor: 'end' }),
      path(
        'lb-edge',
        polyline([
          [MIDDLE, CREST],
          [MIDDLE, CREST - THICK],
        ]),
      ),
      path(
        'dw-solid',
        arrowhead([MIDDLE, CREST - THICK], [0, -1], 9),
        arrowhead([MIDDLE, CREST], [0, 1], 9),
      ),
      text('value', [MIDDLE, CREST - THICK - 8], LAYER_WORDS.crest, { anchor: 'middle' }),
      text('word', [MIDDLE, 228], LAYER_WORDS.ridge, { anchor: 'middle' }),
      text('word', [4, 22], LAYER_WORDS.coating, { tone: 'quiet' }),
    ],
  };
}
