/** Ends of taps standing on one floor: how much of the hole each chamfer leaves without full thread. */

import type { TapStyle } from '../../core/tap/tap';
import type { Hand } from '../../core/thread/thread';
import { decimals } from '../words/format';
import { ends } from './columns';
import { hatching } from './geometry';
import { group, line, path, text, type Mark, type Picture } from './marks';
import { tapBody } from './tapBody';
import { TIP } from '../words/en/pictures';
import { say } from '../words/say';

export interface TipModel {
  /** Major diameter and pitch, mm. */
  diameter: number;
  pitch: number;
  style: TapStyle;
  hand: Hand;
  flutes: number;
  /** Chamfers side by side, at most five: length drawn in threads, and lines of words under each. */
  chamfers: readonly { threads: number; words: readonly string[] }[];
  /** Index of the one that is meant; its words stand out. */
  chosen?: number;
}

const WIDTH = 354;
const TOP = 12;
const ROW = 18;
/** Threads of full thread shown above the longest chamfer. */
const FULL = 3.5;

/** Draws the taps to one scale. */
export function tapTips(model: TipModel): Picture {
  const { chamfers, diameter, pitch } = model;
  const cell = WIDTH / chamfers.length;
  const scale = Math.min(120, 0.7 * cell) / diameter;
  const longest = Math.max(...chamfers.map(({ threads }) => threads));
  const floor = TOP + (longest + FULL) * pitch * scale;
  const marks = chamfers.flatMap(({ threads, words }, i): Mark[] => {
    const axis = cell * (i + 0.5) - 8;
    const radius = (diameter / 2) * scale;
    const chamfer = threads * pitch * scale;
    const lane = axis + radius + 11;
    const tone = model.chosen === undefined || model.chosen === i ? undefined : 'quiet';
    return [
      tapBody({
        axis,
        nose: floor,
        top: TOP,
        radius,
        pitch: pitch * scale,
        chamfer,
        flutes: model.flutes,
        style: model.style,
        hand: model.hand,
        cone: true,
      }),
      line('dw-thin', [axis + radius + 3, floor - chamfer], [lane + 4, floor - chamfer]),
      line('dw-thin', [lane, floor - chamfer], [lane, floor]),
      ends(lane, floor - chamfer, floor),
      ...words.map((word, row) =>
        text(row === 0 ? 'value' : 'word', [cell * (i + 0.5), floor + 32 + row * ROW], word, {
          anchor: 'middle',
          tone: row > 0 ? 'quiet' : tone,
        }),
      ),
    ];
  });
  const rows = Math.max(...chamfers.map(({ words }) => words.length));
  const style = TIP.styles[model.style];
  const list = chamfers.map(({ threads, words }) =>
    say(TIP.one, { words: words.join(' '), threads: decimals(threads, 2) }),
  );
  return {
    width: WIDTH,
    height: Math.ceil(floor + 32 + rows * ROW - 8),
    title: say(TIP.title, { style }),
    description: say(TIP.description, { list: list.join('; ') }),
    marks: [
      group('dw-metal', [
        path(
          'dw-hatch',
          hatching(
            [
              [
                [0, floor],
                [WIDTH, floor],
                [WIDTH, floor + 11],
                [0, floor + 11],
              ],
            ],
            6,
          ),
        ),
        line('dw-thick', [0, floor], [WIDTH, floor]),
      ]),
      ...marks,
    ],
  };
}
