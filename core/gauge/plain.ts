/** What the plain plugs of the minor diameter may have done. */

/** What the plain plugs did: not tried, as they should, GO refused, NOT GO went in. */
export const PLAIN_READINGS = ['untried', 'right', 'go-refused', 'not-go-enters'] as const;

export type PlainReading = (typeof PLAIN_READINGS)[number];
