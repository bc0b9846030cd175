/**
 * Meter socket with its glass meter. Origin: wall surface at the meter's centre; it faces along `side`.
 * States: `present`, `fogged` (its glass white inside), `blank` (cover plate over dead jaws), `empty` (open jaws), `sealed-blank` (plate, seal and tag).
 */
import { CylinderGeometry, Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { lettering } from './lettering.ts';
import { bar, block, bolt, ring, rod, turned } from './shapes.ts';

const depth = 0.105;

const faced = (x: number): Matrix4 =>
  new Matrix4().makeTranslation(x, 0, 0).multiply(new Matrix4().makeRotationY(Math.PI / 2));

const glassMeter = (a: Assembly, fogged: boolean): void => {
  a.within(faced(depth), () => {
    a.add('polymerBlack', new CylinderGeometry(0.084, 0.086, 0.02, 32).rotateX(Math.PI / 2).translate(0, 0, 0.012));
    a.add('white', new CylinderGeometry(0.066, 0.066, 0.004, 32).rotateX(Math.PI / 2).translate(0, 0, 0.062));
    a.add(
      'polymer',
      new CylinderGeometry(0.067, 0.074, 0.044, 32, 1, true).rotateX(Math.PI / 2).translate(0, 0, 0.042),
    );
    a.add(
      // Fogged, it is as white as paper and hides the register.
      fogged ? 'lens' : 'glass',
      turned(
        [
          [0.083, 0.02],
          [0.082, 0.03],
          [0.08, 0.085],
          [0.077, 0.098],
          [0.069, 0.108],
          [0.05, 0.113],
          [0, 0.114],
        ],
        32,
      ),
    );
  });
  const x = depth + 0.0645;
  a.add('display', block([x, 0, 0.022], [0.002, 0.062, 0.026]));
  for (const g of lettering('0487', 0.017, 0.0008)) a.add('black', g.translate(x + 0.001, 0, 0.022));
  a.add(
    'black',
    bar([x, -0.03, -0.012], [x, 0.03, -0.012], 0.002, 0.002),
    bar([x, -0.03, -0.02], [x, 0.02, -0.02], 0.002, 0.002),
  );
  for (let i = 0; i < 14; i++)
    a.add('black', block([x, -0.026 + i * 0.004, -0.038], [0.001, i % 3 ? 0.0012 : 0.0024, 0.01], 0));
};

const plateOver = (a: Assembly): void => {
  a.within(faced(depth), () => {
    a.add(
      'polymer',
      turned(
        [
          [0.084, 0.004],
          [0.084, 0.018],
          [0.08, 0.022],
          [0.064, 0.024],
          [0.06, 0.021],
          [0, 0.02],
        ],
        32,
      ),
    );
  });
};

const jaws = (a: Assembly): void => {
  a.add('black', new CylinderGeometry(0.08, 0.08, 0.004, 32).rotateZ(Math.PI / 2).translate(depth - 0.03, 0, 0));
  for (const y of [-0.032, 0.032]) {
    for (const z of [-0.042, 0.042]) {
      a.add('bisque', block([depth - 0.02, y, z], [0.018, 0.034, 0.03]));
      for (const s of [-1, 1])
        a.add(
          'tinned',
          bar([depth - 0.012, y + s * 0.004, z], [depth + 0.016, y + s * 0.003, z], 0.022, 0.003, [0, 1, 0]),
        );
    }
  }
};

const seal = (a: Assembly): void => {
  a.add('red', block([depth + 0.02, 0, -0.103], [0.008, 0.012, 0.02]));
  a.add('yellow', block([depth + 0.024, 0.006, -0.155], [0.0015, 0.055, 0.085], 0));
  a.add('steelDark', rod([depth + 0.02, 0, -0.092], [depth + 0.024, 0.004, -0.118], 0.001, 5));
  for (const g of lettering('OPEN', 0.012, 0.0006)) a.add('black', g.translate(depth + 0.025, 0.006, -0.14));
};

export const meter = builder({
  kind: 'meter',
  states: ['present', 'fogged', 'blank', 'sealed-blank', 'empty'],
  size: { width: 0.22, height: 0.34 },
  build: (a, size, part) => {
    a.add('boxPaint', block([depth / 2, 0, -0.02], [depth, size.width, size.height], 0.08));
    a.add('boxPaint', bar([depth + 0.001, 0, -0.185], [depth + 0.001, 0, -0.115], 0.1, 0.004, [1, 0, 0]));
    a.add('steelDark', block([depth + 0.004, 0, -0.18], [0.01, 0.02, 0.012]));
    a.add('zinc', ring([depth + 0.012, 0, 0], [1, 0, 0], 0.088, 0.006));
    a.add(
      'zinc',
      block([depth + 0.012, 0, -0.096], [0.014, 0.026, 0.014]),
      bolt([depth + 0.012, 0.013, -0.096], [0, 1, 0], 0.01, 0),
    );
    a.add('zinc', rod([depth * 0.5, 0, size.height / 2 - 0.022], [depth * 0.5, 0, size.height / 2 + 0.03], 0.034, 16));
    a.add('zinc', rod([depth * 0.5, 0, -size.height / 2 - 0.02], [depth * 0.5, 0, -size.height / 2 - 0.06], 0.026, 14));
    if (part.state === 'present' || part.state === 'fogged') glassMeter(a, part.state === 'fogged');
    else if (part.state === 'empty') jaws(a);
    else plateOver(a);
    if (part.state === 'sealed-blank') seal(a);
    a.name('line', [depth * 0.5, 0, size.height / 2 + 0.03]);
    a.name('load', [depth * 0.5, 0, -size.height / 2 - 0.06]);
  },
});
