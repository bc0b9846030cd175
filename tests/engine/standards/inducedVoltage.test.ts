/** The induced voltage of an isolated wire against the network solver with the capacitances of the same two wires. */
import { describe, expect, it } from 'vitest';
import { abs, complex } from '../../../src/engine/math/complex.ts';
import { inducedTouch, inducedVolts, potentialCoefficient } from '../../../src/engine/standards/inducedVoltage.ts';
import { admittance, impedance, OMEGA, solved, source } from '../network/elements.ts';

const live = { offset: 0, height: 11, radius: 0.005 };
const isolated = { offset: 0.9, height: 10, radius: 0.004 };
const length = 300;

const p11 = potentialCoefficient(live, live);
const p12 = potentialCoefficient(live, isolated);
const p22 = potentialCoefficient(isolated, isolated);
const determinant = p11 * p22 - p12 * p12;
const between = (p12 / determinant) * length;
const toEarth = (p11 / determinant) * length - between;

const wires = [
  source('s', 'live', 'earth', complex(7200)),
  admittance('between', 'live', 'isolated', 0, OMEGA * between),
  admittance('earth', 'isolated', 'earth', 0, OMEGA * toEarth),
];

describe('an isolated wire beside a live one', () => {
  it('stands at the volts of the capacitive divider', () => {
    expect(inducedVolts(live, 7200, isolated)).toBeCloseTo(abs(solved(wires).voltage('isolated')), 6);
  });

  it('drives through a touch what the solver gives', () => {
    const s = solved([...wires, impedance('body', 'isolated', 'earth', 1000)]);
    expect(inducedTouch(live, 7200, isolated, length, 1000)).toBeCloseTo(abs(s.current('body')), 9);
  });

  it('has less the farther away it hangs, and a touch draws more from a longer one', () => {
    const far = { ...isolated, offset: 5 };
    expect(inducedVolts(live, 7200, far)).toBeLessThan(inducedVolts(live, 7200, isolated));
    const touch = (metres: number) => inducedTouch(live, 7200, isolated, metres, 1000);
    expect(touch(600) / touch(300)).toBeCloseTo(2, 3);
  });
});
