/**
 * Dead-end insulator on an eye bolt, with the dead-end clamp that holds the conductor. Origin: face of the pole or arm at
 * the bolt; it reaches along `side` toward the span. Variants: `bells` (two porcelain discs), `polymer`.
 */
import { CylinderGeometry, Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { profileOf, turnedOf } from './profiles.ts';
import { bar, bolt, ring, rod } from './shapes.ts';

/** z of a string element turned along outward x, at distance `x`. */
const laid = (x: number, flip: boolean): Matrix4 =>
  new Matrix4().makeTranslation(x, 0, 0).multiply(new Matrix4().makeRotationY(flip ? -Math.PI / 2 : Math.PI / 2));

const discs = (a: Assembly, from: number): number => {
  const pitch = 0.14;
  for (let i = 0; i < 2; i++) {
    const x = from + 0.1 + i * pitch;
    a.within(laid(x, true), () => {
      a.add('porcelainBrown', turnedOf('suspensionDisc'));
      a.add('zinc', turnedOf('suspensionCap'));
      a.add('zinc', rod([0, 0, 0.012], [0, 0, -0.04], 0.008, 10));
      if (i === 1) a.markable(profileOf('suspensionDisc'));
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

const clamp = (a: Assembly, x: number): void => {
  a.add('zinc', ring([x, 0, 0], [0, 1, 0], 0.015, 0.006));
  for (const s of [-1, 1])
    a.add('aluminium', bar([x - 0.012, s * 0.013, 0], [x + 0.075, s * 0.013, -0.004], 0.024, 0.007, [0, 1, 0]));
  a.add('aluminium', rod([x + 0.045, 0, -0.004], [x + 0.21, 0, 0], 0.0135, 14, 0.0095));
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

export const deadend = builder({
  kind: 'deadend-insulator',
  variants: ['bells', 'polymer'],
  size: { bolt: 0.03 },
  build: (a, size, part) => {
    a.add('zinc', rod([-0.02, 0, 0], [size.bolt, 0, 0], 0.008, 10));
    a.add('zinc', new CylinderGeometry(0.016, 0.018, 0.018, 6).rotateZ(Math.PI / 2).translate(0.012, 0, 0));
    a.add('zinc', bar([0.0025, -0.028, 0], [0.0025, 0.028, 0], 0.057, 0.005, [1, 0, 0]));
    a.add('zinc', ring([size.bolt + 0.02, 0, 0], [0, 1, 0], 0.02, 0.007));
    const from = size.bolt + 0.035;
    clamp(a, part.variant === 'bells' ? discs(a, from) : rubber(a, from));
  },
});
