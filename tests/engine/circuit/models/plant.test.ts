/** Customers' plant: inverters that trip, hold and limit, a set with a governor, switches between plant and line. */
import { describe, expect, test } from 'vitest';
import { settle } from '../../../../src/engine/circuit/settle.ts';
import { solveCircuit } from '../../../../src/engine/circuit/solveCircuit.ts';
import { abs, complex, conj, mul, scale } from '../../../../src/engine/math/complex.ts';
import { inverterFault, inverterInto } from '../../../../src/engine/standards/inverter.ts';
import { partById } from '../../../../src/engine/world/edit.ts';
import type { Part, World } from '../../../../src/engine/world/types.ts';
import { piece, tinyWorld, withJumpers, withState } from '../scene.ts';
import { model, only } from './scenes.ts';

const near = (value: number, expected: number, part: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThan(part);

const island = only(model('island'));
const on = (run: string, islanding: string, world = island): World =>
  withState(world, 'a.photovoltaic', { run, islanding });
const closed = (world: World): World => withState(world, 'p1.tap-cutout', { position: 'closed' });
const runOf = (world: World): string | undefined => partById(world, 'a.photovoltaic').state.run;

describe('an inverter that does as the rule says', () => {
  test('feeds nothing into a tap that is open: it trips 2 s after the line is gone', () => {
    const { world, operations, solution } = settle(on('following', 'trips'));
    expect(operations).toMatchObject([{ part: 'a.photovoltaic', branch: 'line-lost', seconds: 2 }]);
    expect(runOf(world)).toBe('tripped');
    expect(solution.point('p2.transformer/h1').live).toBe(false);
  });

  test('stays in step with a line that is there, and sends its output into it', () => {
    const { operations, solution } = settle(closed(on('following', 'trips')));
    expect(operations).toEqual([]);
    const amperes = (0.6 * 7600) / 240;
    near(solution.branchCurrent('a.photovoltaic', 'breaker-1'), amperes, 0.03);
  });
});

describe('an inverter that wrongly holds its voltage', () => {
  test('makes the open tap alive at line volts through the transformer', () => {
    const { operations, world } = settle(on('following', 'holds'));
    expect(operations.map(({ branch }) => branch)).toEqual(['line-lost']);
    expect(runOf(world)).toBe('holding');
    const point = solveCircuit(world).point('s2.phase/a');
    expect(point).toMatchObject({ live: true, sources: ['a.photovoltaic'] });
    near(point.volts, 14400, 0.03);
  });

  test('trips when the line comes back against it', () => {
    const { operations, world } = settle(closed(on('holding', 'holds')));
    expect(operations[0]).toMatchObject({ part: 'a.photovoltaic', branch: 'line-back' });
    expect(runOf(world)).toBe('tripped');
  });

  test('gives no more than 1.2 times rated into a short, and lets go of what it cannot hold', () => {
    const shorted = withJumpers(on('holding', 'holds'), [['a.meter/line1', 'a.meter/line2']]);
    const limit = inverterFault({ rating: 7600, volts: 240 });
    near(solveCircuit(shorted).branchCurrent('a.photovoltaic', 'inverter'), limit, 1e-6);
    expect(settle(shorted).operations[0]).toMatchObject({ branch: 'overloaded' });
  });

  const loaded = (watts: number): World =>
    tinyWorld([
      piece('i', 'photovoltaic-plant', {
        nets: { w1: 'w1', w2: 'w2', bus1: 'b1', bus2: 'b2' },
        state: { run: 'holding', breaker: 'closed', islanding: 'holds' },
      }),
      piece('l', 'household-load', {
        nets: { bus1: 'b1', bus2: 'b2', n: 'n' },
        values: { leg1W: 0, leg2W: 0, bothW: watts },
      }),
      piece('e', 'ground-rod', { nets: { rod: 'b1' } }),
    ]);

  test.each([2000, 6000, 15_000, 40_000])('carries a load of %d W at 240 V as the closed form says', (watts) => {
    const expected = inverterInto({ rating: 7600, volts: 240 }, complex((240 * 240) / watts));
    const solution = solveCircuit(loaded(watts));
    near(solution.branchCurrent('i', 'inverter'), expected.amperes, expected.limited ? 0.002 : 0.02);
    near(solution.between('l/bus1', 'l/bus2'), expected.volts, 0.02);
  });
});

test('a battery behind a transfer switch on generator holds the house and nothing beyond', () => {
  const world = withState(only(model('delta')), 'a.transfer-switch', { position: 'generator' });
  const open = ['p3.cutout-a', 'p3.cutout-c'].reduce((w, id) => withState(w, id, { position: 'open' }), world);
  const solution = solveCircuit(open);
  near(solution.between('a.load/bus1', 'a.load/bus2'), 240, 0.02);
  expect(solution.point('p3.transformer/h1').live).toBe(false);
  expect(solution.point('p3.transformer/x1').live).toBe(false);
});

describe('a set with a governor', () => {
  const set = (watts: number, more: readonly Part[] = []): World =>
    tinyWorld([
      piece('g', 'governed-generator', {
        nets: { g1: 'b1', g2: 'b2', n: 'n', w1: 'w1', w2: 'w2' },
        values: { va: 5000, ratingA: 60 },
      }),
      piece('l', 'household-load', {
        nets: { bus1: 'b1', bus2: 'b2', n: 'n' },
        values: { leg1W: 0, leg2W: 0, bothW: watts },
      }),
      piece('e', 'ground-rod', { nets: { rod: 'n' } }),
      ...more,
    ]);
  const power = (world: World): number => {
    const { network, elements } = solveCircuit(world);
    return elements.reduce((sum, element) => {
      if (element.kind !== 'source') return sum;
      return sum + mul(element.emf, conj(scale(network.current(element.id), -1))).re;
    }, 0);
  };

  test('gives what is asked as long as its engine can', () => {
    near(solveCircuit(set(2000)).between('l/bus1', 'l/bus2'), 240, 0.02);
    expect(power(set(2000))).toBeLessThan(2100);
  });

  test.each([6500, 9000])('gives its rating and lower volts when %d W are asked', (watts) => {
    near(power(set(watts)), 5000, 1e-6);
    expect(solveCircuit(set(watts)).between('l/bus1', 'l/bus2')).toBeLessThan(230);
  });

  test('drives three times rated into a short at most, and stalls', () => {
    const shorted = withJumpers(
      set(0),
      [['g/g1', 'g/g2']].map((points) => points),
    );
    expect(() => solveCircuit(shorted)).not.toThrow();
    const amperes = solveCircuit(shorted).branchCurrent('g', 'breaker-1');
    expect(amperes).toBeLessThanOrEqual((3 * 5000) / 240 + 1e-6);
    expect(settle(shorted).operations[0]).toMatchObject({ part: 'g', branch: 'stalls', seconds: 5 });
  });
});

describe('what stands between a set and the line', () => {
  const recloser = (...kept: string[]): World => {
    const open = withState(only(model('recloser'), ...kept), 'p1.tap-cutout', { position: 'open' });
    return withState(withState(open, 'a.generator', { run: 'running' }), 'b.generator', { run: 'running' });
  };
  const lineAlive = (world: World): boolean => solveCircuit(world).point('p2.insulator/conductor').live;

  test('an interlock with its plate on parts them in every position that it allows', () => {
    for (const position of ['main', 'inlet', 'off'])
      expect(lineAlive(withState(recloser(), 'a.main', { position }))).toBe(false);
  });

  test('an interlock with its plate off makes the line alive from the set', () => {
    const world = recloser('plate');
    expect(solveCircuit(world).point('p2.insulator/conductor')).toMatchObject({ live: true, sources: ['a.generator'] });
  });

  test('a transfer switch parts them, one with a bypassed leg makes line volts of 120', () => {
    const sound = withState(recloser(), 'b.transfer-switch', { position: 'generator' });
    expect(lineAlive(sound)).toBe(false);
    const bypassed = withState(recloser('bypass'), 'b.transfer-switch', { position: 'generator' });
    const point = solveCircuit(bypassed).point('p2.insulator/conductor');
    expect(point).toMatchObject({ live: true, sources: ['b.generator'] });
    expect(point.volts).toBeGreaterThan(15_000);
  });

  test('a set with no connection reaches nothing', () => {
    const points = solveCircuit(island).points.filter(({ sources }) => sources.includes('b.generator'));
    expect(points).toEqual([]);
  });

  test('a switch that loses the neutral of the set shifts the legs of the house', () => {
    const legs = (world: World): number[] =>
      ['bus1', 'bus2'].map((bus) => solveCircuit(world).between(`a.load/${bus}`, 'a.load/n'));
    for (const volts of legs(only(model('open-wye')))) near(volts, 115, 0.06);
    const [loaded = 0, light = 0] = legs(only(model('open-wye'), 'neutral'));
    // 2 kW and 500 W: four to one, less what the ground's strays hold.
    near(light / loaded, 4, 0.05);
    expect(abs(complex(light))).toBeGreaterThan(170);
  });
});
