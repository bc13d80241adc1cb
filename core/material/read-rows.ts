/** Which row a grade is planned with, once its state and hardness are known. */

import type { Note } from '../outcome';
import type { Material, MaterialId } from './material';
import { nearestMaterial } from './own';
import type { FoundHardness } from './read-hardness';
import type { Meaning } from './read-lookup';
import type { FoundState, State } from './read-state';
import { findMaterial } from './table';

export type MaterialAsk = 'condition' | 'hardness';

export interface Placed {
  id: MaterialId;
  asks: MaterialAsk[];
  notes: Note[];
}

/** HB up to which an annealed row holds, and up to which a stainless that is no plain steel keeps its own. Common practice. */
const SOFT = 265;
const STAINLESS_KEEPS = 340;

/** HB from which a tap of high-speed steel is no answer (45 HRC). */
const HARD = 420;

/** The hard end of age hardening, HRC, and the ages that reach it. From memory: ASTM A564. */
const HARD_AGES = /(H900|H925|H950|RH950|P1070|P960)$/;
const HARD_AGE_HRC = 44;

const STEEL_GROUPS: readonly Material['group'][] = ['P', 'M', 'H'];

const note = (code: string, more: Partial<Note> = {}): Note => ({ code, ...more });

const HARDENED = { id: 'steel-hard', asks: [], notes: [note('material-hardened')] } as const;

function keep(id: MaterialId, asks: MaterialAsk[] = [], notes: Note[] = []): Placed {
  return { id, asks, notes };
}

/** The row of a steel or stainless of a known hardness. */
function byHardness({ row, rule }: Meaning, hb: number): Placed {
  const base: MaterialId = rule === 'prehard' || rule === 'mould' ? 'steel-alloy' : row;
  if (hb > HARD) return { ...HARDENED, asks: [], notes: [...HARDENED.notes] };
  if (row === 'stainless-ph') {
    return keep(
      row,
      [],
      hb > STAINLESS_KEEPS ? [note('material-hard-side', { numbers: { hb } })] : [],
    );
  }
  const own = row.startsWith('stainless-') && rule === 'fixed';
  if (hb <= (own ? STAINLESS_KEEPS : SOFT)) return keep(base);
  return keep(nearestMaterial('P', hb));
}

/** True where no such metal has such a hardness. Source: common practice. */
export function hardnessAbsurd({ row, rule }: Meaning, { hb, scale }: FoundHardness): boolean {
  const { group } = findMaterial(row)!;
  if (group === 'P' || group === 'M' || group === 'H' || group === 'S') return false;
  if (scale === 'MPa') return false;
  if (group === 'K') return hb > STAINLESS_KEEPS;
  if (row === 'bronze') return rule !== 'aged-copper' && hb > SOFT;
  return scale === 'HRC' || hb > 230;
}

/** True where a state is not one that such a metal can be in. Source: common practice. */
export function stateAbsurd({ row, rule }: Meaning, { state }: FoundState): boolean {
  const { group } = findMaterial(row)!;
  const soft = group === 'M' && rule === 'fixed' && row !== 'stainless-ferritic';
  if (state === 'aged') return !(rule === 'temper' || rule.startsWith('aged') || group === 'S');
  if (state === 'quenched' || state === 'prehard' || state === 'hardened') {
    return group === 'N' || group === 'O' || soft;
  }
  return false;
}

const HARDNESS_UNKNOWN: Placed = {
  id: 'steel-hard',
  asks: ['hardness'],
  notes: [note('material-hardened')],
};

function aged(row: MaterialId, states: readonly FoundState[]): Placed {
  const age = states.find(({ state }) => state === 'aged' || state === 'annealed');
  if (
    !age ||
    /^(AGED|AGE|AGEHARDENED|PRECIPITATIONHARDENED|AH|STA|ENVEJECIDO)$/.test(age.written)
  ) {
    return keep(row, row === 'stainless-ph' || !age ? ['condition'] : []);
  }
  const hard = row === 'stainless-ph' && HARD_AGES.test(age.written);
  return keep(
    row,
    [],
    hard ? [note('material-hard-side', { numbers: { hrc: HARD_AGE_HRC } })] : [],
  );
}

function tempered(row: MaterialId, states: readonly FoundState[]): Placed {
  const temper = states.find(({ state }) => state === 'temper' || state === 'annealed');
  if (!temper) return keep(row, ['condition']);
  // Soft it drags like the plain alloys, whatever it could become.
  const soft = temper.state === 'annealed' || /^[OFW]$/.test(temper.written);
  return keep(soft ? 'al-wrought' : row);
}

type Steel = 'quenched' | 'tool' | 'martensitic' | 'case' | 'prehard' | 'mould';

function quenched(row: MaterialId, rule: Steel, state: State | undefined): Placed {
  if (state === 'hardened') return { ...HARDNESS_UNKNOWN };
  if (state === 'annealed') return keep(row === 'steel-alloy-30hrc' ? 'steel-alloy' : row);
  if (rule === 'tool' && state === 'quenched') return { ...HARDNESS_UNKNOWN };
  if (state === 'quenched' || state === 'prehard') return keep('steel-alloy-30hrc');
  if (rule === 'mould') return keep(row, ['hardness']);
  if (rule === 'case' || rule === 'prehard' || state === 'none') {
    // Drawn or rolled says nothing of what was done to it afterwards in a tool steel.
    return keep(row, rule === 'tool' || rule === 'martensitic' ? ['condition'] : []);
  }
  return keep(row, ['condition']);
}

/** The first state that says more than how the bar was made. */
function telling(states: readonly FoundState[]): State | undefined {
  return (states.find(({ state }) => state !== 'none') ?? states[0])?.state;
}

/**
 * The row of one grade in one state, and what is still to be asked. Hardness in HB rules over the state.
 * Source: common practice; hardness steps as `nearestMaterial`.
 */
export function placed(
  meaning: Meaning,
  states: readonly FoundState[],
  hardness: FoundHardness | null,
): Placed {
  const { row, rule } = meaning;
  const { group } = findMaterial(row)!;
  if (hardness && STEEL_GROUPS.includes(group)) return byHardness(meaning, hardness.hb);
  if (rule === 'temper') return tempered(row, states);
  if (rule === 'aged' || rule === 'aged-nickel' || rule === 'aged-copper') {
    return hardness ? keep(row) : aged(row, states);
  }
  const state = telling(states);
  if (rule === 'fixed') {
    const hardens = state === 'hardened' && group === 'P';
    return hardens ? { ...HARDNESS_UNKNOWN } : keep(row);
  }
  return quenched(row, rule, state);
}
