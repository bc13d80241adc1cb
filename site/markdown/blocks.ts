/** Takes finished HTML apart into the blocks that stand side by side at its top. */

export interface Block {
  /** Name of the outermost element, small letters. */
  tag: string;
  classes: readonly string[];
  /** The block as it stands, with the scripts and styles that came right before it. */
  html: string;
  /** What a reader reads, without tags. */
  text: string;
}

/** Scripts, styles and comments whole; tags with whatever stands in their quotes; text. */
const PIECES =
  /<script[\s\S]*?<\/script>|<style[\s\S]*?<\/style>|<!--[\s\S]*?-->|<(?:[^>"']|"[^"]*"|'[^']*')*>|[^<]+/g;
const VOID = /^(area|br|col|embed|hr|img|input|link|meta|source|track|wbr)$/;
const LOADER = /^<(script|style|link)\b/;

function nameOf(tag: string): string {
  return (/^<\/?([a-z][\w-]*)/i.exec(tag)?.[1] ?? '').toLowerCase();
}

function classesOf(tag: string): string[] {
  return /\sclass="([^"]*)"/.exec(tag)?.[1]?.split(/\s+/).filter(Boolean) ?? [];
}

/** How much deeper the text after this piece stands. */
function step(piece: string): -1 | 0 | 1 {
  if (!/^<\/?[a-z]/i.test(piece) || LOADER.test(piece)) return 0;
  if (piece.startsWith('</')) return -1;
  return piece.endsWith('/>') || VOID.test(nameOf(piece)) ? 0 : 1;
}

function readable(html: string): string {
  return html
    .replace(/<(script|style|math|svg|template)[\s\S]*?<\/\1>/g, ' ')
    .replace(/<[^>]*>/g, ' ')
    .replace(/&\w+;|&#\d+;/g, '·')
    .replace(/\s+/g, ' ')
    .trim();
}

/** The blocks of a page's HTML, in order. Nothing of it is lost but comments and blank space between blocks. */
export function blocksOf(html: string): Block[] {
  const blocks: Block[] = [];
  let [open, depth] = ['', 0];
  let first = '';
  for (const piece of html.match(PIECES) ?? []) {
    if (piece.startsWith('<!--') && depth === 0) continue;
    const change = step(piece);
    if (depth === 0 && change === 0 && piece.trim() === '') continue;
    if (depth === 0 && first === '' && !LOADER.test(piece)) first = piece;
    open += piece;
    depth += change;
    // A loader at the top waits for the block that it belongs to.
    if (depth > 0 || (depth === 0 && LOADER.test(piece) && first === '')) continue;
    blocks.push({
      tag: nameOf(first),
      classes: classesOf(first),
      html: open,
      text: readable(open),
    });
    [open, first] = ['', ''];
  }
  const last = blocks.at(-1);
  if (open !== '' && last) last.html += open;
  return blocks;
}
