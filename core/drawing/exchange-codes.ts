/**
 * The codes that drawing exchange text carries for signs: percent codes, `\U+` code points, paragraph and
 * font codes, and the letters of symbol fonts. From memory of the formats; no unit.
 */

import type { MarkedText } from './marked';

/** Letters of the symbol font of geometric tolerances. */
const SYMBOL_FONT: Readonly<Record<string, string>> = {
  ...{ n: 'Ø', v: '⌴', w: '⌵', x: '↧', j: '⌖' },
};

const NAMED: Readonly<Record<string, string>> = {
  ...{ 'MOD-DIAM': 'Ø', 'HOLE-DEPTH': '↧', 'HOLE-SINK': '⌵', 'HOLE-SPOT': '⌴', 'MOD-PM': '±' },
  ...{ 'MOD-DEG': '°', DIAM: 'Ø', DEPTH: '↧', DEG: '°' },
};

const codePoint = (hex: string) => {
  const code = Number.parseInt(hex, 16);
  return code > 0x1f && code <= 0x10ffff ? String.fromCodePoint(code) : ' ';
};

/** Puts signs in the place of their codes. Never throws. Source: from memory; no unit. */
export function withoutCodes(text: MarkedText): void {
  if (!/[%\\<{&]/.test(text.text)) return;
  text
    .replace(/\\U\+([0-9a-f]{4})/gi, (_, hex) => codePoint(hex))
    .replace(/&#x([0-9a-f]{2,5});/gi, (_, hex) => codePoint(hex))
    .replace(/%%c|%%129/gi, 'Ø')
    .replace(/%%d/gi, '°')
    .replace(/%%p/gi, '±')
    .replace(/%%[uok]/gi, '')
    .replace(/<([A-Z-]+)>/gi, (whole, name) => NAMED[name.toUpperCase()] ?? whole)
    .replace(
      /\{?\\F(?:am)?gdt[^;{}]*;\s*([nvwxj])\}?/gi,
      (whole, letter) => SYMBOL_FONT[letter.toLowerCase()] ?? whole,
    )
    .replace(/\\S([^;^#]*)[\^#]\s*([^;]*);/g, (_, over, under) => ` ${over}/${under} `)
    .replace(/\\P/g, ' ')
    .replace(/\\~/g, ' ')
    .replace(/\\[ACHQTWf][^;\\{}]*;/g, '')
    .replace(/\\[LlOoKk]/g, '')
    .replace(/[{}]/g, '');
}
