/**
 * One spelling for everything a keyboard, a drawing or a scanner makes of the same thread:
 * signs, dashes, fractions, quotes, commas, look-alike letters, case.
 */

export interface Normal {
  /** Upper case, `x` between numbers, `-` for every dash, `"` only right after a number. */
  text: string;
  /** An external class found in it and taken out: `6g`, `5g6g`. */
  external?: string;
  /** A fit was typed (`6H/6g`) and its external half taken out. */
  fit?: string;
  /** A class typed in small letters on an all-small text, such as `6g` in `m8-6g`. */
  smallClass?: string;
  /** `mm` stood after a number. */
  inMm: boolean;
}

/** Cyrillic and Greek letters that look like the Latin ones of a designation. */
const LOOK_ALIKES: Readonly<Record<string, string>> = {
  ...{ А: 'A', В: 'B', С: 'C', Е: 'E', Н: 'H', К: 'K', М: 'M', О: 'O', Р: 'P', Т: 'T', Х: 'X' },
  ...{ м: 'm', х: 'x', а: 'a', с: 'c', е: 'e', р: 'p', н: 'h' },
  ...{ Α: 'A', Β: 'B', Ε: 'E', Η: 'H', Μ: 'M', Ν: 'N', Ρ: 'P', Τ: 'T', Χ: 'X', χ: 'x' },
};

function plainSigns(text: string): string {
  return text
    .replace(/[¼-¾⅐-⅞]/g, ' $& ')
    .replace(/″|ʺ|˝|[“”„‟❝❞〝〞]|''|’’|′′/g, '"')
    .normalize('NFKC')
    .replace(/\s/g, ' ')
    .replace(/[\u0370-\u04ff]/g, (letter) => LOOK_ALIKES[letter] ?? letter)
    .replace(/[\u00ad\u200b-\u200f\u2060\ufeff]|\p{Cc}/gu, '')
    .replace(/[\u2010-\u2015\u2212\u2043\ufe58\u2e3a\u2e3b_]/g, '-')
    .replace(/[×✕✖⨯⨉*]/g, 'x')
    .replace(/[⁄∕÷]/g, '/')
    .replace(/\(/g, ' (')
    .replace(/\)/g, ') ')
    .replace(/[[\]{}]/g, ' ');
}

/** A comma is a decimal sign only where that makes one plain number: `1,25`, not `10,32,6` or `M8,6H`. */
function plainCommas(text: string): string {
  return text
    .replace(/(?<![.,]\d*),(?!\d[GH](?!\d))(?=\d+(?!\d|[.,]\d))/g, '.')
    .replace(/[,;]/g, ' ');
}

function plainWords(text: string): string {
  return text
    .replace(/\b(?:[a-z]\.)+[a-z]\b\.?/gi, (letters) => letters.replace(/\./g, ''))
    .replace(/(\d)\s*(?:tpi|threads?\s+per\s+inch|th?\/in)(?![a-z])\.?/gi, '$1 ')
    .replace(/(\d)\s*pitch(?![a-z])(?!\s*[:=]?\s*[\d.])/gi, '$1 ')
    .replace(/(?:\bpitch\b|\bby\b|\bp\s*=)\s*[:=]?\s*(?=[\d.])/gi, ' x ')
    .replace(/(?:\bno\.?|\bnr\.?|\bn°|\bnumber|\bnum\.?|#)\s*(?=\d)/gi, '#')
    .replace(/\biso\s*(?:228|7)(?:[-/]1)?(?!\d)/gi, ' ')
    .replace(/\b(?:tap(?:ped)?|threads?|threaded|thd|holes?|pipe|iso|metric)\b\.?/gi, ' ');
}

function plainSpaces(text: string): string {
  return text
    .replace(/\s+/g, ' ')
    .replace(/\s?([-/])\s?/g, '$1')
    .replace(/-+/g, '-')
    .replace(/([\dHG"])\s?x\s?(?=[\d.PHS#])/gi, '$1x')
    .replace(/([-\s][1-9])\s([ABGHgh])(?![A-Za-z0-9])/g, '$1$2')
    .replace(/^(?:[\s:\-/]|\.(?!\d))+|[\s.:-]+$/g, '');
}

const METRIC_CLASS = '\\d{1,2}[a-z](?:\\d[a-z])?';
const FIT = new RegExp(`(\\d[a-z](?:\\d[a-z])?)/(\\d[a-z](?:\\d[a-z])?)(?![a-z0-9])`, 'i');
const SMALL_CLASS = new RegExp(`([-\\sx])(${METRIC_CLASS})(?![a-z0-9])`, 'g');

function isExternal(part: string): boolean {
  return /\d(?:[efgh]|[aA]$)/.test(part);
}

/** Takes the external half out of `6H/6g` or `2A/2B`. */
function splitFit(text: string): { text: string; fit?: string } {
  const found = FIT.exec(text);
  if (!found) return { text };
  const [fit, first, second] = found as unknown as [string, string, string];
  const inside = isExternal(first) && !isExternal(second) ? second : first;
  return { text: text.replace(fit, inside), fit };
}

/**
 * Small e, f, g or h after a grade is a screw's class (ISO 965-1) when capitals are used elsewhere.
 * On an all-small text it may be mere typing: then it is read as the capital, and that is told.
 */
function splitExternal(text: string): Pick<Normal, 'text' | 'external' | 'smallClass'> {
  let external: string | undefined;
  let smallClass: string | undefined;
  const capitals = /[A-WYZ]/.test(text.replace(/[LR]H/g, ''));
  const rest = text.replace(SMALL_CLASS, (whole: string, _before: string, part: string) => {
    if (!/[efgh]$/.test(part)) return whole;
    if (!capitals && !/[ef]/.test(part)) {
      smallClass = part;
      return whole;
    }
    external = part;
    return '';
  });
  return {
    text: rest.trim(),
    ...(external === undefined ? {} : { external }),
    ...(smallClass === undefined ? {} : { smallClass }),
  };
}

const MILLIMETRES = /(\d)\s*(?:mm|millimet(?:er|re)s?)(?![a-wyz])\.?/gi;
const INCHES = /(\d)\s*(?:(?:inch(?:es)?|in)(?![a-wyz])\.?|")/gi;

/** Brings a text to the one spelling that the readers know. Never throws. */
export function normalise(typed: string): Normal {
  const plain = plainWords(plainCommas(plainSigns(typed)));
  const bare = plain
    .replace(MILLIMETRES, '$1 ')
    .replace(INCHES, '$1"')
    .replace(/(?<!\d)"/g, ' ');
  const { text, ...fit } = splitFit(plainSpaces(bare));
  const split = splitExternal(text);
  return {
    ...split,
    ...fit,
    text: split.text.toUpperCase().replace(/X/g, 'x'),
    inMm: plain.search(MILLIMETRES) >= 0,
  };
}
