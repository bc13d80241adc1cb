import { describe, expect, it } from 'vitest';
import { depthChart } from '../../components/chart/depthModel';
import { chartTable, tableCsv } from '../../components/chart/table';
import { torqueChart } from '../../components/chart/torqueModel';
import type { Chart } from '../../components/chart/types';
import { xyChart } from '../../components/chart/xyChart';
import { flatten, type GroupMark, type Mark, type Picture } from '../../components/drawing/marks';
import { chamferPoint } from '../../core/load/chamfer-curve';
import { depthModel, M10, thinModel, torqueModel } from './charts';
import { boxOf, overlapping, strokes, texts } from './readings';

/** Reads a scale off the figure itself, from the places of two tick numbers. */
function readScale(picture: Picture, axis: 'x' | 'y', between?: [number, number]) {
  const numbers = texts(picture)
    .filter((mark) => /^\d+(\.\d+)?$/.test(mark.text))
    .filter((mark) => (axis === 'x' ? mark.anchor === 'middle' : mark.anchor === 'end'))
    .filter((mark) => !between || (mark.y > between[0] && mark.y < between[1]))
    .map((mark) => ({ value: Number(mark.text), at: axis === 'x' ? mark.x : mark.y - 5 }))
    .toSorted((a, b) => a.value - b.value);
  const [low, high] = [numbers[0]!, numbers.at(-1)!];
  return (at: number) =>
    low.value + ((at - low.at) * (high.value - low.value)) / (high.at - low.at);
}

function groups(marks: readonly Mark[], role: string): GroupMark[] {
  return marks.flatMap((mark) =>
    mark.kind !== 'group' ? [] : mark.role.startsWith(role) ? [mark] : groups(mark.marks, role),
  );
}

const ALL: Record<string, Chart> = {
  depth: depthChart(depthModel('mm')),
  'depth in inches': depthChart(depthModel('in')),
  torque: torqueChart(torqueModel()),
  thin: torqueChart(thinModel()),
};

describe('numbers on the charts', () => {
  it('draw every point of the core’s torque curve where the axes say it is', () => {
    const picture = xyChart(torqueChart(torqueModel()), 'wide');
    const lines = groups(picture.marks, 'ch-series').map(
      (series) => strokes({ ...picture, marks: series.marks }, ['ch-line'])[0]!,
    );
    expect(lines).toHaveLength(2);
    const middle = texts(picture).find(({ text }) => text.startsWith('Load'))!.y;
    const toThreads = readScale(picture, 'x');
    const toTorque = readScale(picture, 'y', [0, middle]);
    const toLoad = readScale(picture, 'y', [middle, 1000]);
    expect(lines[0]!.length).toBeGreaterThan(30);
    for (const [x, y] of lines[0]!) {
      const threads = toThreads(x);
      expect(toTorque(y)).toBeCloseTo(chamferPoint(M10, threads).torque.expected, 1);
    }
    for (const [x, y] of lines[1]!) {
      const load = chamferPoint(M10, toThreads(x)).toothLoad;
      expect(Math.abs(toLoad(y) - load) / load).toBeLessThan(0.01);
    }
  });

  it('print the reader’s own values to two figures', () => {
    const point = chamferPoint(M10, 2.5);
    const words = texts(xyChart(torqueChart(torqueModel()), 'narrow')).map((mark) => mark.text);
    expect(words).toContain(`your tap: ${Number(point.torque.expected.toPrecision(2))} N·m`);
    expect(words).toContain(`your tap: ${Number(point.toothLoad.toPrecision(2))} N`);
  });

  it('give the table the core’s values with quantity and unit over each column', () => {
    const table = chartTable(torqueChart(torqueModel()));
    expect(table.head).toEqual([
      'Chamfer length, threads',
      'Torque, low, N·m',
      'Torque, N·m',
      'Torque, high, N·m',
      'Load on the heaviest tooth, N',
    ]);
    for (const [threads, low, mid, high, load] of table.rows) {
      const point = chamferPoint(M10, Number(threads));
      expect(Number(low)).toBe(Number(point.torque.low.toPrecision(2)));
      expect(Number(mid)).toBe(Number(point.torque.expected.toPrecision(2)));
      expect(Number(high)).toBe(Number(point.torque.high.toPrecision(2)));
      expect(Number(load)).toBe(Number(point.toothLoad.toPrecision(2)));
    }
  });

  it('say depths in the reader’s unit', () => {
    const words = texts(xyChart(depthChart(depthModel('in')), 'wide')).map((mark) => mark.text);
    expect(words).toEqual(
      expect.arrayContaining([
        'hole 0.827 in',
        'thread 0.630 in',
        'no deeper 0.866',
        'asked for 0.630',
      ]),
    );
  });

  it('write a spreadsheet that keeps commas inside cells', () => {
    const csv = tableCsv({ head: ['Depth, mm', 'a'], rows: [['1', '2']] });
    expect(csv).toBe('"Depth, mm",a\r\n1,2');
  });
});

describe('every chart', () => {
  for (const [name, chart] of Object.entries(ALL)) {
    for (const width of ['narrow', 'wide'] as const) {
      it(`keeps its words apart and on the sheet: ${name}, ${width}`, () => {
        const picture = xyChart(chart, width);
        const boxes = texts(picture).map(boxOf);
        expect(overlapping(boxes)).toEqual([]);
        for (const box of boxes) {
          expect(box.left, box.words).toBeGreaterThan(-6);
          expect(box.right, box.words).toBeLessThan(picture.width + 8);
        }
        expect(JSON.stringify(flatten(picture.marks))).not.toMatch(/NaN|Infinity|null/);
      });
    }
  }

  it('says so when an axis does not start at zero, and cuts its lines at the edge', () => {
    const chart = depthChart({
      ...depthModel('mm'),
      domain: { shoulder: [15, 25], fullThread: [10, 20] },
    });
    const picture = xyChart(chart, 'narrow');
    const words = texts(picture).map((mark) => mark.text);
    expect(words.filter((text) => text.includes('not from zero'))).toHaveLength(2);
    const toDepth = readScale(picture, 'x');
    for (const [x] of strokes(picture, ['ch-band-edge']).flat()) {
      expect(toDepth(x)).toBeGreaterThan(14.99);
      expect(toDepth(x)).toBeLessThan(25.01);
    }
  });
});
