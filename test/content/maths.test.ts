import { markdownToHtml } from 'satteri';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { formula, maths, RENAMED_CLASSES, STYLE_CLASSES } from '../../site/markdown/maths';

function page(markdown: string): string {
  const { html } = markdownToHtml(markdown, {
    features: { math: true },
    hastPlugins: [maths],
  });
  return html;
}

describe('formulas in a page', () => {
  test('become MathML where they stand, without a style the policy would block', () => {
    const html = page(
      'So $H = L + cP$ it is.\n\n$$\n\\begin{aligned} a &= \\boxed{2} \\end{aligned}\n$$\n',
    );
    expect(html).toContain('<p>So <math><mrow><mi>H</mi>');
    expect(html).toContain('<math display="block" class="maths-display">');
    expect(html).toContain('maths-box');
    expect(html).not.toMatch(/\sstyle=|class="[^"]*tml-|<code|<pre/);
  });

  test('code that is no formula is left alone', () => {
    expect(page('Type `M8x1.25`.')).toContain('<code>M8x1.25</code>');
  });

  test('one that cannot be read, or needs an unknown style, stops the build and says which', () => {
    expect(() => formula('\\frac{a}{', false)).toThrow(/"\\frac\{a\}\{" cannot be read/);
    expect(() => formula('\\color{red}x', false)).toThrow(/color:#ff0000/);
  });

  test('every class they are given has a rule', () => {
    const styles = readFileSync(new URL('../../site/markdown/maths.css', import.meta.url), 'utf8');
    const given = [...Object.values(STYLE_CLASSES), ...Object.values(RENAMED_CLASSES)];
    expect(given.filter((name) => name && !styles.includes(`.${name}`))).toEqual([]);
  });
});
