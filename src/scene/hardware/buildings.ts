/**
 * House and outbuilding: gabled, boards and shingles, door and windows on the front, which faces along `side`. Origin:
 * ground under the middle. House states: `dark`, `lit`. Outbuilding states: `dark`, `lit`, `open` (one leaf open).
 * Size: length along the ridge, width, height of the eaves, rise of the roof.
 */
import { Matrix4 } from 'three';
import type { MaterialName } from '../materials/materials.ts';
import { type Assembly, builder } from './assembly.ts';
import { bar, block, rod } from './shapes.ts';
import { gableEnd, sheet } from './walls.ts';

interface BuildingSize {
  readonly length: number;
  readonly width: number;
  readonly eaves: number;
  readonly rise: number;
}

const shell = (a: Assembly, s: BuildingSize, wall: MaterialName, base: number): void => {
  const w = s.width / 2;
  const l = s.length / 2;
  for (const e of [1, -1]) {
    a.within(new Matrix4().makeRotationZ(e === 1 ? 0 : Math.PI), () => {
      a.add(wall, sheet(s.length, s.eaves).translate(w, 0, 0));
    });
    a.add(wall, gableEnd(w, s.eaves, s.rise, 0.01).translate(0, e * l + (e > 0 ? 0.005 : 0.005), 0));
    for (const z of [0, 1])
      a.add(
        'white',
        bar([w * 1.002, e * (l + 0.006), z * 0.1], [w * 1.002, e * (l + 0.006), s.eaves], 0.1, 0.1, [1, 0, 0]),
      );
    a.add('white', bar([-w * 1.002, e * (l + 0.006), 0], [-w * 1.002, e * (l + 0.006), s.eaves], 0.1, 0.1, [1, 0, 0]));
  }
  a.add('concrete', block([0, 0, base / 2 - 0.05], [s.width + 0.06, s.length + 0.06, base + 0.1], 0.05));
  const over = 0.35;
  const slope = Math.sqrt(w * w + s.rise * s.rise);
  for (const e of [1, -1]) {
    const pitch = Math.atan2(s.rise, w);
    const roof = sheet(s.length + 2 * over, slope + over);
    const lay = new Matrix4()
      .makeRotationZ(e === 1 ? 0 : Math.PI)
      .multiply(new Matrix4().makeTranslation(w + over * Math.cos(pitch), 0, s.eaves - over * Math.sin(pitch)))
      .multiply(new Matrix4().makeRotationY(-(Math.PI / 2 - pitch)));
    a.within(lay, () => {
      a.add('shingles', roof.translate(0.06, 0, 0));
      a.add('white', bar([0.02, -s.length / 2 - over, 0], [0.02, s.length / 2 + over, 0], 0.16, 0.12, [1, 0, 0]));
      for (const g of [-1, 1])
        a.add(
          'white',
          bar(
            [0, g * (s.length / 2 + over - 0.02), 0],
            [0, g * (s.length / 2 + over - 0.02), slope + over],
            0.04,
            0.12,
            [1, 0, 0],
          ),
        );
    });
  }
};

const window = (a: Assembly, x: number, y: number, z: number, w: number, h: number, lit: boolean): void => {
  a.add(lit ? 'windowLit' : 'windowDark', block([x + 0.01, y, z], [0.02, w, h], 0));
  for (const e of [-1, 1]) {
    a.add('white', block([x + 0.03, y + (e * w) / 2, z], [0.06, 0.09, h + 0.12], 0.1));
    a.add('white', block([x + 0.03, y, z + (e * h) / 2], [0.06, w + 0.12, 0.09], 0.1));
  }
  a.add('white', block([x + 0.026, y, z], [0.03, w, 0.045], 0.1), block([x + 0.024, y, z], [0.025, 0.03, h], 0.1));
  a.add('white', block([x + 0.06, y, z - h / 2 - 0.05], [0.12, w + 0.2, 0.04], 0.2));
};

const sides = (a: Assembly, s: BuildingSize, lit: boolean): void => {
  for (const quarter of [1, 3]) {
    a.within(new Matrix4().makeRotationZ((quarter * Math.PI) / 2), () => {
      for (const y of [-s.width * 0.22, s.width * 0.22])
        window(a, s.length / 2 + 0.005, y, 1.75, 0.85, 1.15, lit && quarter === 1);
      window(a, s.length / 2 + 0.005, 0, s.eaves + s.rise * 0.32, 0.6, 0.7, false);
    });
  }
  a.within(new Matrix4().makeRotationZ(Math.PI), () => {
    for (const y of [-s.length * 0.28, 0, s.length * 0.28]) window(a, s.width / 2, y, 1.75, 0.9, 1.15, lit);
  });
};

export const house = builder({
  kind: 'house',
  states: ['dark', 'lit'],
  size: { length: 10, width: 7.4, eaves: 3, rise: 2.4 },
  build: (a, s, part) => {
    const lit = part.state === 'lit';
    const x = s.width / 2;
    shell(a, s, 'siding', 0.45);
    for (const y of [-s.length * 0.32, s.length * 0.16, s.length * 0.36])
      window(a, x, y, 1.8, 1.1, 1.25, lit && y < s.length * 0.3);
    const d = -s.length * 0.08;
    a.add('green', block([x + 0.03, d, 1.45], [0.05, 0.94, 2.05], 0.03));
    for (const e of [-1, 1]) a.add('white', block([x + 0.035, d + e * 0.52, 1.48], [0.07, 0.11, 2.16], 0.1));
    a.add('white', block([x + 0.035, d, 2.55], [0.07, 1.16, 0.12], 0.1));
    a.add(lit ? 'windowLit' : 'windowDark', block([x + 0.056, d, 2.05], [0.008, 0.5, 0.36], 0));
    a.add('bronze', rod([x + 0.05, d + 0.38, 1.4], [x + 0.1, d + 0.38, 1.4], 0.03, 10));
    for (let i = 0; i < 3; i++)
      a.add('concrete', block([x + 0.25 + i * 0.3, d, 0.3 - i * 0.15], [0.5 - i * 0.06, 1.5, 0.16], 0.1));
    a.add(
      'concrete',
      block([-x * 0.35, s.length * 0.3, s.eaves + s.rise], [0.6, 0.7, 1.5], 0.06),
      block([-x * 0.35, s.length * 0.3, s.eaves + s.rise + 0.76], [0.7, 0.8, 0.1], 0.2),
    );
    sides(a, s, lit);
    a.name('door', [x + 1, d, 0]);
  },
});

export const outbuilding = builder({
  kind: 'outbuilding',
  states: ['dark', 'lit', 'open'],
  size: { length: 6, width: 4.4, eaves: 2.5, rise: 1.3 },
  build: (a, s, part) => {
    const x = s.width / 2;
    shell(a, s, 'sidingDark', 0.15);
    const leaf = (hinge: number, angle: number): void => {
      const e = hinge > 0 ? 1 : -1;
      a.within(
        new Matrix4().makeTranslation(x + 0.04, hinge, 1.13).multiply(new Matrix4().makeRotationZ(angle)),
        () => {
          a.add('sidingDark', block([0, -e * 0.6, 0], [0.045, 1.18, 2.1], 0.05));
          for (const z of [-0.98, 0, 0.98]) a.add('white', block([0.028, -e * 0.6, z], [0.02, 1.18, 0.12], 0.1));
          for (const y of [-0.06, -1.12]) a.add('white', block([0.028, e * y, 0], [0.02, 0.12, 2.1], 0.1));
          for (const z of [-0.5, 0.5])
            a.add('white', bar([0.026, -e * 0.08, z - 0.45], [0.026, -e * 1.1, z + 0.45], 0.1, 0.02, [1, 0, 0]));
        },
      );
    };
    leaf(1.2, 0);
    if (part.state === 'open') {
      a.add('black', block([x + 0.004, -0.6, 1.13], [0.006, 1.2, 2.1], 0));
      leaf(-1.2, -1.75);
    } else leaf(-1.2, 0);
    window(a, x, 2.1, 1.6, 0.6, 0.6, part.state === 'lit');
    a.within(new Matrix4().makeRotationZ(Math.PI / 2), () =>
      window(a, s.length / 2 + 0.005, 0, 1.5, 0.7, 0.7, part.state === 'lit'),
    );
    a.name('door', [x + 1, 0, 0]);
  },
});
