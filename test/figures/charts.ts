/** Chart models for the gallery; depths by the chain of a tapped hole, torque by a made-up smooth law. */

import type { DepthChartModel } from '../../components/chart/depthChart';
import type { TorqueChartModel } from '../../components/chart/torqueChart';
import { chamferOf } from '../../core/chamfer/classes';

export const SOURCE = { text: 'worked out here from geometry', href: '/sources/#derived' };

const range = (from: number, to: number, step: number) =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);

export function depthModel(unit: 'mm' | 'in'): DepthChartModel {
  const pitch = 1.25;
  const classes = ['bottoming', 'semi-bottoming', 'plug', 'taper'] as const;
  const bands = classes.map((name) => {
    const { threads } = chamferOf(name, 'metric');
    const room = (count: number) => (count + 1) * pitch;
    return {
      name,
      threads,
      // Corners, where an edge leaves zero, are given among the points.
      data: [...range(0, 30, 1), room(threads.min), room(threads.max)]
        .toSorted((a, b) => a - b)
        .map((x) => ({
          x,
          low: Math.max(0, x - room(threads.max)),
          high: Math.max(0, x - room(threads.min)),
        })),
    };
  });
  return {
    title: 'Only the two shortest chamfers give 16 mm of thread above 22 mm',
    subtitle:
      'Full thread a blind hole can hold, M8x1.25-6H, synchronous spindle, stop clearance one pitch',
    description:
      'Four slanting bands, one for each chamfer class, rise together with the depth of the hole; the shorter the chamfer, the higher its band.',
    unit,
    bands,
    chosen: 1,
    asked: 16,
    limit: 22,
    here: { shoulder: 21, fullThread: 16 },
  };
}

const CLASSES = (['bottoming', 'semi-bottoming', 'plug', 'taper'] as const).map((name) => ({
  name,
  threads: chamferOf(name, 'inch').threads,
}));

const ALONE = { short: '', long: '' };
const loads = (xs: number[]) => xs.map((x) => ({ x, mid: 144 * (5 / x) ** 0.76 }));

export function torqueModel(): TorqueChartModel {
  const xs = range(1, 10, 0.5);
  return {
    title: 'A longer chamfer hardly changes the torque but spares every tooth',
    subtitle: 'Sharp straight-flute tap, M10x1.5 in medium-carbon steel, hole 8.5 mm, 20 mm thick',
    description:
      'Above, a nearly level line of torque in a band that widens toward short chamfers. Below, the load on the heaviest tooth falls steeply and then levels out.',
    unit: 'mm',
    classes: CLASSES,
    torque: [
      {
        label: ALONE,
        strong: true,
        data: xs.map((x) => ({
          x,
          low: 7.7 * (x / 5) ** 0.25 * 0.8,
          mid: 7.7,
          high: 7.7 * Math.max(1, (5 / x) ** 0.2) * 1.3,
        })),
      },
    ],
    load: [{ label: ALONE, strong: true, data: loads(xs) }],
    here: { threads: 2.5, torque: 7.7, load: 144 * 2 ** 0.76 },
  };
}

export function thinModel(): TorqueChartModel {
  const xs = range(1, 10, 0.25);
  const share = (x: number, threads: number) => (threads >= x ? 1 : (threads / x) ** 0.8);
  const torque = [
    { threads: 13.3, short: '20 mm', strong: false },
    { threads: 2, short: '3 mm', strong: true },
  ].map(({ threads, short, strong }) => ({
    label: { short, long: `${short} thick` },
    strong,
    data: xs.map((x) => ({
      x,
      low: 5.5 * share(x, threads),
      mid: 7.7 * share(x, threads),
      high: 10.7 * share(x, threads),
    })),
  }));
  return {
    title: 'In thin plate a long chamfer never bites with all its teeth',
    subtitle: 'Sharp straight-flute tap, M10x1.5 in medium-carbon steel, hole 8.5 mm',
    description:
      'Above, the line for thick work stays level while the line for 3 mm plate falls once the chamfer is longer than the plate is thick. Below, one line of tooth load for both.',
    unit: 'mm',
    classes: CLASSES,
    torque,
    load: [{ label: { short: 'both', long: 'either thickness' }, look: 2, data: loads(xs) }],
    thinFrom: 2,
  };
}
