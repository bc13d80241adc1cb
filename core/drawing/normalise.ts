/**
 * One spelling for what drawings, keyboards and word processors make of a callout.
 * Symbols: ISO 129-1 / ISO 15786 and ASME Y14.5 (depth ↧, countersink ⌵, counterbore ⌴, diameter ⌀).
 */

/** UTF-8 read as Windows-1252 by a mail or spreadsheet program on the way. */
const MOJIBAKE: readonly (readonly [RegExp, string])[] = [
  [/Ã—/g, '×'],
  [/Ã˜|âŒ€/g, 'Ø'],
  [/Â°/g, '°'],
  [/â†§/g, '↧'],
  [/âŒµ/g, '⌵'],
  [/âŒ´/g, '⌴'],
  [/â€“|â€”/g, '-'],
  [/â€³|â€\u009d|â€/g, '"'],
  [/Â(?=\s|$)/g, ''],
];

const VULGAR: Readonly<Record<string, string>> = {
  ...{ '½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8' },
};

function vulgar(text: string): string {
  return text
    .replace(/(\d)\s?([½¼¾⅛⅜⅝⅞])/g, (_, whole: string, sign: string) => `${whole}-${VULGAR[sign]}`)
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => VULGAR[sign]!);
}

/**
 * A callout in plain signs: `x`, `Ø`, `-`, `"`, `°`, `↧`, `⌵`, `⌴`, decimal points, single spaces.
 * Never throws. Source: derived.
 */
export function plainCallout(line: string): string {
  let text = line;
  for (const [bad, good] of MOJIBAKE) text = text.replace(bad, good);
  return vulgar(text)
    .replace(/[\u00a0\u2000-\u200b\u202f\u3000\s]+/g, ' ')
    .replace(/[\u00ad\u200c-\u200f\u2060\ufeff]|\p{Cc}/gu, '')
    .replace(/[⌀∅Φφϕøƒ]|%%c/gi, 'Ø')
    .replace(/\b(?:dia|diam|diameter)\b\.?/gi, 'Ø')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[×✕✖⨯*Хх]/g, 'x')
    .replace(/[⁄∕]/g, '/')
    .replace(/″|ʺ|˝|[“”„‟]|''|’’|′′/g, '"')
    .replace(/[º˚]|\s*\bdeg(?:rees?)?\b\.?|%%d/gi, '°')
    .replace(/[↓⤓▽∇⊽]|深/g, '↧')
    .replace(/[⋁∨]/g, '⌵')
    .replace(/[⊔⎵]/g, '⌴')
    .replace(/(\d),(\d+)(?![\d,])/g, '$1.$2')
    .trim();
}
