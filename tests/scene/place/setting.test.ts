/** What stands about in a setting keeps off the line, off houses, and off where people stand. */
import { Box3, Group } from 'three';
import { describe, expect, it } from 'vitest';
import { settings } from '../../../src/engine/scenario/types.ts';
import { materials } from '../../../src/scene/materials/materials.ts';
import { backdropSteps } from '../../../src/scene/place/backdrop.ts';
import { type IsFree, placeOf } from '../../../src/scene/place/setting.ts';

const yard = { x0: -4, y0: 20, x1: 10, y1: 34 };
const free: IsFree = (x0, y0, x1, y1) => !(x0 < yard.x1 && x1 > yard.x0 && y0 < yard.y1 && y1 > yard.y0);
const anywhere: IsFree = () => true;

const boxesIn = (setting: (typeof settings)[number], where: IsFree): readonly Box3[] =>
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
    const into = boxesIn(setting, free).filter(
      ({ min, max }) => min.x < yard.x1 && max.x > yard.x0 && min.y < yard.y1 && max.y > yard.y0,
    );
    expect(into).toEqual([]);
  });

  it('is the same each time', () => {
    expect(placeOf(setting, free, true)).toEqual(placeOf(setting, free, true));
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
