/** A written material as pieces that can be looked up. */

/** One piece, upper case, and what stood before it. */
export interface Token {
  text: string;
  gap: '' | ' ' | '-' | '/' | 'break';
}

/** Longer than this no drawing writes a material. */
export const LONGEST_TEXT = 160;

/** Nor of so many pieces. */
export const MOST_TOKENS = 24;

/** Standard bodies and element words that people glue to a number. */
const GLUED = /^(SS|SST|AISI|SAE|ALU|AL|AA|EN|BS|UNS|DIN|AW|TI|CDA|WNR|INOX)(\d.*)$/;

/** The same text in capitals, with one kind of dash, space and decimal point. Source: derived. */
export function tidyMaterial(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toUpperCase()
    .replace(/[\u2010-\u2015\u2212_]/g, '-')
    .replace(/[®™°]/g, ' ')
    .replace(/\b(\d),(\d{4})\b/g, '$1.$2')
    .replace(/(\d),(\d)(?!\d)/g, '$1.$2')
    .replace(/\b(13|15|17)[ -]+([478])[ -]*PH\b/g, '$1-$2PH')
    .replace(/\bQ *[&+] *T\b/g, 'QT')
    .replace(/(?<!\d)\.|\.(?!\d)/g, ' ')
    .replace(/[\s\u00a0]+/g, ' ')
    .trim();
}

function gapOf(between: string): Token['gap'] {
  if (between === '') return '';
  if (between.trim() === '') return ' ';
  if (between.trim() === '-') return '-';
  return between === '/' ? '/' : 'break';
}

/** Cuts a tidied text at everything that is no letter, digit or decimal point. Source: derived. */
export function materialTokens(tidied: string): Token[] {
  const tokens: Token[] = [];
  let end = 0;
  for (const match of tidied.matchAll(/[\p{L}\p{N}.]+/gu)) {
    const gap = gapOf(tidied.slice(end, match.index));
    end = match.index + match[0].length;
    const word = match[0].replace(/^(TI|)GRADE(?=\d|$)/, '$1GR');
    tokens.push({ text: word, gap });
  }
  return tokens;
}

/** The word and the number of a glued piece like `SS304`; null where it is none. Source: derived. */
export function unglue({ text, gap }: Token): [Token, Token] | null {
  const split = GLUED.exec(text);
  if (!split) return null;
  return [
    { text: split[1]!, gap },
    { text: split[2]!, gap: '' },
  ];
}

const LETTER = /^\p{L}/u;
const ENDS_DIGIT = /\d$/;
const STARTS_DIGIT = /^\d/;

/**
 * The key of some neighbouring pieces: spaces and dashes fall away, except between two digits, where a dash stays
 * (65-45-12). Null where they do not belong together. Source: derived.
 */
export function joinedKey(tokens: readonly Token[]): string | null {
  let key = '';
  for (const [index, { text, gap }] of tokens.entries()) {
    if (index === 0) key = text;
    else if (gap === 'break') return null;
    else if (gap === '/') key += `/${text}`;
    else if (ENDS_DIGIT.test(key) && STARTS_DIGIT.test(text)) {
      // Two numbers a space apart are two numbers, unless a name with letters has begun: X5CrNi 18 10.
      if (gap === ' ' && !LETTER.test(key)) return null;
      key += `-${text}`;
    } else key += text;
  }
  return key;
}

/** The key of a name as the tables write it: plain letters and digits need no tidying. Source: derived. */
export function keyOf(name: string): string {
  const plain = /^[\w.-]+$/.test(name);
  if (plain && !name.includes('-') && !/grade/i.test(name)) return name.toUpperCase();
  return joinedKey(materialTokens(plain ? name.toUpperCase() : tidyMaterial(name))) ?? '';
}
