/**
 * Impedances at 60 Hz that belong to no part: a protective jumper and what keeps an isolated net from floating. Left
 * out: contact resistance by cleanness and torque.
 */
import { OMEGA } from '../catalogue/components/shared.ts';
import type { Complex } from '../math/complex.ts';
import { ln } from '../math/elementary.ts';

/**
 * One jumper of a ground set, clamp to clamp, ohms. 1 milliohm: some 3 m of 2/0 copper and two clean
 * clamps, the figure usually taken in body-in-parallel examples (common practice). The reactance is that of 3 m of wire at
 * 1.2 microhenry a metre (estimate). Left out: loose or dirty clamps, coupling between cables.
 */
export const JUMPER: Complex = { re: 1e-3, im: OMEGA * 1.2e-6 * 3 };

const EPSILON_0 = 8.8541878128e-12;
const LENGTH = 1;
const HEIGHT = 6;
const RADIUS = 4e-3;

/**
 * Susceptance to earth of a net whose parts state no capacitance, siemens: one metre of 8 mm wire at 6 m, by the
 * single-wire line above a plane, C = 2 pi epsilon0 l / ln(2h/r), about 7 pF. A lower bound: hardware has more.
 */
export const FLOOR_CAPACITANCE: Complex = {
  re: 0,
  im: (OMEGA * 2 * Math.PI * EPSILON_0 * LENGTH) / ln((2 * HEIGHT) / RADIUS),
};
