/**
 * Series impedance and capacitance to earth of overhead wires, per metre.
 * Carson's earth return cut after the first terms (J. R. Carson 1926, as in Kersting, Distribution System Modeling and
 * Analysis): z = r + w mu0/8 + j (w mu0/2 pi) ln(De/GMR), De = 658.9 m sqrt(rho/f); error under 1 % at 60 Hz for
 * heights and spacings far below De. The neutral is Kron-reduced where it may be taken as grounded everywhere.
 * Capacitance: one thin horizontal wire over a perfect plane, C = 2 pi e0/ln(2h/r); sag, poles and neighbours left out.
 */
import { add, type Complex, complex, div, mul, sub } from '../math/complex.ts';
import { exp, ln } from '../math/elementary.ts';
import type { Farads, Hertz, Metres, OhmMetres, Ohms } from '../units/quantities.ts';

const mu0 = 4e-7 * Math.PI;
const epsilon0 = 8.8541878128e-12;
const foot: Metres = 0.3048;

/** Earth under the line. */
export interface Earth {
  readonly resistivity: OhmMetres;
  readonly frequency: Hertz;
}

/** 100 ohm m at 60 Hz, the usual assumption. */
export const usualEarth: Earth = { resistivity: 100, frequency: 60 };

/** Depth of the equivalent earth return, from Carson's series: (2 / 8.565e-4) e^-0.0772 ft times sqrt(rho/f). */
export const earthReturnDepth = ({ resistivity, frequency }: Earth): Metres =>
  (2 / 8.565e-4) * exp(-0.0772) * foot * Math.sqrt(resistivity / frequency);

const earthTerm = (earth: Earth, spacing: Metres): Complex => {
  const omega = 2 * Math.PI * earth.frequency;
  return complex((omega * mu0) / 8, ((omega * mu0) / (2 * Math.PI)) * ln(earthReturnDepth(earth) / spacing));
};

/** Self impedance per metre of a wire with earth return. */
export const selfImpedance = (ohmsPerMetre: Ohms, gmr: Metres, earth: Earth = usualEarth): Complex =>
  add(complex(ohmsPerMetre), earthTerm(earth, gmr));

/** Mutual impedance per metre of two wires `spacing` apart with common earth return. */
export const mutualImpedance = (spacing: Metres, earth: Earth = usualEarth): Complex => earthTerm(earth, spacing);

/** Phase impedance with the neutral grounded everywhere: z_pp - z_pn^2/z_nn. */
export const kronReduce = (phase: Complex, mutual: Complex, neutral: Complex): Complex =>
  sub(phase, div(mul(mutual, mutual), neutral));

/** What a wire needs to have an impedance. */
export interface Wire {
  readonly ohmsPerMetre: Ohms;
  readonly gmr: Metres;
}

/** Per-metre impedances of one phase and a neutral `spacing` apart: self, self, mutual, and Kron-reduced. */
export const singlePhaseLine = (
  phase: Wire,
  neutral: Wire,
  spacing: Metres,
  earth: Earth = usualEarth,
): { readonly phase: Complex; readonly neutral: Complex; readonly mutual: Complex; readonly reduced: Complex } => {
  const zp = selfImpedance(phase.ohmsPerMetre, phase.gmr, earth);
  const zn = selfImpedance(neutral.ohmsPerMetre, neutral.gmr, earth);
  const zm = mutualImpedance(spacing, earth);
  return { phase: zp, neutral: zn, mutual: zm, reduced: kronReduce(zp, zm, zn) };
};

/** Capacitance to earth per metre of a wire of `radius` at mean height `height`. */
export const capacitanceToEarth = (height: Metres, radius: Metres): Farads =>
  (2 * Math.PI * epsilon0) / ln((2 * height) / radius);
