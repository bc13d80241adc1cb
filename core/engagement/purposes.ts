/** What a joint may be for: only one of them is reckoned here. */

/** What a joint is for. Only the first is answered. */
export const PURPOSES = [
  'static',
  'load-rating',
  'lifting',
  'pressure',
  'repeated-load',
  'rework',
] as const;

export type Purpose = (typeof PURPOSES)[number];
