/** A material as a drawing writes it, to the row it is planned with. */

import { answer, type Note, type Outcome } from '../outcome';
import type { MaterialId } from './material';
import { nearestMaterial } from './own';
import type { Meaning } from './read-lookup';
import { hardnessAbsurd, placed, stateAbsurd } from './read-rows';
import { materialProblem, scanMaterial, settleMaterial, type MaterialText } from './read-settle';
import { LONGEST_TEXT } from './read-tokens';

export interface MaterialReading {
  /** The row it is planned with. */
  id: MaterialId;
  /** As typed, without the spaces about it. */
  written: string;
  /** What the row hangs on and the text does not say: `condition`, `hardness`. */
  asks: string[];
}

/** Steel with a hardness and no grade is planned by the hardness. */
function bareSteel(text: MaterialText): Outcome<MaterialReading> | null {
  const { typed, hardness, states, found } = text;
  const steel =
    found.length > 0 &&
    found.every(({ kind, meanings }) => kind === 'steel' && meanings.length === 0);
  const hard = states.some(({ state }) => state === 'hardened');
  if (!steel || text.unread.length > 0 || (!hardness && !hard)) return null;
  if (!hardness) {
    return answer({ id: 'steel-hard', written: typed, asks: ['hardness'] }, [
      { code: 'material-hardened' },
    ]);
  }
  const note: Note = { code: 'material-hardness', numbers: { hb: hardness.hb } };
  return answer({ id: nearestMaterial('P', hardness.hb), written: typed, asks: [] }, [note]);
}

function notesOf(
  { designation, plain, usual }: Meaning,
  { states, hardness }: MaterialText,
): Note[] {
  const notes: Note[] = [];
  const data = { designation };
  notes.push({
    code: usual ? 'material-usual' : 'material-read',
    data,
    source: plain ? 'common-practice' : 'from-memory',
  });
  for (const { state, written } of states) {
    if (state !== 'none') notes.push({ code: 'material-state', data: { state: written } });
  }
  if (hardness) notes.push({ code: 'material-hardness', numbers: { hb: hardness.hb } });
  return notes;
}

/**
 * Reads a material as drawings write it: EN numbers and names, AISI, SAE, UNS, DIN, BS, JIS, short names of plastics
 * and the plain words of the trade, with its condition and hardness (HRC, HB, HV; N/mm² as a strength). `text`: 1 to
 * 160 signs. Gives the handbook's row, the text as written and what the row still hangs on; its notes say what was
 * recognised (`MATERIAL_NOTE_CODES`). Refuses with `MATERIAL_PROBLEM_CODES` and never guesses; no trade names.
 * Source: `from-memory`, each group of `designations.ts` with its own.
 */
export function readMaterial(text: string): Outcome<MaterialReading> {
  const typed = typeof text === 'string' ? text.trim().replace(/\s+/g, ' ') : '';
  if (typed === '') return materialProblem('material-empty', '');
  if (typed.length > LONGEST_TEXT)
    return materialProblem('material-unreadable', typed.slice(0, LONGEST_TEXT));
  const scanned = scanMaterial(typed);
  const bare = bareSteel(scanned);
  if (bare) return bare;
  const meaning = settleMaterial(scanned);
  if ('ok' in meaning) return meaning;
  if (scanned.unread.length > 0) {
    const data = { extra: scanned.unread.join(' '), name: meaning.designation };
    return materialProblem('material-unreadable', typed, data);
  }
  const { hardness, states } = scanned;
  const odd = states.find((state) => stateAbsurd(meaning, state));
  if (odd) {
    const data = { name: meaning.designation, other: odd.written };
    return materialProblem('material-contradictory', typed, data);
  }
  if (hardness && hardnessAbsurd(meaning, hardness)) {
    const other = `${hardness.value} ${hardness.scale}`;
    return materialProblem('material-contradictory', typed, { name: meaning.designation, other });
  }
  const { id, asks, notes } = placed(meaning, states, hardness);
  return answer({ id, written: typed, asks: [...asks] }, [...notesOf(meaning, scanned), ...notes]);
}
