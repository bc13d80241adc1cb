/** One calculator worked by keyboard alone, as somebody does whose mouse is full of oil. */
import type { Page } from '@playwright/test';

/** More presses than any page has stops: past this the focus is caught somewhere. */
const MOST_STOPS = 400;

interface Stop {
  name: string;
  seen: boolean;
  field: boolean;
  last: boolean;
}

/** Where the focus is, and whether it can be seen there. */
async function focused(page: Page): Promise<Stop | null> {
  return page.evaluate(() => {
    const element = document.activeElement;
    if (!element || element === document.body) return null;
    const box = element.getBoundingClientRect();
    const drawn = (each: Element | null): boolean => {
      if (!each) return false;
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(each);
      return (outlineStyle !== 'none' && parseFloat(outlineWidth) > 0) || boxShadow !== 'none';
    };
    const label = (element as HTMLInputElement).labels?.[0] ?? null;
    const stops = [
      ...document.querySelectorAll('a[href], button, input, select, textarea, summary'),
    ];
    const visible = stops.filter((each) => each.getClientRects().length > 0);
    return {
      name: `${element.tagName.toLowerCase()} “${(label ?? element).textContent?.trim().slice(0, 30) ?? ''}”`,
      // A field shows the focus on the box around it, a choice on the tile that is its label.
      seen:
        (box.width > 0 && box.height > 0 && drawn(element)) ||
        drawn(element.parentElement) ||
        drawn(element.nextElementSibling) ||
        drawn(label),
      field: element.matches('main input, main select, main textarea'),
      last: element === visible.at(-1),
    };
  });
}

/** Tab from where the focus is to the end of the page: every stop shows itself, and nothing traps. */
async function tabThrough(page: Page, leastFields: number): Promise<string[]> {
  const faults: string[] = [];
  let fields = 0;
  for (let press = 0; press < MOST_STOPS; press += 1) {
    await page.keyboard.press('Tab');
    const stop = await focused(page);
    if (stop === null) break;
    if (!stop.seen) faults.push(`keyboard: the focus cannot be seen on ${stop.name}`);
    if (stop.field) fields += 1;
    if (stop.last) break;
    if (press === MOST_STOPS - 1) faults.push(`keyboard: the focus is caught at ${stop.name}`);
  }
  if (fields < leastFields) faults.push('keyboard: no field was reached');
  return faults;
}

/** Fills the form from its example with Enter, asks for the answer, and starts again. */
async function work(page: Page): Promise<string[]> {
  const answer = page.getByRole('region', { name: 'Answer', exact: true }).locator('.answer');
  try {
    await page.getByRole('button', { name: 'Try it with the example' }).press('Enter');
    await answer.filter({ hasText: /\w/ }).first().waitFor({ timeout: 30_000 });
    await page.locator('main button[type=submit]').first().press('Enter');
    await answer.filter({ hasText: /\w/ }).first().waitFor({ timeout: 30_000 });
    const faults = await tabThrough(page, 0);
    await page.getByRole('button', { name: 'Start again' }).press('Enter');
    await page.getByRole('region', { name: 'Worked example' }).waitFor({ timeout: 30_000 });
    return faults;
  } catch (error) {
    return [`keyboard: ${String(error).split('\n')[0]}`];
  }
}

export async function keyboardFaults(page: Page): Promise<string[]> {
  return [...(await tabThrough(page, 1)), ...(await work(page))];
}
