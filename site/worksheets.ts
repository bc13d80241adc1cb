/** Links to worksheets with a seed, where the page that makes them is built and knows the kinds. */

import { NOTES } from '../components/words/en/teach';

const built = Object.keys(import.meta.glob('./pages/practice/sheet/*.astro')).length > 0;

/** A worksheet and its key, from these kinds of exercise or, where none is named, from all of them. */
export function worksheets(
  kinds: readonly string[],
  seed: number,
  count = 6,
): { label: string; href: string }[] {
  if (!built) return [];
  const named = kinds.length > 0 ? `&kinds=${kinds.join(',')}` : '';
  const href = `/practice/sheet/?seed=${seed}${named}&count=${count}`;
  return [
    { label: NOTES.worksheet, href },
    { label: NOTES.worksheetKey, href: `${href}&key=yes` },
  ];
}
