/** The state a material is in, as drawings write it behind the name. */

import type { Token } from './read-tokens';

/** `none`: said how it was made, which moves nothing. */
export type State = 'annealed' | 'quenched' | 'prehard' | 'hardened' | 'aged' | 'temper' | 'none';

export interface FoundState {
  state: State;
  /** As written, without spaces. */
  written: string;
}

// prettier-ignore
const STATES: Record<Exclude<State, 'temper'>, string> = {
  annealed: 'ANNEALED ANN ANNEAL SOFT A AC GKZ AT RECOCIDO RECOCIDA WEICHGEGLUHT SPHEROIDIZED SPHEROIDISED CONDA CONDITIONA SOLUTIONTREATED SOLUTIONANNEALED SOLUTIONHEATTREATED SOLUTION SOLUBILIZADO',
  quenched: 'HT QT HTR HEATTREATED HEATTREAT QUENCHEDANDTEMPERED QUENCHTEMPERED HTSR VERGUTET BONIFICADO TEMPLADOYREVENIDO V T R',
  prehard: 'PREHARD PREHARDENED PREHARDEN PREHT PREHEATTREATED PRETEMPLADO PH',
  hardened: 'HARDENED THROUGHHARDENED CASEHARDENED CARBURIZED CARBURISED NITRIDED INDUCTIONHARDENED TEMPLADO CEMENTADO NITRURADO GEHARTET HARDENEDANDTEMPERED HARDENEDGROUND',
  aged: 'AGED PRECIPITATIONHARDENED AGEHARDENED AGE STA ENVEJECIDO P800 P930 P960 P1070 H900 H925 H950 H1000 H1025 H1050 H1075 H1100 H1125 H1150 H1150M H1150D RH950 TH1050 CONDH900 CONDH1025 CONDH1150 CONDITIONH900 CONDITIONH1025 CONDITIONH1150 AH',
  none: 'N AR M C SH U CR SR NORMALISED NORMALIZED NORMALISIERT NORMALIZADO COLDDRAWN CD COLDFINISHED CF COLDROLLED HOTROLLED HR DRAWN ROLLED BRIGHT GROUND TURNED PEELED POLISHED FORGED FORGING CAST CASTING DIECAST DIECASTING EXTRUDED EXTRUSION STRESSRELIEVED PICKLED HARD FULLHARD HALFHARD QUARTERHARD 14HARD 12HARD 34HARD COLDWORKED STRAINHARDENED DOM ERW HRPO ESTIRADO LAMINADO FORJADO FUNDIDO CALIBRADO GEZOGEN 2B 2D 2H 1D 2R BA',
};

const BY_KEY = new Map<string, State>(
  Object.entries(STATES).flatMap(([state, words]) =>
    words.split(' ').map((word) => [word, state as State] as const),
  ),
);

/** Aluminium, magnesium and copper tempers: T6, T651, H111, O, F; R360, H150 for copper; F31 in the old DIN. */
const TEMPER = /^(O|F|W|T\d{1,4}|H\d{2,3}|[RHY]\d{3}|F\d{2})$/;

/** Single letters are states only behind a plus, or as the last word. */
const LONELY = /^(A|N|M|C|U|T|R|V|S)$/;

/** What one piece, or a few joined ones, say of the state; null where they say nothing. Source: common practice. */
export function stateOf(
  written: string,
  tempered: boolean,
  { plus = false } = {},
): FoundState | null {
  if (tempered && TEMPER.test(written)) return { state: 'temper', written };
  // +QT800 says its strength too.
  const state = BY_KEY.get(/^QT\d{3,4}$/.test(written) ? 'QT' : written);
  if (state === undefined || (LONELY.test(written) && !plus)) return null;
  return { state, written };
}

/** Joined text of a run of words, as the table of states writes it. Source: derived. */
export function stateKey(tokens: readonly Token[]): string {
  return tokens.map(({ text }) => text).join('');
}
