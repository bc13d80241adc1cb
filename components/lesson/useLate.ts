import { useEffect, useState } from 'preact/hooks';

/**
 * What draws a figure, fetched the first time it is wanted. Until then, and without script, the figure drawn
 * while the page was built stands in its place. `load` must not change from one drawing to the next.
 */
export function useLate<T>(load: () => Promise<T>, wanted: boolean): T | null {
  const [late, setLate] = useState<{ part: T } | null>(null);
  useEffect(() => {
    if (wanted && !late) void load().then((part) => setLate({ part }));
  }, [wanted, late, load]);
  return late && late.part;
}
