/** Marks that are bodies of their own, set on the surface of their part: a bolt, staples, a stub of wire, threads, heaved soil. */
import { type Group, Matrix4, type Mesh, type Vector3 } from 'three';
import type { Materials } from '../materials/materials.ts';
import { stream } from '../materials/noise.ts';
import { Assembly } from './assembly.ts';
import type { Mark, SolidMark } from './mark.ts';
import type { Spot } from './markSurface.ts';
import { clods, groundPiece, mound, smear } from './mound.ts';
import { bar, block, bolt, curve, ring, rod } from './shapes.ts';
import type { Point } from './types.ts';
import { wire } from './wire.ts';

/** Where a body stands: place, the ways out of the surface and along it. */
export interface Seat {
  readonly spot: Spot;
  readonly along: Vector3;
}

type Maker = (a: Assembly, mark: Mark, next: () => number, down: number) => void;

/** In the frame of the seat: x out of the surface, z along it. */
const makers: Readonly<Record<Exclude<SolidMark, 'chip'>, Maker>> = {
  /** A through-bolt left long: threads far out of its nut and washer. */
  bolt: (a, mark) => {
    // Its nut and what is within the wood take up the rest.
    const length = 0.72 * mark.length;
    a.add('zinc', block([0.0025, 0, 0], [0.005, 0.057, 0.057]), bolt([0.005, 0, 0], [1, 0, 0], 0.027, 0));
    a.add('zinc', rod([0, 0, 0], [length, 0, 0], 0.0075, 12));
    for (let x = 0.03; x < length - 0.004; x += 0.0045) a.add('steelDark', ring([x, 0, 0], [1, 0, 0], 0.0074, 0.0009));
  },
  /** Nails and staples left in rows, rusty, some bent over. */
  staples: (a, { length, width }, next) => {
    const rows = Math.max(4, Math.round(length / 0.1));
    for (let i = 0; i < rows; i++) {
      const z = length * ((i + 0.5) / rows - 0.5);
      for (const side of [-1, 1]) {
        const y = side * width * 0.22 + 0.008 * (next() - 0.5);
        // Rust that rain carried down from it.
        const run = 0.03 + 0.05 * next();
        a.add('rust', bar([0.0008, y, z - 0.004], [0.0008, y, z - run], 0.0035 + 0.003 * next(), 0.0012, [1, 0, 0]));
        if (next() < 0.6) {
          const lean = 0.006 * (next() - 0.5);
          const bow: Point[] = [
            [-0.004, y - 0.008, z],
            [0.008, y - 0.0078, z + lean * 0.5],
            [0.0115, y, z + lean],
            [0.008, y + 0.0078, z + lean * 0.5],
            [-0.004, y + 0.008, z],
          ];
          a.add('rust', wire(curve(bow, 10), 0.0026, 5));
        } else {
          const droop = 0.012 * next();
          const shank: Point[] = [
            [-0.004, y, z],
            [0.012, y, z - droop * 0.3],
            [0.022, y + 0.004 * (next() - 0.5), z - droop],
          ];
          a.add('rust', wire(curve(shank, 6), 0.0024, 5), rod([0.021, y, z - droop], [0.0235, y, z - droop], 0.006, 8));
        }
      }
    }
  },
  /** A finger of copper under its staple, cut flat at both ends. */
  stub: (a, { length }) => {
    const half = length / 2;
    const lies: Point[] = [
      [0.006, 0.002, -half],
      [0.0032, 0, 0],
      [0.012, -0.005, half],
    ];
    a.add('copper', wire(curve(lies, 14), 0.0031, 8));
    a.add('copperFresh', rod([0.012, -0.005, half], [0.0122, -0.0051, half + 0.0008], 0.003, 8));
    const bow: Point[] = [
      [-0.004, -0.009, 0],
      [0.0062, -0.0085, 0],
      [0.0088, 0, 0],
      [0.0062, 0.0085, 0],
      [-0.004, 0.009, 0],
    ];
    a.add('rust', wire(curve(bow, 10), 0.002, 5));
  },
  /** Spun from rim to rim: a few stays and what is laid between them. */
  web: (a, { length, width }, next) => {
    const half = length / 2;
    const thread = 0.00045;
    const stays = Array.from({ length: 6 }, (_, i): [Point, Point] => [
      [0.012 + 0.02 * next(), (i / 5 - 0.5) * width, -half * (0.6 + 0.4 * next())],
      [0.012 + 0.02 * next(), (i / 5 - 0.5) * width * 0.7, half * (0.6 + 0.4 * next())],
    ]);
    const on = (i: number, t: number): Point => {
      const [p, q] = stays[i] as [Point, Point];
      return [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t, p[2] + (q[2] - p[2]) * t];
    };
    for (const [p, q] of stays) a.add('white', rod(p, q, thread, 4));
    for (let k = 1; k < 7; k++)
      for (let i = 0; i < stays.length - 1; i++)
        a.add('white', rod(on(i, k / 7), on(i + 1, k / 7 + 0.05 * (next() - 0.5)), thread * 0.8, 4));
  },
  /** Soil pushed up on this side of a butt that has moved, open in a dark gap on the other. */
  heave: (a, { width, seed = 1 }, next, down) => {
    const r = width / 2;
    const set = new Matrix4().makeTranslation(-r, 0, down);
    a.within(set, () => {
      a.add('earth', mound({ inner: r + 0.005, reach: 0.42, high: 0.17, half: 1.5, seed }));
      a.add('earth', [...clods(r + 0.12, 0.36, 1.3, 9, next)]);
      a.add('earth', smear(r, seed));
      const gap = groundPiece(r, 1.25, (t, k) => [0.055 * k * Math.cos(t) ** 0.8, 0.004]);
      a.add('black', gap.rotateZ(Math.PI));
    });
  },
};

/** Sets the body on its seat; returns its meshes. `down`: from the seat to the ground, along the surface. */
export const solidMark = (
  part: Group,
  kind: Exclude<SolidMark, 'chip'>,
  mark: Mark,
  { spot, along }: Seat,
  down: number,
  set: Materials,
): readonly Mesh[] => {
  const z = along.clone().addScaledVector(spot.normal, -along.dot(spot.normal)).normalize();
  const frame = new Matrix4()
    .makeBasis(spot.normal, z.clone().cross(spot.normal), z)
    .setPosition(spot.at.x, spot.at.y, spot.at.z);
  const a = new Assembly(0);
  a.within(frame, () => makers[kind](a, mark, stream((mark.seed ?? 1) * 13 + 5), down));
  const meshes = a.group(kind, 'whole', set).children as Mesh[];
  for (const mesh of meshes) mesh.name = `mark-${kind}`;
  part.add(...[...meshes]);
  return meshes;
};
