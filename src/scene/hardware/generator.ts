/**
 * Portable generator: tube frame, fuel tank, air-cooled engine with recoil starter and muffler, alternator, outlet panel,
 * two wheels. Origin: ground under its centre; the outlet panel faces along `side`. States: `stopped`, `running` (pilot
 * lamp lit), `running-cord`, `stopped-cord` (a cord plugged in, running along the ground). Size: length, depth, height.
 */
import { CylinderGeometry } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { bar, block, curve, ring, rod, turned } from './shapes.ts';
import { wire } from './wire.ts';

interface SetSize {
  readonly length: number;
  readonly depth: number;
  readonly height: number;
}

const frame = (a: Assembly, s: SetSize): void => {
  const [x, y, z] = [s.depth / 2, s.length / 2, s.height];
  const low = 0.1;
  for (const e of [-1, 1]) {
    const hoop = curve(
      [
        [-x, e * y, low],
        [-x, e * y, z * 0.6],
        [-x + 0.02, e * y, z - 0.05],
        [-x + 0.06, e * y, z],
        [x - 0.06, e * y, z],
        [x - 0.02, e * y, z - 0.05],
        [x, e * y, z * 0.6],
        [x, e * y, low],
      ],
      26,
    );
    a.add('polymerBlack', wire(hoop, 0.014, 8));
    a.add('polymerBlack', rod([e * x, -y, low], [e * x, y, low], 0.014, 8));
    a.add('polymerBlack', rod([e * (x - 0.06), -y, z], [e * (x - 0.06), y, z], 0.014, 8));
    a.add('polymerBlack', rod([-x, e * y * 0.7, low], [x, e * y * 0.7, low], 0.013, 8));
  }
  for (const e of [-1, 1]) {
    a.add('rubber', ring([e * (x + 0.02), -y + 0.06, 0.1], [1, 0, 0], 0.075, 0.026));
    a.add('zinc', rod([e * (x + 0.005), -y + 0.06, 0.1], [e * (x + 0.035), -y + 0.06, 0.1], 0.05, 14));
    a.add('rubber', rod([e * (x - 0.03), y - 0.08, 0], [e * (x - 0.03), y - 0.08, low], 0.02, 10));
  }
  a.add('zinc', rod([-x, -y + 0.06, 0.1], [x, -y + 0.06, 0.1], 0.008, 8));
};

const fuelTank = (a: Assembly, s: SetSize): void => {
  a.add('green', block([-0.02, 0, s.height - 0.095], [s.depth - 0.14, s.length - 0.1, 0.13], 0.35));
  a.add('green', block([-0.02, 0, s.height - 0.09], [s.depth - 0.1, s.length - 0.06, 0.012], 0.4));
  a.add(
    'black',
    new CylinderGeometry(0.034, 0.036, 0.03, 18).rotateX(Math.PI / 2).translate(-0.02, 0.06, s.height - 0.02),
  );
  a.add('glass', rod([-0.02, -0.1, s.height - 0.035], [-0.02, -0.1, s.height - 0.025], 0.018, 12));
};

const engine = (a: Assembly, s: SetSize): void => {
  const y = s.length * 0.22;
  a.add('steelDark', block([0, y, 0.22], [0.26, 0.22, 0.2], 0.2));
  for (let i = 0; i < 7; i++)
    a.add('aluminium', block([-0.05 - i * 0.016, y - 0.01, 0.34 - i * 0.004], [0.006, 0.16, 0.12], 0.1));
  a.add('black', block([0.1, y, 0.36], [0.1, 0.16, 0.1], 0.25));
  const starter = turned(
    [
      [0.105, 0],
      [0.11, 0.02],
      [0.1, 0.05],
      [0.07, 0.062],
      [0.03, 0.066],
      [0, 0.066],
    ],
    24,
  );
  a.add('green', starter.rotateX(-Math.PI / 2).translate(0, y + 0.11, 0.24));
  a.add('black', bar([0.02, y + 0.17, 0.33], [0.09, y + 0.17, 0.33], 0.018, 0.02));
  for (let i = 0; i < 6; i++) {
    const t = (i / 6) * 2 * Math.PI;
    a.add('black', block([0.05 * Math.cos(t), y + 0.175, 0.24 + 0.05 * Math.sin(t)], [0.03, 0.006, 0.008], 0.1));
  }
};

const alternator = (a: Assembly, s: SetSize): void => {
  const y = -s.length * 0.2;
  const fins = Array.from({ length: 9 }, (_, i) => -0.1 + i * 0.024).flatMap((z) => [
    [0.1, z] as const,
    [0.106, z + 0.002] as const,
    [0.106, z + 0.008] as const,
    [0.1, z + 0.01] as const,
  ]);
  const body = turned([[0.09, -0.13], [0.1, -0.12], ...fins, [0.1, 0.13], [0.09, 0.14]], 22);
  a.add('aluminium', body.rotateX(-Math.PI / 2).translate(0, y, 0.24));
  a.add('steelDark', rod([0, y - 0.15, 0.24], [0, y - 0.13, 0.24], 0.092, 22));
  a.add('rust', block([-0.12, y + 0.02, 0.38], [0.14, 0.26, 0.12], 0.3));
  a.add('steelDark', rod([-0.12, y - 0.1, 0.4], [-0.12, y - 0.18, 0.4], 0.016, 10));
};

const outlets = (a: Assembly, s: SetSize, running: boolean, cord: boolean): void => {
  const x = s.depth / 2 - 0.02;
  a.add('steelDark', block([x - 0.01, -0.08, 0.36], [0.06, 0.36, 0.19], 0.12));
  a.add('boxPaint', block([x + 0.021, -0.08, 0.36], [0.004, 0.34, 0.17], 0.1));
  const face = x + 0.024;
  for (const dy of [-0.19, -0.11]) {
    a.add('black', block([face, dy, 0.34], [0.012, 0.055, 0.09], 0.15));
    for (const dz of [-0.02, 0.02]) {
      a.add('bisque', rod([face + 0.004, dy, 0.34 + dz], [face + 0.008, dy, 0.34 + dz], 0.016, 14));
      for (const o of [-0.006, 0.006])
        a.add('black', block([face + 0.008, dy + o, 0.34 + dz + 0.002], [0.002, 0.002, 0.009], 0));
    }
  }
  a.add('black', rod([face - 0.002, -0.01, 0.34], [face + 0.012, -0.01, 0.34], 0.033, 20));
  a.add('bisque', rod([face + 0.01, -0.01, 0.34], [face + 0.014, -0.01, 0.34], 0.026, 20));
  a.add('red', block([face + 0.004, 0.05, 0.4], [0.014, 0.03, 0.02], 0.2));
  a.add('black', block([face + 0.004, -0.15, 0.42], [0.01, 0.06, 0.022], 0.15));
  a.add(running ? 'lampLit' : 'black', rod([face - 0.001, 0.05, 0.35], [face + 0.007, 0.05, 0.35], 0.008, 10));
  a.name('outlet', [face + 0.014, -0.01, 0.34]);
  if (!cord) return;
  a.add('black', rod([face + 0.01, -0.01, 0.34], [face + 0.075, -0.01, 0.335], 0.027, 14, 0.018));
  const cable = curve(
    [
      [face + 0.07, -0.01, 0.335],
      [face + 0.13, -0.01, 0.3],
      [face + 0.17, -0.02, 0.12],
      [face + 0.24, -0.04, 0.012],
      [face + 0.5, 0.06, 0.009],
      [face + 0.62, 0.34, 0.009],
      [face + 0.4, 0.52, 0.009],
      [face + 0.3, 0.8, 0.009],
    ],
    46,
  );
  a.add('insulation', wire(cable, 0.009, 7));
  a.name('cordEnd', [face + 0.3, 0.8, 0.009]);
};

export const generator = builder({
  kind: 'generator',
  states: ['stopped', 'running', 'running-cord', 'stopped-cord'],
  size: { length: 0.72, depth: 0.54, height: 0.58 },
  build: (a, size, part) => {
    frame(a, size);
    fuelTank(a, size);
    engine(a, size);
    alternator(a, size);
    outlets(a, size, part.state.startsWith('running'), part.state.endsWith('cord'));
  },
});
