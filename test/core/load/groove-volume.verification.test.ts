/**
 * Metal removed per mm of thread, from the area and centroid of one groove, against a thread modelled in
 * the solid: a block, its drilled hole, and a helical cutter of the ISO 68-1 groove taken out of it.
 */
import Module from 'manifold-3d';
import { beforeAll, describe, expect, it } from 'vitest';
import { grooveGeometry, type Groove } from '../../../core/load/torque';

type Kernel = Awaited<ReturnType<typeof Module>>;
let kernel: Kernel;

beforeAll(async () => {
  kernel = await Module();
  kernel.setup();
});

const SEGMENTS = 180;
const TURNS = 3;

/** A helical cutter: the groove from a little inside the hole's wall out to the root, `TURNS` turns long. */
function cutter({ major, pitch, hole }: Groove) {
  const inner = hole / 2 - 0.1 * pitch;
  const half = (radius: number) => pitch / 16 + (major / 2 - radius) * Math.tan(Math.PI / 6);
  const profile = [
    [inner, -half(inner)],
    [major / 2, -half(major / 2)],
    [major / 2, half(major / 2)],
    [inner, half(inner)],
  ] as const;
  const steps = SEGMENTS * TURNS;
  const vertices: number[] = [];
  for (let step = 0; step <= steps; step += 1) {
    const angle = (2 * Math.PI * step) / SEGMENTS;
    const rise = (pitch * step) / SEGMENTS;
    for (const [radius, z] of profile) {
      vertices.push(radius * Math.cos(angle), radius * Math.sin(angle), z + rise);
    }
  }
  const triangles: number[] = [];
  for (let step = 0; step < steps; step += 1) {
    for (let corner = 0; corner < 4; corner += 1) {
      const [a, b] = [4 * step + corner, 4 * step + ((corner + 1) % 4)];
      triangles.push(a, b + 4, b, a, a + 4, b + 4);
    }
  }
  const last = 4 * steps;
  triangles.push(0, 1, 2, 0, 2, 3, last, last + 2, last + 1, last, last + 3, last + 2);
  const mesh = new kernel.Mesh({
    numProp: 3,
    vertProperties: new Float32Array(vertices),
    triVerts: new Uint32Array(triangles),
  });
  const solid = new kernel.Manifold(mesh);
  return solid.volume() > 0 ? solid : null;
}

/** mm³ of metal that one mm of thread costs, measured on the solid. */
function modelled(groove: Groove): number {
  const { major, pitch, hole } = groove;
  const height = (TURNS + 3) * pitch;
  const block = kernel.Manifold.cube([2 * major, 2 * major, height], true);
  const bore = kernel.Manifold.cylinder(2 * height, hole / 2, hole / 2, 4 * SEGMENTS, true);
  const drilled = block.subtract(bore);
  const tool = cutter(groove)?.translate(0, 0, (-TURNS * pitch) / 2);
  if (!tool) throw new Error('the cutter is inside out');
  const threaded = drilled.subtract(tool);
  return (drilled.volume() - threaded.volume()) / (TURNS * pitch);
}

/** Five threads; the smallest and largest hole of their class, and D − P. ISO 965-1 6H, ASME B1.1 2B. */
const THREADS: [name: string, major: number, pitch: number, holes: number[]][] = [
  ['M3×0.5', 3, 0.5, [2.459, 2.5, 2.599]],
  ['M10×1.5', 10, 1.5, [8.376, 8.5, 8.676]],
  ['M30×3.5', 30, 3.5, [26.211, 26.5, 26.771]],
  ['M8×1', 8, 1, [6.917, 7, 7.153]],
  ['1/2-13', 12.7, 25.4 / 13, [10.592, 10.72, 11.024]],
];

describe('removed volume, five threads, three holes each, within 1 %', () => {
  for (const [name, major, pitch, holes] of THREADS) {
    it.each(holes)(`${name}, hole %s`, (hole) => {
      const groove = { major, pitch, hole };
      const solid = modelled(groove);
      expect(Math.abs(grooveGeometry(groove).volumePerDepth / solid - 1)).toBeLessThan(0.01);
    });
  }
});
