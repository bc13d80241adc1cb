/** What stands beside the name of a material: states, standards, words that change nothing, and the rest. */

import type { Kind } from './designations-words';
import { stateKey, stateOf, type FoundState } from './read-state';
import type { Token } from './read-tokens';

export interface Leftover {
  states: FoundState[];
  /** Kinds that a standard's letters hint at; they choose between two meanings and contradict nothing. */
  hints: Kind[];
  /** Pieces nobody can place. */
  unread: string[];
}

/** Words without which the text would mean the same. Common practice. */
const HARMLESS = new Set(
  (
    'MATERIAL MATL MAT MTL MAT L WERKSTOFF WERKST WST WSTNR WERKSTOFFNR WERKSTOFFNUMMER WNR W NR NO NUMBER ' +
    'AISI SAE UNS CDA ASTM ASME AMS EN DIN BS JIS ISO NF UNI UNE AA AW MC GR TYPE ALLOY GRADE COND CONDITION TEMPER ' +
    'BAR ROD PLATE SHEET STRIP FLAT ROUND HEX HEXAGON SQUARE TUBE PIPE BILLET BLOCK STOCK SECTION RD FL BLECH ' +
    'RUNDSTAHL BARRA CHAPA PLETINA TUBO REDONDO FROM OR EQUIV EQUIVALENT EQUIVALENTS EQ SIMILAR EQUAL APPROVED O ' +
    'EQUIVALENTE PER TO ACC IN THE OF DE LA MADE AND WITH HECHO MATERIALE MATERIAU STYLE QUALITY SPEC PER AS SUPPLIED'
  ).split(' '),
);

/** Bodies whose numbers name a standard, not a metal. */
const BODIES = new Set('ASTM ASME AMS EN DIN BS JIS ISO NF UNI UNE MIL QQ SAE'.split(' '));

const HINTS: Record<string, Kind> = {
  AISI: 'steel',
  SAE: 'steel',
  AW: 'aluminium',
  AA: 'aluminium',
  AC: 'cast-aluminium',
  CDA: 'copper',
  TOOL: 'plain-steel',
};

/** A part of a standard's number: 10088, A240, G4051, 3. */
const STANDARD = /^[A-Z]{0,2}\d{1,6}[A-Z]?$/;

/** Pieces after a body that are its standard's number. */
const STANDARD_PARTS = 3;

/** The longest state in words: COND H900, QUENCHED AND TEMPERED. */
const STATE_WORDS = 4;

function stateAt(
  tokens: readonly Token[],
  at: number,
  tempered: boolean,
): { state: FoundState; length: number } | null {
  for (let length = Math.min(STATE_WORDS, tokens.length - at); length > 0; length -= 1) {
    const run = tokens.slice(at, at + length);
    if (run.some(({ gap }, index) => index > 0 && gap === 'break')) continue;
    // A lone letter is a state behind a plus, or as the last piece.
    const plus = tokens[at]!.gap === 'break' || at + length === tokens.length;
    const state = stateOf(stateKey(run), tempered, { plus });
    if (state) return { state, length };
  }
  return null;
}

function standardParts(tokens: readonly Token[], at: number): number {
  if (!BODIES.has(tokens[at]!.text)) return 0;
  let parts = 0;
  while (parts < STANDARD_PARTS) {
    const next = tokens[at + 1 + parts];
    if (
      !next ||
      next.gap === 'break' ||
      !(STANDARD.test(next.text) || (parts === 0 && /^[A-Z]$/.test(next.text)))
    )
      break;
    parts += 1;
  }
  return parts;
}

/** Sorts what is left; `tempered` where the metal takes tempers like T6. Source: common practice. */
export function sortLeft(tokens: readonly Token[], tempered: boolean): Leftover {
  const sorted: Leftover = { states: [], hints: [], unread: [] };
  for (let at = 0; at < tokens.length;) {
    const { text } = tokens[at]!;
    const hint = HINTS[text];
    const stated = stateAt(tokens, at, tempered);
    if (stated) {
      sorted.states.push(stated.state);
      at += stated.length;
      continue;
    }
    if (hint) sorted.hints.push(hint);
    else if (!HARMLESS.has(text) && !BODIES.has(text)) sorted.unread.push(text);
    at += 1 + standardParts(tokens, at);
  }
  return sorted;
}
