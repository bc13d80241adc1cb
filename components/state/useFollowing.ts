/**
 * Lets the heavy part of an answer follow the light one: the sentence is painted at once even on a
 * slow PC, and what takes longer to draw comes when the keys rest.
 */

import { useEffect, useState } from 'preact/hooks';

const ON_SERVER = typeof document === 'undefined';

interface Following<T> {
  /** What to draw; null until its first turn. Plain HTML from the server holds it at once. */
  value: T | null;
  /** False while what is drawn speaks of an earlier value. */
  fresh: boolean;
}

/** The value, `delay` ms after the last change of `mark`. */
export function useFollowing<T>(current: T, mark: object, delay: number): Following<T> {
  const [drawn, setDrawn] = useState(ON_SERVER ? { value: current, mark } : null);
  const fresh = drawn?.mark === mark;
  useEffect(() => {
    if (fresh) return undefined;
    const timer = window.setTimeout(() => setDrawn({ value: current, mark }), delay);
    return () => window.clearTimeout(timer);
  });
  return { value: drawn?.value ?? null, fresh };
}
