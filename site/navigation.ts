/**
 * What the header and the footer lead to, in order. A page that is not built yet has no line here:
 * add one when it is.
 */

export interface NavigationLink {
  label: string;
  href: string;
}

export const MAIN: readonly NavigationLink[] = [
  { label: 'Plan a hole', href: '/' },
  { label: 'Threads', href: '/threads/' },
  { label: 'Calculators', href: '/calculators/' },
  { label: 'Drawing', href: '/drawing/' },
  { label: 'Lessons', href: '/lessons/' },
  { label: 'Broken taps', href: '/broken-taps/' },
  { label: 'Jobs', href: '/jobs/' },
  { label: 'Safety', href: '/safety/' },
  { label: 'Sources', href: '/sources/' },
];

/** Pages that stand under another one's line. */
const UNDER: Record<string, string> = { '/plan/': '/' };

/** True for the line of the header that the page at `path` belongs to. */
export function isCurrent(href: string, path: string): boolean {
  const under = Object.entries(UNDER).find(([start]) => path.startsWith(start))?.[1];
  if (under !== undefined) return href === under;
  return href === '/' ? path === '/' : path.startsWith(href);
}
