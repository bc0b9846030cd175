/**
 * A long multigrounded neutral seen from one end: a section of series impedance z, a ground of R, and so on without end.
 * What is left after one step looks the same, so Z = z + (R Z)/(R + Z): Z = z/2 + sqrt(z2/4 + z R) (ladder networks,
 * textbook). `sections` gives the same for a line that ends, open or in `end`. Mutual coupling with the phase is left out.
 */
import { abs, add, arg, type Complex, complex, div, mul, polar, scale } from '../math/complex.ts';
import type { Ohms } from '../units/quantities.ts';

const root = (z: Complex): Complex => polar(Math.sqrt(abs(z)), arg(z) / 2);

/** Impedance against remote earth of a ladder without end. */
export const endlessLadder = (section: Complex, ground: Ohms): Complex =>
  add(scale(section, 0.5), root(add(scale(mul(section, section), 0.25), scale(section, ground))));

/** The same for a number of sections; the last ground stands at its end, in parallel with `end` if there is one. */
export const ladderOf = (sections: number, section: Complex, ground: Ohms, end?: Complex): Complex => {
  const beside = (a: Complex, b: Complex): Complex => div(mul(a, b), add(a, b));
  let seen: Complex | undefined = end;
  for (let k = 0; k < sections; k++) seen = add(section, seen ? beside(complex(ground), seen) : complex(ground));
  if (seen === undefined) throw new RangeError('a ladder without a section or an end');
  return seen;
};

/** Both directions from a pole and its own ground, all in parallel. */
export const midLine = (oneWay: Complex, ownGround: Ohms): Complex =>
  div(complex(1), add(scale(div(complex(1), oneWay), 2), complex(1 / ownGround)));
