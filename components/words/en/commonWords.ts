/** What a search passes over. English. */

/** Too common to tell one page from another. */
export const COMMON_WORDS =
  'a an and are as at be by can do does for from has have how i if in is it its my of on or that the then there this to was what when where which why will with you your';
