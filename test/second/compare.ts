/** Puts the core's numbers beside the second reckoning, over the whole range. */

import { readThread, standardThreads, threadLimits, type Thread } from '../../core';
import { obtainableThread, roomBelowThread, tipDepth } from '../../core/hole/depth';
import { unifiedSeries } from '../../core/thread/unified-series';
import { fullThreadAgain, shoulderAgain, tipAgain, type Tap } from './depth';
import { basicsAgain, minorToleranceAgain, pitchToleranceAgain, stepsApart } from './metric';
import { unifiedAgain } from './unified';

export interface Opinion {
  what: string;
  /** Numbers compared, and how many of them are the same to the last place. */
  compared: number;
  agree: number;
  /** Where they are not, one line each. */
  apart: string[];
}

const GRADES = ['1B', '2B', '3B'];
const TPI = [
  4, 4.5, 5, 6, 7, 8, 9, 10, 11, 11.5, 12, 13, 14, 16, 18, 20, 24, 27, 28, 32, 36, 40, 44, 48, 56,
  64, 72, 80,
];

/** Sizes #0 to #12 and sixteenths from 1/4 to 6, ten-thousandths of an inch, with their names. */
function inchSizes(): [size: number, name: string][] {
  const numbers = [0, 1, 2, 3, 4, 5, 6, 8, 10, 12].map((n): [number, string] => [
    600 + 130 * n,
    `#${n}`,
  ]);
  const sixteenths = Array.from({ length: 93 }, (_, i): [number, string] => {
    const count = i + 4;
    const whole = Math.floor(count / 16);
    let [over, under] = [count % 16, 16];
    while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
    const fraction = over === 0 ? '' : `${over}/${under}`;
    // A bare 1, 2 or 3 before a fine pitch is a number size: whole inches are written as decimals.
    return [
      count * 625,
      fraction ? [whole || '', fraction].filter(Boolean).join('-') : `${whole}.000`,
    ];
  });
  return [...numbers, ...sixteenths];
}

/** Every size with every pitch in all three classes, listed or not. */
export function unifiedOpinion(): Opinion {
  const opinion: Opinion = { what: 'Unified limits', compared: 0, agree: 0, apart: [] };
  for (const [size, name] of inchSizes())
    for (const tpi of TPI) {
      // A pitch above two fifths of the diameter is no thread.
      if (10000 / tpi > 0.4 * size) continue;
      const series = unifiedSeries(size / 10000, tpi);
      for (const grade of GRADES) {
        const written = `${name}-${tpi} ${series.replace(/^\d+-/, '')}-${grade}`;
        const reading = readThread(written);
        const limits = reading.ok ? threadLimits(reading.value) : null;
        if (!limits?.ok) {
          opinion.apart.push(`${written}: not answered`);
          continue;
        }
        const again = unifiedAgain(size, tpi, series, grade);
        const { minor, pitch } = limits.value;
        const pairs: [string, number, bigint][] = [
          ['minor min', minor.min, again.minorMin],
          ['minor max', minor.max ?? NaN, again.minorMax],
          ['pitch min', pitch.min, again.pitchMin],
          ['pitch max', pitch.max, again.pitchMax],
        ];
        for (const [what, here, there] of pairs) {
          opinion.compared += 1;
          if (Math.round(here * 10000) === Number(there)) opinion.agree += 1;
          else opinion.apart.push(`${written} ${what}: ${here}, again ${Number(there) / 10000}`);
        }
      }
    }
  return opinion;
}

function metricThreads(): Thread[] {
  return standardThreads().filter(({ system, form }) => system === 'metric' && form === 'M');
}

const micrometres = (mm: number): number => Math.round(mm * 1000);

export function metricBasicsOpinion(): Opinion {
  const opinion: Opinion = { what: 'Metric basic sizes', compared: 0, agree: 0, apart: [] };
  for (const { diameter, pitch } of metricThreads())
    for (const j of [false, true]) {
      const written = `M${j ? 'J' : ''}${diameter}x${pitch}-${j ? '4H5H' : '5H'}`;
      const reading = readThread(written);
      const limits = reading.ok ? threadLimits(reading.value) : null;
      if (!limits?.ok) {
        opinion.apart.push(`${written}: not answered`);
        continue;
      }
      const again = basicsAgain(diameter, pitch, j);
      for (const which of ['pitch', 'minor'] as const) {
        opinion.compared += 1;
        const here = micrometres(limits.value[which].min);
        if (here === again[which]) opinion.agree += 1;
        else opinion.apart.push(`${written} ${which}: ${here}, again ${again[which]} µm`);
      }
    }
  return opinion;
}

/** A cell may lie this many fortieths from its formula: half a step of rounding, and one of smoothing. */
export const MOST_STEPS = 1.75;

export interface Tolerances extends Opinion {
  /** Cells whose table agrees with the formula made a preferred number. */
  nearest: number;
}

export function metricTolerancesOpinion(): Tolerances {
  const opinion: Tolerances = {
    what: 'Metric tolerances against their formulas',
    compared: 0,
    agree: 0,
    nearest: 0,
    apart: [],
  };
  for (const { diameter, pitch } of metricThreads())
    for (const grade of [4, 5, 6, 7, 8]) {
      const reading = readThread(`M${diameter}x${pitch}-${grade}H`);
      const limits = reading.ok ? threadLimits(reading.value) : null;
      if (!limits?.ok) continue;
      const pairs: ['pitch' | 'minor', number][] = [
        ['pitch', pitchToleranceAgain(diameter, pitch, grade)],
        ['minor', minorToleranceAgain(pitch, grade)],
      ];
      for (const [which, formula] of pairs) {
        const { min, max } = limits.value[which];
        const here = micrometres(max ?? NaN) - micrometres(min);
        const steps = stepsApart(here, formula);
        opinion.compared += 1;
        if (steps <= 0.55) opinion.nearest += 1;
        if (steps <= MOST_STEPS) opinion.agree += 1;
        else
          opinion.apart.push(
            `M${diameter}x${pitch}-${grade}H ${which}: ${here}, formula ${formula.toFixed(1)} µm`,
          );
      }
    }
  return opinion;
}

/** Every pitch, chamfer and clearance that a plan can meet, at depths from a fraction to many diameters. */
export function depthOpinion(): Opinion {
  const opinion: Opinion = { what: 'Chain of depths', compared: 0, agree: 0, apart: [] };
  const pitches = [0.2, 0.35, 0.5, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 4, 6, 1.27, 0.7938];
  const chamfers = [1, 1.5, 2, 3, 3.5, 5, 5.5, 8, 10];
  for (const pitch of pitches)
    for (const threads of chamfers)
      for (const clearance of [0.25, 0.5, 1, 3])
        for (const centre of [0, 0.6, 1.5])
          for (const depth of [0.5, 3, 7.5, 16, 24.13, 60]) {
            const chain = { pitch, chamferThreads: threads, centre, clearance };
            const scaled = (mm: number): number => Math.round(mm * 10000);
            const tap: Tap = {
              pitch: scaled(pitch),
              centre: scaled(centre),
              chamferQuarters: threads * 4,
              clearQuarters: clearance * 4,
            };
            const at = scaled(depth);
            const pairs: [string, number, number][] = [
              ['tip', tipDepth(depth, chain), tipAgain(at, tap)],
              ['shoulder', depth + roomBelowThread(chain), shoulderAgain(at, tap)],
              ['full thread', obtainableThread(depth, chain), fullThreadAgain(at, tap)],
            ];
            for (const [what, here, again] of pairs) {
              opinion.compared += 1;
              // The second way moves by ten-thousandths, and twice.
              if (Math.abs(here * 10000 - again) <= 2) opinion.agree += 1;
              else
                opinion.apart.push(
                  `${what} at ${depth}, pitch ${pitch}, ${threads} threads, ${clearance} clear, centre ${centre}: ${here}, again ${again / 10000}`,
                );
            }
          }
  return opinion;
}
