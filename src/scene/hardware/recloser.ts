/**
 * Single-phase oil recloser: round tank under a cast head with two bushings leaning apart, a hood with the yellow handle
 * below it. Origin: face of the pole at the bracket's upper bolt; it stands off along `side`, source bushing at −y. States:
 * `closed` (handle up under the hood), `open` and `locked-out` (handle hanging down, seen from below). Size: tank.
 */
import { CylinderGeometry, Matrix4 } from 'three';
import { builder } from './assembly.ts';
import { lettering, wrapped } from './lettering.ts';
import { outerOf, profileOf, turnedOf } from './profiles.ts';
import { bar, block, bolt, ring, rod } from './shapes.ts';

export const recloser = builder({
  kind: 'recloser',
  states: ['closed', 'open', 'locked-out'],
  size: { diameter: 0.3, height: 0.46 },
  build: (a, size, part) => {
    const r = size.diameter / 2;
    const out = r + 0.09;
    a.add('zinc', bar([0.006, 0, -0.26], [0.006, 0, 0.1], 0.09, 0.01, [1, 0, 0]));
    for (const z of [-0.22, 0.03]) a.add('zinc', bolt([0.011, 0, z], [1, 0, 0], 0.027, 0));
    for (const y of [-0.05, 0.05]) a.add('zinc', bar([0.006, y, 0.02], [out, y, 0.02], 0.012, 0.05));
    a.add('zinc', bar([0.01, 0, -0.22], [out - r + 0.01, 0, -0.05], 0.05, 0.008, [0.5, 0, 1]));
    a.within(new Matrix4().makeTranslation(out, 0, 0), () => {
      const k = [size.diameter / 0.45, size.height / 0.85] as const;
      a.within(new Matrix4().makeTranslation(0, 0, -size.height), () => {
        a.add('tankPaint', turnedOf('tank', k));
        a.markable(profileOf('tank', k), 0.001, 'tank');
        for (const g of lettering('70', 0.07, 0.001, 2))
          a.add('black', wrapped(g, r).translate(0.0008, 0, size.height * 0.6));
      });
      a.add('lidPaint', new CylinderGeometry(r + 0.02, r + 0.02, 0.035, 30).rotateX(Math.PI / 2).translate(0, 0, 0));
      a.add('lidPaint', new CylinderGeometry(r * 0.72, r + 0.01, 0.09, 30).rotateX(Math.PI / 2).translate(0, 0, 0.06));
      for (let i = 0; i < 6; i++) {
        const b = (i / 6) * 2 * Math.PI;
        a.add('zinc', bolt([(r + 0.005) * Math.cos(b), (r + 0.005) * Math.sin(b), 0.018], [0, 0, 1], 0.017, 0));
      }
      for (const s of [-1, 1]) {
        const lean = new Matrix4()
          .makeTranslation(0, s * 0.075, 0.085)
          .multiply(new Matrix4().makeRotationX(-s * 0.42));
        a.within(lean, () => {
          a.add('porcelainBrown', turnedOf('recloserBushing'));
          if (s < 0) a.markable(outerOf(profileOf('recloserBushing')));
          a.add('tinned', rod([0, 0, 0.29], [0, 0, 0.34], 0.009, 10));
          a.add('bronze', block([0, 0, 0.325], [0.03, 0.026, 0.03], 0.2));
          a.name(s < 0 ? 'source' : 'load', [0, 0, 0.338]);
        });
      }
      // Hood over the handle, on the side that is seen from the ground.
      a.add('lidPaint', block([r + 0.055, 0, 0.035], [0.11, 0.15, 0.07], 0.35));
      a.add('windowDark', rod([r + 0.111, 0.04, 0.04], [r + 0.114, 0.04, 0.04], 0.017, 14));
      const down = part.state !== 'closed';
      const hinge = new Matrix4()
        .makeTranslation(r + 0.03, 0, 0.005)
        .multiply(new Matrix4().makeRotationY(down ? 1.35 : 0.06));
      a.within(hinge, () => {
        a.add(
          'yellow',
          bar([0, 0, -0.006], [0.12, 0, -0.006], 0.022, 0.009),
          ring([0.142, 0, -0.006], [0, 0, 1], 0.024, 0.006),
        );
        a.name('ring', [0.142, 0, -0.006]);
      });
      a.add('zinc', bolt([-0.02, r + 0.002, -size.height + 0.06], [0, 1, 0], 0.022, 0));
      a.name('ground', [-0.02, r + 0.02, -size.height + 0.06]);
    });
  },
});
