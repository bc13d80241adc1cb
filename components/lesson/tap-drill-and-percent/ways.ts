/** What people mean by “75 %”, and the hole each meaning gives. Lengths mm. */

import { holeForPercent, percentThread } from '../../../core/drill/percent';
import {
  diameterLessPitch,
  diameterLessShareOfPitch,
  holeAtShare,
} from '../../../core/drill/rules';
import type { HoleCase } from './percent';

/** The percentage that everybody quotes. */
export const QUOTED = 75;

export interface Way {
  way: 'percent' | 'pitch' | 'share' | 'ratio';
  hole: number;
  percent: { shop: number; iso: number };
  verdict: 'inside' | 'small' | 'large';
}

export function waysOf({ major, pitch, min, max }: HoleCase): Way[] {
  const holes = {
    percent: holeForPercent(major, pitch, QUOTED, 'shop'),
    pitch: diameterLessPitch(major, pitch),
    share: diameterLessShareOfPitch(major, pitch, QUOTED),
    ratio: holeAtShare(major, QUOTED),
  };
  return (['percent', 'pitch', 'share', 'ratio'] as const).map((way) => {
    const hole = holes[way];
    const verdict = hole > max ? 'large' : hole < min ? 'small' : 'inside';
    return { way, hole, percent: percentThread(major, pitch, hole), verdict };
  });
}
