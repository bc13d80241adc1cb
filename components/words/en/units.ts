/** Words among numbers: what is counted, and names of sizes. English. */

/** One, and many. */
export const COUNTED = {
  threads: ['thread', 'threads'],
  pitches: ['pitch', 'pitches'],
} as const;

export const MEASURED = {
  diameters: '{count} × diameter',
  times: '{count} times',
  letter: 'letter {name}',
  /** Where a sentence lacks its number. */
  unknown: '(not known)',
} as const;
