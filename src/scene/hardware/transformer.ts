/**
 * Pole-type transformer, one high-voltage bushing on the lid, three low-voltage bushings on the wall. Origin: face of the
 * pole at the upper hanger's bolt; the tank stands off along `side`, low-voltage bushings on its far side: seen from
 * there, X3 left, X2 middle, X1 right (additive polarity). Variants: `two-bushing` (two on the lid), `unit` (of a bank: two
 * low-voltage bushings). Text: rating stencilled on the wall. States: `whole`, `no-strap` (ground strap from X2 to the tank
 * missing), `bulged` (wall and lid blown out), `lid-lifted` (band off, lid raised on one side), `half-volts` (voltage switch down).
 * Size: tank, kVA.
 */
import { BoxGeometry, type BufferGeometry, CylinderGeometry, LatheGeometry, Matrix4, Vector2 } from 'three';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';
import { type Assembly, builder } from './assembly.ts';
import { lettering, wrapped } from './lettering.ts';
import { outerOf, profileOf, turnedOf } from './profiles.ts';
import { bar, block, bolt, curve, plate, ring, rod } from './shapes.ts';
import { wire } from './wire.ts';

interface TankSize {
  readonly diameter: number;
  readonly height: number;
}

/** Distance between hanger bolts and of the upper one below the top of the wall, m (common practice: 11 1/4 in). */
const spacing = 0.286;
const upper = 0.13;
const standoff = 0.055;

const hangers = (a: Assembly): void => {
  for (const z of [0, -spacing]) {
    for (const y of [-0.045, 0.045])
      a.add('lidPaint', bar([0.012, y, z - 0.045], [standoff + 0.02, y, z - 0.045], 0.008, 0.09, [0, 0, 1]));
    a.add('lidPaint', bar([0.008, 0, z - 0.08], [0.008, 0, z + 0.02], 0.115, 0.009, [1, 0, 0]));
    a.add('zinc', bolt([0.012, 0, z], [1, 0, 0], 0.029, 0.05));
  }
};

const lid = (a: Assembly, size: TankSize, k: readonly [number, number], lifted: boolean): void => {
  const r = size.diameter / 2;
  const top = size.height;
  const clampRing = profileOf('tankLid', k);
  const rim = clampRing[4] as readonly [number, number];
  const raised = new Matrix4()
    .makeTranslation(r, 0, top)
    .multiply(new Matrix4().makeRotationY(lifted ? 0.22 : 0))
    .multiply(new Matrix4().makeTranslation(-r, 0, -top));
  a.within(raised, () => a.add('lidPaint', turnedOf('tankLid', k)));
  const slack = lifted ? 0.05 : 0;
  a.within(new Matrix4().makeTranslation(0, 0, -slack).multiply(new Matrix4().makeRotationX(slack * 2)), () =>
    a.add('zinc', ring([0, 0, rim[1] - 0.002], [0, 0, 1], rim[0] + 0.001, 0.0045, Math.PI * 2)),
  );
  const az = -0.9;
  const at = (d: number, z: number): [number, number, number] => [d * Math.cos(az), d * Math.sin(az), z];
  a.add('zinc', block(at(rim[0] + 0.014, rim[1] - 0.002), [0.03, 0.03, 0.022]));
  a.add(
    'zinc',
    rod(
      [at(rim[0] + 0.016, 0)[0] - 0.03, at(rim[0] + 0.016, 0)[1] - 0.024, rim[1] - 0.002],
      [at(rim[0] + 0.016, 0)[0] + 0.03, at(rim[0] + 0.016, 0)[1] + 0.024, rim[1] - 0.002],
      0.005,
      8,
    ),
  );
  for (const s of [-1, 1]) {
    const lug = plate(
      [
        [0, 0],
        [0.045, 0.05],
        [0.045, 0.085],
        [0.02, 0.1],
        [0, 0.1],
      ],
      0.01,
      0.0015,
    );
    const m = new Matrix4()
      .makeRotationZ((s * Math.PI) / 2)
      .multiply(new Matrix4().makeTranslation(r - 0.002, 0.005, top - 0.17));
    a.within(m, () => a.add('lidPaint', lug.rotateX(Math.PI / 2)));
  }
  a.within(new Matrix4().makeRotationZ(0.62), () => {
    a.add('tinned', rod([r - 0.004, 0, top - 0.075], [r + 0.03, 0, top - 0.075], 0.012, 14));
    a.add(
      'bronze',
      rod([r + 0.028, 0, top - 0.075], [r + 0.04, 0, top - 0.075], 0.008, 10),
      ring([r + 0.046, 0, top - 0.075], [0, 1, 0], 0.012, 0.002),
    );
  });
};

const highSide = (a: Assembly, size: TankSize, y: number, name: string): void => {
  const tilt = new Matrix4()
    .makeTranslation(-0.02, y, size.height + 0.012)
    .multiply(new Matrix4().makeRotationX(-y * 1.6))
    .multiply(new Matrix4().makeRotationY(0.06));
  a.within(tilt, () => {
    a.add('zinc', new CylinderGeometry(0.06, 0.064, 0.012, 18).rotateX(Math.PI / 2).translate(0, 0, 0));
    for (let i = 0; i < 3; i++) {
      const b = (i / 3) * 2 * Math.PI + 0.5;
      a.add('zinc', bolt([0.056 * Math.cos(b), 0.056 * Math.sin(b), 0.008], [0, 0, 1], 0.015, 0));
    }
    a.within(new Matrix4().makeTranslation(0, 0, 0.005), () => {
      a.add('porcelainGrey', turnedOf('highVoltageBushing'));
      if (name === 'h1') a.markable(outerOf(profileOf('highVoltageBushing')));
    });
    a.add(
      'tinned',
      rod([0, 0, 0.25], [0, 0, 0.292], 0.009, 10),
      new CylinderGeometry(0.022, 0.024, 0.012, 18).rotateX(Math.PI / 2).translate(0, 0, 0.256),
    );
    a.add('bronze', block([0, 0, 0.284], [0.03, 0.024, 0.026]), bolt([0, 0.012, 0.284], [0, 1, 0], 0.016, 0));
    a.name(name, [0, 0, 0.298]);
  });
};

const lowSide = (a: Assembly, size: TankSize, strapped: boolean, names: readonly string[]): void => {
  const r = size.diameter / 2;
  const z = size.height - 0.16;
  names.forEach((name, i) => {
    const az = (i - (names.length - 1) / 2) * 0.52;
    const out = new Matrix4()
      .makeRotationZ(az)
      .multiply(new Matrix4().makeTranslation(r - 0.002, 0, z))
      .multiply(new Matrix4().makeRotationY(Math.PI / 2 - 0.18));
    a.within(out, () => {
      a.add('tankPaint', new CylinderGeometry(0.033, 0.036, 0.012, 12).rotateX(Math.PI / 2).translate(0, 0, 0.004));
      a.within(new Matrix4().makeTranslation(0, 0, 0.008), () => a.add('porcelainGrey', turnedOf('lowVoltageBushing')));
      a.add('tinned', rod([0, 0, 0.068], [0, 0, 0.115], 0.008, 10));
      a.add('bronze', block([0, 0, 0.1], [0.03, 0.03, 0.03], 0.2), bolt([-0.014, 0, 0.1], [-1, 0, 0], 0.018, 0));
      a.name(name, [0, 0, 0.122]);
    });
  });
  if (!strapped || !names.includes('x3')) return;
  const x = r + 0.096;
  const strap = curve(
    [
      [x, 0, z + 0.008],
      [x + 0.004, 0.004, z - 0.05],
      [r + 0.03, 0.012, z - 0.12],
      [r + 0.012, 0.03, z - 0.16],
    ],
    9,
  );
  a.add('copper', wire(strap, 0.0042, 6));
  a.add('bronze', block([r + 0.01, 0.03, z - 0.165], [0.022, 0.03, 0.026]));
};

const wall = (a: Assembly, size: TankSize, kva: number, text: string): void => {
  const r = size.diameter / 2;
  const face = (g: BufferGeometry): BufferGeometry => wrapped(g, r);
  const label = text || String(Math.round(kva));
  a.within(new Matrix4().makeRotationZ(-0.42), () => {
    for (const g of lettering(label, 0.1, 0.0012, 2)) a.add('black', face(g).translate(0, 0, size.height * 0.27));
  });
  a.add('aluminium', face(new BoxGeometry(0.003, 0.1, 0.065, 1, 8, 1).translate(0.001, 0, size.height - 0.47)));
  for (const y of [-0.043, 0.043])
    a.add('steelDark', face(rod([0.003, y, size.height - 0.47], [0.006, y, size.height - 0.47], 0.003, 6)));
  a.add('lidPaint', block([r + 0.01, 0.08, 0.07], [0.03, 0.045, 0.05]));
  a.add(
    'bronze',
    block([r + 0.034, 0.08, 0.07], [0.026, 0.03, 0.03], 0.2),
    bolt([r + 0.046, 0.08, 0.07], [1, 0, 0], 0.017, 0),
  );
  a.name('ground', [r + 0.036, 0.08, 0.058]);
  a.within(new Matrix4().makeRotationZ(2.2), () =>
    a.add('lidPaint', bar([r, 0, 0.03], [r, 0, size.height - 0.04], 0.008, 0.003, [1, 0, 0])),
  );
};

/** The wall of a tank driven out by the pressure of a fault inside: most at two fifths of its height, uneven round it. */
const blownOut = (g: BufferGeometry, size: TankSize): BufferGeometry => {
  const fine = new LatheGeometry(
    Array.from({ length: 25 }, (_, i) => new Vector2(size.diameter / 2, 0.02 + ((size.height - 0.05) * i) / 24)),
    34,
  ).rotateX(Math.PI / 2);
  const p = fine.getAttribute('position');
  for (let i = 0; i < p.count; i++) {
    const t = p.getZ(i) / size.height;
    const round = Math.atan2(p.getY(i), p.getX(i));
    const out = 1 + (0.13 + 0.04 * Math.cos(2 * round + 0.6)) * Math.exp(-(((t - 0.42) / 0.24) ** 2));
    p.setXY(i, p.getX(i) * out, p.getY(i) * out);
  }
  fine.computeVertexNormals();
  return mergeGeometries([g, fine]) ?? fine;
};

/** Dual-voltage switch under the plate: a round base with two marks, its pointer up at the one or down at the other. */
const voltageSwitch = (a: Assembly, size: TankSize, half: boolean): void => {
  const x = size.diameter / 2;
  const z = size.height - 0.58;
  a.add('bronze', rod([x - 0.004, 0, z], [x + 0.014, 0, z], 0.034, 18));
  for (const up of [0.045, -0.045]) a.add('black', block([x + 0.003, 0, z + up], [0.004, 0.012, 0.012], 0));
  const tip = half ? -0.042 : 0.042;
  a.add('white', bar([x + 0.018, 0, z - tip * 0.3], [x + 0.018, 0, z + tip], 0.016, 0.006, [1, 0, 0]));
};

export const transformer = builder({
  kind: 'transformer',
  states: ['whole', 'no-strap', 'bulged', 'lid-lifted', 'half-volts'],
  variants: ['usual', 'two-bushing', 'unit'],
  size: { diameter: 0.45, height: 0.85, kva: 25 },
  build: (a, size, part) => {
    const k = [size.diameter / 0.45, size.height / 0.85] as const;
    hangers(a);
    a.within(new Matrix4().makeTranslation(standoff + size.diameter / 2, 0, upper - size.height), () => {
      const tank = turnedOf('tank', k);
      a.add('tankPaint', part.state === 'bulged' ? blownOut(tank, size) : tank);
      a.markable(outerOf(profileOf('tank', k)), 0.0012, 'tank');
      lid(a, size, k, part.state === 'lid-lifted');
      if (part.variant === 'two-bushing') {
        highSide(a, size, -0.1, 'h1');
        highSide(a, size, 0.1, 'h2');
      } else highSide(a, size, 0, 'h1');
      lowSide(a, size, part.state !== 'no-strap', part.variant === 'unit' ? ['x2', 'x1'] : ['x3', 'x2', 'x1']);
      wall(a, size, size.kva, part.text);
      voltageSwitch(a, size, part.state === 'half-volts');
      a.name('tankTop', [0, 0, size.height]);
      a.name('tankBottom', [0, 0, 0]);
    });
  },
});
