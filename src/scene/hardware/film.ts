/** A thin film on a turned surface: coloured, partly transparent ribbons and patches that follow it. */
import { BufferAttribute, BufferGeometry, Mesh } from 'three';
import type { Materials } from '../materials/materials.ts';
import { runOf, spotAt } from './markSurface.ts';
import type { MarkSurface } from './types.ts';

export type Rgba = readonly [number, number, number, number];

/** Collects coloured, partly transparent triangles on a surface. */
export class Film {
  readonly position: number[] = [];
  readonly normal: number[] = [];
  readonly colour: number[] = [];
  readonly index: number[] = [];
  private readonly run: number[];
  private readonly surface: MarkSurface;

  constructor(surface: MarkSurface) {
    this.surface = surface;
    this.run = runOf(surface);
  }

  get total(): number {
    return this.run[this.run.length - 1] as number;
  }

  radius(s: number): number {
    return spotAt(this.surface, 0, s, this.run).radius;
  }

  /** The azimuth of what lies `by` metres to the left of an azimuth, on the same face where the section is a rectangle. */
  aside(azimuth: number, s: number, by: number): number {
    const { box } = this.surface;
    if (!box) return azimuth + by / Math.max(0.004, this.radius(s));
    const [hx, hy] = box;
    const onX = Math.abs(Math.cos(azimuth)) / hx >= Math.abs(Math.sin(azimuth)) / hy;
    const [away, half] = onX ? [hx, hy] : [hy, hx];
    const middle = onX ? (Math.cos(azimuth) > 0 ? 0 : Math.PI) : Math.sin(azimuth) > 0 ? Math.PI / 2 : -Math.PI / 2;
    const turn = Math.atan2(Math.sin(azimuth - middle), Math.cos(azimuth - middle));
    const across = Math.max(-half * 0.995, Math.min(half * 0.995, away * Math.tan(turn) + by));
    return middle + Math.atan2(across, away);
  }

  put(azimuth: number, s: number, c: Rgba): void {
    const spot = spotAt(this.surface, azimuth, s, this.run);
    this.position.push(spot.at.x, spot.at.y, spot.at.z);
    this.normal.push(spot.normal.x, spot.normal.y, spot.normal.z);
    this.colour.push(...c);
  }

  /** Ribbon of the given half width along a course of [azimuth, length], dark in the middle and soft at the edges. */
  ribbon(course: readonly (readonly [number, number])[], half: (t: number) => number, c: Rgba, soft: number): void {
    const start = this.position.length / 3;
    const across = [-1, -(1 - soft), 1 - soft, 1];
    course.forEach(([a, s], i) => {
      const [a0, s0] = course[Math.max(0, i - 1)] as readonly [number, number];
      const [a1, s1] = course[Math.min(course.length - 1, i + 1)] as readonly [number, number];
      const r = Math.max(0.004, this.radius(s));
      let dx = (a1 - a0) * r;
      let dy = s1 - s0;
      const l = Math.max(1e-9, Math.sqrt(dx * dx + dy * dy));
      dx /= l;
      dy /= l;
      const w = half(i / (course.length - 1));
      across.forEach((k, n) => {
        const edge = n === 0 || n === 3;
        this.put(this.aside(a, s, -dy * k * w), s + dx * k * w, [c[0], c[1], c[2], edge ? 0 : c[3]]);
      });
    });
    for (let i = 0; i < course.length - 1; i++) {
      for (let k = 0; k < 3; k++) {
        const p = start + i * 4 + k;
        this.index.push(p, p + 1, p + 4, p + 1, p + 5, p + 4);
      }
    }
  }

  /** Patch about [azimuth, length]; `shade` gives colour and opacity by share across (-1 to 1) and along (0 to 1). */
  patch(azimuth: number, from: number, width: number, length: number, shade: (u: number, v: number) => Rgba): void {
    const start = this.position.length / 3;
    const nu = 14;
    const nv = Math.max(10, Math.min(40, Math.round(length / 0.02)));
    for (let j = 0; j <= nv; j++) {
      for (let i = 0; i <= nu; i++) {
        const u = (i / nu) * 2 - 1;
        const s = from + (length * j) / nv;
        this.put(this.aside(azimuth, s, (u * width) / 2), s, shade(u, j / nv));
      }
    }
    for (let j = 0; j < nv; j++) {
      for (let i = 0; i < nu; i++) {
        const p = start + j * (nu + 1) + i;
        this.index.push(p, p + 1, p + nu + 1, p + 1, p + nu + 2, p + nu + 1);
      }
    }
  }

  /** Round spot with a ragged edge about [azimuth, length], half so wide and long, whole up to the share `core` of its radius. */
  blot(azimuth: number, s: number, half: readonly [number, number], c: Rgba, core: number, next: () => number): void {
    const start = this.position.length / 3;
    const round = 12;
    this.put(azimuth, s, c);
    for (let i = 0; i < round; i++) {
      const t = (i / round) * 2 * Math.PI;
      const ragged = 0.8 + 0.4 * next();
      for (const [share, alpha] of [
        [core, c[3]],
        [1, 0],
      ] as const) {
        const [x, y] = [share * ragged * half[0] * Math.cos(t), share * ragged * half[1] * Math.sin(t)];
        const up = Math.max(0, Math.min(this.total, s + y));
        this.put(this.aside(azimuth, up, x), up, [c[0], c[1], c[2], alpha]);
      }
    }
    for (let i = 0; i < round; i++) {
      const [p, q] = [start + 1 + 2 * i, start + 1 + 2 * ((i + 1) % round)];
      this.index.push(start, p, q, p, p + 1, q, q, p + 1, q + 1);
    }
  }

  mesh(name: string, set: Materials): Mesh {
    const g = new BufferGeometry();
    g.setAttribute('position', new BufferAttribute(new Float32Array(this.position), 3));
    g.setAttribute('normal', new BufferAttribute(new Float32Array(this.normal), 3));
    g.setAttribute('color', new BufferAttribute(new Float32Array(this.colour), 4));
    g.setAttribute('uv', new BufferAttribute(new Float32Array((this.position.length / 3) * 2), 2));
    g.setIndex(this.index);
    const mesh = new Mesh(g, set.mark);
    mesh.name = name;
    mesh.receiveShadow = true;
    mesh.renderOrder = 1;
    return mesh;
  }
}
