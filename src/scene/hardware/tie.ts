/**
 * Tie of a conductor in the top groove of a pin insulator. Origin: centre of the conductor over the insulator; the line
 * runs along azimuth `side`. Variants: `hand` (soft wire wrapped), `preformed` (formed rods). States: `loose` (legs slack off the conductor), `unwound` (one
 * sprung open), `long-tails`. In states `one-leg` and
 * `broken` it is the leg toward `side` that fails. Size: radius of conductor and neck, neck below the conductor.
 */
import { Vector3 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { curve } from './shapes.ts';
import type { Point } from './types.ts';
import { helix, wire } from './wire.ts';

interface TieSize {
  readonly conductor: number;
  readonly neck: number;
  readonly drop: number;
}

interface Make {
  readonly radius: number;
  readonly wrapped: number;
  readonly pitch: number;
  readonly wires: number;
}

const makes: Readonly<Record<string, Make>> = {
  hand: { radius: 0.0021, wrapped: 0.068, pitch: 0.0056, wires: 1 },
  preformed: { radius: 0.0017, wrapped: 0.42, pitch: 0.052, wires: 2 },
};

const neckLoop = (size: TieSize, r: number, turns: number): Vector3[] =>
  Array.from({ length: Math.ceil(turns * 18) + 1 }, (_, i) => {
    const a = (i / 18) * 2 * Math.PI;
    return new Vector3(
      (size.neck + r) * Math.cos(a),
      (size.neck + r) * Math.sin(a),
      -size.drop + (i / (turns * 18) - 0.5) * 2.4 * r,
    );
  });

const rise = (size: TieSize, r: number, sign: number): Point[] => {
  const out = size.neck + r;
  return [
    [0, -sign * out, -size.drop],
    [sign * out * 0.72, -sign * out * 0.72, -size.drop],
    [sign * (out + 0.014), -sign * 0.019, -size.drop + 0.006],
    [sign * (out + 0.021), -sign * 0.012, -size.drop * 0.45],
    [sign * (out + 0.026), 0, size.conductor + r],
  ];
};

const wraps = (size: TieSize, make: Make, sign: number, phase: number, share: number): Vector3[] => {
  const from = size.neck + make.radius + 0.027;
  const to = from + make.wrapped * share;
  const course = [
    new Vector3(sign * from, 0, 0),
    new Vector3(sign * (from + to) * 0.5, 0, 0),
    new Vector3(sign * to, 0, 0),
  ];
  return helix(course, size.conductor + make.radius, make.pitch, phase, 9);
};

const leg = (a: Assembly, size: TieSize, make: Make, sign: number): void => {
  for (let k = 0; k < make.wires; k++) {
    const shift = k * 2.1 * make.radius;
    const up = curve(rise(size, make.radius, sign), 9).map((p) => p.add(new Vector3(sign * shift, 0, 0)));
    a.add('aluminium', wire(up, make.radius, 6));
    a.add('aluminium', wire(wraps(size, make, sign, k * ((2 * make.radius) / size.conductor), 1), make.radius, 5));
  }
};

/** A snapped leg: its stub at the neck bent up, a few wraps left on the conductor, the loose end hanging. */
const snapped = (a: Assembly, size: TieSize, make: Make): void => {
  const out = size.neck + make.radius;
  const stub = curve(
    [
      [0, -out, -size.drop],
      [out * 0.72, -out * 0.72, -size.drop],
      [out + 0.018, -0.03, -size.drop - 0.004],
      [out + 0.034, -0.034, -size.drop - 0.012],
    ],
    10,
  );
  const left = wraps(size, make, 1, 0.6, 0.45).map((p) => p.add(new Vector3(0.05, 0, 0)));
  const first = left[0] as Vector3;
  const loose = curve(
    [
      [first.x, first.y, first.z],
      [first.x - 0.008, first.y + 0.014, first.z - 0.022],
      [first.x - 0.024, first.y + 0.018, first.z - 0.06],
      [first.x - 0.02, first.y + 0.006, first.z - 0.112],
    ],
    12,
  );
  a.add('aluminium', wire(left, make.radius, 5), wire(loose, make.radius, 6), wire(stub, make.radius, 6));
};

/** A leg that has sprung off: wide turns hanging under the conductor. */
const slack = (a: Assembly, size: TieSize, make: Make): void => {
  const up = curve(rise(size, make.radius, 1), 9);
  const from = size.neck + make.radius + 0.027;
  const course = [0, 0.4, 1].map((t) => new Vector3(from + make.wrapped * t * 0.8, 0, -0.012 - 0.02 * t));
  a.add('aluminium', wire(up, make.radius, 6));
  a.add(
    'aluminium',
    wire(helix(course, size.conductor + make.radius + 0.014, make.pitch * 1.7 + 0.02, 0, 9), make.radius, 5),
  );
};

/** A leg that has come unwound: its turns opened and standing up and away from the conductor. */
const unwound = (a: Assembly, size: TieSize, make: Make): void => {
  const up = curve(rise(size, make.radius, 1), 9);
  const from = size.neck + make.radius + 0.027;
  const loose: Point[] = Array.from({ length: 22 }, (_, i) => {
    const t = i / 21;
    const r = size.conductor + 0.004 + 0.016 * t;
    return [from + 0.085 * t, r * Math.sin(t * 15) + 0.03 * t * t, r * Math.cos(t * 15) + 0.09 * t * t];
  });
  a.add('aluminium', wire(up, make.radius, 6), wire(curve(loose, 60), make.radius, 5));
};

/** The tail of a leg, left long and bent out. */
const tail = (size: TieSize, make: Make, sign: number): Vector3[] => {
  const end = sign * (size.neck + make.radius + 0.027 + make.wrapped);
  const r = size.conductor + make.radius;
  return curve(
    [
      [end - sign * 0.006, 0, r],
      [end + sign * 0.01, sign * 0.03, r + 0.02],
      [end + sign * 0.035, sign * 0.075, r + 0.05],
      [end + sign * 0.05, sign * 0.1, r + 0.11],
    ],
    12,
  );
};

export const tie = builder({
  kind: 'tie',
  states: ['whole', 'one-leg', 'broken', 'loose', 'unwound', 'long-tails', 'gone'],
  variants: ['hand', 'preformed'],
  size: { conductor: 0.0051, neck: 0.0312, drop: 0.0386 },
  build: (a, size, part) => {
    const make = makes[part.variant] as Make;
    if (part.state === 'gone') {
      const shard = neckLoop(size, make.radius, 0.6);
      a.add('aluminium', wire(shard, make.radius, 6));
      return;
    }
    a.add('aluminium', wire(neckLoop(size, make.radius, part.variant === 'hand' ? 1.5 : 1), make.radius, 6));
    leg(a, size, make, -1);
    if (part.state === 'loose') slack(a, size, make);
    if (part.state === 'unwound') unwound(a, size, make);
    if (part.state === 'whole' || part.state === 'long-tails') leg(a, size, make, 1);
    if (part.state === 'long-tails')
      for (const sign of [-1, 1]) a.add('aluminium', wire(tail(size, make, sign), make.radius, 6));
    if (part.state === 'broken') snapped(a, size, make);
  },
});
