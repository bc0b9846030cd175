/**
 * One shop of a row: two storeys, flat roof behind a cornice, shop window and awning on the front, which faces +x of its frame.
 * Origin: ground under the middle of the front. Variants: what its wall is made of. States: `dark`, `lit`.
 * Size: width along the street, depth, height of the cornice. No lettering: nobody's shop.
 */
import { type BufferGeometry, PlaneGeometry } from 'three';
import { type Assembly, builder } from '../hardware/assembly.ts';
import { block, plate } from '../hardware/shapes.ts';
import type { MaterialName } from '../materials/materials.ts';
import { stream } from '../materials/noise.ts';

const walls: Readonly<Record<string, MaterialName>> = {
  red: 'brickRed',
  buff: 'brickBuff',
  plaster: 'plaster',
  boards: 'siding',
};

/** Metres of wall to a tile of its texture. */
const TILE = 1.1;

/** Wall in the plane y, z facing +x, its foot at z = 0 and its texture in metres. */
const wall = (width: number, height: number): BufferGeometry => {
  const g = new PlaneGeometry(width, height).rotateY(Math.PI / 2).rotateX(Math.PI / 2);
  const uv = g.getAttribute('uv');
  for (let i = 0; i < uv.count; i++) uv.setXY(i, (uv.getX(i) * width) / TILE, (uv.getY(i) * height) / TILE);
  return g.translate(0, 0, height / 2);
};

const upperWindow = (a: Assembly, y: number, z: number, lit: boolean): void => {
  const [w, h] = [0.95, 1.5];
  a.add(lit ? 'windowLit' : 'windowDark', block([0.01, y, z], [0.04, w, h], 0));
  for (const e of [-1, 1]) a.add('white', block([0.035, y + (e * w) / 2, z], [0.05, 0.07, h], 0.1));
  a.add('white', block([0.035, y, z], [0.045, w, 0.06], 0.1), block([0.04, y, z + h / 2], [0.06, w + 0.1, 0.09], 0.1));
  a.add('concrete', block([0.07, y, z - h / 2 - 0.06], [0.16, w + 0.25, 0.11], 0.1));
};

const awning = (a: Assembly, width: number, material: MaterialName): void => {
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
  a.add(material, canvas.rotateX(Math.PI / 2).translate(0, width / 2, 0));
};

export const shop = builder({
  kind: 'shop',
  variants: ['red', 'buff', 'plaster', 'boards'],
  states: ['dark', 'lit'],
  size: { width: 7, depth: 10, height: 7.6 },
  build: (a, s, part) => {
    const next = stream(part.seed * 31 + 7);
    const lit = part.state === 'lit';
    const front = walls[part.variant] ?? 'brickRed';
    const half = s.width / 2;
    a.add(front, wall(s.width, s.height));
    a.add(
      'concrete',
      block([-s.depth / 2 - 0.02, 0, (s.height - 0.35) / 2], [s.depth, s.width, s.height - 0.35], 0),
      block([0.1, 0, s.height - 0.28], [0.34, s.width, 0.22], 0.2),
      block([0.06, 0, s.height - 0.02], [0.26, s.width, 0.14], 0.2),
      block([0.05, 0, 0.2], [0.14, s.width - 0.3, 0.4], 0.1),
    );
    // Shop window, mullions, a recessed door, and the board over them.
    const door = (next() < 0.5 ? -1 : 1) * (half - 1.1);
    const glass = s.width - 2.6;
    const middle = -Math.sign(door) * 0.75;
    a.add(lit ? 'windowLit' : 'windowDark', block([0.03, middle, 1.45], [0.06, glass, 2.1], 0));
    for (let i = 0; i <= 3; i++)
      a.add('white', block([0.07, middle + glass * (i / 3 - 0.5), 1.45], [0.07, 0.07, 2.14], 0.1));
    a.add('black', block([0.01, door, 1.2], [0.03, 1.05, 2.4], 0));
    a.add(next() < 0.5 ? 'green' : 'sidingDark', block([0.04, door, 1.12], [0.05, 0.92, 2.2], 0.05));
    a.add(lit ? 'windowLit' : 'windowDark', block([0.07, door, 1.5], [0.02, 0.6, 1.1], 0));
    const board: MaterialName =
      (['green', 'white', 'fabricDark', 'moulding'] as const)[Math.floor(next() * 4)] ?? 'white';
    a.add(board, block([0.09, 0, 2.95], [0.16, s.width - 0.4, 0.5], 0.1));
    if (next() < 0.6)
      awning(a, glass + 0.3, (['green', 'red', 'white', 'fabricDark'] as const)[Math.floor(next() * 4)] ?? 'green');
    const storey = 3.3;
    const many = s.width > 6.4 ? 3 : 2;
    for (let i = 0; i < many; i++)
      upperWindow(a, s.width * ((i + 0.5) / many - 0.5) * 0.92, storey + 2.05, part.state === 'lit' && next() < 0.45);
  },
});
