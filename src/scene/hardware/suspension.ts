/**
 * String that hangs from an eye bolt under an arm, and the clamp at its foot in which the conductor lies. The string's origin: the
 * eye; it reaches `length` down to the conductor's height, a link making up for what its insulators leave. The clamp's origin: the
 * conductor, which runs along `side`. State `loose` of the clamp: its keeper stands up on one U-bolt.
 */
import { Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { string } from './deadend.ts';
import { bar, bolt, ring, rod } from './shapes.ts';

/** From the conductor up to the pin on which the clamp swings. */
const PIN_UP = 0.078;

export const suspension = builder({
  kind: 'suspension-insulator',
  states: ['whole', 'broken', 'uncoupled'],
  variants: ['bells', 'polymer', 'glass'],
  size: { length: 0.46 },
  build: (a, size, part) => {
    a.add('zinc', ring([0, 0, -0.012], [0, 1, 0], 0.018, 0.007), rod([0, 0, 0.004], [0, 0, 0.17], 0.008, 10));
    a.add('zinc', bolt([0, 0, 0.135], [0, 0, 1], 0.027, 0.05));
    a.within(new Matrix4().makeRotationY(Math.PI / 2), () => {
      const end = string(a, 0.03, part.variant, part.state);
      const pin = size.length - PIN_UP;
      if (end > pin - 0.02) return;
      for (const s of [-1, 1])
        a.add('zinc', bar([end - 0.03, s * 0.011, 0], [pin + 0.012, s * 0.011, 0], 0.026, 0.006, [0, 1, 0]));
      a.add('zinc', rod([end - 0.014, -0.019, 0], [end - 0.014, 0.019, 0], 0.006, 10));
    });
    a.name('conductor', [0, 0, -size.length]);
  },
});

/** Trough with its ends bent down, so that nothing cuts the conductor. */
const trough = (a: Assembly): void => {
  const course = [
    [0.045, -0.0085],
    [0.085, -0.0115],
    [0.112, -0.02],
  ] as const;
  a.add('aluminium', bar([-0.045, 0, -0.0085], [0.045, 0, -0.0085], 0.03, 0.011));
  for (const s of [-1, 1]) {
    let [x, z] = [0.044, -0.0085];
    for (const [nextX, nextZ] of course) {
      a.add('aluminium', bar([s * x, 0, z], [s * (nextX + 0.001), 0, nextZ], 0.03, 0.011));
      [x, z] = [nextX, nextZ];
    }
    a.add('aluminium', bar([-0.09, s * 0.0135, -0.004], [0.09, s * 0.0135, -0.004], 0.005, 0.016));
  }
};

const keeper = (a: Assembly): void => {
  a.add('aluminium', bar([-0.052, 0, 0.0085], [0.052, 0, 0.0085], 0.02, 0.011));
  for (const s of [-1, 1]) a.add('aluminium', bar([s * 0.05, 0, 0.0085], [s * 0.068, 0, 0.015], 0.02, 0.009));
};

const uBolt = (a: Assembly, x: number, nuts: boolean): void => {
  for (const y of [-0.0185, 0.0185]) {
    a.add('zinc', rod([x, y, -0.018], [x, y, 0.04], 0.0045, 8));
    if (nuts) a.add('zinc', bolt([x, y, 0.017], [0, 0, 1], 0.014, 0));
  }
  a.add('zinc', bar([x, -0.0225, -0.019], [x, 0.0225, -0.019], 0.01, 0.008));
};

export const suspensionClamp = builder({
  kind: 'suspension-clamp',
  states: ['whole', 'loose'],
  size: {},
  build: (a, _size, part) => {
    const loose = part.state === 'loose';
    trough(a);
    for (const s of [-1, 1])
      a.add('zinc', bar([0, s * 0.021, -0.012], [0, s * 0.013, PIN_UP + 0.014], 0.026, 0.005, [0, 1, 0]));
    a.add(
      'zinc',
      rod([0, -0.026, PIN_UP], [0, 0.026, PIN_UP], 0.0065, 10),
      bolt([0, 0.02, PIN_UP], [0, 1, 0], 0.02, 0),
    );
    uBolt(a, 0.036, true);
    uBolt(a, -0.036, !loose);
    const turned = loose
      ? new Matrix4()
          .makeTranslation(0.036, 0, 0.016)
          .multiply(new Matrix4().makeRotationY(0.55))
          .multiply(new Matrix4().makeTranslation(-0.036, 0, 0))
      : new Matrix4();
    a.within(turned, () => keeper(a));
    a.name('conductor', loose ? [0, 0.016, 0.004] : [0, 0, 0]);
  },
});
