/** Lays a lesson's blocks out as screens for a class: one idea each, few enough words to read across a room. */

import type { Block } from './blocks';

export interface Screen {
  /** Heading of the part of the lesson it belongs to; null before the first. */
  part: string | null;
  /** True for the first screen of its part, which shows the heading. */
  opens: boolean;
  blocks: Block[];
}

/** Letters that a room can read on one screen; a list item also costs its line. */
const ROOM = 430;
const ITEM = 40;
/** A lead-in this short stays with the figure or question it leads to. */
const LEAD_IN = 180;

const TEXT = /^(p|ul|ol|h3|h4|blockquote)$/;

function isText({ tag, html }: Block): boolean {
  return TEXT.test(tag) && !html.includes('<astro-island');
}

/** A way on to a planner or calculator stays under what it belongs to. */
function isTail({ tag, classes, html }: Block): boolean {
  return (
    tag === 'a' ||
    tag === 'noscript' ||
    classes.includes('to-planner') ||
    /^<p>\s*<a class="to-planner"/.test(html)
  );
}

function weight({ html, text }: Block): number {
  return text.length + (html.match(/<li\b/g)?.length ?? 0) * ITEM;
}

const sum = (blocks: readonly Block[]): number =>
  blocks.reduce((total, block) => total + weight(block), 0);

/** Whether a block still finds room on the screen. */
function fits(screen: Screen, block: Block): boolean {
  const { blocks } = screen;
  if (blocks.length === 0 || isTail(block)) return true;
  if (block.tag === 'h3' || !blocks.every(isText)) return false;
  // A heading or a line that ends in a colon is not left alone.
  if (blocks.every(({ tag }) => /^h\d$/.test(tag)) || blocks.at(-1)!.text.endsWith(':'))
    return true;
  return isText(block) ? sum([...blocks, block]) <= ROOM : sum(blocks) <= LEAD_IN;
}

/** The screens of a lesson's blocks. The instructor's notes must have been taken out. */
export function screensOf(blocks: readonly Block[]): Screen[] {
  const screens: Screen[] = [];
  let part: string | null = null;
  let opens = true;
  for (const block of blocks) {
    if (block.tag === 'h2') {
      [part, opens] = [block.text, true];
      continue;
    }
    const last = screens.at(-1);
    if (last && !opens && fits(last, block)) last.blocks.push(block);
    else screens.push({ part, opens: opens && part !== null, blocks: [block] });
    opens = false;
  }
  return screens;
}

/** True for a screen of few words and nothing else: it can be set larger. */
export function isSpoken({ blocks }: Screen): boolean {
  const letters = blocks.reduce((total, { text }) => total + text.length, 0);
  const plain = blocks.every(
    ({ html }) => !/<(table|svg|form|details|astro-island|figure)\b/.test(html),
  );
  return plain && letters <= ROOM + ITEM;
}
