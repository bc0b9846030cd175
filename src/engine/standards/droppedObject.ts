/**
 * What something that comes down carries: E = m g h to the ground, the wearer's height not subtracted, as the calculator of
 * the DROPS work group takes it (from 40 J an injury that must be recorded, helmet worn). A hard hat is tested with 8 lb
 * from 5 ft, about 54 J (ANSI/ISEA Z89.1, from memory; EN 397 takes 49 J); beyond that nothing says that it suffices. Without
 * one, which 29 CFR 1910.135(a)(1) asks for below falling objects, no figure of either holds: a class worse is an estimate.
 * Left out: shape, where it strikes, air.
 */
import type { Joules, Kilograms, Metres } from '../units/quantities.ts';
import { gravity } from './sag.ts';

/** From here an injury is to be expected. */
export const recordableJoules: Joules = 40;
/** What a hard hat is tested with: 8 lb from 5 ft. */
export const helmetJoules: Joules = 8 * 0.45359237 * gravity * 5 * 0.3048;

/** Energy of a mass that has fallen so far. */
export const fallEnergy = (mass: Kilograms, height: Metres): Joules => mass * gravity * height;

/** How bad, by the two; bareheaded a class worse. */
export const dropSeverity = (energy: Joules, bareheaded = false): 'fatal' | 'serious' | 'minor' => {
  if (energy >= (bareheaded ? recordableJoules : helmetJoules)) return 'fatal';
  return bareheaded || energy >= recordableJoules ? 'serious' : 'minor';
};
