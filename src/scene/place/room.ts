/** Where there is room for what only stands about: off houses, people and the truck, and not before what is to be seen. */
import type { Box3 } from 'three';
import type { World } from '../../engine/world/types.ts';
import type { IsFree, Room } from './setting.ts';

type Rectangle = readonly [x0: number, y0: number, x1: number, y1: number];

const offAll =
  (taken: readonly Rectangle[]): IsFree =>
  (x0, y0, x1, y1) =>
    !taken.some(([a, b, c, d]) => x0 < c && x1 > a && y0 < d && y1 > b);

/** Houses with two metres about them, standing points with three, the truck; in sight: all before a house, twelve metres about. */
export const roomOf = (world: World, houses: readonly Box3[]): Room => {
  const [truckX, truckY] = world.truck.at;
  const taken: readonly Rectangle[] = [
    ...houses.map(({ min, max }): Rectangle => [min.x - 2, min.y - 2, max.x + 2, max.y + 2]),
    ...world.stands.map(({ feet: [x, y] }): Rectangle => [x - 3, y - 3, x + 3, y + 3]),
    [truckX - 5, truckY - 4, truckX + 5, truckY + 4],
  ];
  const sights = houses.map(
    ({ min, max }): Rectangle => [min.x - 12, Math.min(0, min.y), max.x + 12, Math.max(0, max.y)],
  );
  return { free: offAll(taken), clear: offAll([...taken, ...sights]) };
};
