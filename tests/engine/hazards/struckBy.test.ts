/** What can come down: a pole that does not hold, a loosened piece; on whom, with which energy, and why. */
import { describe, expect, test } from 'vitest';
import { exposuresOf } from '../../../src/engine/hazards/exposuresOf.ts';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import type { Exposure, Reach } from '../../../src/engine/hazards/types.ts';
import { poleBending } from '../../../src/engine/mechanics/poleBending.ts';
import { gravity } from '../../../src/engine/standards/sag.ts';
import { partById, withPart } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { model, only } from '../circuit/models/scenes.ts';
import { laid } from '../circuit/scene.ts';
import { at } from './fog.ts';

/** Drawn up tight, so that the guy has something to do: 0.15 m of sag in 50 m. */
const tight = (world: World): World =>
  ['s2.phase-a', 's2.phase-b', 's2.phase-c'].reduce(
    (w, id) => withPart(w, id, { values: { ...partById(w, id).values, sagM: 0.15 } }),
    world,
  );
const guyed = tight(only(model('wye-bank')));
const lost = tight(only(model('wye-bank'), 'guy'));
const struck = (reach: Reach, world: World): readonly Exposure[] =>
  exposuresOf(reach, world, world).filter(({ mechanism }) => mechanism === 'struck-by');
const value = (exposure: Exposure | undefined, name: string): number =>
  exposure?.quantities.find((each) => each.name === name)?.value ?? Number.NaN;

describe('a dead end whose guy is lost', () => {
  test('does not hold by itself and endangers whoever stands within its height, by reason of the guy', () => {
    const { capacity, demand } = poleBending(lost, 'p3', { wind: lost.site.windMs });
    expect(demand).toBeGreaterThan(capacity);
    for (const stand of ['p3.butt', 'p3.road', 'p3.field']) {
      const [exposure] = struck(at(lost, stand), lost);
      expect(exposure).toMatchObject({ hazard: 'struck-by:p3.pole', potentiallyFatal: true, causes: ['guy'] });
      expect(value(exposure, 'bending asked of it')).toBeCloseTo(demand, 6);
      expect(value(exposure, 'bending the pole withstands')).toBeCloseTo(capacity, 6);
    }
  });

  test('endangers nobody at the next pole, and nobody at all while the guy holds', () => {
    expect(struck(at(lost, 'p2.butt'), lost)).toEqual([]);
    expect(struck(at(guyed, 'p3.butt'), guyed)).toEqual([]);
  });

  test('is no place to climb either: the fall has its numbers and the same cause', () => {
    const climbing: Reach = { ...at(lost, 'p3.aloft'), climbs: { pole: 'p3', by: 'hooks' } };
    const fall = exposuresOf(climbing, lost, lost).find(({ mechanism }) => mechanism === 'fall');
    expect(fall).toMatchObject({ potentiallyFatal: true, strikes: true, limit: 'strength of the pole' });
    expect(fall?.causes).toContain('guy');
    expect(value(fall, 'bending asked of it')).toBeCloseTo(
      poleBending(lost, 'p3', { wind: lost.site.windMs, climber: true }).demand,
      6,
    );
  });

  test('is a hazard of the scene', () => {
    const found = hazardsIn(lost).find(({ id }) => id === 'struck-by:p3.pole');
    expect(found?.causes).toEqual(['guy']);
    expect(hazardsIn(guyed).some(({ mechanism }) => mechanism === 'struck-by')).toBe(false);
  });
});

test('a butt so decayed that the wind alone is too much endangers who stands by, with the decay as the cause', () => {
  const gale = { ...only(model('delta'), 'decay'), site: { ...model('delta').site, windMs: 65 } };
  const decayed = withPart(gale, 'p2.pole', { faults: [laid('pole-groundline-decay', {}, null, 'decay')] });
  const { capacity, demand } = poleBending(decayed, 'p2', { wind: 65 });
  expect(demand).toBeGreaterThan(capacity);
  expect(demand).toBeLessThan(capacity / 0.45);
  expect(struck(at(decayed, 'p2.butt'), decayed)[0]?.causes).toEqual(['decay']);
});

describe('a piece that may come down', () => {
  const hung = withPart(only(model('wye-bank')), 'p2.cutout-b', { faults: [laid('fuse-tube-hung', {}, null, 'hung')] });
  const below = { ...at(hung, 'p2.butt') };

  test('falls on who stands below it with m g h, fatal beyond the 54 J of a hat test', () => {
    const [exposure] = struck(below, hung);
    const height = partById(hung, 'p2.cutout-b').at[2];
    expect(value(exposure, 'energy of the tube')).toBeCloseTo(1.5 * gravity * height, 6);
    expect(exposure).toMatchObject({ severity: 'fatal', causes: ['hung'], part: 'p2.cutout-b' });
  });

  test('reaches nobody at the road side or above it', () => {
    expect(struck(at(hung, 'p2.road'), hung)).toEqual([]);
    expect(struck({ ...below, at: [0, 0, 12] }, hung)).toEqual([]);
  });

  test('carries less the nearer it is above the head', () => {
    const energies = [0, 3, 6].map((z) => value(struck({ ...below, at: [1, 0, z] }, hung)[0], 'energy of the tube'));
    expect(energies).toEqual([...energies].sort((a, b) => b - a));
    expect(new Set(energies).size).toBe(3);
  });
});
