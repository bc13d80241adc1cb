/** Plans for the gallery, built by hand so that the figures are tried on cases of every shape. */

import type { Chamfer, ChamferClass } from '../../core/chamfer/chamfer';
import { chamferOf } from '../../core/chamfer/classes';
import type { DrillChoice } from '../../core/drill/drill';
import type { HolePlan, HoleRequest, TapChoice } from '../../core/plan/types';
import type { TapStyle } from '../../core/tap/tap';
import type { Thread } from '../../core/thread/thread';

export interface Case {
  designation: string;
  diameter: number;
  pitch: number;
  drill: { name: string; diameter: number; series?: DrillChoice['series'] };
  hole: HoleRequest['hole'];
  fullThread: number;
  /** What this tap can give; the whole of `fullThread` unless said. */
  obtainable?: number;
  style?: TapStyle;
  chamfer?: ChamferClass;
  clearance?: number;
  centre?: number;
  point?: number;
  hand?: 'right' | 'left';
  inch?: boolean;
}

function threadOf(input: Case): Thread {
  return {
    designation: input.designation,
    system: input.inch ? 'unified' : 'metric',
    form: input.inch ? 'UN' : 'M',
    diameter: input.diameter,
    pitch: input.pitch,
    series: 'coarse',
    standard: true,
    class: input.inch ? '2B' : '6H',
    classGiven: true,
    hand: input.hand ?? 'right',
    insert: false,
  };
}

function drillOf({ drill }: Case): DrillChoice {
  return {
    name: drill.name,
    series: drill.series ?? 'metric',
    diameter: drill.diameter,
    percent: { shop: 75, iso: 90 },
    likely: drill.diameter,
    verdict: 'inside',
  };
}

/** Depths of one chamfer, by the chain of a tapped hole. */
function depths(input: Case, chamfer: Chamfer): TapChoice['depth'] {
  const { pitch, hole } = input;
  const cone = input.drill.diameter / (2 * Math.tan(((input.point ?? 118) * Math.PI) / 360));
  const centre = input.centre ?? 0;
  const middle = (chamfer.threads.min + chamfer.threads.max) / 2;
  const fullThread = input.obtainable ?? input.fullThread;
  const clearance = (input.clearance ?? 1) * pitch;
  const past = hole.kind === 'through' && fullThread >= hole.thickness ? pitch : 0;
  const tip = fullThread + chamfer.threads.max * pitch + centre + past;
  const nominalTip = fullThread + middle * pitch + centre + past;
  const shoulder = hole.kind === 'through' ? hole.thickness : tip + clearance;
  return {
    shoulder,
    point: hole.kind === 'through' ? hole.thickness : shoulder + cone,
    tip,
    fullThread,
    roomInPitches: (shoulder - fullThread) / pitch,
    nominal: { shoulder: nominalTip + clearance, tip: nominalTip, fullThread },
  };
}

export function planFor(input: Case): { plan: HolePlan; request: HoleRequest } {
  const style = input.style ?? 'spiral-flute';
  const chamfer = chamferOf(
    input.chamfer ?? 'semi-bottoming',
    input.inch ? 'inch' : 'metric',
    style === 'spiral-point',
  );
  const fits = input.obtainable === undefined;
  const drill = drillOf(input);
  const choice: TapChoice = {
    process: style === 'form' ? 'form' : style === 'thread-mill' ? 'mill' : 'cut',
    style,
    hand: input.hand ?? 'right',
    chamfer,
    verdict: fits ? 'best' : 'no',
    reasons: [],
    drill,
    depth: depths(input, chamfer),
    torque: { low: 2.9, expected: 4, high: 5.6 },
    toothLoad: 120,
    tapShare: { sharp: 0.25, worn: 0.41 },
    chips: { goes: 'back', fits: true, neededRoom: 0 },
  };
  const plan: HolePlan = {
    thread: threadOf(input),
    limits: null,
    drill,
    drills: [drill],
    taps: [choice],
    remedies: [],
    cycle: null,
    warnings: [],
    assumptions: [],
  };
  const request: HoleRequest = {
    thread: input.designation,
    fullThread: input.fullThread,
    hole: input.hole,
    material: 'stainless-austenitic',
    ...(input.centre ? { externalCentre: input.centre } : {}),
  };
  return { plan, request };
}

const blind = (at?: 'shoulder' | 'point', depth = 0): HoleRequest['hole'] =>
  at ? { kind: 'blind', limit: { at, depth } } : { kind: 'blind' };

/** The gallery of sections: every shape of hole the sheet must carry. */
export const SECTIONS: Record<string, Case & { unit?: 'mm' | 'in' }> = {
  'blind-m8-limit': {
    designation: 'M8x1.25-6H',
    diameter: 8,
    pitch: 1.25,
    drill: { name: '6.8', diameter: 6.8 },
    hole: blind('shoulder', 22),
    fullThread: 16,
  },
  'blind-too-shallow-m10': {
    designation: 'M10x1.5-6H',
    diameter: 10,
    pitch: 1.5,
    drill: { name: '8.5', diameter: 8.5 },
    hole: blind('shoulder', 16.5),
    fullThread: 15,
    obtainable: 10.5,
  },
  'blind-point-limit-m6': {
    designation: 'M6x1-6H',
    diameter: 6,
    pitch: 1,
    drill: { name: '5.0', diameter: 5 },
    hole: blind('point', 18),
    fullThread: 12,
  },
  'blind-deep-m3': {
    designation: 'M3x0.5-6H',
    diameter: 3,
    pitch: 0.5,
    drill: { name: '2.5', diameter: 2.5 },
    hole: blind(),
    fullThread: 18,
  },
  'blind-very-deep-m3': {
    designation: 'M3x0.5-6H',
    diameter: 3,
    pitch: 0.5,
    drill: { name: '2.5', diameter: 2.5 },
    hole: blind('shoulder', 65),
    fullThread: 60,
  },
  'blind-far-limit-m8': {
    designation: 'M8x1.25-6H',
    diameter: 8,
    pitch: 1.25,
    drill: { name: '6.8', diameter: 6.8 },
    hole: blind('shoulder', 120),
    fullThread: 16,
  },
  'through-long-m4': {
    designation: 'M4x0.7-6H',
    diameter: 4,
    pitch: 0.7,
    drill: { name: '3.3', diameter: 3.3 },
    hole: { kind: 'through', thickness: 90 },
    fullThread: 10,
  },
  'blind-tiny-m1': {
    designation: 'M1x0.25-6H',
    diameter: 1,
    pitch: 0.25,
    drill: { name: '0.75', diameter: 0.75 },
    hole: blind(),
    fullThread: 1.5,
    chamfer: 'bottoming',
  },
  'blind-wide-m30': {
    designation: 'M30x3.5-6H',
    diameter: 30,
    pitch: 3.5,
    drill: { name: '26.5', diameter: 26.5 },
    hole: blind('shoulder', 26),
    fullThread: 10,
    style: 'straight-flute',
  },
  'blind-m64-fine': {
    designation: 'M64x1.5-6H',
    diameter: 64,
    pitch: 1.5,
    drill: { name: '62.5', diameter: 62.5 },
    hole: blind('shoulder', 70),
    fullThread: 60,
    chamfer: 'bottoming',
    point: 180,
  },
  'blind-inch-coarse': {
    designation: '9/16-12 UNC-2B',
    diameter: 14.2875,
    pitch: 25.4 / 12,
    inch: true,
    unit: 'in',
    drill: { name: '31/64', diameter: 12.3031, series: 'fraction' },
    hole: blind('shoulder', 31),
    fullThread: 21.59,
  },
  'blind-floating-centre': {
    designation: 'M5x0.8-6H',
    diameter: 5,
    pitch: 0.8,
    drill: { name: '4.2', diameter: 4.2 },
    hole: blind(),
    fullThread: 10,
    clearance: 3,
    centre: 2.2,
    chamfer: 'plug',
    style: 'straight-flute',
  },
  'through-thin-m5': {
    designation: 'M5x0.8-6H',
    diameter: 5,
    pitch: 0.8,
    drill: { name: '4.2', diameter: 4.2 },
    hole: { kind: 'through', thickness: 3 },
    fullThread: 3,
    style: 'spiral-point',
    chamfer: 'plug',
  },
  'through-left-m12': {
    designation: 'M12x1.75-6H-LH',
    diameter: 12,
    pitch: 1.75,
    hand: 'left',
    drill: { name: '10.2', diameter: 10.2 },
    hole: { kind: 'through', thickness: 20, clearBelow: 30 },
    fullThread: 20,
    style: 'spiral-point',
    chamfer: 'plug',
  },
  'through-strikes-m8': {
    designation: 'M8x1.25-6H',
    diameter: 8,
    pitch: 1.25,
    drill: { name: '6.8', diameter: 6.8 },
    hole: { kind: 'through', thickness: 12, clearBelow: 5 },
    fullThread: 12,
    style: 'spiral-point',
    chamfer: 'plug',
  },
  'through-part-thread-m10': {
    designation: 'M10x1.5-6H',
    diameter: 10,
    pitch: 1.5,
    drill: { name: '8.5', diameter: 8.5 },
    hole: { kind: 'through', thickness: 40 },
    fullThread: 15,
  },
  'formed-m6': {
    designation: 'M6x1-6H',
    diameter: 6,
    pitch: 1,
    drill: { name: '5.55', diameter: 5.55 },
    hole: blind(),
    fullThread: 12,
    style: 'form',
  },
};
