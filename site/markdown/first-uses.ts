/** Links the first use of each glossary term in a lesson's running text, while the site is built. */

export interface Term {
  id: string;
  /** As it stands in the glossary. */
  term: string;
}

/** Terms, by id, that are too common a word to be a link wherever they first stand. */
const EVERYDAY: readonly string[] = ['class', 'land', 'pitch', 'swarf'];

/** Inside these nothing is linked: it is a link already, a heading, a figure, a control, or loaded with script. */
const CLOSED =
  /^(a|astro-island|form|svg|table|h[1-6]|figure|noscript|details|button|blockquote|aside|template)$/;

/** Scripts, styles and comments whole; tags with whatever stands in their quotes; text. */
const PIECES =
  /<script[\s\S]*?<\/script>|<style[\s\S]*?<\/style>|<!--[\s\S]*?-->|<(?:[^>"']|"[^"]*"|'[^']*')*>|[^<]+/g;

function patternOf(term: string): RegExp {
  const words = term.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/ /g, '\\s+');
  return new RegExp(`(?<![\\w-])${words}s?(?![\\w-])`, 'i');
}

/** How deep inside closed elements the text after this tag stands. */
function depthAfter(tag: string, depth: number): number {
  const name = /^<\/?([a-z0-9-]+)/i.exec(tag)?.[1] ?? '';
  if (!CLOSED.test(name) || tag.endsWith('/>')) return depth;
  return tag.startsWith('</') ? depth - 1 : depth + 1;
}

/**
 * The lesson's HTML with a link to the glossary at the first use of each term, longest terms first, so
 * that “pitch diameter” is not taken for “pitch”.
 */
export function linkFirstUses(html: string, terms: readonly Term[]): string {
  const open = terms
    .filter(({ id }) => !EVERYDAY.includes(id))
    .sort((a, b) => b.term.length - a.term.length)
    .map(({ id, term }) => ({ id, pattern: patternOf(term) }));
  let depth = 0;

  /** Text before and after a link may hold further terms, the link itself may not. */
  function linked(text: string): string {
    for (const [place, { id, pattern }] of open.entries()) {
      const found = pattern.exec(text);
      if (!found) continue;
      open.splice(place, 1);
      const before = text.slice(0, found.index);
      const after = text.slice(found.index + found[0].length);
      return `${linked(before)}<a href="/glossary/#${id}">${found[0]}</a>${linked(after)}`;
    }
    return text;
  }

  return html.replace(PIECES, (piece) => {
    if (piece.startsWith('<')) {
      depth = depthAfter(piece, depth);
      return piece;
    }
    return depth > 0 ? piece : linked(piece);
  });
}
