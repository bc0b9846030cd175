/** Open neutrals: in a service (worked case E6), upstream of a transformer (E11), and what the pole grounds then carry. */
import { describe, expect, test } from 'vitest';
import { solveCircuit } from '../../../../src/engine/circuit/solveCircuit.ts';
import { complex } from '../../../../src/engine/math/complex.ts';
import { legVolts } from '../../../../src/engine/standards/openNeutral.ts';
import type { World } from '../../../../src/engine/world/types.ts';
import { laid, piece, tinyWorld } from '../scene.ts';
import { model, only } from './scenes.ts';

const near = (value: number, expected: number, part: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThan(part);

/** 20 and 5 ohm on the legs of a stiff 120/240 V set behind a drop of next to nothing. */
const service = (houseOhms: number): World =>
  tinyWorld([
    piece('g', 'generator', {
      nets: { g1: 'x1', g2: 'x3', n: 'x2', w1: 'w1', w2: 'w2' },
      values: { va: 1e9, ratingA: 200 },
    }),
    piece('e', 'ground-rod', { nets: { rod: 'x2' }, values: { ohms: 1e-3 } }),
    piece(
      'd',
      'service-drop',
      {
        nets: { x1: 'x1', x2: 'x2', x3: 'x3', l1: 'l1', n: 'n', l2: 'l2' },
        values: { lengthM: 1, ohmsPerM: 1e-6, reactancePerM: 1e-6 },
      },
      [laid('service-neutral-open')],
    ),
    piece('l', 'household-load', {
      nets: { bus1: 'l1', bus2: 'l2', n: 'n' },
      values: { leg1W: (120 * 120) / 20, leg2W: (120 * 120) / 5, bothW: 0 },
    }),
    piece('h', 'house-ground', { nets: { n: 'n' }, values: { ohms: houseOhms } }),
  ]);

describe('an open neutral in the service', () => {
  test('shares 240 V as 192 and 48 V over 20 and 5 ohm (E6)', () => {
    const solution = solveCircuit(service(1e9));
    near(solution.between('l/bus1', 'l/n'), 192, 1e-3);
    near(solution.between('l/bus2', 'l/n'), 48, 1e-3);
  });

  test.each([5, 25, 100])('is held in part by a house ground of %d ohm, and lifts it', (ohms) => {
    const expected = legVolts(120, complex(20), complex(5), ohms);
    const solution = solveCircuit(service(ohms));
    near(solution.between('l/bus1', 'l/n'), Math.abs(expected.leg1.re), 2e-3);
    near(solution.between('l/bus2', 'l/n'), Math.abs(expected.leg2.re), 2e-3);
    near(solution.branchCurrent('h', 'electrode'), Math.abs(expected.neutral.re) / ohms, 3e-3);
  });

  test('shifts the legs of the second house in the scene, and not those of the first', () => {
    const whole = solveCircuit(only(model('island'), 'holds'));
    const open = solveCircuit(only(model('island'), 'holds', 'middle'));
    const legs = (solution: typeof whole, house: string): number[] =>
      ['line1', 'line2'].map((leg) => solution.between(`${house}.meter/${leg}`, `${house}.meter/n`));
    for (const volts of legs(whole, 'b')) near(volts, 118, 0.03);
    const [low = 0, high = 0] = legs(open, 'b');
    expect(high - low).toBeGreaterThan(30);
    for (const volts of legs(open, 'a')) near(volts, 118, 0.03);
  });
});

describe('a transformer whose neutral is open toward the source', () => {
  /** E11: 25 kVA, 5 kW across the legs, tank and X2 on a 25 ohm rod alone. */
  const behind = (rodOhms: number): World =>
    tinyWorld([
      piece('s', 'system-source', {
        nets: { line: 'line', neutral: 'earth' },
        values: { ohms: 1e-3, reactance: 1e-3 },
      }),
      piece('t', 'transformer', { nets: { h1: 'line', tank: 'tank', x1: 'x1', x2: 'tank', x3: 'x3' } }),
      piece('r', 'ground-rod', { nets: { rod: 'tank' }, values: { ohms: rodOhms } }),
      piece('l', 'household-load', {
        nets: { bus1: 'x1', bus2: 'x3', n: 'tank' },
        values: { leg1W: 0, leg2W: 0, bothW: 5000 },
      }),
    ]);

  test('lifts its tank to 17.8 V on a rod of 25 ohm (E11)', () => {
    // E11 leaves out the earth's own share under the feet; so does the node voltage.
    near(solveCircuit(behind(25)).network.worst('tank'), 17.8, 0.03);
  });

  test('drives 0.649 A through a body of 1000 ohm that is its only return (E11)', () => {
    near(solveCircuit(behind(1000)).branchCurrent('r', 'electrode'), 0.649, 0.02);
  });

  test('lifts neutral and tank of a pole in the scene when the neutral of the span is open', () => {
    const whole = solveCircuit(only(model('recloser')));
    const open = solveCircuit(only(model('recloser'), 'open'));
    expect(open.network.worst('p2.neutral')).toBeGreaterThan(3 * whole.network.worst('p2.neutral'));
    expect(open.branchCurrent('p2.ground-rod', 'electrode')).toBeGreaterThan(
      3 * whole.branchCurrent('p2.ground-rod', 'electrode'),
    );
  });
});
