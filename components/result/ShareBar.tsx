/**
 * A share of what breaks or stalls, as a bar: solid when sharp, open outline when worn, with a
 * mark at the whole. The numbers stand beside it; the bar only makes them quick to see.
 */

const WIDTH = 200;

/** Shares above the whole run to the end of the bar. */
const at = (share: number): number => Math.min(Math.max(share, 0), 1) * WIDTH;

export function ShareBar({ sharp, worn }: { sharp: number; worn?: number }) {
  return (
    <svg class="share" viewBox={`0 0 ${WIDTH} 14`} aria-hidden="true" focusable="false">
      <path class="share-whole" d={`M0 7H${WIDTH}M${WIDTH - 1} 0V14M1 0V14`} />
      {worn !== undefined && <rect class="share-worn" x="1" y="2" width={at(worn)} height="10" />}
      <rect class="share-sharp" x="1" y="2" width={at(sharp)} height="10" />
    </svg>
  );
}
