/**
 * Torsion of a solid bar of any section: Prandtl's stress function by finite differences, with the true
 * distance to the edge used beside the boundary. Not shipped; it stands beside the web formula as a check.
 */

export interface Section {
  /** True inside the metal; the axis of twist is at the origin. */
  inside(x: number, y: number): boolean;
  /** Half the size of a square that holds the section. */
  reach: number;
}

export interface Torsion {
  /** Torsion constant J: torque over (shear modulus × twist per length). */
  constant: number;
  /** Stress function at a point, bilinear between nodes, 0 outside. */
  at(x: number, y: number): number;
  step: number;
}

/** Distance from a point inside to the edge along a direction, at most `step`. */
function toEdge(section: Section, x: number, y: number, dx: number, dy: number, step: number) {
  if (section.inside(x + dx * step, y + dy * step)) return step;
  let [low, high] = [0, step];
  for (let halving = 0; halving < 40; halving += 1) {
    const middle = (low + high) / 2;
    if (section.inside(x + dx * middle, y + dy * middle)) low = middle;
    else high = middle;
  }
  return Math.max(low, step * 1e-4);
}

interface Node {
  index: number;
  /** Neighbours east, west, north, south with their weights, and the sum of the weights. */
  links: [number, number][];
  sum: number;
}

function nodesOf(section: Section, count: number, step: number): Node[] {
  const nodes: Node[] = [];
  const place = (column: number) => (column - count / 2) * step;
  for (let row = 0; row <= count; row += 1) {
    for (let column = 0; column <= count; column += 1) {
      const [x, y] = [place(column), place(row)];
      if (!section.inside(x, y)) continue;
      const index = row * (count + 1) + column;
      const reach = (dx: number, dy: number) => toEdge(section, x, y, dx, dy, step);
      const [east, west, north, south] = [reach(1, 0), reach(-1, 0), reach(0, 1), reach(0, -1)];
      const weights = [
        2 / (east * (east + west)),
        2 / (west * (east + west)),
        2 / (north * (north + south)),
        2 / (south * (north + south)),
      ];
      const neighbours = [index + 1, index - 1, index + count + 1, index - count - 1];
      const lengths = [east, west, north, south];
      const links = neighbours.flatMap((neighbour, side): [number, number][] =>
        lengths[side] === step ? [[neighbour, weights[side]!]] : [],
      );
      nodes.push({ index, links, sum: weights.reduce((a, b) => a + b, 0) });
    }
  }
  return nodes;
}

/** Solves ∇²φ = −2 with φ = 0 at the edge by over-relaxation; `count` cells across. */
export function torsionOf(section: Section, count = 160): Torsion {
  const even = 2 * Math.ceil(count / 2);
  const step = (2 * section.reach) / even;
  const nodes = nodesOf(section, even, step);
  const phi = new Float64Array((even + 1) ** 2);
  const factor = 2 / (1 + Math.sin(Math.PI / (0.75 * even)));
  let change = Infinity;
  for (let sweep = 0; sweep < 4000 && change > 1e-9 * section.reach ** 2; sweep += 1) {
    change = 0;
    for (const { index, links, sum } of nodes) {
      let flow = 2;
      for (const [neighbour, weight] of links) flow += weight * phi[neighbour]!;
      const delta = factor * (flow / sum - phi[index]!);
      phi[index]! += delta;
      change = Math.max(change, Math.abs(delta));
    }
  }
  const total = nodes.reduce((sum, { index }) => sum + phi[index]!, 0);
  const value = (column: number, row: number) => phi[row * (even + 1) + column] ?? 0;
  return {
    constant: 2 * total * step ** 2,
    step,
    at(x, y) {
      const [column, row] = [x / step + even / 2, y / step + even / 2];
      const [c, r] = [Math.floor(column), Math.floor(row)];
      const [u, v] = [column - c, row - r];
      return (
        value(c, r) * (1 - u) * (1 - v) +
        value(c + 1, r) * u * (1 - v) +
        value(c, r + 1) * (1 - u) * v +
        value(c + 1, r + 1) * u * v
      );
    },
  };
}

/**
 * Shear stress at a point of the edge per (shear modulus × twist per length): slope of the stress function
 * along the inward normal, by a parabola through the edge (0) and two points inside.
 */
export function edgeStress(torsion: Torsion, x: number, y: number, nx: number, ny: number): number {
  const [near, far] = [2 * torsion.step, 4 * torsion.step];
  const at = (distance: number) => torsion.at(x + nx * distance, y + ny * distance);
  return (at(near) * far ** 2 - at(far) * near ** 2) / (near * far * (far - near));
}

/** A tap as an idealised section: a round bar with `flutes` round-bottomed flutes down to the web. */
export function flutedSection(
  outer: number,
  web: number,
  flutes: number,
  fluteRadius: number,
): Section {
  const centres = Array.from({ length: flutes }, (_, index) => {
    const angle = (2 * Math.PI * index) / flutes;
    const distance = web / 2 + fluteRadius;
    return [distance * Math.cos(angle), distance * Math.sin(angle)] as const;
  });
  return {
    reach: outer / 2 + outer / 40,
    inside: (x, y) =>
      x * x + y * y < (outer / 2) ** 2 &&
      centres.every(([cx, cy]) => (x - cx) ** 2 + (y - cy) ** 2 > fluteRadius ** 2),
  };
}

/** Torque over largest stress of a fluted section, over that of the web circle alone. */
export function webFactor(
  outer: number,
  web: number,
  flutes: number,
  fluteRadius: number,
  count?: number,
): { factor: number; atBottom: boolean } {
  const torsion = torsionOf(flutedSection(outer, web, flutes, fluteRadius), count);
  const centre = web / 2 + fluteRadius;
  const stresses = Array.from({ length: 13 }, (_, index) => {
    const angle = (index * Math.PI) / 24;
    const [nx, ny] = [-Math.cos(angle), Math.sin(angle)];
    const [x, y] = [centre + nx * fluteRadius, ny * fluteRadius];
    return Math.hypot(x, y) < 0.9 * (outer / 2) ? edgeStress(torsion, x, y, nx, ny) : 0;
  });
  const most = Math.max(...stresses);
  const circle = (Math.PI * web ** 3) / 16;
  return { factor: torsion.constant / most / circle, atBottom: stresses[0]! >= 0.97 * most };
}
