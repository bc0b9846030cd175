/**
 * Wood poles: class dimensions, bending strength of a round section, what decay leaves.
 * Top circumference by class and butt circumference of southern pine by length and class: a published forest-owner's
 * handbook (butt column worked out from its diameters). Class loads 2 ft from the top (ANSI O5.1): classes 1, 5, 6 read,
 * 2, 3, 4, 7 from memory. Fibre strengths: a published feeder library (means, coefficient of variation 0.2).
 * Moment: M = f C3/(32 pi2). Decay figures are geometry of an ideal round. Replace or reinforce below two thirds of
 * required strength: CPUC GO 64-A 44.2 (grades A, B); the NESC has the same rule (wording from memory). Left out:
 * other species and treatments, knots, holes beyond those asked for, steel and concrete poles.
 */
import type { Fraction, Metres, NewtonMetres, Newtons, Pascals } from '../units/quantities.ts';

const inch: Metres = 0.0254;
const foot: Metres = 0.3048;
const poundForce: Newtons = 4.4482216152605;
const psi: Pascals = poundForce / (inch * inch);

/** Pole classes from stout to slender. */
export const poleClasses = [1, 2, 3, 4, 5, 6, 7] as const;

/** A pole class. */
export type PoleClass = (typeof poleClasses)[number];

const topInches = [27, 25, 23, 21, 19, 17, 15];
const classPounds = [4500, 3700, 3000, 2400, 1900, 1500, 1200];
/** Length ft, depth of setting ft, circumference in inches 6 ft from the butt for classes 1 to 7. */
const buttInches: readonly (readonly [number, number, readonly (number | undefined)[]])[] = [
  [20, 4, [31, 29, 27, 25, 23, 21, 19.5]],
  [25, 5, [33.5, 31.5, 29.5, 27.5, 25.5, 23, 21.5]],
  [30, 5.5, [36.5, 34, 32, 29.5, 27.5, 25, 23.5]],
  [35, 6, [39, 36.5, 34, 31.5, 29, 27, 25]],
  [40, 6, [41, 38.5, 36, 33.5, 31, 28.5, 26.5]],
  [45, 6.5, [43, 40.5, 37.5, 35, 32.5, 30, 28]],
  [50, 7, [45, 42, 39, 36.5, 34, 31.5, 29]],
  [55, 7.5, [46.5, 43.5, 40.5, 38, 35, 32.5, undefined]],
  [60, 8, [48, 45, 42, 39, 36, 33.5, undefined]],
];

/** Mean bending strength of the fibre by species group. */
export const fibreStrength = {
  'southern pine': 8000 * psi,
  'Douglas-fir': 8000 * psi,
  'lodgepole pine': 6600 * psi,
  'western red cedar': 6000 * psi,
  'northern white cedar': 4000 * psi,
} as const satisfies Readonly<Record<string, Pascals>>;

/** A species with a listed strength. */
export type PoleSpecies = keyof typeof fibreStrength;

/** Dimensions of a pole of a class. */
export interface PoleDimensions {
  readonly length: Metres;
  readonly setting: Metres;
  readonly topCircumference: Metres;
  readonly buttCircumference: Metres;
  readonly classLoad: Newtons;
}

/** Dimensions for a listed length (20 to 60 ft) and class; undefined where the table has none. */
export const poleDimensions = (length: Metres, poleClass: PoleClass): PoleDimensions | undefined => {
  const row = buttInches.find(([feet]) => Math.abs(feet * foot - length) < 0.05);
  const index = poleClass - 1;
  const butt = row?.[2][index];
  const top = topInches[index];
  const pounds = classPounds[index];
  if (!row || butt === undefined || top === undefined || pounds === undefined) return undefined;
  return {
    length: row[0] * foot,
    setting: row[1] * foot,
    topCircumference: top * inch,
    buttCircumference: butt * inch,
    classLoad: pounds * poundForce,
  };
};

/** Circumference at `height` above ground, straight taper from 6 ft above the butt to the top. */
export const circumferenceAt = (pole: PoleDimensions, height: Metres): Metres => {
  const fromButt = pole.setting + height - 6 * foot;
  const part = fromButt / (pole.length - 6 * foot);
  return pole.buttCircumference + part * (pole.topCircumference - pole.buttCircumference);
};

/** Bending moment that a sound round section of `circumference` withstands. */
export const momentCapacity = (circumference: Metres, strength: Pascals): NewtonMetres =>
  (strength * circumference * circumference * circumference) / (32 * Math.PI * Math.PI);

/** Bending strength left when the outside is gone to a circumference: the cube of the ratio. */
export const shellRotLeaves = (original: Metres, sound: Metres): Fraction => {
  const ratio = sound / original;
  return ratio * ratio * ratio;
};

/** Bending strength left with a central hollow: 1 - (d/D)^4. */
export const heartRotLeaves = (outside: Metres, hollow: Metres): Fraction => {
  const square = (hollow / outside) * (hollow / outside);
  return 1 - square * square;
};

/** Part of required strength below which a pole is replaced or reinforced. */
export const rejectBelow: Fraction = 2 / 3;

/** Whether a pole that has `remaining` strength falls under the two-thirds rule. */
export const mustReplace = (remaining: Fraction): boolean => remaining < rejectBelow;
