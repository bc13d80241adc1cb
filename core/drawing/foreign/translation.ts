/** A pattern without accents and without regard to capitals, and the English words for it. */
export type Translation = readonly [pattern: string, english: string];
