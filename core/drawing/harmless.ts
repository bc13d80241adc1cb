/**
 * Every word that a line may carry without its changing a plan, each with a line that shows it. A word for
 * a process, a coating, a feature, a duty or a place has no business here: left out, it lowers the verdict
 * and is printed, which is the safe way to be wrong. Common practice.
 */

export interface Harmless {
  pattern: RegExp;
  /** A callout that carries it and is nothing but ordinary. */
  example: string;
}

const h = (pattern: RegExp, example: string): Harmless => ({ pattern, example });

export const HARMLESS: readonly Harmless[] = [
  h(/^typ(?:ical)?\b\.?/i, '4X M6-6H ↧12 TYP'),
  h(/^(?:places?|plcs?|pl)(?![a-z])\.?/i, '4X M6-6H ↧12 PLCS'),
  h(
    /^eq(?:ui|ually)?\b\.?[- ]?sp(?:aced)?\b\.?|^equi-?spaced\b|^equally[- ]spaced\b/i,
    '4X M6-6H ↧12 EQ SP',
  ),
  h(/^(?:equi)?distributed equally\b|^spaced equally\b/i, '4X M6-6H ↧12 SPACED EQUALLY'),
  h(/^(?:near side|n\/s)(?![a-z])/i, '4X M6-6H ↧12 NEAR SIDE'),
  h(/^as (?:shown|drawn|dimensioned)\b/i, '4X M6-6H ↧12 AS SHOWN'),
  h(/^(?:on|off|req(?:uire)?'?d|reqd|each|ea)(?![a-z])\.?/i, '4X M6-6H ↧12 EACH'),
  h(
    /^(?:and|with|for|of|to|the|at|an|by|then|is|are|be|in|per|see|x|w\/)(?![a-z0-9])/i,
    '4X TAP FOR THE M6-6H ↧12',
  ),
  h(/^(?:und|mit|fuer|fur|auf|von|bis)(?![a-z])/i, '4x M6-6H mit ↧12'),
  h(/^(?:et|avec|de|du|des|d'|le|la|les|sur|pour)(?![a-z])/i, '4 trous de M6-6H ↧12'),
  h(/^(?:y|con|del|los|las|el|para|en)(?![a-z])/i, '4 agujeros con M6-6H ↧12'),
  h(/^(?:e|di|da|della|il|lo|gli|i|su|per)(?![a-z])/i, '4 fori di M6-6H ↧12'),
  h(/^(?:ca|approx)\.?(?=\s+↧)/i, '4X M6-6H approx ↧12'),
  h(/^full\b|^only\b|^deep\b|^dp\b|^holes?\b/i, '4X M6-6H ↧12 ONLY'),
  h(
    /^normal to (?:the )?(?:face|surface)\b|^(?:perpendicular|square) to (?:the )?(?:face|surface)\b/i,
    '4X M6-6H ↧12 SQUARE TO FACE',
  ),
  h(
    /^(?:iso\s*(?:68|261|262|724|965)(?:[-/]\d)?|din\s*(?:13|14)(?:-\d+)?|asme\s*b1\.(?:1|13m)|ansi\s*b1\.(?:1|13m)|jis\s*b\s*020[59](?:-\d)?|iso\s*228(?:[-/]1)?|bs\s*3643)(?![\d.])/i,
    '4X M6-6H ISO 965-1 ↧12',
  ),
  h(/^(?:iso\s+)?metric\b(?:\s+(?:coarse|thread))?/i, '4X ISO METRIC M6-6H ↧12'),
  // An item or view letter in brackets, and a number that only counts the lines of a list.
  h(/^[([{]\s*[A-Z]\d?\s*[)\]}]|^\[\s*\d{1,3}\s*\]/i, '(A) 4X M6-6H ↧12'),
];

/** The number of a line in a list, at its very beginning: `1)`, `12.`. */
export const ITEM = /^\(?\d{1,3}(?:\)|\.(?=\s))\s*(?=\S)/;

/** Marks that only part words. */
export const MARKS = /^[-/;:,|()@+&.¦¶[\]{}"'=_•·]+/;
