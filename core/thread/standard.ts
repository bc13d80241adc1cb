/** Every thread of the standard series, for lists and pages. */

import { ISO_261_PAIRS } from '../data/iso-261-pairs';
import { UNC, UNEF, UNF } from '../data/unified-series';
import { fractionName, numberName } from './inch-size';
import { listedPitches } from './metric-series';
import { readThread } from './read';
import type { Thread } from './thread';
import { unifiedSeries } from './unified-series';

/** Constant-pitch inch threads go to 2 inches. */
const LARGEST_CONSTANT = 2;

function metricNames(): string[] {
  return [...ISO_261_PAIRS.keys()].flatMap((diameter) =>
    listedPitches(diameter).map((pitch) => `M${diameter}x${pitch}`),
  );
}

function inchNames(series: string, pairs: ReadonlyMap<number, number>): string[] {
  return [...pairs].map(([size, tpi]) => {
    const diameter = size / 10000;
    return `${numberName(diameter) ?? fractionName(diameter * 64)}-${tpi} ${series}`;
  });
}

/** 8-, 12- and 16-UN where no older series holds the pair: sixteenths below 1 inch, eighths above. */
function constantNames(): string[] {
  const names: string[] = [];
  for (const tpi of [8, 12, 16]) {
    for (let sixteenths = 6; sixteenths <= LARGEST_CONSTANT * 16; sixteenths += 1) {
      const diameter = sixteenths / 16;
      const usual = diameter < 1 || sixteenths % 2 === 0;
      if (!usual || unifiedSeries(diameter, tpi) !== `${tpi}-UN`) continue;
      names.push(`${fractionName(sixteenths * 4)}-${tpi} UN`);
    }
  }
  return names;
}

/**
 * The threads of the standard series in their usual class: ISO 261 coarse and fine from M1 to M100, UNC, UNF,
 * UNEF, and 8-, 12- and 16-UN to 2 inches. Ordered by system, then series, then size.
 * Lengths mm. Nothing is asked, so nothing refused: never throws.
 * Sources: ISO 261 and ASME B1.1, partly from memory.
 */
export function standardThreads(): Thread[] {
  const names = [
    ...metricNames(),
    ...inchNames('UNC', UNC),
    ...inchNames('UNF', UNF),
    ...inchNames('UNEF', UNEF),
    ...constantNames(),
  ];
  return names.flatMap((name) => {
    const reading = readThread(name);
    return reading.ok ? [reading.value] : [];
  });
}
