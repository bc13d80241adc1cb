/**
 * The smallest set of tools that serves every hole, and among the smallest the one that stands highest in
 * the holes' own order. Exact: branch and bound over the hole with the fewest choices. A part so tangled
 * that the search would be felt in the browser falls back on the usual rule of taking the tool that
 * serves most.
 */

/** A tool that would do for a hole. `rank`: place in the hole's own order; 0 is its best. */
export interface Option {
  key: string;
  rank: number;
}

/** Holes with the same list of options, counted. */
interface Kind {
  options: ReadonlyMap<string, number>;
  count: number;
}

/** Steps of the search after which a tangled part gives up on proof. About a tenth of a second, slowly. */
const PATIENCE = 20_000;

function kindsOf(holes: readonly (readonly Option[])[]): Kind[] {
  const kinds = new Map<string, Kind>();
  for (const options of holes) {
    const signature = options.map(({ key, rank }) => `${key}:${rank}`).join('|');
    const kind = kinds.get(signature);
    if (kind) kind.count += 1;
    else {
      const ranks = new Map(options.map(({ key, rank }) => [key, rank]));
      kinds.set(signature, { options: ranks, count: 1 });
    }
  }
  return [...kinds.values()].sort((a, b) => a.options.size - b.options.size);
}

function costOf(chosen: readonly string[], kinds: readonly Kind[]): number {
  let cost = 0;
  for (const { options, count } of kinds) {
    let best = Infinity;
    for (const key of chosen) best = Math.min(best, options.get(key) ?? Infinity);
    cost += best * count;
  }
  return cost;
}

/** Holes no two of which can share a tool: so many tools are needed at least. */
function atLeast(open: readonly Kind[]): number {
  const apart: Kind[] = [];
  for (const kind of open) {
    const keys = [...kind.options.keys()];
    if (!apart.some(({ options }) => keys.some((key) => options.has(key)))) apart.push(kind);
  }
  return apart.length;
}

class Search {
  best: { chosen: string[]; cost: number } | undefined;
  steps = 0;

  constructor(
    readonly kinds: readonly Kind[],
    readonly limit: number,
    readonly patience: number,
  ) {}

  run(open: readonly Kind[], chosen: readonly string[]): void {
    const [next] = open;
    if (!next) {
      const cost = costOf(chosen, this.kinds);
      if (!this.best || cost < this.best.cost) this.best = { chosen: [...chosen], cost };
      return;
    }
    if (chosen.length + atLeast(open) > this.limit) return;
    for (const key of next.options.keys()) {
      this.steps += 1;
      if (this.steps > this.patience) return;
      this.run(
        open.filter(({ options }) => !options.has(key)),
        [...chosen, key],
      );
    }
  }
}

function greedy(kinds: readonly Kind[]): string[] {
  const chosen: string[] = [];
  let open = [...kinds];
  while (open.length > 0) {
    const served = new Map<string, number>();
    for (const { options, count } of open) {
      for (const key of options.keys()) served.set(key, (served.get(key) ?? 0) + count);
    }
    const [most] = [...served].reduce((best, each) => (each[1] > best[1] ? each : best));
    chosen.push(most);
    open = open.filter(({ options }) => !options.has(most));
  }
  return chosen;
}

/**
 * Smallest set of keys that serves every hole, cheapest by the sum of ranks among the smallest. Holes
 * without any option are left out. Source: derived.
 */
export function fewestTools(
  holes: readonly (readonly Option[])[],
  patience: number = PATIENCE,
): string[] {
  const kinds = kindsOf(holes.filter((options) => options.length > 0));
  let left = patience;
  for (let limit = atLeast(kinds); limit <= kinds.length && left > 0; limit += 1) {
    const search = new Search(kinds, limit, left);
    search.run(kinds, []);
    if (search.best) return search.best.chosen;
    left -= search.steps;
  }
  return greedy(kinds);
}
