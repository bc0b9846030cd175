/** Rays against the solids of parts: what is pointed at, and what hides what. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { componentKind } from '../../../src/engine/catalogue/components.ts';
import { add, normalise, scale, sub, type Vec3 } from '../../../src/engine/math/vec3.ts';
import { partAlong } from '../../../src/engine/senses/partAlong.ts';
import { eyeAt } from '../../../src/engine/senses/signsFrom.ts';
import { besideRay, between, distanceToPart, hiddenBy } from '../../../src/engine/senses/solids.ts';
import { partById, placeOn, withPart } from '../../../src/engine/world/edit.ts';
import { placeOfFeature } from '../../../src/engine/world/featurePlace.ts';
import type { Part } from '../../../src/engine/world/types.ts';
import { start } from '../acts/scene.ts';

const world = start();
/** Whether some other part stands before a place. */
const isHidden = (of: typeof world, eye: Vec3, place: Vec3, id: string): boolean =>
  hiddenBy(between(of.parts, eye, place, 0), eye, place, id, false);
const ground = world.stands.filter(({ aloft }) => aloft === null);

describe('a ray', () => {
  it('meets the pole where its solid begins, as thick at that height as it tapers', () => {
    const pole = partById(world, 'p2.pole');
    const { heightM = 0, topRadiusM = 0, buttRadiusM = 0 } = pole.values;
    for (const z of [0.5, 5, 9]) {
      const radius = buttRadiusM + ((topRadiusM - buttRadiusM) * z) / heightM;
      expect(distanceToPart(pole, [-10, 0, z], [1, 0, 0])).toBeCloseTo(10 - radius, 9);
      expect(distanceToPart(pole, [-10, radius - 0.001, z], [1, 0, 0])).toBeGreaterThan(10 - radius);
      expect(distanceToPart(pole, [-10, radius + 0.001, z], [1, 0, 0])).toBeNull();
    }
    expect(distanceToPart(pole, [-10, 0, 20], [1, 0, 0])).toBeNull();
    expect(distanceToPart(pole, [-10, 0, 5], [-1, 0, 0])).toBeNull();
    expect(distanceToPart(pole, [0, 0, 30], [0, 0, -1])).toBeCloseTo(30 - (pole.values.heightM ?? 0), 9);
  });

  it('meets a house at its wall, and a part without solids never', () => {
    const house = partById(world, 'a.house');
    const [x, y] = house.at;
    expect(distanceToPart(house, [x, y - 20, 1.5], [0, 1, 0])).toBeCloseTo(16.96, 9);
    expect(distanceToPart(partById(world, 's1.phase'), [-30, 0, 0], [0, 0, 1])).toBeNull();
  });

  it('meets a turned part as the part meets the ray turned back', () => {
    const solid = world.parts.filter((part) => componentKind(part.kind).solids(part).length > 0);
    fc.assert(
      fc.property(
        fc.constantFrom(...solid),
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
        fc.double({ min: -0.4, max: 0.4, noNaN: true }),
        (part: Part, turn, from, aside) => {
          const spin = ([x, y, z]: Vec3): Vec3 => [
            x * Math.cos(turn) - y * Math.sin(turn),
            x * Math.sin(turn) + y * Math.cos(turn),
            z,
          ];
          const eye: Vec3 = [6 * Math.cos(from), 6 * Math.sin(from), 0.1];
          const heading = normalise([-eye[0] + aside, -eye[1], 0]);
          const straight = distanceToPart({ ...part, at: [0, 0, 0] }, eye, heading);
          const turned = distanceToPart(
            { ...part, at: [0, 0, 0], azimuth: part.azimuth + turn },
            spin(eye),
            spin(heading),
          );
          if (straight === null || turned === null) expect(turned).toBe(straight);
          else expect(turned).toBeCloseTo(straight, 6);
        },
      ),
      { seed: 3, numRuns: 200 },
    );
  });

  it('passes a place at the distance that a perpendicular has', () => {
    expect(besideRay([0, 0, 0], [1, 0, 0], [3, 4, 0])).toEqual({ aside: 4, along: 3 });
  });
});

describe('pointing', () => {
  /** Where one would aim: the middle of a part's first feature. */
  const aimAt = (part: Part): Vec3 => {
    const [feature] = componentKind(part.kind).features;
    if (part.end === null) return feature ? placeOfFeature(part, feature) : part.at;
    const sag = part.values.sagM ?? 0;
    const [x, y, z] = add(part.at, scale(sub(part.end, part.at), 0.3));
    return [x, y, z - 4 * sag * 0.3 * 0.7];
  };

  const canBeAimedAt = world.parts.filter(({ kind }) => componentKind(kind).features.length > 0);

  it.each(canBeAimedAt.map((part) => [part.id, part] as const))(
    'at %s finds it from a place where it is not hidden',
    (_, part) => {
      const place = aimAt(part);
      const from = ground
        .map(({ id }) => eyeAt(world, id))
        .filter((eye) => !isHidden(world, eye, place, part.id))
        .filter((eye) => partAlong(world, eye, normalise(sub(place, eye))) === part.id);
      expect(from.length).toBeGreaterThan(0);
    },
  );

  it('at the sky and at open ground finds nothing', () => {
    expect(partAlong(world, [-3, -9, 1.65], normalise([-0.2, -1, 0.9]))).toBeNull();
    expect(partAlong(world, [-3, -9, 1.65], [0, -1, 0])).toBeNull();
  });

  it('at a wire finds it anywhere along its sag', () => {
    const span = partById(world, 's2.phase');
    const eye = eyeAt(world, 'p2.field');
    for (let t = 0.05; t < 0.95; t += 0.031) {
      const [x, y, z] = add(span.at, scale(sub(span.end ?? span.at, span.at), t));
      const place: Vec3 = [x, y, z - 4 * (span.values.sagM ?? 0) * t * (1 - t)];
      expect(partAlong(world, eye, normalise(sub(place, eye)))).toBe('s2.phase');
    }
  });

  it('at the pole does not find what is on its other side', () => {
    const eye = eyeAt(world, 'p2.road');
    const way = normalise(sub(placeOn(partById(world, 'p2.ground-lead'), [0, 0, 5]), eye));
    expect(partAlong(world, eye, way)).toBe('p2.pole');
  });

  it('finds the nearer of two parts in line', () => {
    const eye: Vec3 = [-70, 0, 5];
    expect(partAlong(world, eye, [1, 0, 0])).toBe('p1.pole');
  });
});

describe('hiding', () => {
  const bond = placeOn(partById(world, 'p2.ground-bond'), [0, 0, 0]);

  it('the pole and its tank hide the bond from the road side, nothing hides it from the field side', () => {
    expect(isHidden(world, eyeAt(world, 'p2.road'), bond, 'p2.ground-bond')).toBe(true);
    expect(isHidden(world, eyeAt(world, 'p2.field'), bond, 'p2.ground-bond')).toBe(false);
  });

  it('the tank hides the cutout from one quarter of the ground and not from the others', () => {
    const cutout = partById(world, 'p2.cutout');
    const eyes = Array.from({ length: 24 }, (_, i): Vec3 => {
      const angle = (i / 24) * 2 * Math.PI;
      return [3 * Math.cos(angle), 3 * Math.sin(angle), 1.65];
    });
    const away = withPart(world, 'p2.transformer', { at: [0, 0, 900] });
    const hides = (where: typeof world) =>
      eyes.filter((eye) => isHidden(where, eye, placeOn(cutout, [0, -0.1, -0.15]), cutout.id));
    expect(hides(world).length).toBeGreaterThan(hides(away).length);
    expect(hides(world).length).toBeLessThan(12);
  });

  it('a part never hides itself, and what lies behind the place does not count', () => {
    const insulator = partById(world, 'p2.insulator');
    const place = placeOn(insulator, [0, 0, 0.18]);
    expect(isHidden(world, eyeAt(world, 'p2.field'), place, insulator.id)).toBe(false);
    expect(isHidden(world, [0, -20, 1.65], [0, -10, 1.65], 'p2.tag')).toBe(false);
  });
});
