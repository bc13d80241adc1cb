/**
 * Diameters of stocked twist drills.
 *
 * Number drills: from memory, checked against `cq-warehouse` (six of its sizes are rounded). Letters: `cq-warehouse`.
 * Fractions: 1/64 steps to 1-3/4, 1/32 to 2-1/4, 1/16 to 4 (from memory).
 * Metric: the steps that stock lists keep (common practice, recalled) together with
 * the sizes that ISO 2306 lists for tapping.
 */

import { DRILL_SERIES, type DrillSeries } from './drill';
import { ISO_2306_COARSE } from './listed';

export interface StockedDrill {
  name: string;
  series: DrillSeries;
  /** mm; inch drills are the inch size times 25.4, exactly. */
  diameter: number;
}

// prettier-ignore
const NUMBER_DRILLS = [
  .228, .221, .213, .209, .2055, .204, .201, .199, .196, .1935, .191, .189, .185, .182, .18, .177,
  .173, .1695, .166, .161, .159, .157, .154, .152, .1495, .147, .144, .1405, .136, .1285, .12, .116,
  .113, .111, .11, .1065, .104, .1015, .0995, .098, .096, .0935, .089, .086, .082, .081, .0785, .076,
  .073, .07, .067, .0635, .0595, .055, .052, .0465, .043, .042, .041, .04, .039, .038, .037, .036,
  .035, .033, .032, .031, .0292, .028, .026, .025, .024, .0225, .021, .02, .018, .016, .0145, .0135,
];

// prettier-ignore
const LETTER_DRILLS = [
  .234, .238, .242, .246, .25, .257, .261, .266, .272, .277, .281, .29, .295,
  .302, .316, .323, .332, .339, .348, .358, .368, .377, .386, .397, .404, .413,
];

const INCH = 25.4;

function fractionName(sixtyFourths: number): string {
  const whole = Math.floor(sixtyFourths / 64);
  let top = sixtyFourths % 64;
  let bottom = 64;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return String(whole);
  return whole > 0 ? `${whole}-${top}/${bottom}` : `${top}/${bottom}`;
}

function fractions(): StockedDrill[] {
  const list: StockedDrill[] = [];
  const step = (count: number) => (count < 112 ? 1 : count < 144 ? 2 : 4);
  for (let count = 1; count <= 256; count += step(count)) {
    list.push({ name: fractionName(count), series: 'fraction', diameter: (count / 64) * INCH });
  }
  return list;
}

function metricHundredths(): number[] {
  const sizes = new Set<number>();
  const add = (from: number, to: number, step: number) => {
    for (let size = from; size <= to; size += step) sizes.add(size);
  };
  add(20, 300, 5);
  add(300, 1400, 10);
  for (let whole = 300; whole < 1400; whole += 100) {
    sizes.add(whole + 25);
    sizes.add(whole + 75);
  }
  add(1400, 3200, 25);
  add(3200, 5000, 50);
  add(5000, 10000, 100);
  for (const listed of Object.values(ISO_2306_COARSE)) sizes.add(Math.round(listed * 100));
  return [...sizes].sort((a, b) => a - b);
}

function buildAll(): StockedDrill[] {
  const metric = metricHundredths().map((hundredths): StockedDrill => {
    const text = (hundredths / 100).toFixed(2).replace(/0$/, '');
    return { name: text, series: 'metric', diameter: hundredths / 100 };
  });
  const numbers = NUMBER_DRILLS.map((inch, index): StockedDrill => ({
    name: `#${index + 1}`,
    series: 'number',
    diameter: inch * INCH,
  }));
  const letters = LETTER_DRILLS.map((inch, index): StockedDrill => ({
    name: String.fromCharCode(65 + index),
    series: 'letter',
    diameter: inch * INCH,
  }));
  return [...metric, ...fractions(), ...numbers, ...letters].sort(
    (a, b) => a.diameter - b.diameter,
  );
}

/** Every stocked drill of the four series, smallest first, mm. Sources: `stocked-drills`, `handbook-drills`. */
export const STOCKED_DRILLS: readonly StockedDrill[] = buildAll();

/**
 * Stocked drills from `from` to `to` mm, of the series given (default all four), smallest first.
 * Sources: `stocked-drills`, `handbook-drills`.
 */
export function drillsBetween(
  from: number,
  to: number,
  series: readonly DrillSeries[] = DRILL_SERIES,
): StockedDrill[] {
  let low = 0;
  let high = STOCKED_DRILLS.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (STOCKED_DRILLS[middle]!.diameter < from) low = middle + 1;
    else high = middle;
  }
  const found: StockedDrill[] = [];
  for (let index = low; index < STOCKED_DRILLS.length; index += 1) {
    const drill = STOCKED_DRILLS[index]!;
    if (drill.diameter > to) break;
    if (series.includes(drill.series)) found.push(drill);
  }
  return found;
}
