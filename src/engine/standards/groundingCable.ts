/**
 * Copper cables of temporary protective grounds. Withstand and ultimate currents: ASTM F855 Table 1 (asymmetry up to 20 %,
 * X/R to 1.8; higher X/R needs the standard's H table). Melting by Onderdonk with 234 + Ta, 98 % of nominal area, 40 C:
 * gives 20 of the 21 cells of the ultimate column (350 kcmil, 60 cycles: 49 kA against 48 printed).
 * Smallest cable by rule: #2 AWG, 29 CFR 1910.269(n)(4)(ii).
 */
import { log10 } from '../math/elementary.ts';
import type { Amperes, Seconds } from '../units/quantities.ts';

/** Cable sizes by rising grade. */
export const groundingCables = ['#2', '1/0', '2/0', '3/0', '4/0', '250 kcmil', '350 kcmil'] as const;

/** A grounding cable size. */
export type GroundingCable = (typeof groundingCables)[number];

interface Rating {
  readonly circularMils: number;
  readonly withstand15: Amperes;
  readonly withstand30: Amperes;
}

const ratings: Readonly<Record<GroundingCable, Rating>> = {
  '#2': { circularMils: 66360, withstand15: 14000, withstand30: 10000 },
  '1/0': { circularMils: 105600, withstand15: 21000, withstand30: 15000 },
  '2/0': { circularMils: 133100, withstand15: 27000, withstand30: 20000 },
  '3/0': { circularMils: 167800, withstand15: 34000, withstand30: 25000 },
  '4/0': { circularMils: 211600, withstand15: 43000, withstand30: 30000 },
  '250 kcmil': { circularMils: 250000, withstand15: 54000, withstand30: 39000 },
  '350 kcmil': { circularMils: 350000, withstand15: 74000, withstand30: 54000 },
};

/** Withstand current for a fault cleared in `clearing`: the 15-cycle column up to 0.25 s, the 30-cycle column up to 0.5 s, undefined beyond. */
export const withstandCurrent = (cable: GroundingCable, clearing: Seconds): Amperes | undefined => {
  if (clearing <= 0.25) return ratings[cable].withstand15;
  return clearing <= 0.5 ? ratings[cable].withstand30 : undefined;
};

/** Current that melts the cable in `duration` (Onderdonk). */
export const meltingCurrent = (cable: GroundingCable, duration: Seconds): Amperes =>
  0.98 * ratings[cable].circularMils * Math.sqrt(log10((1083 - 40) / (234 + 40) + 1) / (33 * duration));

/** Smallest cable that withstands `fault` for `clearing`; undefined when none is listed. */
export const requiredGroundingCable = (fault: Amperes, clearing: Seconds): GroundingCable | undefined =>
  groundingCables.find((cable) => (withstandCurrent(cable, clearing) ?? 0) >= fault);
