import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { controlKinds } from '../../../src/engine/catalogue/controls.ts';
import { hazardsMet } from '../../../src/engine/hazards/exposuresOf.ts';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import { precondition, preconditions } from '../../../src/engine/hazards/preconditions.ts';
import type { Reach } from '../../../src/engine/hazards/types.ts';
import { faultsOf, partById, withoutFault, withPart } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { fogScene } from '../circuit/scene.ts';
import { at, closing, grounded, mainOpen, ready, setApart, setStopped, tapOut, touching, wearing } from './fog.ts';

const scene = fogScene();
const harmful = ['bond', 'burn', 'copper', 'cord', 'crack', 'dead-detector', 'old-stick', 'tie'];
const hazards = hazardsIn(scene);
const causesOf = (id: string) => hazards.find((hazard) => hazard.id === id)?.causes;

describe('the hazards of Quarry Road', () => {
  test('come from every laid fault and from no look-alike', () => {
    expect([...new Set(hazards.flatMap(({ causes }) => causes))].sort()).toEqual(harmful);
    const laid = faultsOf(scene).map(({ fault }) => fault.id);
    expect(laid).toEqual(expect.arrayContaining([...harmful, 'own-set', 'stain', 'scar']));
  });

  test('are each their own: what leaks, what comes off, what two sources do, what tools hide', () => {
    expect(causesOf('contact:p2.ground-lead/low')).toEqual(['bond', 'burn', 'copper', 'cord', 'crack']);
    expect(causesOf('drop:p2.tie')).toContain('tie');
    expect(causesOf('flash:p1.tap-cutout')).toEqual(['cord']);
    expect(causesOf('barrier-loss:stick-2')).toEqual(['old-stick']);
    expect(causesOf('barrier-loss:detector-2')).toEqual(['dead-detector']);
  });

  test('include the line in service, which no fault made', () => {
    expect(causesOf('contact:p1.tap-cutout/top')).toEqual([]);
    expect(causesOf('approach:p1.insulator/conductor')).toEqual([]);
  });

  test('are sorted, one of each', () => {
    const ids = hazards.map(({ id }) => id);
    expect(ids).toEqual([...new Set(ids)].sort());
  });

  test('are the same for parts and tools in any order', () => {
    const turned = { ...scene, parts: [...scene.parts].reverse(), tools: [...scene.tools].reverse() };
    const bare = (world: World) => hazardsIn(world).map(({ id, causes, severity }) => ({ id, causes, severity }));
    expect(bare(turned)).toEqual(bare(scene));
  });

  test('on the grounded tap, leave nothing alive at its second pole', () => {
    const left = hazardsIn(grounded(scene)).filter(({ id }) => /^(contact|approach):p2\./.test(id));
    expect(left).toEqual([]);
  });
});

describe('two faults that hide each other', () => {
  test('are both causes: a tie broken on both sides', () => {
    const twice = withPart(scene, 'p2.tie', {
      faults: [
        ...partById(scene, 'p2.tie').faults,
        { id: 'tie-too', kind: 'tie-broken', side: 'any', to: null, values: {} },
      ],
    });
    const drop = hazardsIn(twice).find(({ id }) => id === 'drop:p2.tie');
    expect(drop?.causes).toEqual(['cord', 'tie', 'tie-too']);
  });
});

const reaches = (world: World): readonly Reach[] => [
  touching(world, 'p2.butt', 'p2.ground-lead/low'),
  touching(world, 'a.yard', 'a.meter/line1'),
  touching(world, 'b.yard', 'b.meter/line2'),
  touching(world, 'p2.work', 'p2.insulator/pin'),
  { ...at(world, 'p2.work'), works: true, climbs: { pole: 'p2', by: 'hooks' } },
  { ...at(world, 'p2.aloft'), climbs: { pole: 'p2', by: 'bucket' } },
  { ...at(world, 'p2.butt'), disturbs: 'p2.pole' },
  closing(world, 'p1.tap-cutout'),
];

describe('exposures', () => {
  const states = [
    scene,
    ready(scene),
    wearing(ready(scene), 'belt-1', 'gloves-1'),
    setStopped(scene),
    mainOpen(scene),
    setApart(scene),
    tapOut(scene),
    grounded(scene),
  ];
  // Taking away an opened joint (bond, copper) puts a ground back, onto which a flash can feed; the others only add.
  const adding = ['burn', 'cord', 'crack', 'tie'];

  test('never grow by taking away a fault that leaks, feeds or lets go', () => {
    fc.assert(
      fc.property(fc.nat(states.length - 1), fc.nat(7), fc.subarray(adding), (state, which, gone) => {
        const world = states[state] ?? scene;
        const reach = reaches(world)[which] ?? at(world, 'p2.butt');
        const without = gone.reduce(withoutFault, world);
        const ids = (of: World) => [...hazardsMet(reach, of, of)];
        expect(ids(world)).toEqual(expect.arrayContaining(ids(without)));
      }),
      { numRuns: 40 },
    );
  });

  test('never grow by protecting somebody', () => {
    for (const which of [0, 1, 2, 3, 4, 5, 6, 7]) {
      const bare = reaches(scene)[which];
      if (bare === undefined) continue;
      const safe = wearing(ready(scene), 'belt-1', 'gloves-1', 'shield-1');
      const ids = (world: World) => [...hazardsMet(bare, world, world)];
      expect(ids(scene)).toEqual(expect.arrayContaining(ids(safe)));
    }
  });
});

describe('preconditions', () => {
  test('cover all that controls name', () => {
    const named = new Set(controlKinds.flatMap((control) => control.preconditions));
    expect([...named].filter((id) => !preconditions.includes(id))).toEqual([]);
    for (const id of preconditions) expect(typeof precondition(scene, id)).toBe('boolean');
  });

  test('refuse a word nobody knows', () => {
    expect(() => precondition(scene, 'lucky')).toThrow('no precondition lucky');
  });

  test('count a test only between two proofs of the tester', () => {
    const reading = (minute: number, shows: 'voltage' | 'no voltage') => ({
      point: shows === 'voltage' ? 'p1.tap-cutout/top' : 'p1.tap-cutout/bottom',
      tool: 'detector-1',
      shows,
      volts: null,
      minute,
    });
    const about = { point: 'p1.tap-cutout/bottom' };
    const having = (...readings: readonly ReturnType<typeof reading>[]) => ({
      ...scene,
      knowledge: { ...scene.knowledge, readings },
    });
    expect(precondition(having(reading(2, 'no voltage')), 'tested-dead', about)).toBe(true);
    expect(precondition(having(reading(1, 'voltage'), reading(2, 'no voltage')), 'detector-proved', about)).toBe(false);
    const proved = having(reading(1, 'voltage'), reading(2, 'no voltage'), reading(3, 'voltage'));
    expect(precondition(proved, 'detector-proved', about)).toBe(true);
    expect(precondition(proved, 'tested-dead', { point: 'p1.tap-cutout/top' })).toBe(false);
  });

  test('see the grounded tap, and that the neutral clamp went on first', () => {
    expect(precondition(tapOut(scene), 'grounded', { point: 's1.phase/a' })).toBe(false);
    expect(precondition(grounded(scene), 'grounded', { point: 's1.phase/a' })).toBe(true);
    expect(precondition(grounded(scene), 'neutral-first')).toBe(true);
    const wrong = {
      ...grounded(scene),
      jumpers: [{ id: 'j1', tool: 'ground-1', points: ['p3.deadend/conductor', 'p3.neutral-spool/neutral'] }],
    };
    expect(precondition(wrong, 'neutral-first')).toBe(false);
  });
});
