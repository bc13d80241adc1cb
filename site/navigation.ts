/**
 * What the header and the footer lead to, in order. A page that is not built yet has no line here:
 * add one when it is.
 */

import { LANGUAGE, LINES } from '../components/words/en/site';

export interface NavigationLink {
  label: string;
  href: string;
}

export const MAIN: readonly NavigationLink[] = [
  { label: LINES.plan, href: `${LANGUAGE.home}/` },
  { label: LINES.threads, href: '/threads/' },
  { label: LINES.calculators, href: '/calculators/' },
  { label: LINES.drawing, href: '/drawing/' },
  { label: LINES.lessons, href: '/lessons/' },
  { label: LINES.brokenTaps, href: '/broken-taps/' },
  { label: LINES.jobs, href: '/jobs/' },
  { label: LINES.safety, href: '/safety/' },
  { label: LINES.sources, href: '/sources/' },
];

/** Pages that stand under another one's line. */
const UNDER: Record<string, string> = {
  [`${LANGUAGE.home}/plan/`]: `${LANGUAGE.home}/`,
  '/practice/': '/lessons/',
  '/review/': '/lessons/',
  '/teach/': '/lessons/',
};

/** True for the line of the header that the page at `path` belongs to. */
export function isCurrent(href: string, path: string): boolean {
  const under = Object.entries(UNDER).find(([start]) => path.startsWith(start))?.[1];
  if (under !== undefined) return href === under;
  return href === `${LANGUAGE.home}/` ? path === href : path.startsWith(href);
}
