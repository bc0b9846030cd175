/** A pole out of plumb: where everything on it is, by the plain geometry of a slope of 0.07 (about 4 degrees). */
import { describe, expect, it } from 'vitest';
import { componentKind } from '../../../src/engine/catalogue/components.ts';
import { distance, normalise, sub, type Vec3 } from '../../../src/engine/math/vec3.ts';
import { seenOn } from '../../../src/engine/senses/signsFrom.ts';
import { distanceToPart } from '../../../src/engine/senses/solids.ts';
import { partById, pointAt, standById } from '../../../src/engine/world/edit.ts';
import { placeOfFeature } from '../../../src/engine/world/featurePlace.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { played } from '../acts/scene.ts';
import { built, yaml } from './shuffled.ts';

const SLOPE = 0.07;
const upright = built(yaml);
const leaned = (side = '', pole = 'p2'): World =>
  built(yaml.replace(/^faults:\n/m, `faults:\n  - { id: lean, kind: pole-leaning, on: ${pole}.pole${side} }\n`));
const world = leaned();
const toField = ([x, y, z]: Vec3): Vec3 => [x, y + SLOPE * z, z];
const near = (a: Vec3 | null, b: Vec3 | null): void => expect(a && b && distance(a, b)).toBeLessThan(1e-9);

describe('a leaning pole', () => {
  it.each(['p2.insulator/conductor', 'p2.cutout/top', 'p2.transformer/x2', 'p2.neutral-spool/neutral'])(
    'takes %s along, as far aside as it is high',
    (point) => near(pointAt(world, point), toField(pointAt(upright, point) as Vec3)),
  );

  it('takes along the ends of spans and services that are held there, and no others', () => {
    for (const part of upright.parts.filter(({ end }) => end !== null)) {
      const now = partById(world, part.id);
      for (const [was, is] of [
        [part.at, now.at],
        [part.end as Vec3, now.end as Vec3],
      ] as const) {
        const atIt = Math.hypot(was[0] - partById(upright, 'p2.pole').at[0], was[1]) < 2;
        near(is, atIt ? toField(was) : was);
      }
    }
    expect(partById(world, 's1.phase').end).not.toEqual(partById(upright, 's1.phase').end);
    expect(partById(world, 's1.phase').at).toEqual(partById(upright, 's1.phase').at);
  });

  it.each([
    ['road', [0, -1]],
    ['field', [0, 1]],
    ['source', [-1, 0]],
    ['load', [1, 0]],
  ] as const)('leans to its side: %s', (side, [x, y]) => {
    const [was, is] = [upright, leaned(`, side: ${side}`)].map((of) => pointAt(of, 'p2.insulator/conductor') as Vec3);
    near(is as Vec3, [
      (was?.[0] ?? 0) + SLOPE * x * (was?.[2] ?? 0),
      (was?.[1] ?? 0) + SLOPE * y * (was?.[2] ?? 0),
      was?.[2] ?? 0,
    ]);
  });

  it('is met by a line of sight where its wood is, and no more where it would be plumb', () => {
    const eye: Vec3 = [8, 0.7, 10];
    const pole = partById(world, 'p2.pole');
    const at = (y: number): number | null => distanceToPart(pole, eye, normalise(sub([0, y, 10], eye)));
    expect(at(SLOPE * 10)).toBeGreaterThan(7.8);
    expect(at(SLOPE * 10)).toBeLessThan(8);
    expect(at(0)).toBeNull();
  });

  it('has its features within its leaning solids', () => {
    for (const part of world.parts.filter(({ pole, end }) => pole === 'p2' && end === null)) {
      for (const feature of componentKind(part.kind).features) {
        near(placeOfFeature(part, feature), toField(placeOfFeature(partById(upright, part.id), feature)));
      }
    }
  });

  it('takes the climber along', () => {
    near(standById(world, 'p2.work')?.feet ?? null, toField(standById(upright, 'p2.work')?.feet as Vec3));
  });

  it('is made out from beside it better than from where it leans to or from', () => {
    const plumbAt = (of: World, stand: string): number =>
      seenOn(of, partById(of, 'p2.pole'), stand, 'eyes').find(({ id }) => id === 'lean/plumb')?.margin ?? 0;
    const day = (of: World): World => ({
      ...of,
      site: { ...of.site, light: 'day', skyLux: 20000, visibilityM: 20000 },
    });
    expect(plumbAt(day(leaned(', side: source')), 'p2.road')).toBeGreaterThan(2 * plumbAt(day(world), 'p2.road'));
  });

  it('stands plumb once it has been straightened, every part where it was', () => {
    const done = played(
      world,
      { act: 'acknowledge' },
      { act: 'park', at: 'clear' },
      { act: 'go', to: 'p2.butt' },
      { act: 'repair', part: 'p2.pole', repair: 'straighten-pole' },
    );
    for (const part of upright.parts) {
      const now = partById(done, part.id);
      near(now.at, part.at);
      if (part.end !== null) near(now.end, part.end);
      expect(now.lean).toBeUndefined();
    }
  });
});
