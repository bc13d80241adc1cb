/** Threads that exist and are not covered: named, so that nobody retypes them in hope. */

export type ThreadFamily =
  | 'multi-start'
  | 'trapezoidal'
  | 'acme'
  | 'whitworth'
  | 'ba'
  | 'buttress'
  | 'round'
  | 'conduit'
  | 'other-pipe'
  | 'miniature';

const FAMILIES: readonly [pattern: RegExp, family: ThreadFamily][] = [
  [/PH\s*\d|\bSTARTS?\b|\bLEAD\b|\bDOUBLE\b|\bTRIPLE\b|P-[\d.]+L/, 'multi-start'],
  [/^TR\s*\d|\bTRAP/, 'trapezoidal'],
  [/ACME/, 'acme'],
  [/BUTT/, 'buttress'],
  [/^S\s*\d+x\d/, 'buttress'],
  [/BSW|BSF|WHIT|BSCON|BSCY|\bBSC\b|\bCEI\b|\bWW?\s*\d|\d\s*W$/, 'whitworth'],
  [/\bBA\b|\dBA$|\bBA\s*\d/, 'ba'],
  [/^RD\s*\d/, 'round'],
  [/^PG\s*\d|^E\s*\d\d$/, 'conduit'],
  [/NPTR|NPSC|NPSL|NPSH|ANPT|\bPTF|\bNH\b|\bNST\b|\bNPSI\b|\bNPTH\b/, 'other-pipe'],
  [/UNM\b|\bNM\b|^S\s*[01]?\.\d/, 'miniature'],
];

/** The family of a normalised designation that is recognised but not covered. */
export function notCovered(text: string): ThreadFamily | null {
  for (const [pattern, family] of FAMILIES) if (pattern.test(text)) return family;
  return null;
}
