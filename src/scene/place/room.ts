/** Where there is room for what only stands about: off houses, people and the truck, and not before what is to be seen. */
import type { Box3 } from 'three';
import type { World } from '../../engine/world/types.ts';
import type { IsFree, Room } from './types.ts';

type Rectangle = readonly [x0: number, y0: number, x1: number, y1: number];

const offAll =
  (taken: readonly Rectangle[]): IsFree =>
  (x0, y0, x1, y1) =>
    !taken.some(([a, b, c, d]) => x0 < c && x1 > a && y0 < d && y1 > b);

type Flat = readonly [x: number, y: number];

/** Metres from a place to a line between two others. */
const fromLine = (x: number, y: number, [ax, ay]: Flat, [bx, by]: Flat): number => {
  const [dx, dy] = [bx - ax, by - ay];
  const t = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / Math.max(1e-9, dx * dx + dy * dy)));
  return Math.hypot(x - ax - t * dx, y - ay - t * dy);
};

/** Height up to which growth hides things, and how far off anything so low is still made out; metres (chosen by eye). */
const LOW = 2.6;
const FAR = 90;

/** Lines of sight that stay low: from each place on the ground to what is mounted low at customers and to the feet of poles. */
const lowSights = (world: World): readonly (readonly [Flat, Flat])[] => {
  const flat = ([x, y]: readonly number[]): Flat => [x ?? 0, y ?? 0];
  const low = world.parts.filter(
    ({ at, premises, id, pole }) => at[2] < LOW && (premises !== null || id === `${pole}.pole`),
  );
  return world.stands
    .filter(({ aloft }) => aloft === null)
    .flatMap(({ feet }) => low.map(({ at }) => [flat(feet), flat(at)] as const))
    .filter(([a, b]) => Math.hypot(a[0] - b[0], a[1] - b[1]) < FAR);
};

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
  const lines = lowSights(world);
  return {
    free: offAll(taken),
    clear: offAll([...taken, ...sights]),
    past: (x, y, reach) => lines.every(([a, b]) => fromLine(x, y, a, b) > reach),
  };
};
