/**
 * One spelling for what drawings, keyboards and word processors make of a callout.
 * Symbols: ISO 129-1 / ISO 15786 and ASME Y14.5 (depth ↧, countersink ⌵, counterbore ⌴, diameter ⌀).
 */

import { withoutCodes } from './exchange-codes';
import { inEnglish } from './foreign/english';
import { MarkedText } from './marked';

/** Stands where one column of a pasted table ends and the next begins. */
export const EDGE = '¦';
/** Stands where one line of a callout ends and the next begins. */
const BREAK = '¶';

/** UTF-8 read as Windows-1252 by a mail or spreadsheet program on the way. */
const MOJIBAKE: readonly (readonly [RegExp, string])[] = [
  [/Ã—/g, '×'],
  [/Ã˜|âŒ€/g, 'Ø'],
  [/Â°/g, '°'],
  [/Â±/g, '±'],
  [/â†§/g, '↧'],
  [/âŒµ/g, '⌵'],
  [/âŒ´/g, '⌴'],
  [/â€“|â€”/g, '-'],
  [/â€³|â€\u009d|â€/g, '"'],
  [/Ã©/g, 'é'],
  [/Â(?=\s|$)/g, ''],
];

const VULGAR: Readonly<Record<string, string>> = {
  ...{ '½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8' },
};

/** Full-width forms of East Asian keyboards, and signs that stand for several letters. */
const COMPATIBLE = /[\uff01-\uff9f㎜№℃]/g;

function plainSigns(text: MarkedText): void {
  text
    .replace(/(\d)[\s-]?([½¼¾⅛⅜⅝⅞])/g, (_, whole, sign) => `${whole}-${VULGAR[sign]}`)
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => VULGAR[sign]!)
    .replace(COMPATIBLE, (sign) => sign.normalize('NFKC'))
    .replace(/\u00ad|[\u200b-\u200f]|\u2060|\ufeff|\ufe0e|\ufe0f|\p{Cc}/gu, '')
    .replace(/[⌀∅Φφϕøƒ⦰⊘]/g, 'Ø')
    .replace(/[\u2010-\u2015\u2212\u2043\ufe58]/g, '-')
    .replace(/[×✕✖⨯⨉*Хх]/g, 'x')
    .replace(/[⁄∕]/g, '/')
    .replace(/″|ʺ|˝|[“”„‟]|''|’’|′′/g, '"')
    .replace(/[’‘′´`]/g, "'")
    .replace(/[º˚]/g, '°')
    .replace(/[↓⤓⇓▽∇⊽⟱⭳⏬]|\|->|\|v/g, '↧')
    .replace(/[⋁∨˅⌄]/g, '⌵')
    .replace(/[⊔⎵␣]/g, '⌴')
    .replace(/\+\s?\/\s?-|\+-/g, '±')
    // Accents are laid aside: capitals on drawings often go without them.
    .replace(/[\u00c0-\u024f]/g, (sign) =>
      sign === 'Ø' ? sign : sign === 'ß' ? 'ss' : sign.normalize('NFD').replace(/\p{M}/gu, ''),
    )
    .replace(/\p{M}/gu, '');
}

/**
 * A callout in plain signs and English words: `x`, `Ø`, `-`, `"`, `°`, `↧`, `⌵`, `⌴`, decimal points.
 * Never throws. Source: derived; no unit.
 */
export function plainCallout(line: string): MarkedText {
  const text = new MarkedText(line, { '\t': EDGE, '\n': BREAK });
  for (const [bad, good] of MOJIBAKE) text.replace(bad, good);
  withoutCodes(text);
  plainSigns(text);
  text
    .replace(/(\d),(\d+)(?!\d|,\d)/g, (_, whole, part) => `${whole}.${part}`)
    .replace(/\s*\bdeg(?:rees?)?\b\.?/gi, '°')
    .replace(/\b(?:dia|diam|diameter)\b\.?/gi, 'Ø');
  inEnglish(text);
  return text;
}
