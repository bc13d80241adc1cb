/** A line of text that remembers, through every rewriting, which word of the original each sign comes from. */

/** What became of a word. The graver one wins where a word holds several pieces. */
export type WordFate = 'read' | 'harmless' | 'notRead';

const GRAVITY: Record<WordFate, number> = { harmless: 0, read: 1, notRead: 2 };

/** Belongs to no word: a space that stands for one, or for the edge of a column. */
const NO_WORD = -1;

export class MarkedText {
  readonly words: readonly string[];
  text = '';
  private owners: number[] = [];
  private fates: (WordFate | undefined)[] = [];
  /** Words that one rewriting took together share their fate. */
  private readonly joined = new Map<number, number>();

  /** `edges`: what a tab and a line break become, so that nothing is read across the edge of a column or a line. */
  constructor(line: string, edges: Readonly<Record<string, string>>) {
    this.words = line.split(/\s+/).filter((word) => word !== '');
    let word = NO_WORD;
    let inside = false;
    for (const sign of line) {
      const space = /\s/.test(sign);
      if (!space && !inside) word += 1;
      inside = !space;
      const put = edges[sign] ?? (space ? ' ' : sign);
      this.text += put;
      for (let unit = 0; unit < put.length; unit += 1) this.owners.push(space ? NO_WORD : word);
    }
  }

  /** Rewrites every match of a global pattern. */
  replace(pattern: RegExp, by: string | ((...found: string[]) => string)): this {
    let text = '';
    const owners: number[] = [];
    let from = 0;
    for (const found of this.text.matchAll(pattern)) {
      const [whole] = found;
      if (whole === '') continue;
      const until = found.index + whole.length;
      text += this.text.slice(from, found.index);
      for (let at = from; at < found.index; at += 1) owners.push(this.owners[at]!);
      const put = typeof by === 'string' ? by : by(...(found as unknown as string[]));
      const owner = this.ownerOf(found.index, until);
      text += put;
      for (let unit = 0; unit < put.length; unit += 1) owners.push(owner);
      from = until;
    }
    if (from === 0) return this;
    for (let at = from; at < this.text.length; at += 1) owners.push(this.owners[at]!);
    this.text = text + this.text.slice(from);
    this.owners = owners;
    return this;
  }

  private ownerOf(from: number, until: number): number {
    const here = [...new Set(this.owners.slice(from, until))].filter((word) => word !== NO_WORD);
    const [first = NO_WORD, ...others] = here;
    for (const other of others)
      if (this.rootOf(other) !== this.rootOf(first))
        this.joined.set(this.rootOf(other), this.rootOf(first));
    return first;
  }

  private rootOf(word: number): number {
    let root = word;
    for (let next = this.joined.get(root); next !== undefined; next = this.joined.get(root))
      root = next;
    return root;
  }

  /** Says what became of a stretch of the text; a later word about it replaces an earlier one. */
  mark(from: number, until: number, fate: WordFate): void {
    for (let at = from; at < until; at += 1) this.fates[at] = fate;
  }

  /** Every word of the line, in its order, in exactly one of three lists. */
  sorted(): Record<WordFate, string[]> {
    const gravest = new Map<number, WordFate>();
    for (let at = 0; at < this.text.length; at += 1) {
      const owner = this.owners[at]!;
      const fate = this.fates[at];
      if (owner === NO_WORD || fate === undefined) continue;
      const root = this.rootOf(owner);
      const before = gravest.get(root);
      if (before === undefined || GRAVITY[fate] > GRAVITY[before]) gravest.set(root, fate);
    }
    const lists: Record<WordFate, string[]> = { read: [], harmless: [], notRead: [] };
    this.words.forEach((word, index) => {
      lists[gravest.get(this.rootOf(index)) ?? 'harmless'].push(word);
    });
    return lists;
  }
}
