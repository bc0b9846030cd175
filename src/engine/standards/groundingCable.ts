/**
 * Copper cables of temporary protective grounds. Withstand and ultimate currents: ASTM F855 Table 1 (asymmetry up to 20 %,
 * X/R to 1.8). At higher X/R the first peaks are higher: the standard's H ratings (X/R 30, 15 cycles, with the first peak),
 * of which and Table 1 the smaller is taken; they are printed for 15 cycles only, so that beyond there is no answer.
 * Melting by Onderdonk with 234 + Ta, 98 % of nominal area, 40 C: gives 20 of the 21 cells of the ultimate column (350
 * kcmil, 60 cycles: 49 kA against 48 printed). With asymmetry the current's heat grows by the square of the decrement
 * factor of IEEE Std 80, sqrt(1 + Ta/tf (1 - exp(-2 tf/Ta))), Ta = X/(2 pi f R). Left out: clamps and ferrules, cables in
 * parallel (10 % less each by MIL-HDBK-1025/10), the forces of the first peak. Smallest cable by rule: #2 AWG, 29 CFR
 * 1910.269(n)(4)(ii).
 */
import { exp, log10 } from '../math/elementary.ts';
import type { Amperes, Seconds } from '../units/quantities.ts';

/** Cable sizes by rising grade. */
export const groundingCables = ['#2', '1/0', '2/0', '3/0', '4/0', '250 kcmil', '350 kcmil'] as const;

/** A grounding cable size. */
export type GroundingCable = (typeof groundingCables)[number];

interface Rating {
  readonly circularMils: number;
  readonly withstand15: Amperes;
  readonly withstand30: Amperes;
  /** Rated at X/R 30 for 15 cycles, and its first peak. */
  readonly asymmetric: Amperes;
  readonly firstPeak: Amperes;
}

const ratings: Readonly<Record<GroundingCable, Rating>> = {
  '#2': { circularMils: 66360, withstand15: 14000, withstand30: 10000, asymmetric: 15000, firstPeak: 41000 },
  '1/0': { circularMils: 105600, withstand15: 21000, withstand30: 15000, asymmetric: 25000, firstPeak: 65000 },
  '2/0': { circularMils: 133100, withstand15: 27000, withstand30: 20000, asymmetric: 31000, firstPeak: 84000 },
  '3/0': { circularMils: 167800, withstand15: 34000, withstand30: 25000, asymmetric: 39000, firstPeak: 105000 },
  '4/0': { circularMils: 211600, withstand15: 43000, withstand30: 30000, asymmetric: 47000, firstPeak: 126000 },
  '250 kcmil': { circularMils: 250000, withstand15: 54000, withstand30: 39000, asymmetric: 55000, firstPeak: 148000 },
  '350 kcmil': { circularMils: 350000, withstand15: 74000, withstand30: 54000, asymmetric: 68000, firstPeak: 183000 },
};

/** Highest X/R that Table 1 is made for. */
export const symmetricTo = 1.8;

/** Rating at high asymmetry (X/R 30, 15 cycles) and the first peak that goes with it. */
export const asymmetricRating = (
  cable: GroundingCable,
): { readonly amperes: Amperes; readonly firstPeak: Amperes } => ({
  amperes: ratings[cable].asymmetric,
  firstPeak: ratings[cable].firstPeak,
});

/**
 * Withstand current for a fault cleared in `clearing`: the 15-cycle column up to 0.25 s, the 30-cycle column up to 0.5 s,
 * undefined beyond. Above an X/R of 1.8 the smaller of that and the H rating, undefined beyond 15 cycles.
 */
export const withstandCurrent = (cable: GroundingCable, clearing: Seconds, xOverR = 0): Amperes | undefined => {
  const { withstand15, withstand30, asymmetric } = ratings[cable];
  if (xOverR > symmetricTo) return clearing <= 0.25 ? Math.min(withstand15, asymmetric) : undefined;
  if (clearing <= 0.25) return withstand15;
  return clearing <= 0.5 ? withstand30 : undefined;
};

/** Rms of a fully offset fault over its symmetrical rms, over `duration`: IEEE Std 80. */
export const decrementFactor = (xOverR: number, duration: Seconds): number => {
  const constant = xOverR / (2 * Math.PI * 60);
  return constant === 0 ? 1 : Math.sqrt(1 + (constant / duration) * (1 - exp((-2 * duration) / constant)));
};

/** Symmetrical current that melts the cable in `duration` (Onderdonk), less where the fault is offset. */
export const meltingCurrent = (cable: GroundingCable, duration: Seconds, xOverR = 0): Amperes =>
  (0.98 * ratings[cable].circularMils * Math.sqrt(log10((1083 - 40) / (234 + 40) + 1) / (33 * duration))) /
  decrementFactor(xOverR, duration);

/** Smallest cable that withstands `fault` for `clearing`; undefined when none is listed. */
export const requiredGroundingCable = (fault: Amperes, clearing: Seconds, xOverR = 0): GroundingCable | undefined =>
  groundingCables.find((cable) => (withstandCurrent(cable, clearing, xOverR) ?? 0) >= fault);
