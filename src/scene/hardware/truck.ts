/**
 * Bucket truck, plain white, simplified: cab, body with bins, turret, two booms, bucket, outriggers. Origin: ground under
 * the middle; it heads along `side`. States: `stowed`, `set-up` (outriggers down), `raised` (set up, bucket at the first
 * of `points`, given in the frame of the truck's parent less its position). Names points where cones stand.
 */
import { CylinderGeometry, Vector3 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { bar, block, plate, point, rod, vec } from './shapes.ts';
import type { Point } from './types.ts';

const wheels = (a: Assembly, half: number): void => {
  const axle = (x: number, twin: boolean): void => {
    for (const s of [-1, 1]) {
      const y = s * (half - (twin ? 0.17 : 0.1));
      const width = twin ? 0.5 : 0.27;
      const tyre = new CylinderGeometry(0.47, 0.47, width, 28).translate(x, y - (twin ? s * 0.11 : 0), 0.47);
      a.add('rubber', tyre);
      a.add('zinc', new CylinderGeometry(0.27, 0.27, width + 0.012, 22).translate(x, y - (twin ? s * 0.11 : 0), 0.47));
      a.add(
        'steelDark',
        new CylinderGeometry(0.11, 0.13, width + 0.08, 16).translate(x, y - (twin ? s * 0.11 : 0), 0.47),
      );
    }
  };
  axle(FRONT, false);
  axle(-1.75, true);
  a.add(
    'steelDark',
    bar([-3.5, 0.4, 0.68], [3.2, 0.4, 0.68], 0.1, 0.22),
    bar([-3.5, -0.4, 0.68], [3.2, -0.4, 0.68], 0.1, 0.22),
  );
};

/** Where the front axle is. */
const FRONT = 2.45;
/** How far the cab's broken edges stand out beyond its outline. */
const EDGE = 0.05;

/** The windscreen in its rubber, leaning on the cab's slope from `low` to `high`, two wipers on it. */
const windscreen = (a: Assembly, half: number, low: Vector3, high: Vector3): void => {
  const up = high.clone().sub(low);
  const out = new Vector3(up.z, 0, -up.x).normalize();
  const on = (share: number, y: number, lift: number): Point =>
    point(
      low
        .clone()
        .addScaledVector(up, share)
        .addScaledVector(out, EDGE + lift)
        .setY(y),
    );
  const sheet = (from: number, to: number, width: number, lift: number) =>
    bar(on(from, 0, lift), on(to, 0, lift), width, 0.012, point(out));
  a.add('black', sheet(0.04, 0.96, half * 2 - 0.26, 0));
  a.add('windowDark', sheet(0.09, 0.91, half * 2 - 0.36, 0.006));
  for (const y of [-0.75, 0.1]) a.add('black', rod(on(0.06, y, 0.03), on(0.2, y + 0.6, 0.02), 0.011, 6));
};

const cab = (a: Assembly, half: number): void => {
  const outline = [
    [1.35, 0.62],
    [3.62, 0.62],
    [3.66, 1.12],
    [3.58, 1.42],
    [2.95, 1.58],
    [2.5, 2.32],
    [2.36, 2.42],
    [1.45, 2.44],
    [1.35, 2.36],
  ] as const;
  a.add(
    'truckPaint',
    plate(outline, half * 2 - 0.16, EDGE)
      .rotateX(Math.PI / 2)
      .translate(0, half - 0.08, 0),
  );
  for (const s of [-1, 1]) {
    const y = s * (half - 0.024);
    const glass = plate(
      [
        [1.56, 1.56],
        [2.82, 1.56],
        [2.42, 2.26],
        [1.56, 2.28],
      ],
      0.006,
      0.002,
    );
    a.add('windowDark', glass.rotateX(Math.PI / 2).translate(0, y + 0.003, 0));
    a.add(
      'black',
      bar([2.82, y, 0.95], [2.82, y, 1.55], 0.008, 0.008),
      bar([1.52, y, 0.8], [1.52, y, 2.3], 0.008, 0.008),
    );
    a.add('black', block([1.75, y, 1.45], [0.16, 0.03, 0.03], 0.3));
    a.add(
      'black',
      rod([2.75, s * half, 1.6], [2.8, s * (half + 0.2), 1.62], 0.014, 6),
      block([2.8, s * (half + 0.22), 1.72], [0.07, 0.14, 0.34], 0.25),
    );
    const front = 3.65 + EDGE;
    a.add('black', block([front, s * 0.87, 1.15], [0.03, 0.46, 0.24], 0.2));
    a.add('lens', block([front + 0.01, s * 0.81, 1.15], [0.05, 0.26, 0.18], 0.25));
    a.add('safetyOrange', block([front + 0.01, s * 1.03, 1.15], [0.05, 0.1, 0.16], 0.25));
    // The wheel's house: the tyre stands before it.
    a.add('black', new CylinderGeometry(0.58, 0.58, 0.02, 28).translate(FRONT, s * (half - 0.024), 0.47));
  }
  windscreen(a, half, vec([2.95, 0, 1.58]), vec([2.5, 0, 2.32]));
  a.add(
    'black',
    block([3.66 + EDGE, 0, 1.12], [0.05, 1.2, 0.34], 0.1),
    block([3.72 + EDGE, 0, 0.72], [0.16, half * 2 - 0.1, 0.24], 0.3),
  );
  for (const z of [1.02, 1.12, 1.22]) a.add('zinc', bar([3.69 + EDGE, -0.56, z], [3.69 + EDGE, 0.56, z], 0.02, 0.02));
};

const body = (a: Assembly, half: number): void => {
  a.add('truckPaint', block([-1.2, 0, 0.95], [4.5, half * 2 - 1.0, 0.3], 0.1));
  for (const s of [-1, 1]) {
    const y = s * (half - 0.26);
    a.add('truckPaint', block([0.1, y, 1.28], [1.8, 0.5, 1.08], 0.05), block([-2.95, y, 1.28], [1.1, 0.5, 1.08], 0.05));
    a.add('truckPaint', block([-1.6, y, 1.53], [1.7, 0.5, 0.58], 0.08));
    const face = s * (half - 0.006);
    for (const [x0, x1, z0, z1] of [
      [-0.76, -0.06, 0.78, 1.78],
      [0.0, 0.96, 0.78, 1.78],
      [-2.4, -0.84, 1.28, 1.78],
      [-3.46, -2.46, 0.78, 1.78],
    ] as const) {
      for (const z of [z0, z1]) a.add('black', bar([x0, face, z], [x1, face, z], 0.01, 0.012));
      for (const x of [x0, x1]) a.add('black', bar([x, face, z0], [x, face, z1], 0.01, 0.012, [1, 0, 0]));
      a.add('steelDark', block([(x0 + x1) / 2, face, z1 - 0.16], [0.12, 0.03, 0.07], 0.2));
    }
    a.add('reflective', block([-1.2, face, 0.73], [4.4, 0.008, 0.06], 0));
    a.add('red', block([-3.52, s * (half - 0.2), 1.0], [0.03, 0.12, 0.1], 0.2));
  }
  a.add('black', block([-3.62, 0, 0.72], [0.18, half * 2 - 0.2, 0.2], 0.2));
  for (let i = 0; i < 8; i++) {
    a.add(i % 2 ? 'yellow' : 'red', block([-3.525, -0.56 + i * 0.16, 1.1], [0.012, 0.16, 0.34], 0));
  }
  a.add(
    'safetyOrange',
    rod([1.7, 0.5, 2.44], [1.7, 0.5, 2.58], 0.09, 16, 0.07),
    rod([1.7, -0.5, 2.44], [1.7, -0.5, 2.58], 0.09, 16, 0.07),
  );
};

const outriggers = (a: Assembly, half: number, down: boolean): void => {
  for (const x of [0.98, -2.36]) {
    for (const s of [-1, 1]) {
      const foot = down ? s * (half + 0.55) : s * (half - 0.08);
      const z = down ? 0.07 : 0.45;
      a.add('truckPaint', rod([x, s * (half - 0.3), 1.05], [x, foot, z], 0.07, 10, 0.055));
      a.add('black', block([x, foot, z - 0.02], [0.32, 0.32, 0.06], 0.2));
      if (down) a.add('yellow', block([x, foot, 0.012], [0.6, 0.6, 0.024], 0.2));
    }
  }
};

/** Open at the top, a rolled lip round it and a liner inside: whoever stands in it looks over and into it. Its middle: `at`. */
const bucket = (a: Assembly, [x, y, z]: Point): void => {
  const [w, d, h, thick] = [0.62, 0.6, 1.06, 0.03];
  for (const s of [-1, 1]) {
    a.add('white', block([x + s * (w / 2), y, z], [thick, d + thick, h], 0.2));
    a.add('white', block([x, y + s * (d / 2), z], [w + thick, thick, h], 0.2));
    a.add('white', block([x + s * (w / 2 + 0.012), y, z + h / 2 - 0.03], [0.055, d + 0.08, 0.06], 0.4));
    a.add('white', block([x, y + s * (d / 2 + 0.012), z + h / 2 - 0.03], [w + 0.08, 0.055, 0.06], 0.4));
    a.add('polymer', block([x + s * (w / 2 - 0.019), y, z - 0.03], [0.006, d - 0.04, h - 0.06], 0));
    a.add('polymer', block([x, y + s * (d / 2 - 0.019), z - 0.03], [w - 0.04, 0.006, h - 0.06], 0));
  }
  a.add('white', block([x, y, z - h / 2], [w, d, 0.04], 0.2));
  a.add('black', block([x, y, z - h / 2 + 0.025], [w - 0.05, d - 0.05, 0.012], 0.2));
};

const booms = (a: Assembly, base: Point, elbow: Point, tip: Point): void => {
  const middle = point(vec(base).lerp(vec(elbow), 0.5));
  a.add('truckPaint', bar(base, elbow, 0.26, 0.3));
  a.add('steelDark', rod(point(vec(base).add(new Vector3(0, 0.05, -0.28))), middle, 0.06, 10));
  a.add('zinc', rod([elbow[0], elbow[1] - 0.22, elbow[2]], [elbow[0], elbow[1] + 0.22, elbow[2]], 0.13, 18));
  const near = point(vec(elbow).lerp(vec(tip), 0.3));
  a.add('truckPaint', bar(elbow, near, 0.2, 0.23));
  a.add('bisque', bar(near, tip, 0.16, 0.18));
  const b: Point = [tip[0], tip[1] + 0.38, tip[2] - 0.35];
  bucket(a, b);
  a.add('zinc', rod([tip[0], tip[1] - 0.12, tip[2]], [tip[0], tip[1] + 0.1, tip[2]], 0.1, 14));
  a.name('bucket', [b[0], b[1], b[2] + 0.53]);
};

/** Elbow of two equal links from `base` to `tip`, bent upward. */
const elbowOf = (base: Vector3, tip: Vector3, link: number): Vector3 => {
  const d = tip.clone().sub(base);
  const half = Math.min(d.length() / 2, link);
  const flat = new Vector3(d.x, d.y, 0).normalize();
  const lift = d
    .clone()
    .normalize()
    .cross(flat.clone().cross(new Vector3(0, 0, 1)))
    .negate();
  if (lift.z < 0) lift.negate();
  return base
    .clone()
    .addScaledVector(d.normalize(), half)
    .addScaledVector(lift, Math.sqrt(link * link - half * half));
};

export const truck = builder({
  kind: 'truck',
  states: ['stowed', 'set-up', 'raised'],
  size: { width: 2.4, link: 5.2 },
  build: (a, size, part) => {
    const half = size.width / 2;
    wheels(a, half);
    cab(a, half);
    body(a, half);
    outriggers(a, half, part.state !== 'stowed');
    a.add(
      'zinc',
      rod([-0.45, 0, 1.05], [-0.45, 0, 1.2], 0.42, 24),
      rod([-0.45, 0, 1.2], [-0.45, 0, 2.3], 0.24, 18, 0.2),
    );
    a.add('truckPaint', block([-0.45, 0, 2.42], [0.5, 0.62, 0.36], 0.15));
    const base: Point = [-0.45, 0, 2.55];
    const goal = part.points[0];
    if (part.state === 'raised' && goal) {
      const c = Math.cos(part.side);
      const s = Math.sin(part.side);
      const local = new Vector3(goal[0] * c + goal[1] * s, goal[1] * c - goal[0] * s - 0.38, goal[2] - 0.18);
      booms(a, base, point(elbowOf(vec(base), local, size.link)), point(local));
    } else {
      booms(a, base, [3.5, 0, 2.86], [-3.2, -0.05, 3.08]);
    }
    const cones: readonly Point[] = [
      [5.6, -half - 0.7, 0],
      [2.2, -half - 0.9, 0],
      [-1.6, -half - 0.9, 0],
      [-5.6, -half - 0.7, 0],
      [-9, -half + 0.2, 0],
    ];
    for (const [i, at] of cones.entries()) a.name(`cone${i + 1}`, at);
    a.name('chock', [-1.12, -half + 0.2, 0]);
    a.name('tail', [-3.7, 0, 1]);
  },
});
