/** Placing words so that none ever stands on another. */

import { TEXT_SIZE, type TextRole } from './marks';

/** Letters by width in ems, as measured in the site's typeface and rounded up; all others are 0.57. */
const WIDTHS: readonly (readonly [ems: number, letters: string])[] = [
  [0.28, "iljI.,:;'’·| "],
  [0.38, 'frt()-°/'],
  [0.42, '1'],
  [0.51, 'ckszvxyJ–'],
  [0.65, '0468BCKRSUVXYZA#'],
  [0.72, 'wDGHNOQ'],
  [0.88, 'mMW'],
  [1, '%→@'],
];

const EMS = new Map(WIDTHS.flatMap(([ems, letters]) => [...letters].map((one) => [one, ems])));

/** Width of a text in viewBox units, a little on the wide side. */
export function textWidth(words: string, role: TextRole): number {
  const ems = [...words].reduce((sum, letter) => sum + (EMS.get(letter) ?? 0.57), 0);
  const bold = role === 'value' || role === 'title' ? 1.06 : 1;
  return ems * TEXT_SIZE[role] * bold;
}

interface Wish {
  /** Where the middle would like to be. */
  want: number;
  height: number;
}

interface Cluster {
  items: { wish: Wish; index: number }[];
  height: number;
  /** Middle of the cluster. */
  middle: number;
}

function settle(cluster: Cluster, low: number, high: number): Cluster {
  // The middle that serves all wishes with least displacement: the mean of what each asks of the cluster.
  let top = -cluster.height / 2;
  let sum = 0;
  for (const { wish } of cluster.items) {
    sum += wish.want - (top + wish.height / 2);
    top += wish.height;
  }
  const mean = sum / cluster.items.length;
  const half = cluster.height / 2;
  return {
    ...cluster,
    middle: Math.min(Math.max(mean, low + half), Math.max(low + half, high - half)),
  };
}

/**
 * Moves labels apart along one axis, keeping their order and staying as near as can be to where each
 * wants to be. Returns the middles in the order given. Heights should include the gap between labels.
 */
export function spread(wishes: readonly Wish[], low: number, high: number): number[] {
  const order = wishes
    .map((wish, index) => ({ wish, index }))
    .sort((a, b) => a.wish.want - b.wish.want || a.index - b.index);
  const clusters: Cluster[] = [];
  for (const item of order) {
    let next = settle({ items: [item], height: item.wish.height, middle: 0 }, low, high);
    let last = clusters.at(-1);
    while (last && last.middle + last.height / 2 > next.middle - next.height / 2 + 1e-9) {
      clusters.pop();
      const items = [...last.items, ...next.items];
      next = settle({ items, height: last.height + next.height, middle: 0 }, low, high);
      last = clusters.at(-1);
    }
    clusters.push(next);
  }
  const middles = Array.from({ length: wishes.length }, () => 0);
  for (const cluster of clusters) {
    let top = cluster.middle - cluster.height / 2;
    for (const { wish, index } of cluster.items) {
      middles[index] = top + wish.height / 2;
      top += wish.height;
    }
  }
  return middles;
}
