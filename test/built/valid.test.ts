/** Every built page against the HTML standard, as html-validate has it. */
import { HtmlValidate } from 'html-validate';
import { expect, test } from 'vitest';
import { allPages, htmlOf } from '../tools/pages';

const validator = new HtmlValidate({
  extends: ['html-validate:standard'],
  rules: {
    // The standard has no use for it on a tile. Firefox has: without it, a reload brings back the tile
    // that was pressed before, whatever the page says.
    'valid-autocomplete': 'off',
  },
});

/** Astro writes this where the first island stands; browsers read a style wherever it is. */
const ISLAND_STYLE = /<style>astro-island,astro-slot,astro-static-slot\{[^}]*\}<\/style>/g;

test('every page is valid HTML', async () => {
  const faults: string[] = [];
  for (const page of allPages()) {
    const { results } = await validator.validateString(htmlOf(page).replaceAll(ISLAND_STYLE, ''));
    for (const { message, selector } of results.flatMap(({ messages }) => messages))
      faults.push(`${page}: ${message} ${selector ?? ''}`);
  }
  expect(faults).toEqual([]);
}, 120_000);
