/** The far edge of woods all round: one ring with a ragged top, which fog and dusk take away. Distances chosen by eye. */
import { BufferAttribute, BufferGeometry, DoubleSide, Group, Mesh, MeshStandardMaterial } from 'three';
import { layers } from '../materials/noise.ts';
import { groundAt } from './lie.ts';

const PIECES = 1100;

/** A belt of trees at a distance, so high on average; `seed` makes its outline. */
const belt = (far: number, high: number, seed: number): BufferGeometry => {
  const position: number[] = [];
  const colour: number[] = [];
  const index: number[] = [];
  for (let i = 0; i <= PIECES; i++) {
    const u = (i % PIECES) / PIECES;
    const a = u * 2 * Math.PI;
    const r = far * (0.9 + 0.25 * layers(u, 0.3, seed, 7, 3, 2));
    const [x, y] = [r * Math.cos(a), r * Math.sin(a)];
    const gap = layers(u, 0.6, seed + 4, 9, 3, 2);
    const crown = 0.5 + 0.75 * layers(u, 0.1, seed + 9, 260, 3, 3) + 0.25 * layers(u, 0.5, seed + 7, 31, 3, 2);
    const top = groundAt(x, y) + high * crown * Math.min(1, Math.max(0.06, (gap - 0.32) * 5));
    const shade = 0.75 + 0.5 * layers(u, 0.8, seed + 2, 90, 3, 2);
    position.push(x, y, groundAt(x, y) - 3, x * 0.995, y * 0.995, top);
    colour.push(0.5 * shade, 0.5 * shade, 0.5 * shade, shade, shade, shade);
    if (i === PIECES) continue;
    const k = i * 2;
    index.push(k, k + 1, k + 2, k + 1, k + 3, k + 2);
  }
  const g = new BufferGeometry();
  g.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  g.setAttribute('color', new BufferAttribute(new Float32Array(colour), 3));
  const up = new Float32Array(position.length);
  for (let i = 2; i < up.length; i += 3) up[i] = 1;
  g.setAttribute('normal', new BufferAttribute(up, 3));
  g.setIndex(index);
  return g;
};

export interface Horizon {
  readonly group: Group;
  dispose(): void;
}

/** Two belts of woods, one behind the other. */
export const horizonOf = (): Horizon => {
  const group = new Group();
  const material = new MeshStandardMaterial({
    color: 0x39452f,
    roughness: 1,
    vertexColors: true,
    side: DoubleSide,
    envMapIntensity: 0.35,
  });
  for (const [far, high, seed] of [
    [215, 11, 5],
    [280, 17, 31],
  ] as const)
    group.add(new Mesh(belt(far, high, seed), material));
  return {
    group,
    dispose: () => {
      for (const child of group.children) (child as Mesh).geometry.dispose();
      material.dispose();
    },
  };
};
