/** What can be wrong with a page as it stands: what axe finds, and targets too small for the floor. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** The two themes change colours and nothing else. */
const COLOUR_RULES = ['color-contrast', 'link-in-text-block'];

/** Least side of a control, CSS px: a gloved finger on a floor PC's touch screen. */
const TARGET = 48;

/** Faults that axe finds, WCAG 2.2 A and AA: all rules in light, those of colour again in dark. */
export async function axeFaults(page: Page): Promise<string[]> {
  const faults: string[] = [];
  for (const scheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: scheme });
    const axe = new AxeBuilder({ page });
    const { violations } = await (
      scheme === 'light' ? axe.withTags(RULES) : axe.withRules(COLOUR_RULES)
    ).analyze();
    for (const { id, nodes } of violations) {
      faults.push(...nodes.map(({ target }) => `axe ${id}, ${scheme}: ${target.join(' ')}`));
    }
  }
  return faults;
}

/**
 * Controls lower than 48 px. A link inside a sentence or a table is text and keeps the line's height;
 * a radio or a tick box counts with its label.
 */
export async function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const inText = (element: Element): boolean =>
      element.tagName === 'A' &&
      !element.classList.contains('button') &&
      element.closest('nav, .masthead') === null;
    const controls = document.querySelectorAll(
      'a[href], button, input:not([type=hidden]), select, textarea, summary',
    );
    const found: string[] = [];
    for (const control of controls) {
      if (inText(control) || control.closest('[hidden], .skip') !== null) continue;
      const labels = (control as HTMLInputElement).labels;
      const boxed = /^(radio|checkbox)$/.test(control.getAttribute('type') ?? '');
      const box = (boxed && labels?.[0] ? labels[0] : control).getBoundingClientRect();
      if (box.width === 0 || box.height === 0) continue;
      if (box.height < least - 0.5) {
        const name = control.textContent?.trim().slice(0, 30) || control.id;
        found.push(
          `${control.tagName.toLowerCase()} “${name}” is ${Math.round(box.height)} px high`,
        );
      }
    }
    return found;
  }, TARGET);
}
