import { describe, expect, test } from 'vitest';
import { exposuresOf } from '../../../src/engine/hazards/exposuresOf.ts';
import type { Exposure, Reach } from '../../../src/engine/hazards/types.ts';
import type { Vec3 } from '../../../src/engine/math/vec3.ts';
import { drawnArc, plainBreak } from '../../../src/engine/standards/drawnArc.ts';
import { partById, withPart } from '../../../src/engine/world/edit.ts';
import type { Part, World } from '../../../src/engine/world/types.ts';
import { fogScene } from '../circuit/scene.ts';
import { at, closing, grounded, ready, secondHere, setApart, wearing } from './fog.ts';

const scene = ready(fogScene());
const met = (reach: Reach, world: World): readonly Exposure[] => exposuresOf(reach, world, world);
const of = (mechanism: Exposure['mechanism'], reach: Reach, world: World) =>
  met(reach, world).filter((exposure) => exposure.mechanism === mechanism);
const value = (exposure: Exposure | undefined, unit: string): number =>
  exposure?.quantities.find((quantity) => quantity.unit === unit)?.value ?? Number.NaN;
const supported = (world: World): World =>
  ['s1.phase', 's2.phase'].reduce((held, part) => withPart(held, part, { supported: true }), world);

describe('approach', () => {
  const aloft: Reach = { ...at(scene, 'p2.work'), works: true, climbs: { pole: 'p2', by: 'hooks' } };

  test('work aloft at the live insulator is inside 0.65 m (Table R-6, 5.1 to 15 kV, phase to ground)', () => {
    const near = of('approach', aloft, scene).filter(({ hazard }) => hazard === 'approach:p2.clamp/line');
    expect(near.length).toBeGreaterThan(0);
    expect(near[0]?.quantities.find(({ name }) => name === 'minimum approach distance')?.value).toBe(0.65);
    expect(near[0]?.quantities.find(({ name }) => name === 'distance')?.value).toBeLessThan(0.65);
    expect(near[0]?.failed).toContain('second-qualified');
    expect(near[0]?.causes).toEqual(['cord']);
  });

  test('work aloft on the grounded tap is near nothing alive', () => {
    expect(of('approach', aloft, grounded(scene))).toEqual([]);
  });

  test('nobody on the ground is near the line itself', () => {
    for (const stand of scene.stands.filter((each) => each.aloft === null)) {
      expect(of('approach', at(scene, stand.id), scene)).toEqual([]);
    }
  });

  test('a rated hood takes its part out, one rated too low does not', () => {
    const low = {
      ...scene,
      tools: scene.tools.map((tool) => (tool.id === 'hose-1' ? { ...tool, ratedVolts: 5000 } : tool)),
    };
    const covered = (world: World) => ({ ...world, covers: [{ part: 'p2.insulator', tool: 'hose-1' }] });
    const gone = ({ id, pole }: Part): boolean => (pole === 'p2' && id !== 'p2.insulator') || id.endsWith('.phase');
    const away = (place: Vec3): Vec3 => [place[0], place[1], place[2] + 1000];
    const bySelf = {
      ...scene,
      parts: scene.parts.map((part) =>
        gone(part) ? { ...part, at: away(part.at), end: part.end && away(part.end) } : part,
      ),
    };
    // A hazard goes by the first point of its net, here the clamp on the same conductor.
    const onConductor = (world: World) =>
      of('approach', aloft, world).some(({ hazard }) => hazard === 'approach:p2.clamp/line');
    expect(onConductor(bySelf)).toBe(true);
    expect(onConductor(covered(bySelf))).toBe(false);
    expect(of('approach', aloft, covered({ ...bySelf, tools: low.tools }))[0]?.failed).toContain('cover-rated');
  });
});

describe('flash', () => {
  const fused = withPart(scene, 'p1.tap-cutout', { state: { position: 'open', link: 'sound' } });

  test('closing the tap with the set running joins two sources at up to twice 7.2 kV', () => {
    const [exposure] = of('flash', closing(fused, 'p1.tap-cutout'), fused);
    expect(value(exposure, 'V')).toBeGreaterThan(14000);
    expect(value(exposure, 'V')).toBeLessThan(2 * 7250);
    expect(exposure?.severity).toBe('serious');
    expect(exposure?.causes).toEqual(['cord']);
    expect(exposure?.failed).toContain('source-known');
  });

  test('closing it with the set kept apart is none: the line is dead on one side and has no fault to ground', () => {
    expect(of('flash', closing(fused, 'p1.tap-cutout'), setApart(fused))).toEqual([]);
  });

  test('closing it onto grounds left on is a fault', () => {
    const world = setApart({ ...fused, jumpers: grounded(scene).jumpers });
    const [exposure] = of('flash', closing(world, 'p1.tap-cutout'), world);
    expect(exposure?.limit).toBe('no closing onto a fault');
    expect(value(exposure, 'A')).toBeGreaterThan(400);
  });

  test('names the class of the rule’s table beside the estimate of a fault that the table knows', () => {
    const world = setApart({ ...fused, jumpers: grounded(scene).jumpers });
    const [exposure] = of('flash', closing(world, 'p1.tap-cutout'), world);
    const named = (name: string) => exposure?.quantities.find((quantity) => quantity.name.includes(name))?.value;
    expect([4, 5, 8, 12]).toContain(named('rule’s table'));
    expect(named('estimate')).toBeGreaterThan(0);
  });

  test('opening a cutout under load draws an arc that lengthens with the load; exciting current does not count', () => {
    const carrying = (watts: number): World => {
      const closed = withPart(setApart(scene), 'p1.tap-cutout', { state: { position: 'closed', link: 'sound' } });
      const house = withPart(closed, 'b.transfer-switch', { state: { position: 'utility' } });
      return withPart(house, 'b.load', { values: { ...partById(house, 'b.load').values, bothW: watts } });
    };
    const opening = (world: World): Reach => ({
      ...at(world, 'p1.road'),
      switches: {
        part: 'p1.tap-cutout',
        makes: null,
        breaks: ['p1.tap-cutout/top', 'p1.tap-cutout/bottom'],
        through: { stick: 'stick-1', gloves: null },
      },
    });
    const drawn = (watts: number): number | undefined =>
      of('flash', opening(carrying(watts)), carrying(watts))[0]?.quantities.find(({ name }) => name.includes('drawn'))
        ?.value;
    expect(drawn(0)).toBeUndefined();
    const [some = 0, more = 0] = [drawn(6000), drawn(20_000)];
    expect(some).toBeGreaterThan(drawnArc(7200, plainBreak));
    expect(more).toBeGreaterThan(1.3 * some);
  });

  test('pulling the meter on the running set wants a face shield', () => {
    const pulling = (world: World): Reach => ({
      ...at(world, 'a.yard'),
      switches: {
        part: 'a.meter',
        makes: null,
        breaks: ['a.meter/line1', 'a.meter/load1'],
        through: { stick: null, gloves: 'gloves-1' },
      },
    });
    expect(of('flash', pulling(scene), scene)[0]?.failed).toEqual(['face-shield']);
    const shielded = wearing(scene, 'gloves-1', 'shield-1');
    expect(of('flash', pulling(shielded), shielded)).toEqual([]);
  });
});

describe('a conductor off its tie', () => {
  const below: Reach = { ...at(scene, 'p2.aloft'), climbs: { pole: 'p2', by: 'bucket' } };
  const work: Reach = { ...at(scene, 'p2.work'), climbs: { pole: 'p2', by: 'bucket' } };

  test('can strike whoever is aloft at the work, alive or not', () => {
    for (const world of [scene, grounded(scene)]) {
      const [exposure] = of('drop', work, world);
      expect(exposure?.potentiallyFatal).toBe(true);
      expect(exposure?.causes).toContain('tie');
    }
  });

  test('strikes nobody once held', () => {
    expect(of('drop', work, supported(scene))).toEqual([]);
  });

  test('reaches nobody on the ground, struck pole or not', () => {
    for (const stand of scene.stands.filter((each) => each.aloft === null)) {
      expect(of('drop', { ...at(scene, stand.id), disturbs: 'p2.pole' }, scene)).toEqual([]);
    }
  });

  test('reaches nobody who waits below the work on the grounded tap', () => {
    expect(of('drop', below, grounded(scene))).toEqual([]);
  });

  test('reaches the ground where a long slack span lets it', () => {
    const slack = ['s1.phase', 's2.phase'].reduce((world, id) => {
      const values = { ...world.parts.find((part) => part.id === id)?.values, sagM: 6 };
      return withPart(world, id, { values });
    }, scene);
    expect(of('drop', at(slack, 'p2.butt'), slack).map(({ part }) => part)).toEqual(['p2.tie']);
  });
});

describe('a fall', () => {
  const up = (world: World, by: 'hooks' | 'bucket'): Reach => ({
    ...at(world, 'p2.aloft'),
    climbs: { pole: 'p2', by },
  });
  const briefed = (world: World): World => ({
    ...secondHere(world),
    paper: {
      ...world.paper,
      briefings: [
        {
          minute: 1,
          topics: ['hazards', 'procedures', 'precautions', 'energy-controls', 'protective-equipment'],
          heard: world.people.filter(({ role }) => role === 'trainee' || role === 'second').map(({ id }) => id),
          rescue: true,
        },
      ],
    },
  });

  test('is potentially fatal unattached, above 4 ft (1910.269(g)(2))', () => {
    const [exposure] = of('fall', up(scene, 'hooks'), scene);
    expect(exposure?.potentiallyFatal).toBe(true);
    expect(exposure?.failed).toEqual(['briefed', 'fall-gear', 'pole-checked', 'rescue-ready', 'second-qualified']);
  });

  test('is a matter of order and company when attached', () => {
    const attached = wearing(scene, 'belt-1');
    const [exposure] = of('fall', up(attached, 'bucket'), attached);
    expect(exposure?.potentiallyFatal).toBe(false);
    expect(exposure?.failed).toEqual(['briefed', 'rescue-ready', 'second-qualified']);
  });

  test('is none attached, in the bucket, briefed, with the second worker there', () => {
    const careful = wearing(briefed(scene), 'belt-1');
    expect(of('fall', up(careful, 'bucket'), careful)).toEqual([]);
    expect(of('fall', up(careful, 'hooks'), careful)[0]?.failed).toEqual(['pole-checked']);
  });

  test('is potentially fatal on a pole that has lost its strength', () => {
    const values = { ...scene.parts.find(({ id }) => id === 'p2.pole')?.values, strength: 0.5 };
    const weak = wearing(briefed(withPart(scene, 'p2.pole', { values })), 'belt-1');
    expect(of('fall', up(weak, 'hooks'), weak)[0]?.potentiallyFatal).toBe(true);
    expect(of('fall', up(weak, 'bucket'), weak)).toEqual([]);
  });
});

test('a job done in order meets nothing: grounded, held, attached and in company', () => {
  const careful = wearing(secondHere(supported(grounded(scene))), 'belt-1', 'gloves-1');
  const reach: Reach = { ...at(careful, 'p2.work'), works: true, climbs: { pole: 'p2', by: 'bucket' } };
  expect(met(reach, careful).filter(({ mechanism }) => mechanism !== 'fall')).toEqual([]);
});
