/** A conductor on the ground: current into the soil, step and touch beside it, and how far off they end. */
import { describe, expect, test } from 'vitest';
import { electrodesOf, mostStep } from '../../../src/engine/circuit/localEarth.ts';
import { settle } from '../../../src/engine/circuit/settle.ts';
import { solveCircuit } from '../../../src/engine/circuit/solveCircuit.ts';
import { exposuresOf } from '../../../src/engine/hazards/exposuresOf.ts';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import type { Exposure, Reach } from '../../../src/engine/hazards/types.ts';
import type { Vec3 } from '../../../src/engine/math/vec3.ts';
import { tolerableStep } from '../../../src/engine/standards/electrode.ts';
import { type groundContactAmperes, groundContactOhms } from '../../../src/engine/standards/groundContact.ts';
import { partById, withPart } from '../../../src/engine/world/edit.ts';
import { lyingAt } from '../../../src/engine/world/lying.ts';
import { barePlace } from '../../../src/engine/world/points.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { model, only } from '../circuit/models/scenes.ts';
import { at, touching } from './fog.ts';

/** Parted near its load end: the long piece stays joined to the source and lies below its own pole. */
const fromSource = (world: World, surface: keyof typeof groundContactAmperes = 'wet-grass'): World =>
  withPart(world, 's3.phase', {
    faults: partById(world, 's3.phase').faults.map((fault) => ({
      ...fault,
      values: { ...fault.values, breakM: 58, groundOhms: groundContactOhms(surface) },
    })),
  });
const down = fromSource(only(model('loose'), 'parted'));
const of = (mechanism: Exposure['mechanism'], reach: Reach, world: World): readonly Exposure[] =>
  exposuresOf(reach, world, world).filter((exposure) => exposure.mechanism === mechanism);
const value = (exposure: Exposure | undefined, name: string, from: 'quantities' | 'now' = 'quantities'): number =>
  exposure?.[from].find((each) => each.name === name)?.value ?? Number.NaN;
const walking = (x: number, y: number): Reach => ({ ...at(down, 'p3.butt'), at: [x, y, 0] });

test('the piece lies from below the pole that holds it along the line, as far as it is longer than that is high', () => {
  const piece = lyingAt(partById(down, 's3.phase'), 'a');
  const high = partById(down, 's3.phase').at[2];
  expect(piece?.foot).toEqual([60, 0, 0]);
  expect(piece?.free[0]).toBeCloseTo(60 + 58 - high, 9);
  expect(lyingAt(partById(down, 's3.phase'), 'b')).toBeNull();
  expect(barePlace(partById(down, 's3.phase'), 'tip-b')?.[2]).toBeCloseTo(
    partById(down, 's3.phase').end?.[2] ?? 0 - 2,
    -1,
  );
});

test.each([
  ['wet-sand', 15],
  ['dry-grass', 25],
  ['wet-grass', 50],
  ['reinforced-concrete', 75],
] as const)('on %s it carries the %d A of the staged tests, as far as the line lets it', (surface, amperes) => {
  const solution = solveCircuit(fromSource(only(model('loose'), 'parted'), surface));
  const ours = solution.branchCurrent('s3.phase', 'soil-a');
  expect(ours / amperes).toBeGreaterThan(0.85);
  expect(ours / amperes).toBeLessThan(1.01);
});

describe('beside it', () => {
  test('a pace meets rho I/(2 pi) (1/r - 1/(r + 1)), against the tolerable step voltage', () => {
    const [exposure] = of('step', walking(80, 3), down);
    const amperes = value(exposure, 'current into the ground', 'now');
    expect(amperes).toBeGreaterThan(40);
    const soil = down.site.resistivity;
    expect(value(exposure, 'step voltage', 'now')).toBeCloseTo(((soil * amperes) / (2 * Math.PI)) * (1 / 2 - 1 / 3), 1);
    expect(value(exposure, 'tolerable step voltage')).toBeCloseTo(tolerableStep({ soil }, 3), 9);
    expect(exposure).toMatchObject({ causes: ['parted'], potentiallyFatal: true, part: 's3.phase' });
  });

  test('it ends where it is told to end, at the worst that is credible', () => {
    const [exposure] = of('step', walking(80, 2), down);
    const safe = value(exposure, 'distance where a pace is tolerable');
    expect(safe).toBeGreaterThan(2);
    expect(of('step', walking(80, safe + 1 - 0.02), down)).toHaveLength(1);
    expect(of('step', walking(80, safe + 1 + 0.02), down)).toEqual([]);
  });

  test('falls off with distance and is worst on it', () => {
    const volts = [0, 1, 2, 3].map((y) => value(of('step', walking(80, y), down)[0], 'step voltage'));
    expect(volts).toEqual([...volts].sort((a, b) => b - a));
  });

  test('nobody aloft paces, and a dead piece asks nothing', () => {
    expect(of('step', { ...walking(80, 1), aloft: true }, down)).toEqual([]);
    const dead = withPart(down, 'p1.source', { values: { ...partById(down, 'p1.source').values, volts: 0.001 } });
    expect(of('step', walking(80, 1), dead)).toEqual([]);
  });
});

test('a hand on the piece is a shock, and a body within the approach distance of where it lies is too near', () => {
  const [shock] = of('contact', touching(down, 'p3.butt', 's3.phase/down-a'), down);
  expect(shock).toMatchObject({ severity: 'fatal', causes: ['parted'], strikes: true });
  const beside: Vec3 = [80, 0.5, 0];
  expect(of('approach', { ...walking(80, 0.5), at: beside }, down).map(({ part }) => part)).toContain('s3.phase');
});

test('no pace anywhere meets more than all electrodes at the line’s volts could make of it', () => {
  const { site, given } = down;
  const solution = solveCircuit(down);
  for (const x of [0, 40, 61, 75, 90]) {
    for (const y of [0, 0.5, 3, 20]) {
      const feet: readonly [Vec3, Vec3] = [
        [x, y, 0],
        [x + 0.6, y + 0.8, 0],
      ];
      const most = mostStep(electrodesOf(down), site.resistivity, feet, given.supply.lineVolts);
      expect(solution.step(...feet)).toBeLessThanOrEqual(most);
    }
  }
});

test('the hazards of the scene name the step at the piece, its cause, and nothing of the kind while the line is whole', () => {
  expect(hazardsIn(down).find(({ id }) => id === 'step:s3.phase')?.causes).toEqual(['parted']);
  expect(hazardsIn(only(model('loose'))).some(({ mechanism }) => mechanism === 'step')).toBe(false);
});

test('a fuse that sees the current clears it and the ground is quiet', () => {
  // The same wire behind a 6K link: 50 A is far over its 12 A minimum melt.
  const island = model('island');
  const closed = withPart(only(island), 'p1.tap-cutout', { state: { position: 'closed', link: 'sound' } });
  const fallen = withPart(closed, 's2.phase', {
    faults: [
      { id: 'parted', kind: 'conductor-broken', side: 'any', to: null, values: { breakM: 38, groundOhms: 144 } },
    ],
  });
  const before = solveCircuit(fallen).branchCurrent('s2.phase', 'soil-a');
  const rested = settle(fallen);
  expect(before).toBeGreaterThan(60);
  expect(rested.operations.map(({ part }) => part)).toContain('p1.tap-cutout');
});
