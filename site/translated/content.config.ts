/** A translated page links to the same lessons as the English one. */
export { collections } from '../content.config';
