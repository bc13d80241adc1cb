/**
 * The chain of depths a second time, with no sum in it: a tap is lowered into a hole by whole
 * ten-thousandths of a millimetre, and its teeth are looked at.
 */

export interface Tap {
  /** All in ten-thousandths of a millimetre. */
  pitch: number;
  centre: number;
  /** Threads of chamfer, in quarters. */
  chamferQuarters: number;
  /** Pitches kept clear of the shoulder, in quarters. */
  clearQuarters: number;
}

/** True when the ring of metal at `depth` has been cut to full form by the tap standing at `tip`. */
function full(depth: number, tip: number, tap: Tap): boolean {
  // The last full tooth stands where the chamfer has grown to the whole profile.
  const lastFullTooth = tip - tap.centre - (tap.chamferQuarters * tap.pitch) / 4;
  return depth <= lastFullTooth;
}

function mayStand(tip: number, shoulder: number, tap: Tap): boolean {
  return (shoulder - tip) * 4 >= tap.clearQuarters * tap.pitch;
}

/** The least whole number from `low` on for which `holds`, which stays true once it is. */
function leastThat(holds: (value: number) => boolean, low = 0): number {
  let high = low + 1;
  while (!holds(high)) high = low + (high - low) * 2;
  let from = low - 1;
  while (high - from > 1) {
    const middle = Math.floor((from + high) / 2);
    if (holds(middle)) high = middle;
    else from = middle;
  }
  return high;
}

/** How far the nose must go for full thread down to `fullThread`. */
export const tipAgain = (fullThread: number, tap: Tap): number =>
  leastThat((tip) => full(fullThread, tip, tap));

/** How deep the shoulder must be for it. */
export function shoulderAgain(fullThread: number, tap: Tap): number {
  const tip = tipAgain(fullThread, tap);
  return leastThat((shoulder) => mayStand(tip, shoulder, tap));
}

/** How much full thread a hole gives; 0 where the tap cannot even stand in it. */
export function fullThreadAgain(shoulder: number, tap: Tap): number {
  const lowest = leastThat((back) => mayStand(shoulder - back, shoulder, tap));
  const tip = shoulder - lowest;
  return Math.max(
    0,
    leastThat((depth) => !full(depth + 1, tip, tap)),
  );
}
