/** The shape of a table of words, whatever the words: what a translation must hold, no more and no less. */
export type Same<T> = T extends string
  ? string
  : T extends readonly (infer Item)[]
    ? readonly Same<Item>[]
    : { readonly [Key in keyof T]: Same<T[Key]> };
