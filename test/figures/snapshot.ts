import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { expect } from 'vitest';

/** Holds a figure to its reviewed picture, one tag a line so that a change reads as a change. */
export async function expectPicture(name: string, figure: VNode): Promise<void> {
  const html = render(figure).replaceAll('><', '>\n<');
  expect(html).not.toMatch(/NaN|undefined|Infinity| style=/);
  await expect(`${html}\n`).toMatchFileSnapshot(`snapshots/${name}.html`);
}
