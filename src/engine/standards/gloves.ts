/**
 * Rubber insulating gloves, sleeves and blankets. 29 CFR 1910.137 Tables I-4 (maximum use voltage, retest voltage)
 * and I-5 (test intervals), paragraph (c)(2) (use). The voltage to cover is phase-to-phase unless exposure is limited to
 * phase-to-ground (Table I-4 note 1). Cuff gaps: MIL-HDBK-1025/10 Table 3, not in the rule. Left out: composite and
 * ozone-resistant types, leakage current of the proof test.
 */
import type { IsoDate, Metres, Volts } from '../units/quantities.ts';
import { withinInterval } from './testInterval.ts';

/** Glove classes from lowest to highest. */
export const gloveClasses = ['00', '0', '1', '2', '3', '4'] as const;

/** A class of rubber insulating equipment. */
export type GloveClass = (typeof gloveClasses)[number];

/** Table I-4: maximum AC use voltage and AC retest voltage. */
export const gloveRatings: Readonly<Record<GloveClass, { readonly maxUse: Volts; readonly retest: Volts }>> = {
  '00': { maxUse: 500, retest: 2500 },
  '0': { maxUse: 1000, retest: 5000 },
  '1': { maxUse: 7500, retest: 10000 },
  '2': { maxUse: 17000, retest: 20000 },
  '3': { maxUse: 26500, retest: 30000 },
  '4': { maxUse: 36000, retest: 40000 },
};

/** Smallest bare rubber between protector and glove edge (MIL-HDBK-1025/10 Table 3; no figure for class 00). */
export const cuffGap: Readonly<Record<Exclude<GloveClass, '00'>, Metres>> = {
  '0': 0.025,
  '1': 0.025,
  '2': 0.05,
  '3': 0.075,
  '4': 0.1,
};

/** Months between electrical tests: Table I-5. Line hose and covers have none, they are tested when suspect. */
export const rubberTestMonths = { gloves: 6, sleeves: 12, blankets: 12, unissued: 12 } as const;

/** Voltage a class must cover: Table I-4 note 1. */
export const voltageToCover = (phaseToPhase: Volts, multiphaseExposure: boolean): Volts =>
  multiphaseExposure ? phaseToPhase : phaseToPhase / Math.sqrt(3);

/** Lowest class whose maximum use voltage covers `volts`; undefined when none does. */
export const requiredGloveClass = (volts: Volts): GloveClass | undefined =>
  gloveClasses.find((name) => gloveRatings[name].maxUse >= volts);

/** Whether gloves of a class cover `volts`. */
export const gloveCovers = (name: GloveClass, volts: Volts): boolean => gloveRatings[name].maxUse >= volts;

/** Whether issued gloves are in date (six months). Throws on a date that does not exist. */
export const glovesInDate = (testDate: IsoDate, today: IsoDate): boolean =>
  withinInterval(testDate, today, rubberTestMonths.gloves);
