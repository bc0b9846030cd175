/**
 * A three-wire service whose neutral is open: the loads of the two legs stand in series over both, so each leg's volts go
 * by its impedance (Ohm's law; a favourite of electricians' courses). What is left of the neutral, a ground path or a bad
 * splice of `neutral` ohms, holds the middle by superposition. Stiff legs; the transformer and the drop are left out.
 */
import { add, type Complex, complex, div, scale, sub } from '../math/complex.ts';
import type { Ohms, Volts } from '../units/quantities.ts';

/** Phasor volts across the loads of the two legs, each from its leg toward the neutral. */
export interface LegVolts {
  readonly leg1: Complex;
  readonly leg2: Complex;
  /** Volts of the customer's neutral against the transformer's. */
  readonly neutral: Complex;
}

/** Volts on both legs; `half` is one leg's volts, 120, and `neutral` the ohms left in the neutral, Infinity where it is open. */
export const legVolts = (half: Volts, load1: Complex, load2: Complex, neutral: Ohms): LegVolts => {
  const one = complex(1);
  const y1 = div(one, load1);
  const y2 = div(one, load2);
  const yn = complex(neutral === Number.POSITIVE_INFINITY ? 0 : 1 / neutral);
  // Millman: legs at +half and -half, neutral at zero.
  const middle = div(scale(sub(y1, y2), half), add(add(y1, y2), yn));
  return { leg1: sub(complex(half), middle), leg2: sub(middle, complex(-half)), neutral: middle };
};
