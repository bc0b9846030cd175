/** Transformers forward and backward, banks and their fault currents, against closed forms and worked cases. */
import { describe, expect, test } from 'vitest';
import { faultCurrent } from '../../../../src/engine/circuit/faultCurrent.ts';
import { solveCircuit } from '../../../../src/engine/circuit/solveCircuit.ts';
import type { World } from '../../../../src/engine/world/types.ts';
import { piece, tinyWorld, withState } from '../scene.ts';
import { model, only } from './scenes.ts';

const near = (value: number | undefined, expected: number, part: number): void =>
  expect(Math.abs((value ?? 0) / expected - 1)).toBeLessThan(part);

const stiff = piece('s', 'system-source', {
  nets: { line: 'line', neutral: 'earth' },
  values: { ohms: 1e-4, reactance: 1e-4 },
});
const transformer = (values: Record<string, number> = {}) =>
  piece('t', 'transformer', {
    nets: { h1: 'line', tank: 'earth', x1: 'x1', x2: 'x2', x3: 'x3' },
    values: { va: 25e3, ...values },
  });

describe('a 25 kVA transformer on an infinite bus (worked case E7, R + jX and 1.5 R + j1.2 X)', () => {
  // The shunt branch and the bond of X2, which the worked case leaves out, cost a little.
  const world = tinyWorld([stiff, transformer()]);
  test('drives 4734.8 A from leg to leg', () => near(faultCurrent(world, 't/x1', 't/x3')?.amperes, 4734.8, 0.005));
  test('drives 6927.8 A from a leg to X2', () => near(faultCurrent(world, 't/x1', 't/x2')?.amperes, 6927.8, 0.005));
  test('gives 2.5 % less with the primary 2.5 % higher by its tap', () => {
    const low = solveCircuit(tinyWorld([stiff, transformer({ primaryVolts: 7200 / 0.975 })]));
    near(low.between('t/x1', 't/x3'), 0.975 * solveCircuit(world).between('t/x1', 't/x3'), 1e-4);
  });
});

describe('a wye-wye bank of three 120 V units', () => {
  const world = only(model('wye-bank'));
  test('gives 120 V to the neutral and 208 V between legs', () => {
    const solution = solveCircuit(world);
    near(solution.between('a.meter/line1', 'a.meter/n'), 120, 0.02);
    near(solution.between('a.meter/line1', 'a.meter/line2'), Math.sqrt(3) * 120, 0.02);
  });

  test('gives 208 V between two legs, and 120 V when the polarity of one unit is turned', () => {
    const values = { secondaryVolts: 120 };
    const units = (x1: string, x2: string): World =>
      tinyWorld([
        piece('s', 'system-source-wye', { nets: { a: 'a', b: 'b', c: 'c', neutral: 'n', star: 'star' } }),
        piece('u1', 'bank-unit-240', { nets: { h1: 'a', tank: 't1', neutral: 'n', x1: 'leg-1', x2: 'n' }, values }),
        piece('u2', 'bank-unit-240', { nets: { h1: 'b', tank: 't2', neutral: 'n', x1, x2 }, values }),
      ]);
    near(solveCircuit(units('leg-2', 'n')).between('u1/x1', 'u2/x1'), Math.sqrt(3) * 120, 0.01);
    near(solveCircuit(units('n', 'leg-2')).between('u1/x1', 'u2/x2'), 120, 0.01);
  });

  test('feeds backward: one secondary phase held alive makes its primary alive with the cutouts open', () => {
    const open = ['a', 'b', 'c'].reduce(
      (w, letter) => withState(w, `p2.cutout-${letter}`, { position: 'open' }),
      world,
    );
    const dead = solveCircuit(open);
    expect(dead.point('p2.unit-a/h1').live).toBe(false);
    const fed = {
      ...open,
      parts: [
        ...open.parts,
        piece('g', 'generator', { nets: { g1: 'p2.x1', g2: 'g.g2', n: 'p2.neutral', w1: 'g.w1', w2: 'g.w2' } }),
      ],
    };
    const point = solveCircuit(fed).point('p2.unit-a/h1');
    expect(point).toMatchObject({ live: true, sources: ['g'] });
    near(point.volts, 7620, 0.06);
  });
});

describe('an open-wye bank', () => {
  const solution = solveCircuit(only(model('open-wye')));
  test('gives 120/240 V from the lighting unit and 240 V on all three sides', () => {
    near(solution.between('p2.transformer/x1', 'p2.transformer/x2'), 120, 0.02);
    for (const [a, b] of [
      ['p2.transformer/x1', 'p2.transformer/x3'],
      ['p2.power/x2', 'p2.power/x1'],
      ['p2.power/x2', 'p2.transformer/x1'],
    ] as const)
      near(solution.between(a, b), 240, 0.02);
  });
  test('has a wild leg of 208 V to the neutral, root three times 120', () => {
    near(solution.between('p2.power/x2', 'p2.transformer/x2'), Math.sqrt(3) * 120, 0.02);
  });
});

test('a second transformer on one secondary makes the first one, cut off above, alive backward', () => {
  const world = withState(withState(only(model('island')), 'p1.tap-cutout', { position: 'closed' }), 'a.photovoltaic', {
    run: 'stopped',
  });
  const cut = solveCircuit(withState(world, 'p2.cutout', { position: 'open' }));
  const point = cut.point('p2.transformer/h1');
  expect(point).toMatchObject({ live: true, sources: ['system'] });
  near(point.volts, 14400, 0.05);
});
