/** What the page was worked out for, before the site's own name: a bookmark and a printed sheet say which hole they are. */

import { useEffect, useRef } from 'preact/hooks';

export function usePageTitle(before: string): void {
  const site = useRef<string | null>(null);
  useEffect(() => {
    site.current ??= document.title;
    // Only when it changes: a browser fetches the page's icon again with every title it is given.
    document.title = before + site.current;
  }, [before]);
}
