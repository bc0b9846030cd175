/** A limb that rests on the line and hangs into reach: what a hand on it or a saw in it meets, and what removes it. */
import { describe, expect, test } from 'vitest';
import { refusalOf } from '../../../src/engine/acts/act.ts';
import { solveCircuit } from '../../../src/engine/circuit/solveCircuit.ts';
import { exposuresOf } from '../../../src/engine/hazards/exposuresOf.ts';
import { partById, pointAt, trainee, withPart, withPerson } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { done, played } from '../acts/scene.ts';
import { model, only } from '../circuit/models/scenes.ts';
import { touching } from './fog.ts';

const limb = only(model('wye-bank'), 'limb');
const point = 's2.phase-c/limb';
const contact = (world: World) =>
  exposuresOf(touching(world, 'p2.butt', point), world, world).filter(({ mechanism }) => mechanism === 'contact');

test('it hangs as high as a hand, two metres from the pole along the span', () => {
  expect(pointAt(limb, point)).toEqual([2, 1.07, 1.9]);
  expect(pointAt(only(limb), point)).toBeNull();
});

test('it stands at the share of the line that the wood below it has of the whole', () => {
  const solution = solveCircuit(limb);
  const line = solution.between('s2.phase-c/a', 'earth');
  expect(solution.between(point, 'earth') / line).toBeCloseTo(0.5, 2);
  expect(solution.branchCurrent('s2.phase-c', 'limb')).toBeCloseTo(line / 40e3, 3);
});

test('a hand on it takes more current than the trunk did, with the limb as the cause', () => {
  const [shock] = contact(limb);
  expect(shock).toMatchObject({ severity: 'fatal', strikes: true, causes: ['limb'] });
  const amperes = shock?.now.find(({ unit }) => unit === 'A')?.value ?? 0;
  // 7.6 kV behind 10 kilohm of Thevenin wood and the body.
  expect(amperes).toBeGreaterThan(0.3);
  expect(amperes).toBeLessThan(0.38);
});

test('on a dead line it is wood', () => {
  const dead = withPart(limb, 'p1.source', { values: { ...partById(limb, 'p1.source').values, volts: 1e-3 } });
  expect(contact(dead)).toEqual([]);
});

describe('cutting it', () => {
  const butt = withPerson(played(limb, { act: 'acknowledge' }, { act: 'park', at: 'clear' }), trainee(limb).id, {
    at: 'p2.butt',
    aloftBy: null,
  });
  const cut = { act: 'repair', part: 's2.phase-c', repair: 'cut-limb' } as const;

  test('by hand on the live line strikes', () => {
    const { exposures, world } = done(butt, cut);
    expect(exposures.find(({ hazard }) => hazard === `contact:${point}`)?.strikes).toBe(true);
    expect(world.ended).toBe('struck');
  });

  test('on the dead line takes it away, and there is nothing to cut then', () => {
    const dead = withPart(butt, 'p1.source', { values: { ...partById(butt, 'p1.source').values, volts: 1e-3 } });
    const { world } = done(dead, cut);
    expect(partById(world, 's2.phase-c').faults).toEqual([]);
    expect(refusalOf(world, cut)).toBe('there is no such thing on it');
    expect(refusalOf(world, { act: 'touch', point })).toBe('there is no bare metal to be reached');
  });

  test('is out of reach from where nobody stands beside it', () => {
    const far = withPerson(butt, trainee(butt).id, { at: 'p3.butt' });
    expect(refusalOf(far, cut)).not.toBeNull();
  });
});
