/**
 * Limits of Unified internal threads a second time: ASME B1.1 formulas on sixty-place numbers. Written
 * from the rules alone; the core is asked only which series a pair belongs to.
 */

import { cubeRoot, exact, over, ratio, rounded, roundedTo, squareRoot, times } from './exact';
import type { Exact } from './exact';

export interface Limits {
  minorMin: bigint;
  minorMax: bigint;
  pitchMin: bigint;
  pitchMax: bigint;
}

const STEPS = '0.19 0.25 0.375 0.5 0.625 0.75 1 1.25 1.5 2 2.5 3 4 5 6'.split(' ').map(exact);
const NINE = exact('9');

function nearest(size: Exact): Exact {
  const away = (step: Exact): Exact => (step > size ? step - size : size - step);
  let best = STEPS[0]!;
  for (const step of STEPS) if (away(step) < away(best)) best = step;
  return best;
}

const least = (a: Exact, b: Exact): Exact => (a < b ? a : b);
const most = (a: Exact, b: Exact): Exact => (a > b ? a : b);

/** P^⅔. */
const twoThirds = (pitch: Exact): Exact => cubeRoot(times(pitch, pitch));

function minorTolerance(size: Exact, pitch: Exact, tpi: number, grade: string): Exact {
  const square = times(pitch, pitch);
  const byRoot =
    times(exact('0.05'), twoThirds(pitch)) +
    over(times(exact('0.03'), pitch), size) -
    exact('0.002');
  const quarter = times(exact('0.25'), pitch) - times(exact('0.4'), square);
  const capped = least(byRoot, times(exact('0.394'), pitch));
  let tolerance: Exact;
  if (grade === '3B') {
    const fine = times(exact('0.23'), pitch) - times(exact('1.5'), square);
    tolerance = most(capped, tpi >= 13 ? fine : times(exact('0.12'), pitch));
  } else if (size < exact('0.25')) tolerance = most(capped, quarter);
  else tolerance = tpi >= 4 ? quarter : times(exact('0.15'), pitch);
  return roundedTo(tolerance, 4);
}

const FACTORS: Record<string, string> = { '1B': '1.95', '2B': '1.3', '3B': '0.975' };

/** Ten-thousandths of an inch. `size` is the basic major diameter in them, `tpi` may be a half. */
export function unifiedAgain(size: number, tpi: number, series: string, grade: string): Limits {
  const major = ratio(BigInt(size), 10000n);
  const pitch = roundedTo(ratio(10n, BigInt(Math.round(tpi * 10))), 8);
  const specialFourteen = size === 10000 && tpi === 14;
  const ownSize = ['UNC', 'UNF', '4-UN', '6-UN', '8-UN'].includes(series) || specialFourteen;
  const engaged = ownSize ? major : times(NINE, pitch);
  const external = roundedTo(
    times(exact('0.0015'), cubeRoot(ownSize ? major : nearest(major)) + squareRoot(engaged)) +
      times(exact('0.015'), twoThirds(pitch)),
    6,
  );
  const pitchMin = rounded(major - roundedTo(times(exact('0.64951905'), pitch), 6), 4);
  const pitchMax = pitchMin + rounded(times(exact(FACTORS[grade]!), external), 4);

  const sixPlaces = major - roundedTo(times(exact('1.08253175'), pitch), 6);
  const basic = series === 'UNS' ? sixPlaces : roundedTo(sixPlaces, 4);
  const widest = basic + minorTolerance(major, pitch, tpi, grade);
  const three = (value: Exact): bigint => rounded(value, 3) * 10n;
  const small = size < 1380;
  return {
    minorMin: small ? rounded(basic, 4) : three(basic),
    minorMax: small || grade === '3B' ? rounded(widest, 4) : three(widest),
    pitchMin,
    pitchMax,
  };
}
