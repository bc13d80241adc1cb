/** Chart models for the gallery, from the core's own curves. */

import type { DepthChartModel } from '../../components/chart/depthModel';
import type { TorqueChartModel } from '../../components/chart/torqueModel';
import { CHAMFERS } from '../../components/words/en/names';
import { CHAMFER_CLASSES } from '../../core/chamfer/chamfer';
import { chamferOf } from '../../core/chamfer/classes';
import { threadDepthBands } from '../../core/hole/blind';
import { chamferCurve, chamferPoint, type ChamferPoint } from '../../core/load/chamfer-curve';
import { findMaterial } from '../../core/material/table';

export const SOURCE = { text: 'worked out here from geometry', href: '/sources/#derived' };

export const HOLE = { pitch: 1.25, clearance: 1, centre: 0, system: 'metric' } as const;

/** M8x1.25, 16 mm asked for above a shoulder at 22 mm. */
export function depthModel(unit: 'mm' | 'in'): DepthChartModel {
  return {
    title: 'Only the two shortest chamfers give 16 mm of thread above 22 mm',
    subtitle:
      'Full thread a blind hole can hold, M8x1.25-6H, synchronous spindle, stop clearance one pitch',
    description:
      'Four slanting bands, one for each chamfer class, rise together with the depth of the hole; the shorter the chamfer, the higher its band.',
    unit,
    bands: threadDepthBands(HOLE, 0, 30, 30).map(({ chamfer, points }) => ({
      name: CHAMFERS[chamfer.class],
      threads: chamfer.threads,
      data: points.map(({ shoulder, sure, atBest }) => ({ x: shoulder, low: sure, high: atBest })),
    })),
    chosen: 2,
    asked: 16,
    limit: 22,
    here: { shoulder: 21, fullThread: 16 },
  };
}

const CLASSES = CHAMFER_CLASSES.map((name) => ({
  name: CHAMFERS[name],
  threads: chamferOf(name, 'inch').threads,
}));

export const M10 = {
  major: 10,
  pitch: 1.5,
  hole: 8.5,
  material: findMaterial('steel-medium')!,
  flutes: 4,
  fullThread: 20,
  thickness: Infinity,
  styleFactor: 1,
};

const torques = (points: ChamferPoint[]) =>
  points.map(({ threads, torque }) => ({
    x: threads,
    low: torque.low,
    mid: torque.expected,
    high: torque.high,
  }));
const loads = (points: ChamferPoint[]) =>
  points.map(({ threads, toothLoad }) => ({ x: threads, mid: toothLoad }));
const ALONE = { short: '', long: '' };

export function torqueModel(): TorqueChartModel {
  const curve = chamferCurve(M10);
  const here = chamferPoint(M10, 2.5);
  return {
    title: 'A longer chamfer hardly changes the torque but spares every tooth',
    subtitle: 'Sharp straight-flute tap, M10x1.5 in medium-carbon steel, hole 8.5 mm, 20 mm deep',
    description:
      'Above, a nearly level line of torque in a band that widens toward short chamfers. Below, the load on the heaviest tooth falls steeply and then levels out.',
    unit: 'mm',
    classes: CLASSES,
    torque: [{ label: ALONE, strong: true, data: torques(curve) }],
    load: [{ label: ALONE, strong: true, data: loads(curve) }],
    here: { threads: 2.5, torque: here.torque.expected, load: here.toothLoad },
  };
}

export function thinModel(): TorqueChartModel {
  const thin = chamferCurve({ ...M10, fullThread: 3, thickness: 3 });
  return {
    title: 'In thin plate a long chamfer never bites with all its teeth',
    subtitle: 'Sharp straight-flute tap, M10x1.5 in medium-carbon steel, hole 8.5 mm',
    description:
      'Above, the line for thick work stays level while the line for 3 mm plate falls once the chamfer is longer than the plate is thick. Below, one line of tooth load for both.',
    unit: 'mm',
    classes: CLASSES,
    torque: [
      { label: { short: '20 mm', long: '20 mm thick' }, data: torques(chamferCurve(M10)) },
      { label: { short: '3 mm', long: '3 mm thick' }, strong: true, data: torques(thin) },
    ],
    load: [
      {
        label: { short: 'both', long: 'either thickness' },
        look: 2,
        data: loads(chamferCurve(M10)),
      },
    ],
    thinFrom: 2,
  };
}
