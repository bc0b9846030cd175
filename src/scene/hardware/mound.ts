/** Soil that has moved: pieces of ground about what stands in it, lumpy mounds, clods. Origin: the ground on its axis. */
import { BufferAttribute, BufferGeometry, CylinderGeometry, IcosahedronGeometry } from 'three';
import { noise } from '../materials/noise.ts';

/**
 * A piece of ground about something of radius `r`, round to `half` radians on both sides of x; `form` gives, by turn and share
 * outward, how far out and how high it is, metres.
 */
export const groundPiece = (
  r: number,
  half: number,
  form: (t: number, k: number) => readonly [number, number],
): BufferGeometry => {
  const [round, out] = [36, 8];
  const position: number[] = [];
  const index: number[] = [];
  for (let i = 0; i <= round; i++) {
    const t = ((i / round) * 2 - 1) * half;
    for (let j = 0; j <= out; j++) {
      const [far, high] = form(t, j / out);
      position.push((r + far) * Math.cos(t), (r + far) * Math.sin(t), high);
    }
  }
  for (let i = 0; i < round; i++)
    for (let j = 0; j < out; j++) {
      const p = i * (out + 1) + j;
      index.push(p, p + 1, p + out + 1, p + 1, p + out + 2, p + out + 1);
    }
  const g = new BufferGeometry();
  g.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  g.setIndex(index);
  g.computeVertexNormals();
  return g;
};

export interface Mound {
  readonly inner: number;
  readonly reach: number;
  readonly high: number;
  /** Round to so many radians on both sides; π: all round. */
  readonly half: number;
  readonly seed: number;
}

/** Soil heaped about something, highest at it, its edge crumbled out unevenly. */
export const mound = ({ inner, reach, high, half, seed }: Mound): BufferGeometry => {
  const whole = half >= Math.PI;
  // Round by round, so that a whole one closes.
  const rough = (t: number, k: number, often: number, from: number): number =>
    noise((0.5 + t / (2 * Math.PI)) * often, k * often * 0.4 + from, seed, often, 997);
  return groundPiece(inner, Math.min(half, Math.PI), (t, k) => {
    const lump = 0.75 + 0.5 * rough(t, k, 9, 9);
    const clod = 0.14 * rough(t, k, 26, 30) * (1 - k) * Math.min(1, 3 * k);
    const fall = whole ? 1 : Math.cos((t / half) * (Math.PI / 2));
    return [reach * k * (0.8 + 0.4 * rough(t, 0, 12, 60)), high * fall * (lump * (1 - k) ** 1.5 + clod)];
  });
};

/** Clods that rolled off it, `count` of them from `near` outward over `reach`. */
export const clods = (
  near: number,
  reach: number,
  half: number,
  count: number,
  next: () => number,
): readonly BufferGeometry[] =>
  Array.from({ length: count }, () => {
    const t = (next() * 2 - 1) * half;
    const size = 0.012 + 0.022 * next();
    const at = near + reach * next();
    const turn = 3 * next();
    return new IcosahedronGeometry(size, 1)
      .scale(1, 0.8 + 0.4 * next(), 0.7)
      .rotateZ(turn)
      .translate(at * Math.cos(t), at * Math.sin(t), size * 0.25);
  });

/** Soil that clings to a round butt of radius `r` as it comes out of the ground, its upper edge uneven. */
export const smear = (r: number, seed: number): BufferGeometry => {
  const g = new CylinderGeometry(r * 1.022, r * 1.034, 1, 40, 3, true).rotateX(Math.PI / 2).translate(0, 0, 0.5);
  const p = g.getAttribute('position');
  for (let i = 0; i < p.count; i++) {
    const turn = 0.5 + Math.atan2(p.getY(i), p.getX(i)) / (2 * Math.PI);
    p.setZ(i, p.getZ(i) * (0.09 + 0.07 * noise(turn * 14, 0.5, seed + 7, 14, 3)));
  }
  g.computeVertexNormals();
  return g;
};
