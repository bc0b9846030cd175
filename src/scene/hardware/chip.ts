/** A bite out of a rim: vertices of the glazed body are drawn in, and the raw body shows in the break. */
import { BufferAttribute, BufferGeometry, type Group, Mesh, Vector3 } from 'three';
import type { Materials } from '../materials/materials.ts';
import { noise } from '../materials/noise.ts';
import { lengthAt, localAzimuth, runOf, spotAt } from './markSurface.ts';
import type { MarkSurface } from './types.ts';

interface Bite {
  readonly azimuth: number;
  readonly z: number;
  readonly length: number;
  readonly width: number;
  readonly seed?: number;
}

const glazes: readonly string[] = ['porcelainBrown', 'porcelainGrey', 'polymer'];
/** Rows of a break across its depth, and how far its waves stand out, metres. */
const ROWS = 8;
const ROUGH = 0.0022;
const near = (a: number): number => Math.atan2(Math.sin(a), Math.cos(a));

/** Draws the rim in over `width` of its round and `length` of its depth; returns the raw face. */
export const chip = (part: Group, surface: MarkSurface, bite: Bite, set: Materials): Mesh => {
  const run = runOf(surface);
  const azimuth = localAzimuth(surface, bite.azimuth);
  let s = lengthAt(surface, bite.azimuth, bite.z);
  for (let i = 0; i < surface.profile.length; i++) {
    const here = spotAt(surface, azimuth, s, run).radius;
    const q = surface.profile[i] as readonly [number, number];
    if (Math.abs((run[i] as number) - s) < 0.03 && q[0] > here) s = run[i] as number;
  }
  const rim = spotAt(surface, azimuth, s, run);
  const wide = bite.width / 2 / rim.radius;
  const limit = (a: number): number => {
    const t = near(a - azimuth) / wide;
    if (Math.abs(t) >= 1) return 9;
    return rim.radius - bite.length * (1 - t * t) * (0.7 + 0.5 * noise((t + 1) * 4, 0.5, bite.seed ?? 1, 97, 3));
  };
  const inverse = surface.frame.clone().invert();
  const rimZ = rim.at.clone().applyMatrix4(inverse).z;
  const columns = new Map<number, { turn: number; low: number; high: number }>();
  for (const child of part.children) {
    if (!(child instanceof Mesh) || !glazes.includes(child.name)) continue;
    const g = child.geometry.clone() as BufferGeometry;
    const p = g.getAttribute('position');
    const v = new Vector3();
    for (let i = 0; i < p.count; i++) {
      v.fromBufferAttribute(p, i).applyMatrix4(inverse);
      const r = Math.sqrt(v.x * v.x + v.y * v.y);
      const a = Math.atan2(v.y, v.x);
      const max = limit(a);
      if (r <= max || Math.abs(v.z - rimZ) > 0.03) continue;
      const turn = near(a - azimuth);
      const key = Math.round(turn * 1000);
      const column = columns.get(key) ?? { turn, low: v.z, high: v.z };
      columns.set(key, { turn, low: Math.min(column.low, v.z), high: Math.max(column.high, v.z) });
      v.set(max * Math.cos(a), max * Math.sin(a), v.z).applyMatrix4(surface.frame);
      p.setXYZ(i, v.x, v.y, v.z);
    }
    child.geometry = g;
  }
  const inner = [...columns.values()].sort((p, q) => p.turn - q.turn);
  const ends = [-wide, wide].map((turn) => ({ turn, low: rimZ, high: rimZ }));
  const strip = [ends[0], ...inner, ends[1]] as { turn: number; low: number; high: number }[];
  const fine = strip.flatMap((c, i) => {
    const next = strip[i + 1];
    if (next === undefined) return [c];
    const mix = (p: number, q: number, t: number): number => p + (q - p) * t;
    return [0, 1 / 3, 2 / 3].map((t) => ({
      turn: mix(c.turn, next.turn, t),
      low: mix(c.low, next.low, t),
      high: mix(c.high, next.high, t),
    }));
  });
  const position: number[] = [];
  const index: number[] = [];
  fine.forEach((c, i) => {
    const a = azimuth + c.turn;
    const r = Math.min(limit(a), rim.radius);
    const rim0 = i === 0 || i === fine.length - 1;
    for (let k = 0; k <= ROWS; k++) {
      const t = k / ROWS;
      const z = c.low - 0.0005 + (c.high - c.low + 0.001) * t;
      // Broken ware is shelled: hollow waves across the break, with a coarse grain in them.
      const inside = rim0 ? 0 : Math.sin(Math.PI * t);
      const wave =
        0.5 * Math.sin(9 * t + 40 * c.turn) + 1.6 * (noise((c.turn + 4) * 30, t * 5, bite.seed ?? 1, 997, 97) - 0.5);
      const out = 0.0003 + inside * (0.0012 + ROUGH * wave);
      const v = new Vector3((r + out) * Math.cos(a), (r + out) * Math.sin(a), z).applyMatrix4(surface.frame);
      position.push(v.x, v.y, v.z);
    }
    if (i === fine.length - 1) return;
    for (let k = 0; k < ROWS; k++) {
      const p = i * (ROWS + 1) + k;
      const q = p + ROWS + 1;
      index.push(p, q, p + 1, p + 1, q, q + 1);
    }
  });
  const g = new BufferGeometry();
  g.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  g.setAttribute('uv', new BufferAttribute(new Float32Array((position.length / 3) * 2), 2));
  g.setIndex(index);
  g.computeVertexNormals();
  const mesh = new Mesh(g, set.bisque);
  mesh.name = 'mark-chip';
  return mesh;
};
