/**
 * Service mast: conduit up a wall with weatherhead, straps, attachment knob and three leads with drip loops. Origin: wall
 * surface at the meter's hub; it stands along z and its outlets look along `side`. Size: height, conduit radius, distance
 * of the conduit's axis from the wall.
 */
import { Matrix4, SphereGeometry } from 'three';
import { builder } from './assembly.ts';
import { turnedOf } from './profiles.ts';
import { bar, block, bolt, curve, ring, rod } from './shapes.ts';
import { wire } from './wire.ts';

export const serviceMast = builder({
  kind: 'service-mast',
  size: { height: 2.6, radius: 0.03, off: 0.0525 },
  build: (a, size) => {
    const { height: h, radius: r, off } = size;
    a.add('zinc', rod([off, 0, 0], [off, 0, h], r, 18));
    for (let z = 0.4; z < h - 0.5; z += 0.9) {
      a.add(
        'zinc',
        ring([off, 0, z], [0, 0, 1], r + 0.002, 0.004),
        bar([0.002, -0.06, z], [0.002, 0.06, z], 0.03, 0.004, [1, 0, 0]),
      );
    }
    const hood = new SphereGeometry(r * 1.7, 18, 8, 0, Math.PI * 2, 0, Math.PI / 2)
      .rotateX(Math.PI / 2)
      .scale(1.35, 1, 1.15);
    a.add('aluminium', hood.translate(off + 0.018, 0, h + 0.03));
    a.add('aluminium', rod([off, 0, h - 0.03], [off, 0, h + 0.035], r * 1.35, 18));
    a.add('polymerBlack', block([off + 0.032, 0, h + 0.026], [0.1, 0.085, 0.012], 0.3));
    const knob = h - 0.28;
    a.add(
      'zinc',
      ring([off, 0, knob], [0, 0, 1], r + 0.003, 0.006),
      bolt([off + r + 0.006, 0, knob], [1, 0, 0], 0.018, 0),
    );
    a.within(new Matrix4().makeTranslation(off + r + 0.05, 0, knob), () => {
      a.add('porcelainGrey', turnedOf('spool', [0.7, 0.7]));
      for (const s of [-1, 1]) a.add('zinc', bar([-0.05, 0, s * 0.031], [0.016, 0, s * 0.031], 0.03, 0.005));
      a.add('zinc', rod([0, 0, -0.045], [0, 0, 0.045], 0.006, 8));
      a.name('attachment', [0.024, 0, 0]);
    });
    [-1, 0, 1].forEach((s, i) => {
      const y = s * 0.024;
      const end = [off + 0.36, s * 0.05, knob + 0.02] as const;
      const loop = curve(
        [
          [off + 0.03, y, h + 0.06],
          [off + 0.042, y, h - 0.01],
          [off + 0.1, y * 1.6, h - 0.26],
          [off + 0.19, y * 2, knob - 0.15],
          [off + 0.29, y * 2, knob - 0.06],
          end,
        ],
        24,
      );
      a.add(s === 0 ? 'aluminiumStrand' : 'insulation', wire(loop, s === 0 ? 0.0042 : 0.0065, 7, 0.1));
      a.add(
        'polymerBlack',
        rod([end[0] - 0.03, end[1], end[2] - 0.005], [end[0] + 0.05, end[1], end[2] + 0.004], 0.011, 10),
      );
      a.name(['leg1', 'messenger', 'leg2'][i] as string, end);
    });
    a.name('top', [off, 0, h]);
  },
});
