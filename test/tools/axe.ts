/** What axe finds in a page as it stands, WCAG 2.2 A and AA. */
import type { Page } from '@playwright/test';
import axe from 'axe-core';

export const SCHEMES = ['light', 'dark'] as const;

const RULES = {
  light: {
    type: 'tag',
    values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  },
  // The two schemes change colours and nothing else: in the dark only what depends on colour is asked again.
  dark: { type: 'rule', values: ['color-contrast', 'link-in-text-block'] },
} as const;

export interface Fault {
  scheme: (typeof SCHEMES)[number];
  rule: string;
  help: string;
  /** Selectors that lead to the element. */
  target: string;
  why: string;
}

/**
 * Faults in light and in dark; the page is left in the dark. Axe is put into the page once and asked there: the library that goes
 * between the two browsers' programs asks in a second page, for the sake of frames, and takes four times
 * as long. No page here has a frame.
 */
export async function axeFaults(page: Page): Promise<Fault[]> {
  if (page.frames().length > 1)
    throw new Error('A page with frames: axe would ask the outer one only');
  await page.evaluate(axe.source);
  const faults: Fault[] = [];
  for (const scheme of SCHEMES) {
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' });
    const found = await page.evaluate(async (runOnly) => {
      const { axe: here } = window as unknown as { axe: typeof axe };
      const { violations, passes } = await here.run(document, {
        runOnly: { type: runOnly.type, values: [...runOnly.values] },
        // Of the rest one element a rule is told: nobody reads them.
        resultTypes: ['violations'],
      });
      return {
        asked: passes.length + violations.length,
        faults: violations.flatMap(({ id, help, nodes }) =>
          nodes.map(({ target, failureSummary }) => ({
            rule: id,
            help,
            target: target.join(' '),
            why: failureSummary ?? '',
          })),
        ),
      };
    }, RULES[scheme]);
    if (found.asked === 0) throw new Error(`Axe asked nothing, ${scheme}`);
    faults.push(...found.faults.map((fault) => ({ scheme, ...fault })));
  }
  return faults;
}
