/** Hides what the page held as plain HTML, once the live part stands in its place. */

import { useEffect } from 'preact/hooks';

export function useExampleGone(id: string, gone: boolean): void {
  useEffect(() => {
    const found = document.getElementById(id);
    if (found) found.hidden = gone;
  }, [id, gone]);
}
