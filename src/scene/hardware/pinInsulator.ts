/**
 * Pin insulator of brown glazed porcelain on its steel pin. Origin: centre of the pole's roof (`pole-top`, a channel
 * bolted to the face of the pole at azimuth `side`) or top of the arm (`arm`). The conductor runs along the groove,
 * across `side` at right angles. Size: groove above the origin, diameter of the pole's top.
 */
import { type BufferGeometry, CylinderGeometry, Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { outerOf, profileOf, turnedOf } from './profiles.ts';
import { bar, bolt, rod } from './shapes.ts';

/** Height of the insulator over its base and of the conductor's centre in the top groove, m. */
const crown = 0.127;
const seat = 0.1185;

/** Presses the top groove into the crown, along local y. */
const grooved = (g: BufferGeometry): BufferGeometry => {
  const p = g.getAttribute('position');
  const was = g.getAttribute('normal').clone();
  const pressed = new Set<number>();
  for (let i = 0; i < p.count; i++) {
    const z = p.getZ(i);
    const x = Math.abs(p.getX(i));
    if (z < 0.1 || x > 0.02) continue;
    const floor = 0.1125 + 0.0145 * (x / 0.02) ** 2.2;
    if (z > floor) pressed.add(i);
    p.setZ(i, Math.min(z, floor));
  }
  g.computeVertexNormals();
  const now = g.getAttribute('normal');
  for (let i = 0; i < p.count; i++) if (!pressed.has(i)) now.setXYZ(i, was.getX(i), was.getY(i), was.getZ(i));
  return g;
};

const poleTopPin = (a: Assembly, base: number, radius: number): void => {
  const face = radius + 0.004;
  a.add('zinc', bar([face, 0, -0.44], [face, 0, -0.02], 0.05, 0.007, [1, 0, 0]));
  for (const y of [-0.024, 0.024])
    a.add('zinc', bar([face - 0.008, y, -0.44], [face - 0.008, y, -0.02], 0.018, 0.005, [0, 1, 0]));
  a.add('zinc', bar([face, 0, -0.03], [0.022, 0, 0.09], 0.046, 0.009, [1, 0, 0.6]));
  a.add('zinc', bar([0.022, 0, 0.075], [0, 0, base - 0.04], 0.038, 0.02, [1, 0, 0]));
  for (const z of [-0.12, -0.37]) {
    a.add('zinc', bolt([face + 0.003, 0, z], [1, 0, 0]));
    a.add('zinc', bolt([-radius - 0.001, 0, z], [-1, 0, 0]));
  }
};

export const pinInsulator = builder({
  kind: 'pin-insulator',
  variants: ['pole-top', 'arm'],
  size: { groove: 0.3, poleDiameter: 0.2, armDepth: 0.115 },
  build: (a, size, part) => {
    const base = size.groove - seat;
    if (part.variant === 'pole-top') poleTopPin(a, base, size.poleDiameter / 2);
    else {
      a.add('zinc', rod([0, 0, 0.008], [0, 0, base + 0.03], 0.0125, 12, 0.011));
      a.add('zinc', new CylinderGeometry(0.025, 0.034, 0.016, 20).rotateX(Math.PI / 2).translate(0, 0, 0.008));
      a.add('zinc', bolt([0, 0, -size.armDepth], [0, 0, -1]));
    }
    a.add('zinc', rod([0, 0, base - 0.07], [0, 0, base + 0.07], 0.0115, 12));
    a.add('steelDark', rod([0, 0, base + 0.012], [0, 0, base + 0.07], 0.0145, 12));
    a.within(new Matrix4().makeTranslation(0, 0, base), () => {
      a.add('porcelainBrown', grooved(turnedOf('pinInsulator')));
      a.markable(outerOf(profileOf('pinInsulator')));
      a.name('groove', [0, 0, seat]);
      a.name('crown', [0, 0, crown]);
      a.name('pin', [0, 0, -0.03]);
    });
  },
});
