/** The neutral open toward the substation: worked case E11, a division by hand, Millman's theorem by hand on three phases. */
import { describe, expect, test } from 'vitest';
import { solveCircuit } from '../../../../src/engine/circuit/solveCircuit.ts';
import { withPart } from '../../../../src/engine/world/edit.ts';
import type { World } from '../../../../src/engine/world/types.ts';
import { laid, piece, tinyWorld } from '../scene.ts';
import { model, only } from './scenes.ts';

const near = (value: number, expected: number, part: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThan(part);

const fault = laid('source-neutral-open');
/** A stiff source, its own ladder of so many ohms; the scene's neutral is the net 'n'. */
const stiff = (ladderOhms: number) => ({ ohms: 1e-3, reactance: 0, ladderOhms, ladderReactance: 0 });
const rod = (ohms: number) => piece('r', 'ground-rod', { nets: { rod: 'n' }, values: { ohms } });

/** 25 kVA with 5 kW across the legs; tank, X2 and the line's neutral are one, on a rod. */
const tap = (ladderOhms: number, rodOhms: number, open = true): World =>
  tinyWorld([
    piece(
      's',
      'system-source',
      { nets: { line: 'line', neutral: 'n' }, values: stiff(ladderOhms) },
      open ? [fault] : [],
    ),
    piece('t', 'transformer', { nets: { h1: 'line', tank: 'n', x1: 'x1', x2: 'n', x3: 'x3' } }),
    rod(rodOhms),
    piece('l', 'household-load', {
      nets: { bus1: 'x1', bus2: 'x3', n: 'n' },
      values: { leg1W: 0, leg2W: 0, bothW: 5000 },
    }),
  ]);

describe('a tap whose neutral is open toward the substation', () => {
  test('drives 0.7 A through a rod of 25 ohm, and a body of 1000 ohm alone takes 0.649 A (E11)', () => {
    near(solveCircuit(tap(1e-3, 25)).network.worst('n'), 17.8, 5e-3);
    near(solveCircuit(tap(1e-3, 1000)).branchCurrent('r', 'electrode'), 0.649, 2e-3);
  });

  // 7200²/5000 = 10 368 ohm at the line; 7200 V over 10 368 + 400 + 600 ohm is 0.6334 A, 253.3 V over the rod of 400 ohm,
  // 6566 V over the load: 109.4 V a leg; the exciting current of 0.07 A is left out.
  test('lifts the neutral to 253 V and lowers both legs alike to 109 V, divided by hand', () => {
    const solution = solveCircuit(tap(600, 400));
    near(solution.branchCurrent('r', 'electrode'), 0.6334, 0.03);
    near(solution.network.worst('n'), 253.3, 0.03);
    near(solution.between('l/bus1', 'l/n'), 109.4, 0.02);
    near(solution.between('l/bus2', 'l/n'), 109.4, 0.02);
  });

  test('sends the current of its rod, and no other, home through the source', () => {
    const solution = solveCircuit(tap(5, 25));
    near(solution.branchCurrent('s', 'thevenin'), solution.branchCurrent('r', 'electrode'), 0.02);
  });

  test('shifts the two legs to the soil apart by twice what the neutral has to it', () => {
    const [open, whole] = [solveCircuit(tap(5, 100)), solveCircuit(tap(5, 100, false))];
    const apart = (solution: typeof open): number =>
      solution.between('l/bus1', 'earth') - solution.between('l/bus2', 'earth');
    expect(Math.abs(apart(whole))).toBeLessThan(1);
    near(apart(open), 2 * open.between('l/n', 'earth'), 0.01);
  });
});

/** Loads of so many watts on the phases, each behind 25 kVA of its own. */
const three = (watts: readonly [number, number, number], rodOhms: number, ladderOhms: number): World =>
  tinyWorld([
    piece(
      's',
      'system-source-wye',
      { nets: { a: 'a', b: 'b', c: 'c', neutral: 'n', star: 's.star' }, values: stiff(ladderOhms) },
      [fault],
    ),
    rod(rodOhms),
    ...(['a', 'b', 'c'] as const).flatMap((phase, k) => [
      piece(`t${phase}`, 'transformer', { nets: { h1: phase, tank: 'n', x1: `${phase}1`, x2: 'n', x3: `${phase}3` } }),
      piece(`l${phase}`, 'household-load', {
        nets: { bus1: `${phase}1`, bus2: `${phase}3`, n: 'n' },
        values: { leg1W: 0, leg2W: 0, bothW: watts[k] ?? 0 },
      }),
    ]),
  ]);

describe('three phases whose neutral is open toward the substation', () => {
  // Millman: the neutral stands at (Ya + Yb a² + Yc a) 7200 / (Ya + Yb + Yc + 1/R) from the star, R rod and ladder in series.
  // 10, 2 and 2 kW: Y = 1.929e-4, 3.858e-5 twice, R = 1000 ohm: 1.1111 / 1.27006e-3 = 874.9 V in phase with a.
  const solution = solveCircuit(three([10_000, 2_000, 2_000], 990, 10));
  const leg = (phase: string): number => solution.between(`l${phase}/bus1`, `l${phase}/n`);

  test('have a neutral 875 V from the star, 866 V of that over the rod', () => {
    near(solution.network.worst('n'), 874.9 * 0.99, 0.02);
  });

  // (7200 - 874.9)/60 and |7200(-1/2 - j sqrt 3/2) - 874.9|/60, halved for a leg of 120 V.
  test('give the heavy phase 105 V a leg and the light ones 128 V', () => {
    near(leg('a'), 105.4, 0.02);
    near(leg('b'), 127.9, 0.02);
    near(leg('c'), 127.9, 0.02);
  });

  test('of equal loads shift nothing', () => {
    const even = solveCircuit(three([3_000, 3_000, 3_000], 990, 10));
    expect(even.network.worst('n')).toBeLessThan(1);
  });
});

test.each(['recloser', 'wye-bank'])('lifts the neutral of the scene %s', (name) => {
  const whole = only(model(name));
  const open = withPart(whole, 'p1.source', { faults: [fault] });
  const rise = (world: World): number => solveCircuit(world).network.worst('p2.neutral');
  expect(rise(open)).toBeGreaterThan(3 * rise(whole));
});
