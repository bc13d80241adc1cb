/**
 * What is kept of the review, as the page sees it. Where the browser will not keep it, this visit's progress
 * stands in the page, the page says so, and it can still be saved to a file.
 */

import { useShelf, type Shelved } from '../state/useShelf';
import { joined } from './progress';
import { SHELF, type Progress } from './shape';

export type ProgressState = Shelved<Progress>;

export function useProgress(): ProgressState {
  const shelf = useShelf(SHELF, joined);
  return { ...shelf, contents: shelf.unsaved?.contents ?? shelf.contents };
}
