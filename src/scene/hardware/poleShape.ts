/** The tapered round of a wood pole and the grooves that drying opened in it. Origin: groundline on the axis. */
import { BufferAttribute, BufferGeometry } from 'three';
import { noise, step, stream } from '../materials/noise.ts';

export interface PoleSize {
  readonly height: number;
  readonly topDiameter: number;
  readonly groundDiameter: number;
}

/** Radius of the round at a height above the groundline, m. */
export const poleRadius = (size: PoleSize, z: number): number =>
  (size.groundDiameter + (size.topDiameter - size.groundDiameter) * (z / size.height)) / 2;

interface Check {
  readonly azimuth: number;
  readonly from: number;
  readonly to: number;
  readonly half: number;
  readonly depth: number;
}

const checksOf = (size: PoleSize, seed: number): Check[] => {
  const next = stream(seed * 31 + 7);
  return Array.from({ length: 9 }, (_, i) => {
    const length = 0.5 + 2.6 * next();
    const from = i < 3 ? size.height - length : next() * (size.height - length);
    return {
      azimuth: ((i + 0.15 + 0.7 * next()) / 9) * 2 * Math.PI,
      from,
      to: from + length,
      half: 0.0018 + 0.0035 * next(),
      depth: 0.008 + 0.02 * next(),
    };
  });
};

const opening = (c: Check, z: number, height: number): number => {
  const rise = step(c.from, c.from + 0.35, z);
  return c.to >= height - 0.001 ? rise : rise * step(c.to, c.to - 0.35, z);
};

const spiral = 0.035;

/** Wall of the pole with its checks cut in; colours darken grooves and butt and bleach the top. */
export const poleWall = (size: PoleSize, seed: number, below: number, roof = 0): BufferGeometry => {
  const checks = checksOf(size, seed);
  const columns: { a: number; check: Check | null; sign: number }[] = [];
  for (let i = 0; i < 36; i++) {
    const a = (i / 36) * 2 * Math.PI;
    if (!checks.some((c) => Math.abs(c.azimuth - a) < 0.07)) columns.push({ a, check: null, sign: 0 });
  }
  for (const check of checks) for (const sign of [-1, 0, 1]) columns.push({ a: check.azimuth, check, sign });
  columns.sort((p, q) => p.a - q.a || p.sign - q.sign);
  const heights: number[] = [-below, 0, 0.25, 0.6];
  for (let i = 1; i <= 20; i++) heights.push(0.6 + ((size.height - 0.6) * i) / 20);
  for (const c of checks) heights.push(c.from + 0.12, c.from + 0.35, c.to - 0.35, c.to - 0.12);
  heights.sort((p, q) => p - q);
  const rows = heights.filter((z, i) => z <= size.height && (i === 0 || z - (heights[i - 1] as number) > 0.05));
  if (rows[rows.length - 1] !== size.height) rows[rows.length - 1] = size.height;

  const ring = [...columns, { ...(columns[0] as (typeof columns)[number]), a: (columns[0]?.a ?? 0) + 2 * Math.PI }];
  const position: number[] = [];
  const uv: number[] = [];
  const colour: number[] = [];
  const index: number[] = [];
  for (const z of rows) {
    for (const column of ring) {
      const c = column.check;
      const open = c ? opening(c, z, size.height) : 0;
      const round = poleRadius(size, z);
      const lump = 1 + 0.012 * (noise((column.a / 6.2832) * 5, z * 1.4 + 40, seed, 5, 997) - 0.5);
      const r = round * lump - (c && column.sign === 0 ? c.depth * open : 0);
      const a = column.a + spiral * z + (c ? (column.sign * Math.max(0.0004, c.half * open)) / round : 0);
      position.push(r * Math.cos(a), r * Math.sin(a), z === size.height ? z - roof * Math.abs(round * Math.sin(a)) : z);
      uv.push((column.a + spiral * z) / (2 * Math.PI), z / 3);
      const patch = noise((column.a / 6.2832) * 4, z * 0.8 + 20, seed + 3, 4, 997);
      const butt = step(0.9, 0, z);
      const bleach = step(size.height - 3, size.height, z);
      const k = (0.8 + 0.3 * patch + 0.1 * bleach - 0.22 * butt) * (c && column.sign === 0 ? 1 - 0.86 * open : 1);
      colour.push(k, k * (0.985 - 0.03 * butt), k * (0.965 - 0.07 * butt));
    }
  }
  const n = ring.length;
  for (let j = 0; j < rows.length - 1; j++) {
    for (let i = 0; i < n - 1; i++) {
      const p = j * n + i;
      index.push(p, p + 1, p + n, p + 1, p + n + 1, p + n);
    }
  }
  const g = new BufferGeometry();
  g.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  g.setAttribute('uv', new BufferAttribute(new Float32Array(uv), 2));
  g.setAttribute('color', new BufferAttribute(new Float32Array(colour), 3));
  g.setIndex(index);
  g.computeVertexNormals();
  closeSeam(g, n, rows.length);
  return g;
};

const closeSeam = (g: BufferGeometry, n: number, rows: number): void => {
  const normal = g.getAttribute('normal');
  for (let j = 0; j < rows; j++) {
    const p = j * n;
    const q = p + n - 1;
    const x = normal.getX(p) + normal.getX(q);
    const y = normal.getY(p) + normal.getY(q);
    const z = normal.getZ(p) + normal.getZ(q);
    const l = Math.sqrt(x * x + y * y + z * z);
    normal.setXYZ(p, x / l, y / l, z / l);
    normal.setXYZ(q, x / l, y / l, z / l);
  }
};
