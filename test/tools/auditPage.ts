/** Targets too small for the floor. */
import type { Page } from '@playwright/test';

/** Least side of a control, CSS px: a gloved finger on a floor PC's touch screen. */
const TARGET = 48;

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
