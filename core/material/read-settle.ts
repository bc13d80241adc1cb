/** Which of the names in a text is meant. */

import { refuse, type Problem } from '../outcome';
import type { Kind } from './designations-words';
import { findHardness, type FoundHardness } from './read-hardness';
import { sortLeft } from './read-left';
import { keeps, matchNames, type Found, type Meaning } from './read-lookup';
import type { MaterialProblemCode } from './read-material-codes';
import type { FoundState } from './read-state';
import { materialTokens, MOST_TOKENS, tidyMaterial } from './read-tokens';

/** Between several offers. */
const OFFERS = '|';

export interface MaterialText {
  typed: string;
  found: readonly Found[];
  states: FoundState[];
  hints: readonly Kind[];
  unread: readonly string[];
  hardness: FoundHardness | null;
}

/** A refusal at the field of the material. Source: derived. */
export function materialProblem(
  code: MaterialProblemCode,
  typed: string,
  data: Record<string, string> = {},
) {
  const said: Problem = { code, field: 'material', data: { typed, ...data } };
  return refuse(said);
}

/** Finds what a text holds: names, states, hardness, and what nobody can place. Source: derived. */
export function scanMaterial(typed: string): MaterialText {
  const tidied = tidyMaterial(typed);
  const hardness = findHardness(tidied);
  const tokens = materialTokens(hardness?.rest ?? tidied);
  const { found, left } =
    tokens.length > MOST_TOKENS ? { found: [], left: tokens } : matchNames(tokens);
  const rows = found.flatMap(({ meanings }) => meanings.map(({ row }) => row));
  const kinds = found.flatMap(({ kind }) => (kind ? [kind] : []));
  const tempered =
    rows.some((row) => /^(al-|copper|brass|bronze|magnesium)/.test(row)) ||
    kinds.some((kind) => kind === 'aluminium');
  return { typed, found, hardness, ...sortLeft(left, tempered) };
}

const kindsOf = ({ found }: MaterialText) => found.flatMap(({ kind }) => (kind ? [kind] : []));

const shared = ({ offers, kind }: Found) => offers.length > 0 && kind === undefined;

/** What the other words of a text allow of one name: their kinds must, a standard's letters and a temper may. */
function narrowed(each: Found, text: MaterialText): readonly Meaning[] {
  const { meanings } = each;
  if (!shared(each)) return meanings;
  const byKind = meanings.filter(({ row }) => kindsOf(text).every((kind) => keeps(row, kind)));
  const tempers = text.states.some(({ state }) => state === 'temper');
  const hints: Kind[] = tempers ? [...text.hints, 'aluminium'] : [...text.hints];
  const sure = text.found.filter(
    (other) => other !== each && other.meanings.length === 1 && !shared(other),
  );
  const beside = sure.flatMap((other) => other.meanings.filter(({ plain }) => !plain));
  const byHint = byKind.filter(({ row }) => hints.every((kind) => keeps(row, kind)));
  const byName =
    beside.length === 0
      ? byHint
      : byHint.filter(({ row }) => beside.some((other) => other.row === row));
  const left = byName.length > 0 ? byName : byHint;
  // A lone offer is only one of the things the name may mean: it needs a word beside it that says so.
  const said =
    kindsOf(text).length > 0 || hints.length > 0 || (byName.length > 0 && beside.length > 0);
  return meanings.length === 1 && !said ? [] : left;
}

function sameRow(meanings: readonly Meaning[]): boolean {
  return meanings.every(({ row, rule }) => row === meanings[0]!.row && rule === meanings[0]!.rule);
}

/** The one meaning of a text, or why there is none. Source: on each grade. */
export function settleMaterial(text: MaterialText): Meaning | { ok: false; problems: Problem[] } {
  const { typed, found } = text;
  const open = found.find(({ meanings }) => meanings.length === 0);
  const named = found.filter(({ meanings }) => meanings.some(({ plain }) => !plain));
  const plain = found.filter(({ meanings }) => meanings.some((each) => each.plain));
  const chosen = named.length > 0 ? named : plain;
  for (const each of named) {
    if (!shared(each) || narrowed(each, text).length === 1) continue;
    return materialProblem('material-ambiguous', typed, { offers: each.offers.join(OFFERS) });
  }
  const meanings = chosen.flatMap((each) => narrowed(each, text).slice(0, 1));
  if (meanings.length === 0) {
    const offers = open?.offers;
    const extra = text.unread.join(' ');
    if (open && extra !== '') return materialProblem('material-unreadable', typed, { extra });
    if (offers)
      return materialProblem('material-ambiguous', typed, { offers: offers.join(OFFERS) });
    return materialProblem('material-unreadable', typed);
  }
  const odd = meanings.find(({ row }) => !kindsOf(text).every((kind) => keeps(row, kind)));
  if (odd) {
    const other = found.find(({ kind }) => kind && !keeps(odd.row, kind))?.kind ?? '';
    return materialProblem('material-contradictory', typed, { name: odd.designation, other });
  }
  if (!sameRow(meanings)) {
    const offers = meanings.map(({ designation }) => designation).join(OFFERS);
    return materialProblem('material-ambiguous', typed, { offers });
  }
  return meanings[0]!;
}
