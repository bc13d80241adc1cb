/**
 * Lets the heavy part of an answer follow the light one: the sentence is painted at once even on a
 * slow PC, and what takes longer to draw comes when the keys rest.
 */

import { useEffect, useState } from 'preact/hooks';

/**
 * The value to draw: the current one on the first drawing, then each new one `delay` ms after the
 * last change of `mark`. `fresh` is false while what is drawn speaks of an earlier value.
 */
export function useFollowing<T>(
  current: T,
  mark: string | object,
  delay: number,
): { value: T; fresh: boolean } {
  const [drawn, setDrawn] = useState({ value: current, mark });
  const fresh = drawn.mark === mark;
  useEffect(() => {
    if (fresh) return undefined;
    const timer = window.setTimeout(() => setDrawn({ value: current, mark }), delay);
    return () => window.clearTimeout(timer);
  });
  return { value: drawn.value, fresh };
}
