/** A hardness, or a strength that stands for one, inside a longer text. */

import { brinell, type HardnessScale } from './hardness';

export interface FoundHardness {
  /** The hard end of what was written, HB. */
  hb: number;
  /** As written, its hard end. */
  value: number;
  scale: HardnessScale | 'HRB' | 'MPa';
  /** The text without it. */
  rest: string;
}

const NUMBER = '(\\d+(?:[.,]\\d+)?)';
const RANGE = `${NUMBER}(?: *(?:-|/|TO|\\.\\.\\.|±|\\+/-) *${NUMBER})?`;
const PATTERNS: [pattern: string, scale: FoundHardness['scale']][] = [
  ['(?:HRC|H ?R ?C|RC|ROCKWELL C)', 'HRC'],
  ['(?:HRB|RB|ROCKWELL B)', 'HRB'],
  ['(?:HBW?|BHN|HBN|BRINELL)', 'HB'],
  ['(?:HV ?(?:5|10|30)?|VICKERS)', 'HV'],
  ['(?:N/MM ?2|N/MM²|MPA)', 'MPa'],
];

/** Scale and number in both orders; the number behind goes first: in "303 HB 180" the other one is the metal. */
const SCALES = PATTERNS.map(([pattern, scale]) => ({
  scale,
  forms: [
    new RegExp(`(?<![A-Z])${pattern} *[=:]? *${RANGE}(?![\\d])`),
    new RegExp(`(?<![\\d.])${RANGE} *${pattern}(?![A-Z])`),
  ],
}));

/** Tensile strength over Brinell of steel, N/mm² per HB. From memory of ISO 18265. */
const STRENGTH_PER_HB = 3.4;

/** Rockwell C beyond which only "hard" is left to say, HB of 60 HRC. */
const HARDEST = 654;

function toBrinell(value: number, scale: FoundHardness['scale']): number | null {
  if (scale === 'MPa') return value >= 100 && value <= 2600 ? value / STRENGTH_PER_HB : null;
  // The B scale ends where the C scale begins, at about 240 HB.
  if (scale === 'HRB') return value >= 20 && value <= 105 ? Math.min(240, value * 2.2) : null;
  if (scale === 'HRC' && value > 60) return value <= 70 ? HARDEST : null;
  if (scale === 'HRC' && value < 20) return value >= 5 ? 200 : null;
  return brinell({ value, scale });
}

function toFound(
  match: RegExpExecArray,
  scale: FoundHardness['scale'],
  tidied: string,
): FoundHardness | null {
  const sizes = [match[1], match[2]].flatMap((text) =>
    text === undefined ? [] : [Number(text.replace(',', '.'))],
  );
  const value = Math.max(...sizes);
  const hb = toBrinell(value, scale);
  if (hb === null) return null;
  const rest = `${tidied.slice(0, match.index)} ; ${tidied.slice(match.index + match[0].length)}`;
  return { hb, value, scale, rest: rest.replace(/\b(MAX|MIN|APPROX|HARDNESS|CA)\b/g, ' ') };
}

/**
 * Finds `28-32 HRC`, `HRC 58`, `300 HB`, `1000 N/mm²`, with MAX, MIN or a bracket about it; a range counts with
 * its hard end. Null where there is none that metals have. Source: `from-memory` for the conversions.
 */
export function findHardness(written: string): FoundHardness | null {
  // 200 HV10, 230 HBW 2.5/187.5: the load of the test is no hardness.
  const tidied = written.replace(
    /(\d) *(HV|HBW?) ?(?:\d+(?:\.\d+)?\/[\d./]+|(?:5|10|30)(?![\d.]))/g,
    '$1 $2',
  );
  for (const { scale, forms } of SCALES) {
    for (const form of forms) {
      const match = form.exec(tidied);
      const found = match && toFound(match, scale, tidied);
      if (found) return found;
    }
  }
  return null;
}
