/** Text and requests as carelessness and malice write them, from a seed: the same seed writes the same. */
import { seeded, type Draw } from '../../core/seeded.ts';
import { MATERIAL_IDS } from '../../core/material/material.ts';
import { CHAMFER_CLASSES } from '../../core/chamfer/chamfer.ts';
import type { HoleRequest } from '../../core/plan/types.ts';

const THREADS = [
  'M8x1.25-6H',
  'M10',
  'M6-6H',
  'MJ10x1.5-4H5H',
  'EG M8x1.25-6H',
  'M12x1.75-LH',
  '1/4-20 UNC-2B',
  '#10-32 UNF-3B',
  '.250-20 UN-2B',
  '1 1/8-7 UNC-1B',
  'STI 1/4-20 UNC-3B',
  'UNJF 1/4-28-3B',
  'G1/4',
  '1/4-18 NPT',
  'Rp1/2',
  'Rc3/4',
  'Tr20x4',
  'M8-6g',
];
const CALLOUTS = [
  '6× M10×1.5-6H ↧15 / Ø8.5 ↧16.5',
  '4X 1/4-20 UNC-2B THRU',
  'M6 - 6H ⌵ Ø6.6 X 90°',
  '2X #10-32 UNF-2B ↧.375 TYP',
  'M8x1.25-6H THRU ⌴ Ø15 ↧8',
  'Ø6.8 ↧20, M8 ↧16 FULL THD',
  '3/8-16 UNC - 2B DEEP .75',
];
const PIECES = [
  ...'0123456789.-/x×XMGUNCFHgh#Ø↧⌵⌴° ,;"\'()<>&%$€\\{}[]|~^\t\n\r\u0000\u00a0\u2212\u202e\ufeff🔩',
  'e9',
  'NaN',
  'Infinity',
  '__proto__',
  '1e999',
  '--',
  'x'.repeat(300),
  '²½',
  '٣',
];

const pick = <T>(draw: Draw, list: readonly T[]): T => list[Math.floor(draw() * list.length)]!;

/** A spelling with up to a few pieces put in, left out, doubled or swapped. */
function mangled(draw: Draw, text: string): string {
  const letters = [...text];
  const times = Math.floor(draw() * 5);
  for (let done = 0; done < times; done += 1) {
    const at = Math.floor(draw() * (letters.length + 1));
    const kind = draw();
    if (kind < 0.4) letters.splice(at, 0, pick(draw, PIECES));
    else if (kind < 0.65) letters.splice(at, 1 + Math.floor(draw() * 3));
    else if (kind < 0.8) letters.splice(at, 1, pick(draw, PIECES));
    else if (kind < 0.9) letters.splice(at, 0, ...letters.slice(0, at));
    else letters.reverse();
    if (letters.length > 2000) letters.length = 2000;
  }
  return letters.join('');
}

export function* mangledThreads(count: number, seed: number): Generator<string> {
  const draw = seeded(seed);
  for (let done = 0; done < count; done += 1) yield mangled(draw, pick(draw, THREADS));
}

export function* mangledCallouts(count: number, seed: number): Generator<string> {
  const draw = seeded(seed);
  for (let done = 0; done < count; done += 1) yield mangled(draw, pick(draw, CALLOUTS));
}

/** Numbers that somebody types, and numbers that nobody should. */
function number(draw: Draw): number {
  const kind = draw();
  if (kind < 0.7) return Math.round(draw() * 600) / 10;
  if (kind < 0.8) return draw() * 1e-6;
  return pick(draw, [0, -1, -0, 1e9, 1e308, Number.NaN, Infinity, -Infinity, 5e-324]);
}

const sometimes = <T>(draw: Draw, value: () => T): T | undefined =>
  draw() < 0.25 ? value() : undefined;

function request(draw: Draw): HoleRequest {
  const thread = draw() < 0.8 ? pick(draw, THREADS) : mangled(draw, pick(draw, THREADS));
  const hole: HoleRequest['hole'] =
    draw() < 0.5
      ? {
          kind: 'through',
          thickness: number(draw),
          clearBelow: sometimes(draw, () => number(draw)),
          chipsMayFall: sometimes(draw, () => draw() < 0.5),
        }
      : {
          kind: 'blind',
          limit: sometimes(draw, () => ({
            at: pick(draw, ['shoulder', 'point'] as const),
            depth: number(draw),
          })),
        };
  const whole: HoleRequest = {
    thread,
    hole,
    material: pick(draw, [...MATERIAL_IDS, 'wood' as (typeof MATERIAL_IDS)[number]]),
    fullThread: sometimes(draw, () => number(draw)),
    spindle: sometimes(draw, () => ({
      drive: pick(draw, ['synchronous', 'floating', 'reversing-head', 'hand'] as const),
      torque: sometimes(draw, () => number(draw)),
      maxRpm: sometimes(draw, () => number(draw)),
      acceleration: sometimes(draw, () => number(draw)),
    })),
    drillPoint: sometimes(draw, () => number(draw)),
    stockedDrills: sometimes(draw, () => [pick(draw, ['metric', 'fraction', 'number', 'letter'])]),
    tapWeb: sometimes(draw, () => number(draw)),
    externalCentre: sometimes(draw, () => number(draw)),
    interrupted: sometimes(draw, () => true),
    entry: sometimes(draw, () => ({ angle: number(draw), flat: draw() < 0.5 })),
    crossing: sometimes(draw, () => ({
      kind: pick(draw, ['bore', 'slot', 'hole']),
      width: number(draw),
      from: sometimes(draw, () => number(draw)),
      cut: pick(draw, ['before', 'after']),
    })),
    counterbore: sometimes(draw, () => ({ diameter: number(draw), depth: number(draw) })),
    cored: sometimes(draw, () => true),
    later: sometimes(draw, () => [pick(draw, ['harden', 'plate', 'anodise', 'weld', 'paint'])]),
    duty: sometimes(draw, () => pick(draw, ['lifting', 'pressure', 'medical', 'none'])),
    coating: sometimes(draw, () => ({
      thickness: [number(draw) / 1000, number(draw) / 1000] as [number, number],
    })),
    measured: sometimes(draw, () => ({
      torque: number(draw),
      style: pick(draw, ['spiral-point', 'spiral-flute', 'straight-flute', 'form'] as const),
      chamfer: pick(draw, CHAMFER_CLASSES),
      worn: draw() < 0.5,
    })),
  } as HoleRequest;
  // What is not asked for is left out, not undefined.
  return JSON.parse(
    JSON.stringify(whole, (_, value: unknown) => encode(value)),
    decode,
  ) as never;
}

/** JSON has no words for these; they must survive the trip. */
const ODD: Record<string, number> = { NaN, Infinity, '-Infinity': -Infinity };
function encode(value: unknown): unknown {
  return typeof value === 'number' && !Number.isFinite(value) ? `odd:${value}` : value;
}
function decode(_: string, value: unknown): unknown {
  return typeof value === 'string' && value.startsWith('odd:') ? ODD[value.slice(4)] : value;
}

export function* wildRequests(count: number, seed: number): Generator<HoleRequest> {
  const draw = seeded(seed);
  for (let done = 0; done < count; done += 1) yield request(draw);
}
