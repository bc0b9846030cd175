/** What stands where in the fog scene, and what changes it. */
import { describe, expect, test } from 'vitest';
import { settle } from '../../../src/engine/circuit/settle.ts';
import { solveCircuit } from '../../../src/engine/circuit/solveCircuit.ts';
import { partById, withoutFault } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { fogScene, withJumpers, withState } from './scene.ts';

const closed = (world: World): World => withState(world, 'p1.tap-cutout', { position: 'closed', link: 'sound' });
const stopped = (world: World): World => withState(world, 'a.generator', { run: 'stopped', breaker: 'open' });
const point = (world: World, id: string) => settle(world).solution.point(id);

describe('at the start', () => {
  const world = fogScene();

  test('the tap beyond the open cutout stands at about 7 kV, fed by the first house alone', () => {
    const { volts, sources, live } = point(world, 'p1.tap-cutout/bottom');
    expect(volts).toBeGreaterThan(6900);
    expect(volts).toBeLessThan(7200);
    expect({ live, sources }).toEqual({ live: true, sources: ['a.generator'] });
  });

  // 12.47 kV wye: 12470 / sqrt(3) V to ground.
  test('the line contact stands at the phase volts of the system, fed by the system', () => {
    const { volts, sources } = point(world, 'p1.tap-cutout/top');
    expect(volts / (12470 / Math.sqrt(3))).toBeCloseTo(1, 3);
    expect(sources).toEqual(['system']);
  });

  test('both contacts of the open tap cutout may stand at twice the phase volts to each other', () => {
    const across = settle(world).solution.between('p1.tap-cutout/top', 'p1.tap-cutout/bottom');
    expect(across).toBeGreaterThan(13_800);
    expect(across).toBeLessThan(14_400);
  });

  test('the piece of pole ground left on the pole floats and is alive through at least 100 kilohms of leak', () => {
    const ohmsOf = (part: string, fault: string): number =>
      partById(world, part).faults.find(({ id }) => id === fault)?.values.ohms ?? 0;
    expect(ohmsOf('p2.insulator', 'crack') + ohmsOf('p2.pole', 'burn')).toBeGreaterThanOrEqual(100e3);
    const stub = point(world, 'p2.ground-lead/low');
    expect(stub).toMatchObject({ live: true, sources: ['a.generator'] });
    // Let-go for 99.5 % of women is 6 mA (Dalziel and Lee 1968; 1910.269 Appendix C).
    expect(stub.throughKilohm).toBeGreaterThan(6e-3);
    expect(stub.throughKilohm).toBeLessThan(7200 / 100e3);
    const flashed = solveCircuit(world, { credible: true }).point('p2.ground-lead/low');
    expect(flashed.throughKilohm).toBeGreaterThan(10 * stub.throughKilohm);
  });

  test('the neutral, the tank and the rod are not alive', () => {
    for (const id of ['p2.neutral-spool/neutral', 'p2.tank-strap/tank', 'p2.ground-rod/rod', 'p1.ground-lead/top']) {
      expect(point(world, id), id).toMatchObject({ live: false });
    }
  });

  test('the second house is lit by its own set, which feeds nothing outside', () => {
    expect(settle(world).solution.between('b.house/bus1', 'b.house/n')).toBeGreaterThan(110);
    expect(point(world, 'b.meter/line1').sources).toEqual(['a.generator']);
    const without = withState(world, 'b.generator', { run: 'stopped' });
    expect(point(without, 'p1.tap-cutout/bottom').volts).toBeCloseTo(point(world, 'p1.tap-cutout/bottom').volts, -1);
  });
});

describe('stopping the first set', () => {
  const world = withState(fogScene(), 'a.generator', { run: 'stopped' });

  test('kills everything beyond the open cutout', () => {
    const { points } = settle(world).solution;
    const beyond = points.filter(({ node }) => /^(p2|p3|a)\./.test(node) || node === 'p1.tap');
    expect(beyond.length).toBeGreaterThan(40);
    expect(beyond.filter(({ live }) => live)).toEqual([]);
  });

  test('leaves the tap coupled to the line through porcelain: some volts, no current to speak of', () => {
    const { volts, throughKilohm } = point(world, 'p1.tap-cutout/bottom');
    expect(volts).toBeGreaterThan(0);
    expect(throughKilohm).toBeLessThan(1e-3);
  });
});

describe('pulling a meter, or opening its main or the transformer cutout, parts the set from the tap', () => {
  const changes: Readonly<Record<string, (world: World) => World>> = {
    'meter a': (world) => withState(world, 'a.meter', { position: 'pulled' }),
    'main a': (world) => withState(world, 'a.main', { position: 'open' }),
    'transformer cutout': (world) => withState(world, 'p2.cutout', { position: 'open' }),
  };
  test.each(Object.keys(changes))('%s', (name) => {
    const world = changes[name]?.(fogScene()) ?? fogScene();
    expect(point(world, 'p2.clamp/line').live).toBe(false);
    expect(settle(world).solution.between('a.load/bus1', 'a.load/n')).toBeGreaterThan(110);
  });
});

describe('normal restoration', () => {
  const world = closed(
    withState(stopped(withoutFault(fogScene(), 'crack')), 'b.transfer-switch', { position: 'utility' }),
  );

  test('gives both houses their volts within 5 % of 120 and 240, from the system, and nothing operates', () => {
    const { solution, operations } = settle(world);
    expect(operations).toEqual([]);
    for (const house of ['a', 'b']) {
      for (const leg of ['bus1', 'bus2']) {
        expect(Math.abs(solution.between(`${house}.load/${leg}`, `${house}.load/n`) / 120 - 1)).toBeLessThan(0.05);
      }
      expect(Math.abs(solution.between(`${house}.load/bus1`, `${house}.load/bus2`) / 240 - 1)).toBeLessThan(0.05);
      expect(solution.point(`${house}.meter/line1`).sources).toEqual(['system']);
    }
  });
});

describe('grounding', () => {
  const joined = ['p3.neutral-spool/neutral', 'p3.deadend/conductor'];

  test('the tap at the dead end makes it dead at the pole, and the set trips', () => {
    const world = withJumpers(fogScene(), [joined]);
    expect(settle(world).operations.map(({ part }) => part)).toEqual(['a.generator']);
    expect(point(world, 'p2.clamp/line').live).toBe(false);
  });

  test('holds the volts down even while the set still feeds it', () => {
    const solution = solveCircuit(withJumpers(fogScene(), [joined]));
    expect(solution.branchCurrent('jumper-1', '1')).toBeGreaterThan(1);
    expect(solution.point('p2.clamp/line').volts).toBeLessThan(50);
  });
});

describe('mending the pole ground', () => {
  test('its joint alone ends the floating: the stub is at the neutral', () => {
    const world = withoutFault(fogScene(), 'bond');
    expect(point(world, 'p2.ground-lead/low').live).toBe(false);
    expect(point(world, 'p2.clamp/line').live).toBe(true);
  });

  test('removing either the crack or the burn ends the life of the stub', () => {
    for (const fault of ['crack', 'burn']) {
      expect(point(withoutFault(fogScene(), fault), 'p2.ground-lead/low').live, fault).toBe(false);
    }
  });
});

describe('a lost neutral bond at the transformer', () => {
  test('is carried by the strap and the lead together: opening both leaves the tank to the service neutrals', () => {
    const both = (world: World): World => ({
      ...world,
      parts: world.parts.filter(({ id }) => id !== 'p2.tank-strap' && id !== 'p2.upper-lead'),
    });
    const held = settle(closed(stopped(fogScene()))).solution.point('p2.transformer/tank').volts;
    const loose = settle(both(closed(stopped(fogScene())))).solution.point('p2.transformer/tank').volts;
    expect(loose).toBeGreaterThan(3 * held);
  });
});
