/** What stands about in a setting keeps off the line, off houses, and off where people stand. */
import { Box3, Group } from 'three';
import { describe, expect, it } from 'vitest';
import { settings } from '../../../src/engine/scenario/types.ts';
import { materials } from '../../../src/scene/materials/materials.ts';
import { backdropSteps } from '../../../src/scene/place/backdrop.ts';
import { placeOf } from '../../../src/scene/place/setting.ts';
import type { IsFree, Room } from '../../../src/scene/place/types.ts';

const yard = { x0: -4, y0: 20, x1: 10, y1: 34 };
const off =
  (of: typeof yard): IsFree =>
  (x0, y0, x1, y1) =>
    !(x0 < of.x1 && x1 > of.x0 && y0 < of.y1 && y1 > of.y0);
const before = { ...yard, y0: 0 };
const taken: Room = { free: off(yard), clear: off(before), past: () => true };
const anywhere: Room = { free: () => true, clear: () => true, past: () => true };

const boxesIn = (setting: (typeof settings)[number], where: Room): readonly Box3[] =>
  placeOf(setting, where, false).standing.map((one) => {
    const into = new Group();
    for (const _ of backdropSteps([one], materials(), into));
    return new Box3().setFromObject(into);
  });

describe.each(settings)('%s', (setting) => {
  it('leaves the line and the road clear of walls and trees', () => {
    const { plants, standing } = placeOf(setting, anywhere, false);
    expect(
      Object.values(plants)
        .flat()
        .filter(([x, y]) => Math.abs(y + 2) < 9 && x < 60),
    ).toEqual([]);
    expect(standing.filter(({ at }) => Math.abs(at[1] + 2) < 10)).toEqual([]);
    expect(boxesIn(setting, anywhere).filter(({ min, max }) => min.y < 7 && max.y > -12)).toEqual([]);
  });

  it('builds nothing on what is taken', () => {
    const into = boxesIn(setting, taken).filter(
      ({ min, max }) => min.x < yard.x1 && max.x > yard.x0 && min.y < yard.y1 && max.y > yard.y0,
    );
    expect(into).toEqual([]);
  });

  it('plants and puts nothing low between the road and a house', () => {
    const { plants, standing } = placeOf(setting, taken, false);
    const places = [...Object.values(plants).flat(), ...standing.map(({ at }) => at)];
    const between = ([x, y]: readonly [number, number, number]): boolean =>
      x > before.x0 && x < before.x1 && y > 6 && y < yard.y0;
    expect(places.filter(between)).toEqual([]);
  });

  it('is the same each time', () => {
    expect(placeOf(setting, taken, true)).toEqual(placeOf(setting, taken, true));
  });
});

describe('windows', () => {
  it.each(['village', 'street', 'works'] as const)('of a %s are lit only in the dark', (setting) => {
    const lit = (dark: boolean): number =>
      placeOf(setting, anywhere, dark).standing.filter(({ spec }) => spec.state === 'lit').length;
    expect(lit(false)).toBe(0);
    expect(lit(true)).toBeGreaterThan(0);
  });
});
