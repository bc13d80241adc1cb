/** The answer again, for each machine that this shop has readings from. */

import { learnedScale, readingsFor, type ShopReading } from '../../../core/plan/learned';
import { tapLoads } from '../../../core/plan/tap-load';
import type { NumberRow } from '../../result/NumberList';
import type { KeptReading } from '../../state/readings';
import { decimals, percent, torque, torqueBand, type Unit } from '../../words/format';
import { styleName } from '../../words/names';
import { fill } from '../../words/template';
import { SHOP } from '../../words/en/calculators/torque/shop';
import type { ChamferClass } from '../../../core/chamfer/chamfer';
import type { Fluid } from '../../../core/load/fluid';
import type { HoleRequest } from '../../../core/plan/types';
import type { TapStyle } from '../../../core/tap/tap';

/** The tap in the hole that the readings are set against. */
export interface LearnedFor {
  /** Designation of the thread. */
  thread: string;
  request: HoleRequest;
  style: TapStyle;
  chamfer: ChamferClass;
  fluid: Fluid;
}

export interface LearnedAnswer {
  machine: string;
  title: string;
  rows: NumberRow[];
  used: KeptReading[];
  disagree: boolean;
}

/** The day in the place where the page is read, as 2026-03-14. */
export function today(now = new Date()): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

export function readingText(
  { taken, torque: read, style, worn }: ShopReading,
  edges: { sharp: string; worn: string },
  unit: Unit,
): string {
  const values = {
    taken,
    torque: torque(read, unit),
    style: styleName(style).toLowerCase(),
    edge: worn ? edges.worn : edges.sharp,
  };
  return fill(SHOP.entry, values, unit);
}

function rowsOf(
  { request, chamfer, style, fluid }: LearnedFor,
  learned: { factor: number; band: number },
  unit: Unit,
): NumberRow[] {
  const loads = tapLoads({ ...request, learned }, chamfer, fluid);
  const load = loads.ok ? loads.value.find((each) => each.style === style) : undefined;
  if (!load) return [];
  const between = (low: number, high: number) => [
    fill(SHOP.between, { band: torqueBand(low, high, unit) }, unit),
  ];
  const { torque: sharp, worn, share } = load;
  return [
    {
      name: SHOP.sharp,
      value: torque(sharp.expected, unit),
      beside: between(sharp.low, sharp.high),
    },
    { name: SHOP.worn, value: torque(worn.expected, unit), beside: between(worn.low, worn.high) },
    { name: SHOP.share, value: percent(share.worn) },
  ];
}

const sameName = (a: string, b: string) => a.toLowerCase() === b.toLowerCase();

/** One answer for each machine with readings of this thread and material. */
export function learnedByMachine(
  tap: LearnedFor,
  kept: readonly KeptReading[],
  unit: Unit,
): LearnedAnswer[] {
  const { thread } = tap;
  const { material, ownMaterial: own } = tap.request;
  const readings = kept.map(({ reading }) => reading);
  // One machine, however its name was written that day.
  const machines = readings
    .map(({ machine }) => machine.trim())
    .filter((name, index, all) => all.findIndex((each) => sameName(each, name)) === index);
  return machines.flatMap((machine) => {
    const key = {
      thread,
      material,
      machine,
      ...(own ? { ownName: own.name } : {}),
    };
    const scale = learnedScale(readings, key);
    if (!scale) return [];
    const used = readingsFor(readings, key);
    const { factor, band, count, newest, disagree } = scale;
    const values = { machine, factor: decimals(factor, 2, 1), count, newest };
    const from = fill(count === 1 ? SHOP.fromOne : SHOP.from, values, unit);
    return [
      {
        machine,
        title: `${fill(SHOP.learned, values, unit)}, ${from}`,
        rows: rowsOf(tap, { factor, band }, unit),
        used: kept.filter(({ reading }) => used.includes(reading)),
        disagree,
      },
    ];
  });
}
