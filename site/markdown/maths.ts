/**
 * Formulas: TeX between dollar signs becomes MathML while the site is built, so that pages carry no
 * script for it. The strict content security policy forbids `style` attributes, so each style the
 * converter writes is replaced by a class of `maths.css`; one that is not listed stops the build.
 */
import type { Element } from 'hast';
import { defineHastPlugin, htmlToHast } from 'satteri';
import temml from 'temml';

/** Style as the converter writes it (zero without a unit) → class in `maths.css`; empty: not needed. */
export const STYLE_CLASSES: Readonly<Record<string, string>> = {
  'display:block math': '', // `maths.css` does it
  'padding-left:0;padding-right:0': 'maths-cell-joined',
  'padding-left:1em;padding-right:0': 'maths-cell-apart',
  'padding-left:0;padding-right:5.9776pt': 'maths-cell-first',
  'padding-left:5.9776pt;padding-right:0': 'maths-cell-last',
  'padding-left:5.9776pt;padding-right:5.9776pt': 'maths-cell',
  'padding:3pt;border:1px solid': 'maths-box',
  'math-depth:0': 'maths-accent',
};

/** Class as the converter writes it → ours; empty: a correction below a tenth of an em, left out. */
export const RENAMED_CLASSES: Readonly<Record<string, string>> = {
  'tml-display': 'maths-display',
  'tml-jot': 'maths-rows',
  'tml-left': 'maths-left',
  'tml-right': 'maths-right',
  'tml-small': 'maths-small',
  'tml-sml-pad': 'maths-nudge',
  'tml-prime': '',
  'tml-overline': '',
  'chr-sml': '',
  'wbk-sml': '',
  'wbk-sml-acc': '',
};

/** A formula that cannot be shown as written; the message is for the author of the page. */
export class FormulaError extends Error {}

function ours(known: Readonly<Record<string, string>>, theirs: string, tex: string): string {
  const found = known[theirs];
  if (found !== undefined) return found;
  throw new FormulaError(
    `The formula "${tex}" needs the style or class "${theirs}", which site/markdown/maths.ts ` +
      'does not know, so part of it would vanish. Write it another way, or add it there and in maths.css.',
  );
}

function normal(style: unknown): string {
  return String(style)
    .replace(/\s*([:;])\s*/g, '$1')
    .replace(/\b0(em|pt|px)\b/g, '0')
    .replace(/;$/, '');
}

/** Replaces styles and foreign classes by ours, in place, all the way down. */
export function replaceStyles(node: Element, tex: string): void {
  const { style, className, ...rest } = node.properties;
  const theirs = Array.isArray(className) ? className.map(String) : [];
  const classes = theirs.map((name) => ours(RENAMED_CLASSES, name, tex));
  if (style !== undefined) classes.push(ours(STYLE_CLASSES, normal(style), tex));
  const kept = classes.filter(Boolean);
  node.properties = kept.length > 0 ? { ...rest, className: kept } : rest;
  for (const child of node.children) {
    if (child.type === 'element') replaceStyles(child, tex);
  }
}

/** One formula in TeX as a MathML element. Throws `FormulaError` for TeX that cannot be read. */
export function formula(tex: string, display: boolean): Element {
  let markup: string;
  try {
    markup = temml.renderToString(tex, { displayMode: display, throwOnError: true, strict: true });
  } catch (error) {
    throw new FormulaError(`The formula "${tex}" cannot be read: ${String(error)}`);
  }
  const root = htmlToHast(markup, { fragment: true });
  const math = 'children' in root ? root.children[0] : undefined;
  if (math?.type !== 'element') throw new FormulaError(`The formula "${tex}" came out empty.`);
  replaceStyles(math, tex);
  return math;
}

function classesOf(node: Readonly<Element>): unknown[] {
  const { className } = node.properties;
  return Array.isArray(className) ? className : [];
}

/** Turns the formulas that the Markdown parser marked into MathML. */
export const maths = defineHastPlugin({
  name: 'maths',
  element: {
    filter: ['pre', 'code'],
    visit(node, context) {
      if (node.tagName === 'code') {
        const inline = classesOf(node).includes('math-inline');
        return inline ? formula(context.textContent(node), false) : undefined;
      }
      const [code] = node.children;
      const block = code?.type === 'element' && classesOf(code).includes('math-display');
      return block ? formula(context.textContent(node), true) : undefined;
    },
  },
});
