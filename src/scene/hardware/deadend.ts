/**
 * Dead-end insulator on an eye bolt, with the dead-end clamp that holds the conductor. Origin: face of the pole or arm at
 * the bolt; it reaches along `side` toward the span. Variants: `bells` (two porcelain discs), `polymer`, `glass` (two
 * toughened discs). State `broken`: the disc at the span has lost its skirt; `uncoupled`: the
 * ball of the first joint half out of its socket.
 */
import { CylinderGeometry, Matrix4, SphereGeometry } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { profileOf, turnedOf } from './profiles.ts';
import { bar, bolt, type Profile, ring, rod, turned } from './shapes.ts';

/** z of a string element turned along outward x, at distance `x`. */
const laid = (x: number, flip: boolean): Matrix4 =>
  new Matrix4().makeTranslation(x, 0, 0).multiply(new Matrix4().makeRotationY(flip ? -Math.PI / 2 : Math.PI / 2));

/** What is left of a disc whose skirt has gone: the stub under the cap, torn porcelain or crumbled glass. */
const stub: Profile = [
  [12, 14],
  [17, 2],
  [24, 6],
  [33, 12],
  [36, 24],
  [44, 30],
  [40, 40],
  [38, 46],
  [36, 54],
].map(([r = 0, z = 0]) => [r / 1000, z / 1000] as const);

const discs = (a: Assembly, from: number, glass: boolean, broken: boolean): number => {
  const pitch = 0.14;
  const shape = glass ? 'glassDisc' : 'suspensionDisc';
  for (let i = 0; i < 2; i++) {
    const x = from + 0.1 + i * pitch;
    a.within(laid(x, true), () => {
      if (broken && i === 1) a.add(glass ? 'glassDisc' : 'bisque', turned(stub, 18));
      else a.add(glass ? 'glassDisc' : 'porcelainBrown', turnedOf(shape));
      a.add('zinc', turnedOf('suspensionCap'));
      a.add('zinc', rod([0, 0, 0.012], [0, 0, -0.04], 0.008, 8));
      if (i === 1) a.markable(profileOf(shape));
    });
    a.add('zinc', ring([x - 0.1, 0, 0], [0, 1, 0], 0.016, 0.006));
  }
  return from + 0.1 + pitch + 0.045;
};

const rubber = (a: Assembly, from: number): number => {
  const middle = from + 0.04 + 0.135;
  a.within(laid(middle, false), () => {
    a.add('polymer', turnedOf('polymerDeadend'));
    a.markable(profileOf('polymerDeadend'));
    for (const s of [-1, 1]) {
      a.add('zinc', rod([0, 0, s * 0.13], [0, 0, s * 0.168], 0.0115, 12, 0.0105));
      a.add('zinc', ring([0, 0, s * 0.18], [1, 0, 0], 0.015, 0.0055));
    }
  });
  return middle + 0.195;
};

/** Bolted dead-end clamp, its clevis at `x`. */
const shoe = (a: Assembly, x: number): void => {
  a.add('zinc', ring([x, 0, 0], [0, 1, 0], 0.015, 0.006));
  for (const s of [-1, 1])
    a.add('aluminium', bar([x - 0.012, s * 0.013, 0], [x + 0.075, s * 0.013, -0.004], 0.024, 0.007, [0, 1, 0]));
  a.add('aluminium', rod([x + 0.045, 0, -0.004], [x + 0.21, 0, 0], 0.0135, 8, 0.0095));
  a.add('aluminium', bar([x + 0.06, 0, -0.017], [x + 0.175, 0, -0.012], 0.026, 0.008));
  for (const dx of [0.085, 0.145]) {
    a.add('zinc', ring([x + dx, 0, -0.002], [1, 0, 0], 0.0165, 0.0045));
    for (const s of [-1, 1])
      a.add(
        'zinc',
        rod([x + dx, s * 0.0165, -0.004], [x + dx, s * 0.0165, -0.042], 0.0045, 8),
        bolt([x + dx, s * 0.0165, -0.026], [0, 0, -1], 0.016, 0),
      );
    a.add('zinc', bar([x + dx, -0.024, -0.023], [x + dx, 0.024, -0.023], 0.018, 0.006));
  }
  a.name('conductor', [x + 0.21, 0, 0]);
  a.name('tail', [x + 0.045, 0, -0.016]);
};

/** The string itself, turned along x from `from`; x of its far fitting. */
export const string = (a: Assembly, from: number, variant: string, state: string): number => {
  if (state === 'uncoupled') {
    // The ball has worked out of the socket as far as its neck and hangs on the lip.
    a.add('zinc', new SphereGeometry(0.0125, 7, 4).translate(from + 0.012, 0, -0.024));
    a.add('zinc', rod([from - 0.016, 0, -0.006], [from + 0.012, 0, -0.024], 0.0075, 6));
  }
  return variant === 'polymer' ? rubber(a, from) : discs(a, from, variant === 'glass', state === 'broken');
};

export const deadend = builder({
  kind: 'deadend-insulator',
  states: ['whole', 'broken', 'uncoupled'],
  variants: ['bells', 'polymer', 'glass'],
  size: { bolt: 0.03, shoe: 1 },
  build: (a, size, part) => {
    a.add('zinc', rod([-0.02, 0, 0], [size.bolt, 0, 0], 0.008, 8));
    a.add('zinc', new CylinderGeometry(0.016, 0.018, 0.018, 6).rotateZ(Math.PI / 2).translate(0.012, 0, 0));
    a.add('zinc', bar([0.0025, -0.028, 0], [0.0025, 0.028, 0], 0.057, 0.005, [1, 0, 0]));
    a.add('zinc', ring([size.bolt + 0.02, 0, 0], [0, 1, 0], 0.02, 0.007));
    const end = string(a, size.bolt + 0.035, part.variant, part.state);
    if (size.shoe > 0) shoe(a, end);
    else a.name('conductor', [end, 0, 0]);
  },
});

/** The clamp alone; origin: its clevis, reaching along `side`. State `loose`: a U-bolt hangs open. */
export const deadendShoe = builder({
  kind: 'deadend-shoe',
  states: ['whole', 'loose'],
  size: {},
  build: (a, _size, part) => {
    shoe(a, 0);
    if (part.state !== 'loose') return;
    a.within(new Matrix4().makeTranslation(0.115, 0, -0.03).multiply(new Matrix4().makeRotationX(0.5)), () => {
      for (const s of [-1, 1]) a.add('zinc', rod([0, s * 0.0165, 0], [0, s * 0.0165, -0.06], 0.0045, 8));
      a.add('zinc', bar([0, -0.024, -0.05], [0, 0.024, -0.05], 0.018, 0.006));
    });
  },
});
