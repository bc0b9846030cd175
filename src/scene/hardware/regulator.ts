/**
 * Single-phase step regulator: tall tank, three bushings on the cover (S source, L load, SL neutral), an arrester across the
 * series winding, the position dial on the wall, and the control box at eye height with its conduit. Origin: face of the pole
 * at the upper hanger; it stands off along `side`. `control` metres below the tank's foot hangs the box. Size: tank;
 * `step` of the tap, −16 lower to 16 raise. State `bypassed`: the blade above the bushings lies closed.
 */
import { CylinderGeometry, Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { lettering, wrapped } from './lettering.ts';
import { outerOf, profileOf, turnedOf } from './profiles.ts';
import { bar, block, bolt, curve, plate, ring, rod } from './shapes.ts';
import type { Point } from './types.ts';
import { wire } from './wire.ts';

const bushing = (a: Assembly, x: number, y: number, z: number, name: string): void => {
  const tilt = new Matrix4()
    .makeTranslation(x, y, z)
    .multiply(new Matrix4().makeRotationY(x > 0 ? 0.16 : -0.02))
    .multiply(new Matrix4().makeRotationX(-y * 0.8));
  a.within(tilt, () => {
    a.add('zinc', new CylinderGeometry(0.064, 0.068, 0.014, 20).rotateX(Math.PI / 2));
    a.add('porcelainGrey', turnedOf('recloserBushing', [1.05, 1.1]));
    if (name === 's') a.markable(outerOf(profileOf('recloserBushing', [1.05, 1.1])));
    a.add('tinned', rod([0, 0, 0.325], [0, 0, 0.375], 0.011, 12));
    a.add('bronze', block([0, 0, 0.36], [0.036, 0.03, 0.034], 0.2));
    a.name(name, [0, 0, 0.376]);
    for (const g of lettering(name.toUpperCase(), 0.045, 0.001)) a.add('black', g.translate(0.075, 0, 0.012));
  });
};

/** Radians that the pointer turns from N to the sixteenth step; raise to the right as one faces the dial. */
const FULL = Math.PI / 2 + 0.7;
const STEPS = 16;

/** Tap position dial: white face, N on top, a tick a step or two, black pointer at `step`, red drag hands where it has been. */
const dial = (a: Assembly, r: number, z: number, step: number): void => {
  const at = (of: number): number => Math.PI / 2 - (of / STEPS) * FULL;
  const ray = (of: number, from: number, to: number, x: number): [Point, Point] => [
    [x, from * Math.cos(at(of)), z + from * Math.sin(at(of))],
    [x, to * Math.cos(at(of)), z + to * Math.sin(at(of))],
  ];
  a.within(new Matrix4().makeRotationZ(0.5), () => {
    a.add('lidPaint', rod([r - 0.01, 0, z], [r + 0.06, 0, z], 0.1, 24));
    a.add('white', rod([r + 0.06, 0, z], [r + 0.064, 0, z], 0.091, 24));
    for (let tick = -STEPS; tick <= STEPS; tick += 2) {
      const long = tick % 8 === 0;
      a.add('black', bar(...ray(tick, long ? 0.068 : 0.074, 0.084, r + 0.065), long ? 0.006 : 0.003, 0.001, [1, 0, 0]));
    }
    for (const g of lettering('N', 0.022, 0.0006)) a.add('black', g.translate(r + 0.065, 0, z + 0.052));
    for (const of of [-4, 6]) a.add('red', bar(...ray(step + of, 0.03, 0.066, r + 0.0655), 0.004, 0.001, [1, 0, 0]));
    a.add('black', bar(...ray(step, -0.016, 0.07, r + 0.067), 0.01, 0.002, [1, 0, 0]));
    a.add('black', rod([r + 0.064, 0, z], [r + 0.07, 0, z], 0.011, 14));
    a.name('dial', [r + 0.07, 0, z]);
  });
};

/** Bypass above the bushings of source and load: two posts, a jaw and a blade that lies in it or stands up from its hinge. */
const bypass = (a: Assembly, x: number, z: number, closed: boolean): void => {
  for (const y of [-0.12, 0.12]) a.add('bronze', bar([x, y, z - 0.02], [x, y, z + 0.075], 0.018, 0.012));
  for (const s of [-1, 1])
    a.add('bronze', bar([x + s * 0.009, 0.12, z + 0.06], [x + s * 0.009, 0.12, z + 0.1], 0.004, 0.03));
  const tip: Point = closed ? [x, 0.15, z + 0.075] : [x, -0.08, z + 0.33];
  a.add('tinned', bar([x, -0.12, z + 0.075], tip, 0.006, 0.026, [1, 0, 0]));
  a.add('tinned', ring([x, tip[1] + (closed ? 0.016 : 0.003), tip[2] + (closed ? 0 : 0.016)], [1, 0, 0], 0.014, 0.004));
};

export const regulator = builder({
  kind: 'regulator',
  states: ['whole', 'bypassed'],
  size: { diameter: 0.56, height: 1.2, control: 3.2, step: 0 },
  build: (a, size, part) => {
    const r = size.diameter / 2;
    const out = r + 0.06;
    const foot = 0.14 - size.height;
    for (const z of [0, -0.5])
      a.add(
        'lidPaint',
        bar([0.012, -0.05, z], [0.09, -0.05, z], 0.008, 0.1),
        bar([0.012, 0.05, z], [0.09, 0.05, z], 0.008, 0.1),
        bolt([0.012, 0, z], [1, 0, 0], 0.032, 0.06),
      );
    const k = [size.diameter / 0.6, size.height / 1.25] as const;
    a.within(new Matrix4().makeTranslation(out, 0, foot), () => {
      a.add('tankPaint', turnedOf('regulatorTank', k));
      a.markable(profileOf('regulatorTank', k), 0.001, 'tank');
      const top = 1.24 * k[1];
      a.within(new Matrix4().makeTranslation(0, 0, top), () => a.add('lidPaint', turnedOf('canLid', [k[0], 0.8])));
      for (let i = 0; i < 5; i++) {
        // Cooling fins on the far side from the pole.
        const t = -1.3 + i * 0.2;
        a.within(new Matrix4().makeRotationZ(t), () =>
          a.add(
            'tankPaint',
            bar([r + 0.03, 0, size.height * 0.22], [r + 0.03, 0, size.height * 0.86], 0.012, 0.07, [1, 0, 0]),
          ),
        );
      }
      bushing(a, 0.11, -0.12, top + 0.03, 's');
      bushing(a, 0.11, 0.12, top + 0.03, 'l');
      bushing(a, -0.12, 0, top + 0.03, 'sl');
      dial(a, r, size.height * 0.78, size.step);
      bypass(a, 0.13, top + 0.42, part.state === 'bypassed');
      for (const g of lettering(part.text || '76', 0.1, 0.0012, 2))
        a.add('black', wrapped(g, r).translate(0.001, 0, size.height * 0.45));
      for (const s of [-1, 1]) {
        const lug = plate(
          [
            [0, 0],
            [0.05, 0.05],
            [0.05, 0.09],
            [0.02, 0.11],
            [0, 0.11],
          ],
          0.012,
          0.0015,
        );
        a.within(
          new Matrix4()
            .makeRotationZ(s * 1.57)
            .multiply(new Matrix4().makeTranslation(r - 0.002, 0.006, size.height * 0.9)),
          () => a.add('lidPaint', lug.rotateX(Math.PI / 2)),
        );
      }
      a.within(new Matrix4().makeTranslation(r + 0.11, 0, top - 0.16), () => {
        a.add('polymer', turnedOf('arrester', [0.8, 0.75]));
        a.add('zinc', bar([-0.1, 0, -0.01], [0.02, 0, -0.01], 0.03, 0.008));
        a.add('tinned', rod([0, 0, 0.155], [0, 0, 0.2], 0.005, 8));
      });
      a.name('ground', [r + 0.02, 0.1, 0.08]);
    });
    // Control box low on the pole and the conduit up to the tank.
    const low = foot - size.control;
    a.add(
      'boxPaint',
      block([0.15, 0, low], [0.24, 0.34, 0.48], 0.08),
      bar([0.273, 0, low - 0.2], [0.273, 0, low + 0.2], 0.28, 0.008, [1, 0, 0]),
    );
    a.add('steelDark', block([0.282, 0.13, low], [0.016, 0.02, 0.05], 0.2));
    a.add('zinc', bar([0.015, 0, low - 0.28], [0.015, 0, low + 0.28], 0.06, 0.01, [1, 0, 0]));
    const conduit = curve(
      [
        [0.06, 0.1, low + 0.22],
        [0.04, 0.1, low + 0.6],
        [0.04, 0.1, foot - 0.6],
        [0.06, 0.1, foot - 0.1],
        [out - r + 0.02, 0.1, foot + 0.16],
      ],
      16,
    );
    a.add('zinc', wire(conduit, 0.017, 9));
    a.name('control', [0.28, 0, low]);
  },
});
