/** What should be said beside an answer that was given. English. */

export const NOTES: Record<string, string> = {};
