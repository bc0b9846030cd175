/** Where what can be looked at is on a part. */
import { describe, expect, it } from 'vitest';
import { componentKind } from '../../../src/engine/catalogue/components.ts';
import { distance } from '../../../src/engine/math/vec3.ts';
import { partById } from '../../../src/engine/world/edit.ts';
import { courseOfFeature, placeOfFeature } from '../../../src/engine/world/featurePlace.ts';
import type { Part } from '../../../src/engine/world/types.ts';
import { start } from '../acts/scene.ts';

const world = start();
const featureOf = (part: Part, name: string) => {
  const found = componentKind(part.kind).features.find(({ id }) => id === name);
  if (found === undefined) throw new Error(`no feature ${name}`);
  return found;
};

describe('a feature', () => {
  it('of a span lies on its wire, whichever way that runs', () => {
    const span = partById(world, 's2.phase');
    const turned: Part = { ...span, end: [span.at[0] - 30, span.at[1] + 40, span.at[2]] };
    for (const part of [span, turned]) {
      const place = placeOfFeature(part, featureOf(part, 'strands'));
      const flat = distance([place[0], place[1], 0], [part.at[0], part.at[1], 0]);
      expect(flat).toBeGreaterThan(1.9);
      expect(flat).toBeLessThan(2.01);
      expect(place[2]).toBeLessThan(Math.max(part.at[2], part.end?.[2] ?? 0));
    }
    const [x, y] = courseOfFeature(turned, featureOf(turned, 'strands')) ?? [0, 0];
    expect(y / x).toBeCloseTo(-40 / 30, 6);
  });

  it('high on a pole is counted from its roof', () => {
    const pole = partById(world, 'p2.pole');
    const longer: Part = { ...pole, values: { ...pole.values, heightM: (pole.values.heightM ?? 0) + 3 } };
    const upper = featureOf(pole, 'upper-body');
    expect(placeOfFeature(longer, upper)[2] - placeOfFeature(pole, upper)[2]).toBeCloseTo(3, 9);
    expect(placeOfFeature(longer, featureOf(pole, 'butt'))).toEqual(placeOfFeature(pole, featureOf(pole, 'butt')));
  });

  it('of a strand that has come down lies on the ground before its end, and runs along it', () => {
    const sound = partById(world, 'p3.guy');
    const down: Part = { ...sound, faults: [{ id: 'x', kind: 'guy-broken', side: 'any', to: null, values: {} }] };
    const strand = featureOf(sound, 'strand');
    const [x, y, z] = placeOfFeature(down, strand);
    const [ex, ey, ez] = sound.end as readonly [number, number, number];
    expect(placeOfFeature(sound, strand)[2]).toBeGreaterThan(5);
    expect(z).toBeCloseTo(ez, 9);
    expect(Math.hypot(x - ex, y - ey)).toBeCloseTo(2.25, 9);
    expect(Math.hypot(x - sound.at[0], y - sound.at[1])).toBeLessThan(Math.hypot(ex - sound.at[0], ey - sound.at[1]));
    expect(courseOfFeature(down, strand)?.[2]).toBeCloseTo(0, 9);
  });
});
