/** Conductors that lie loose over several poles, leads and pieces that hang: whom they can get at, and whom not. */
import { describe, expect, test } from 'vitest';
import { exposuresOf } from '../../../src/engine/hazards/exposuresOf.ts';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import type { Exposure, Reach } from '../../../src/engine/hazards/types.ts';
import { partById, withPart } from '../../../src/engine/world/edit.ts';
import { barePlace } from '../../../src/engine/world/points.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { model, only } from '../circuit/models/scenes.ts';
import { laid, withState } from '../circuit/scene.ts';
import { at } from './fog.ts';

const scene = model('loose');
const both = only(scene, 'one', 'two');
const drops = (reach: Reach, world: World): readonly Exposure[] =>
  exposuresOf(reach, world, world).filter(({ mechanism }) => mechanism === 'drop');
const value = (exposure: Exposure | undefined, name: string): number =>
  exposure?.quantities.find((each) => each.name === name)?.value ?? Number.NaN;
const sagged = (world: World, sagM: number): World =>
  ['s1.phase', 's2.phase', 's3.phase'].reduce(
    (w, id) => withPart(w, id, { values: { ...partById(w, id).values, sagM } }),
    world,
  );

describe('two ties lost in a row', () => {
  test('reach who stands at either pole, where one alone does not', () => {
    const one = only(scene, 'one');
    expect(drops(at(one, 'p2.butt'), sagged(one, 1.9))).toEqual([]);
    const found = drops(at(both, 'p2.butt'), sagged(both, 1.9));
    expect(found.map(({ hazard }) => hazard)).toContain('drop:p2.tie');
  });

  test('are each a hazard of its own, with its own tie as the cause', () => {
    const found = hazardsIn(both).filter(({ mechanism }) => mechanism === 'drop');
    const causes = new Map(found.map(({ id, causes: because }) => [id, because]));
    expect(causes.get('drop:p2.tie')).toContain('one');
    expect(causes.get('drop:p3.tie')).toContain('two');
  });

  test('rest lower than one does, by the sag of the longer run', () => {
    const up = (world: World): Reach => ({ ...at(world, 'p2.work'), works: true });
    const rest = (world: World): number => value(drops(up(world), world)[0], 'height at rest');
    expect(rest(both)).toBeLessThan(rest(only(scene, 'one')) - 0.5);
  });
});

describe('a lead that hangs from one end', () => {
  /** Its tank has lost strap and service neutral as well, with nothing on the meter: it takes the volts of the line. */
  const lead = only(scene, 'lead');
  const faulted = (world: World, part: string, kind: string): World =>
    withPart(world, part, { faults: [laid(kind, {}, null, kind)] });
  const hot = withState(
    faulted(faulted(lead, 'p2.tank-strap', 'tank-strap-off'), 'a.drop', 'service-neutral-open'),
    'a.meter',
    { position: 'pulled' },
  );
  const held = barePlace(partById(hot, 'p2.upper-lead'), 'tank') ?? [0, 0, 0];

  test('is a hazard within its length and the approach distance, while what it is joined to can be alive', () => {
    const beside: Reach = { ...at(hot, 'p2.work'), at: [held[0], held[1] - 1.2, held[2] - 1.5] };
    const exposure = drops(beside, hot).find(({ part }) => part === 'p2.upper-lead');
    expect(exposure).toMatchObject({ potentiallyFatal: true });
    expect(exposure?.causes).toContain('lead');
    expect(value(exposure, 'voltage to ground')).toBeGreaterThan(5000);
    expect(value(exposure, 'height at rest')).toBeCloseTo(held[2] - 0.9, 9);
  });

  test('is none farther off than its length and that distance, nor where it stays dead', () => {
    const off: Reach = { ...at(hot, 'p2.work'), at: [held[0], held[1] - 2.5, held[2] - 1.5] };
    expect(drops(off, hot).filter(({ part }) => part === 'p2.upper-lead')).toEqual([]);
    const beside: Reach = { ...off, at: [held[0], held[1] - 1.2, held[2] - 1.5] };
    expect(drops(beside, lead).filter(({ part }) => part === 'p2.upper-lead')).toEqual([]);
  });
});

describe('a conductor that has parted beside its pole', () => {
  const laidThere = partById(scene, 's3.phase').faults.map((fault) => ({
    ...fault,
    values: { ...fault.values, breakM: 2 },
  }));
  const parted = withPart(only(scene), 's3.phase', { faults: laidThere });
  const tip = barePlace(partById(parted, 's3.phase'), 'tip-a') ?? [0, 0, 0];

  test('swings on its short piece, alive from the source, at who is aloft there', () => {
    const beside: Reach = { ...at(parted, 'p3.work'), at: [tip[0], tip[1] - 0.9, tip[2] - 1.2] };
    const [exposure] = drops(beside, parted);
    expect(exposure).toMatchObject({ part: 's3.phase', causes: ['parted'] });
    expect(value(exposure, 'voltage to ground')).toBeCloseTo(7200, -2);
  });

  test('moves no more where it lies: on the ground its piece is a matter of step, touch and distance', () => {
    expect(drops(at(parted, 'p4.butt'), parted)).toEqual([]);
    expect(drops(at(parted, 'p3.butt'), parted)).toEqual([]);
  });
});
