/**
 * A shop: two storeys, flat roof behind a cornice, shop window and awning on the front, which faces +x of its frame.
 * Origin: ground under the middle of the front. Variants: what its wall is made of. States: `dark`, `lit`.
 * Size: width along the street, depth, height of the cornice; `service` 1 or −1: the wall toward that end of y is left bare for
 * meter, panel and mast, and the roof is seen from all sides. No lettering: nobody's shop.
 */
import { Matrix4 } from 'three';
import type { MaterialName } from '../materials/materials.ts';
import { stream } from '../materials/noise.ts';
import { type Assembly, builder } from './assembly.ts';
import { block, plate } from './shapes.ts';
import { sheet } from './walls.ts';

const walls: Readonly<Record<string, MaterialName>> = {
  red: 'brickRed',
  buff: 'brickBuff',
  plaster: 'plaster',
  boards: 'siding',
};

/** Metres of wall to a tile of its texture. */
const TILE = 1.1;

const upperWindow = (a: Assembly, y: number, z: number, lit: boolean): void => {
  const [w, h] = [0.95, 1.5];
  a.add(lit ? 'windowLit' : 'windowDark', block([0.01, y, z], [0.04, w, h], 0));
  for (const e of [-1, 1]) a.add('white', block([0.035, y + (e * w) / 2, z], [0.05, 0.07, h], 0.1));
  a.add('white', block([0.035, y, z], [0.045, w, 0.06], 0.1), block([0.04, y, z + h / 2], [0.06, w + 0.1, 0.09], 0.1));
  a.add('concrete', block([0.07, y, z - h / 2 - 0.06], [0.16, w + 0.25, 0.11], 0.1));
};

const awning = (a: Assembly, middle: number, width: number, material: MaterialName): void => {
  const canvas = plate(
    [
      [0, 2.95],
      [1.25, 2.3],
      [1.25, 2.12],
      [1.21, 2.12],
      [1.21, 2.26],
      [0, 2.9],
    ],
    width,
    0,
  );
  a.add(material, canvas.rotateX(Math.PI / 2).translate(0, middle + width / 2, 0));
};

interface ShopSize {
  readonly width: number;
  readonly depth: number;
  readonly height: number;
}

/** Walls all round, the roof a little below them, and a cap on their top. */
const shell = (a: Assembly, s: ShopSize, front: MaterialName): void => {
  a.add(front, sheet(s.width, s.height, TILE));
  const deep = s.depth;
  const side = s.height - 0.3;
  for (const e of [-1, 1])
    a.within(
      new Matrix4()
        .makeTranslation(-deep / 2, (e * s.width) / 2, 0)
        .multiply(new Matrix4().makeRotationZ((e * Math.PI) / 2)),
      () => a.add(front, sheet(deep, side, TILE)),
    );
  a.within(new Matrix4().makeTranslation(-deep, 0, 0).multiply(new Matrix4().makeRotationZ(Math.PI)), () =>
    a.add(front, sheet(s.width, side, TILE)),
  );
  a.add(
    'concrete',
    block([-deep / 2, 0, s.height - 0.65], [deep - 0.1, s.width - 0.1, 0.1], 0),
    block([-deep, 0, side], [0.26, s.width + 0.06, 0.08], 0.1),
    block([0.1, 0, s.height - 0.28], [0.34, s.width, 0.22], 0.2),
    block([0.06, 0, s.height - 0.02], [0.26, s.width, 0.14], 0.2),
  );
  for (const e of [-1, 1]) a.add('concrete', block([-deep / 2, (e * s.width) / 2, side], [deep, 0.26, 0.08], 0.1));
};

/** Room along the front that a service takes: meter, mast and panel with a hand's breadth about them. */
const SERVICE = 4.5;

export const shop = builder({
  kind: 'shop',
  variants: ['red', 'buff', 'plaster', 'boards'],
  states: ['dark', 'lit'],
  size: { width: 7, depth: 10, height: 7.6, service: 0 },
  build: (a, s, part) => {
    const next = stream(part.seed * 31 + 7);
    const lit = part.state === 'lit';
    const half = s.width / 2;
    shell(a, s, walls[part.variant] ?? 'brickRed');
    // Shop window, mullions, a recessed door, and the board over them: between these two ends of the front.
    const from = s.service < 0 ? -half + SERVICE : -half;
    const to = s.service > 0 ? half - SERVICE : half;
    const [centre, wide] = [(from + to) / 2, to - from];
    const hinge = s.service === 0 ? (next() < 0.5 ? -1 : 1) : s.service;
    const door = centre + hinge * (wide / 2 - (s.service === 0 ? 1.1 : 0.75));
    const glass = wide - (s.service === 0 ? 2.6 : 1.6);
    const middle = centre - hinge * (s.service === 0 ? 0.75 : 0.6);
    a.add('concrete', block([0.05, centre, 0.2], [0.14, wide - 0.3, 0.4], 0.1));
    a.add(lit ? 'windowLit' : 'windowDark', block([0.03, middle, 1.45], [0.06, glass, 2.1], 0));
    for (let i = 0; i <= 3; i++)
      a.add('white', block([0.07, middle + glass * (i / 3 - 0.5), 1.45], [0.07, 0.07, 2.14], 0.1));
    a.add('black', block([0.01, door, 1.2], [0.03, 1.05, 2.4], 0));
    a.add(next() < 0.5 ? 'green' : 'sidingDark', block([0.04, door, 1.12], [0.05, 0.92, 2.2], 0.05));
    a.add(lit ? 'windowLit' : 'windowDark', block([0.07, door, 1.5], [0.02, 0.6, 1.1], 0));
    const board: MaterialName =
      (['green', 'white', 'fabricDark', 'moulding'] as const)[Math.floor(next() * 4)] ?? 'white';
    a.add(board, block([0.09, centre, 2.95], [0.16, wide - 0.4, 0.5], 0.1));
    if (next() < 0.6)
      awning(
        a,
        middle,
        glass + 0.3,
        (['green', 'red', 'white', 'fabricDark'] as const)[Math.floor(next() * 4)] ?? 'green',
      );
    const storey = 3.3;
    const many = s.width > 6.4 ? 3 : 2;
    // The mast goes up where the first of these would be.
    const shift = s.service === 0 ? 0 : -s.service * 0.85;
    const spread = s.service === 0 ? 0.92 : 0.72;
    for (let i = 0; i < many; i++)
      upperWindow(a, shift + s.width * ((i + 0.5) / many - 0.5) * spread, storey + 2.05, lit && next() < 0.45);
  },
});
