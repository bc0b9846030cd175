/** What is heard on Quarry Road. */
import { describe, expect, it } from 'vitest';
import { backgroundAt, heardFrom, heardSigns } from '../../../src/engine/senses/heardFrom.ts';
import { signsFrom } from '../../../src/engine/senses/signsFrom.ts';
import { partById, withPart } from '../../../src/engine/world/edit.ts';
import type { Stand, World } from '../../../src/engine/world/types.ts';
import { onScene, start } from '../acts/scene.ts';

const quiet = onScene();
const level = (world: World, stand: string, id: string): number =>
  heardFrom(world, stand).find((sound) => sound.id === id)?.level ?? Number.NaN;

/** A standing place with its ear so far from the set of house a, in the yard's direction. */
const away = (metres: number): Stand => {
  const [x, y, z] = partById(quiet, 'a.generator').at;
  return {
    id: `x${metres}`,
    name: 'x',
    feet: [x - metres, y, z - 1.35],
    eye: 1.65,
    aloft: null,
    reachM: 1,
    near: null,
  };
};

describe('level', () => {
  const world: World = { ...quiet, stands: [...quiet.stands, ...[7, 14, 28].map(away)] };

  it('of a set with 72 dB(A) at 7 m falls 6 dB a doubling of distance (ISO 9613-2, point source)', () => {
    const at = [7, 14, 28].map((metres) => level(world, `x${metres}`, 'a.generator'));
    expect(at[0]).toBeCloseTo(72, 1);
    expect((at[0] ?? 0) - (at[1] ?? 0)).toBeCloseTo(6.02, 2);
    expect((at[1] ?? 0) - (at[2] ?? 0)).toBeCloseTo(6.02, 2);
  });

  it('is told loudest first, with the direction from the ear', () => {
    const heard = heardFrom(quiet, 'a.yard');
    expect(heard.map((sound) => sound.level)).toEqual(heard.map((sound) => sound.level).sort((a, b) => b - a));
    const set = heard.find(({ id }) => id === 'a.generator');
    expect(set?.azimuth).toBeGreaterThan(0);
    expect(set?.azimuth).toBeLessThan(Math.PI / 2);
  });
});

describe('the buzz of the insulator', () => {
  const buzz = (world: World, stand: string): boolean => heardFrom(world, stand).some(({ id }) => id === 'crack/buzz');

  it('is heard round its pole when the engine of the truck is off, and is a sign of the crack', () => {
    for (const stand of ['p2.road', 'p2.field', 'p2.butt']) expect(buzz(quiet, stand)).toBe(true);
    expect(signsFrom(quiet, 'p2.field', 'eyes').find(({ id }) => id === 'crack/buzz')?.perceived).toBe(true);
  });

  it('drowns in the engine of the truck standing there', () => {
    const running = { ...quiet, truck: { ...quiet.truck, engine: true } };
    expect(backgroundAt(running, 'p2.road')).toBeGreaterThan(backgroundAt(quiet, 'p2.road') + 6);
    expect(buzz(running, 'p2.road')).toBe(false);
    expect(heardFrom(running, 'p2.road')[0]?.id).toBe('truck');
    const sign = heardSigns(running, 'p2.road').find(({ id }) => id === 'crack/buzz');
    expect([sign?.perceived, sign?.why]).toEqual([false, 'masked']);
  });

  it('stops when the set stops, for the set holds the line alive', () => {
    const stopped = withPart(quiet, 'a.generator', { state: { run: 'stopped', breaker: 'closed' } });
    expect(buzz(stopped, 'p2.butt')).toBe(false);
    expect(heardFrom(stopped, 'a.yard').some(({ id }) => id === 'a.generator')).toBe(false);
  });

  it('stops as well when the main of that house is opened and its set runs on', () => {
    const open = withPart(quiet, 'a.main', { state: { position: 'open' } });
    expect(buzz(open, 'p2.butt')).toBe(false);
    expect(heardFrom(open, 'a.yard').some(({ id }) => id === 'a.generator')).toBe(true);
  });

  it('has a margin of one where it is just heard: sound pressure over the least that is heard', () => {
    for (const { stand } of quiet.stands.map(({ id }) => ({ stand: id }))) {
      for (const { margin, perceived } of heardSigns(quiet, stand)) expect(margin >= 1).toBe(perceived);
    }
  });
});

it('birds and drops belong to a foggy dawn, not to a dry night', () => {
  const ids = (world: World) => heardFrom(world, 'p2.road').map(({ id }) => id);
  expect(ids(quiet)).toEqual(expect.arrayContaining(['birds', 'fog-drip']));
  const dry = { ...start(), truck: quiet.truck, site: { ...quiet.site, light: 'night' as const, wetness: 0 } };
  expect(ids(dry)).not.toContain('birds');
  expect(ids(dry)).not.toContain('fog-drip');
});

describe('steady sounds against each other', () => {
  const set = partById(quiet, 'a.generator');
  const pole = partById(quiet, 'p2.pole');
  const second = { ...set, id: 'a.generator-2', at: [pole.at[0] + 60, pole.at[1] + 60, 0] as const };
  const withSets = (first: boolean): World => {
    const parts = quiet.parts.map((p) => (p.id === set.id ? { ...p, at: pole.at } : p));
    const other = partById(quiet, 'b.generator');
    const alone = withPart({ ...quiet, parts: [...parts, second] }, other.id, {
      state: { ...other.state, run: 'stopped' },
    });
    const world = alone;
    return first ? world : withPart(world, set.id, { state: { ...set.state, run: 'stopped' } });
  };
  const ids = (world: World): readonly string[] => heardFrom(world, 'p2.road').map(({ id }) => id);

  it('a set far off is heard alone and not beside one at the pole', () => {
    expect(ids(withSets(false))).toContain('a.generator-2');
    expect(ids(withSets(true))).not.toContain('a.generator-2');
    expect(ids(withSets(true))).toContain('a.generator');
  });

  it('the buzz, far above the engine in pitch, is heard beside it', () => {
    expect(buzzOf(withSets(true))).toBe(true);
  });
});

const buzzOf = (world: World): boolean => heardFrom(world, 'p2.road').some(({ id }) => id === 'crack/buzz');

describe('what weather and road sound like', () => {
  const site = (more: object): World => ({ ...quiet, site: { ...quiet.site, ...more } });
  const ids = (world: World): readonly string[] => heardFrom(world, 'p2.road').map(({ id }) => id);

  it('rain stands for the birds, and thick drops for the drip of fog', () => {
    expect(ids(site({ precipitation: 'rain', light: 'day' }))).toContain('rain');
    expect(ids(site({ precipitation: 'rain', light: 'day' }))).not.toContain('birds');
    expect(ids(site({ precipitation: 'drizzle' }))).toContain('drizzle');
  });

  it('wires sing in wind, at the level of wind in open grassland (Boersma 1997)', () => {
    expect(ids(site({ windMs: 2 }))).not.toContain('wind-wires');
    const loud = heardFrom(site({ windMs: 10 }), 'p2.road').find(({ id }) => id === 'wind-wires');
    expect(loud?.level).toBeCloseTo(45.3, 6);
  });

  it('cars are heard where the site says so', () => {
    expect(ids(site({ traffic: 'none' }))).not.toContain('traffic');
    expect(ids(site({ traffic: 'heavy' }))).toContain('traffic');
  });
});
