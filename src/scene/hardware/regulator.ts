/**
 * Single-phase step regulator: tall tank, three bushings on the cover (S source, L load, SL neutral), an arrester across the
 * series winding, the position dial on the wall, and the control box at eye height with its conduit. Origin: face of the pole
 * at the upper hanger; it stands off along `side`. `control` metres below the tank's foot hangs the box. Size: tank.
 */
import { CylinderGeometry, Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { lettering, wrapped } from './lettering.ts';
import { outerOf, profileOf, turnedOf } from './profiles.ts';
import { bar, block, bolt, curve, plate, rod } from './shapes.ts';
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

/** Tap position dial: white face, black hand, two small drag hands. */
const dial = (a: Assembly, r: number, z: number): void => {
  a.within(new Matrix4().makeRotationZ(0.5), () => {
    a.add('lidPaint', rod([r - 0.01, 0, z], [r + 0.06, 0, z], 0.085, 26));
    a.add('white', rod([r + 0.06, 0, z], [r + 0.064, 0, z], 0.075, 26));
    for (let i = 0; i <= 16; i++) {
      const t = -0.7 + (i / 16) * (Math.PI + 1.4);
      a.add(
        'black',
        bar(
          [r + 0.065, 0.06 * Math.cos(t), z + 0.06 * Math.sin(t)],
          [r + 0.065, 0.07 * Math.cos(t), z + 0.07 * Math.sin(t)],
          0.003,
          0.001,
          [1, 0, 0],
        ),
      );
    }
    a.add('black', bar([r + 0.066, 0, z - 0.01], [r + 0.066, 0.022, z + 0.055], 0.007, 0.002, [1, 0, 0]));
    a.add('red', bar([r + 0.0655, 0, z], [r + 0.0655, 0.045, z + 0.035], 0.003, 0.001, [1, 0, 0]));
    a.name('dial', [r + 0.07, 0, z]);
  });
};

export const regulator = builder({
  kind: 'regulator',
  size: { diameter: 0.56, height: 1.2, control: 3.2 },
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
      dial(a, r, size.height * 0.78);
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
      24,
    );
    a.add('zinc', wire(conduit, 0.017, 9));
    a.name('control', [0.28, 0, low]);
  },
});
