/** Pipe threads: how far the gauge goes in, which drills the lists give, and what the taper does to the sizes. */

import { AMERICAN_TAPER, GAUGE_LENGTH, WHITWORTH_DRILLS } from '../data/pipe-gauging';
import type { DrillSeries } from '../drill/drill';
import { STOCKED_DRILLS } from '../drill/sizes';
import type { SourceId } from '../sources';
import type { Thread } from '../thread/thread';
import { inchToMm } from '../units';

export interface PipeDrill {
  name: string;
  series: DrillSeries;
  /** mm */
  diameter: number;
  /** What the hole gets before the tap: a taper reamer, nothing, or (parallel threads) no question of it. */
  hole: 'reamed' | 'straight' | 'parallel';
  source: SourceId;
}

export interface TaperGauge {
  /** Length the plug gauge measures over, mm. */
  length: number;
  /** How far off the mouth its notch may lie, in turns and in mm, to either side. */
  turns: number;
  travel: number;
  source: SourceId;
}

/** Diameters of an American taper pipe thread, mm. */
export interface TaperSizes {
  /** Pitch diameter at the small end of the male thread (E0) and at the mouth of the hole (E1). */
  pitchSmallEnd: number;
  pitchMouth: number;
  /** Length of effective thread of the pipe (L2). */
  effective: number;
}

export interface PipeNotes {
  taper: boolean;
  gauge: TaperGauge | null;
  sizes: TaperSizes | null;
  drills: readonly PipeDrill[];
}

/** Diameter lost per length of a taper pipe thread, 1 in 16. Source: `asme-b1-20-1`, `iso-7-1`. */
export const PIPE_TAPER = 1 / 16;

/** Turns to either side: American L1 plug flush with the mouth; ISO 7-1 the place of the gauge plane. From memory. */
const TURNS = { american: 1, whitworth: 1.25, whitworthLarge: 1.5 } as const;
const SIZE_TWO_MM = 59.614;

function named(name: string, hole: PipeDrill['hole'], source: SourceId): PipeDrill[] {
  const stocked = STOCKED_DRILLS.find((drill) => drill.name === name && drill.series !== 'metric');
  return stocked ? [{ ...stocked, hole, source }] : [];
}

function metricDrill(diameter: number, hole: PipeDrill['hole'], source: SourceId): PipeDrill {
  const name = diameter.toFixed(2).replace(/0$/, '');
  return { name, series: 'metric', diameter, hole, source };
}

/** E0 = D - (0.05 D + 1.1) P, E1 = E0 + L1/16, L2 = (0.80 D + 6.8) P; inches in, mm out. From memory of ASME B1.20.1. */
function americanSizes(diameter: number, tpi: number, engagement: number): TaperSizes {
  const pitch = 1 / tpi;
  const small = diameter - (0.05 * diameter + 1.1) * pitch;
  return {
    pitchSmallEnd: inchToMm(small),
    pitchMouth: inchToMm(small + PIPE_TAPER * engagement),
    effective: inchToMm((0.8 * diameter + 6.8) * pitch),
  };
}

function american(thread: Thread, inch: NonNullable<Thread['inch']>): PipeNotes {
  const row = AMERICAN_TAPER[inch.size];
  if (!row) return { taper: true, gauge: null, sizes: null, drills: [] };
  return {
    taper: true,
    gauge: {
      length: inchToMm(row.engagement),
      turns: TURNS.american,
      travel: TURNS.american * thread.pitch,
      // Of the smallest size no printed length was read.
      source: inch.size === '1/16' ? 'from-memory' : 'asme-b1-20-1',
    },
    sizes: americanSizes(inch.diameter, inch.tpi, row.engagement),
    drills: [
      ...named(row.reamed, 'reamed', 'common-practice'),
      ...named(row.straight, 'straight', 'common-practice'),
    ],
  };
}

function whitworth(thread: Thread, form: 'G' | 'Rp' | 'Rc', size: string): PipeNotes {
  const length = GAUGE_LENGTH[size];
  const large = thread.diameter > SIZE_TWO_MM;
  const turns = large ? TURNS.whitworthLarge : TURNS.whitworth;
  const tapered = form === 'Rc';
  const drill = WHITWORTH_DRILLS[form][size];
  const source = form === 'G' && size !== '1/16' ? 'freecad' : 'from-memory';
  return {
    taper: tapered,
    gauge:
      form === 'G' || length === undefined
        ? null
        : { length, turns, travel: turns * thread.pitch, source: 'from-memory' },
    sizes: null,
    drills:
      drill === undefined ? [] : [metricDrill(drill, tapered ? 'straight' : 'parallel', source)],
  };
}

/**
 * Gauge lengths and drills of a pipe thread from `readThread`, mm; null for other threads and for the straight NPSM and NPSF, of
 * which nothing is held. `gauge` and `drills` are empty where no value is held. Whether a joint holds pressure
 * is not answered here. Sources: `asme-b1-20-1`, `freecad`, `common-practice`, `from-memory`.
 */
export function pipeNotes(thread: Thread): PipeNotes | null {
  const { form, inch } = thread;
  if (thread.system !== 'pipe' || !inch) return null;
  if (form === 'NPT' || form === 'NPTF') return american(thread, inch);
  if (form === 'G' || form === 'Rp' || form === 'Rc') return whitworth(thread, form, inch.size);
  return null;
}

/** Turns an American L1 plug gauge makes by hand to the mouth: L1 over the pitch. `length` and `pitch` mm. Source: derived. */
export function turnsToMouth(length: number, pitch: number): number {
  return length / pitch;
}
