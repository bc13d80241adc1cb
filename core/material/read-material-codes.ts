/** Every code that reading a material can give: so that none goes without words. */

/** Why a text was not read as a material. `data.typed` always holds it as typed. */
export const MATERIAL_PROBLEM_CODES = [
  /** Nothing was typed. */
  'material-empty',
  /** No name in it is known, or words are left that could change its meaning. data: extra, where a name was found. */
  'material-unreadable',
  /** One name and several materials, or several names. data: offers. */
  'material-ambiguous',
  /** Its words contradict each other. data: name, other. */
  'material-contradictory',
] as const;

/** What is said beside a reading. */
export const MATERIAL_NOTE_CODES = [
  /** data: designation. The name that was recognised. */
  'material-read',
  /** data: state, as written. */
  'material-state',
  /** numbers: hb. The hard end of what was written. */
  'material-hardness',
  /** A plain word was taken in its usual meaning. data: designation. */
  'material-usual',
  /** Aged to its hard end. numbers: hrc or hb. */
  'material-hard-side',
  /** Read in its hardened state. */
  'material-hardened',
] as const;

export type MaterialProblemCode = (typeof MATERIAL_PROBLEM_CODES)[number];
export type MaterialNoteCode = (typeof MATERIAL_NOTE_CODES)[number];
