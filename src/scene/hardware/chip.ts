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
  const position: number[] = [];
  const index: number[] = [];
  strip.forEach((c, i) => {
    const a = azimuth + c.turn;
    const r = Math.min(limit(a), rim.radius);
    [
      [c.low - 0.0005, 0.0003],
      [(c.low + c.high) / 2, 0.0016],
      [c.high + 0.0005, 0.0003],
    ].forEach(([z = 0, out = 0]) => {
      const v = new Vector3((r + out) * Math.cos(a), (r + out) * Math.sin(a), z).applyMatrix4(surface.frame);
      position.push(v.x, v.y, v.z);
    });
    if (i === strip.length - 1) return;
    for (const k of [0, 1]) {
      const p = i * 3 + k;
      index.push(p, p + 3, p + 1, p + 1, p + 3, p + 4);
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
