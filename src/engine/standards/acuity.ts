/**
 * Whether an eye can make out a mark or a line, by size, distance, light, contrast and magnification.
 * Patch: VA = L/(1.6293 C^-0.3234 (0.8034 C^-0.1876 + L^0.25)^4), zero below L = 2.974 C^-1.7234, C in per cent
 * (Ikeda, Noda and Yamaguchi, Landolt rings; that C is per cent is inferred), L in cd/m2; the detail is seen when its
 * angle times magnification reaches 1/VA arcmin.
 * Line (crack, wire): the eye's spread of 1.5 arcmin dilutes the contrast; seen at 1 % of it in the best light (Hecht and
 * Mintz 1939), the limit raised in dim light as acuity falls (our proposal). A line also counts as a patch, whichever is
 * kinder. In the worst light the line rule is more generous than the 10 arcmin that Hecht and Mintz report.
 * Fog and rain: Koschmieder, 2 % contrast at the visibility (from memory). Young, rested, corrected eyes; no glare.
 * Left out: colour, movement, age of the eye.
 */
import { exp, pow } from '../math/elementary.ts';
import type { CandelasPerM2, Fraction, Lux, Metres } from '../units/quantities.ts';

const arcminPerRadian = 10800 / Math.PI;

/** Part of the magnification that a hand leaves by its tremor (from memory: 8x acts as 6x). */
export const handHeldPart: Fraction = 0.75;

/** Light that binoculars pass (from memory). */
export const binocularTransmission: Fraction = 0.85;

/** Angle in arcmin of a size at a distance, by the small-angle rule. */
export const angularSize = (size: Metres, distance: Metres): number => (arcminPerRadian * size) / distance;

/** Illuminance of a hand or truck lamp, named by its beam distance (0.25 lx there, ANSI/NEMA FL 1 practice). */
export const lampIlluminance = (beamDistance: Metres, distance: Metres): Lux =>
  (0.25 * beamDistance * beamDistance) / (distance * distance);

/** Luminance of a matt surface. */
export const luminance = (illuminance: Lux, reflectance: Fraction, transmission: Fraction = 1): CandelasPerM2 =>
  (transmission * illuminance * reflectance) / Math.PI;

/** Contrast left after `distance` of air in which the visibility is `visibility`. */
export const contrastThroughAir = (contrast: Fraction, distance: Metres, visibility: Metres): Fraction =>
  contrast * exp((-3.912 * distance) / visibility);

/** Decimal acuity (1 = 1 arcmin) at a luminance and contrast; 0 where nothing is seen. */
export const acuity = (light: CandelasPerM2, contrast: Fraction): number => {
  const percent = contrast * 100;
  if (!(percent > 0) || light < 2.974 * pow(percent, -1.7234)) return 0;
  const base = 0.8034 * pow(percent, -0.1876) + pow(light, 0.25);
  return light / (1.6293 * pow(percent, -0.3234) * base * base * base * base);
};

/** What decides whether a sign is seen. */
export interface Sight {
  readonly size: Metres;
  readonly distance: Metres;
  /** Contrast with its surround where it is, before air. */
  readonly contrast: Fraction;
  readonly luminance: CandelasPerM2;
  /** Effective magnification, tremor included; 1 without a glass. */
  readonly magnification?: number;
  /** Meteorological visibility; left out in clear air. */
  readonly visibility?: Metres;
}

const contrastSeen = ({ contrast, distance, visibility }: Sight): Fraction =>
  visibility === undefined ? contrast : contrastThroughAir(contrast, distance, visibility);

/** Angle times magnification over the smallest angle seen: a patch is seen from 1. */
export const patchRatio = (sight: Sight): number =>
  angularSize(sight.size, sight.distance) * (sight.magnification ?? 1) * acuity(sight.luminance, contrastSeen(sight));

const eyeSpread = 1.5;
const lineContrast = 0.01;

/** The same for a line of width `size`: seen from 1. */
export const lineRatio = (sight: Sight): number => {
  const contrast = contrastSeen(sight);
  const dimming = acuity(sight.luminance, 1) / acuity(1000, 1);
  const diluted =
    Math.min(1, (angularSize(sight.size, sight.distance) * (sight.magnification ?? 1)) / eyeSpread) * contrast;
  const asLine = (diluted / lineContrast) * dimming;
  return Math.max(asLine, patchRatio(sight));
};
