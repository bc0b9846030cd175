/**
 * Volts that live wires put on an isolated one beside them by their electric field, and what a touch of it draws. Maxwell's
 * potential coefficients of parallel thin wires over a perfect plane, P = ln(2h/r)/(2 pi e0) and ln(D'/D)/(2 pi e0) (line
 * textbooks, such as Kersting's chapter on shunt admittance). The isolated wire carries no charge; touched, it is
 * held at earth and its charge is what the body's current brings. Straight, level, endless wires; poles, insulators and leakage, which lower it, are left out, as is
 * the magnetic part, which a loop closed through two grounds carries.
 */
import { hypot, ln } from '../math/elementary.ts';
import type { Amperes, Hertz, Metres, Ohms, Volts } from '../units/quantities.ts';

/** A wire: offset from a common line on the ground, mean height, radius. */
export interface WirePlace {
  readonly offset: Metres;
  readonly height: Metres;
  readonly radius: Metres;
}

const epsilon0 = 8.8541878128e-12;

/** Potential coefficient in metres per farad: of a wire with itself or with another. */
export const potentialCoefficient = (a: WirePlace, b: WirePlace): number => {
  const own = a.offset === b.offset && a.height === b.height;
  const image = hypot(a.offset - b.offset, a.height + b.height);
  const apart = own ? a.radius : hypot(a.offset - b.offset, a.height - b.height);
  return ln(image / apart) / (2 * Math.PI * epsilon0);
};

/** Volts to earth of an isolated wire beside one live wire. */
export const inducedVolts = (live: WirePlace, volts: Volts, isolated: WirePlace): Volts =>
  (volts * potentialCoefficient(live, isolated)) / potentialCoefficient(live, live);

/** Amperes to earth from `length` of the isolated wire through `body` ohms; the wire's capacitance beside the live one feeds it. */
export const inducedTouch = (
  live: WirePlace,
  volts: Volts,
  isolated: WirePlace,
  length: Metres,
  body: Ohms,
  frequency: Hertz = 60,
): Amperes => {
  const p11 = potentialCoefficient(live, live);
  const p12 = potentialCoefficient(live, isolated);
  const p22 = potentialCoefficient(isolated, isolated);
  // Capacitance of the isolated wire with the live one held: p11 / (p11 p22 - p12 p12).
  const reactance = (p11 * p22 - p12 * p12) / (p11 * length * 2 * Math.PI * frequency);
  return inducedVolts(live, volts, isolated) / hypot(body, reactance);
};
