/**
 * What something that comes down carries: E = m g h to the ground, the wearer's height not subtracted, as the calculators
 * for dropped objects take it (DROPS work group: from 40 J an injury that must be recorded, helmet worn). An industrial
 * helmet is tested with 5 kg from 1 m, 49 J (EN 397:2012 6.6; figure from memory, as in EN 812's like test); beyond that
 * nothing says that it suffices. Left out: shape, where it strikes, air.
 */
import type { Joules, Kilograms, Metres } from '../units/quantities.ts';
import { gravity } from './sag.ts';

/** From here an injury is to be expected. */
export const recordableJoules: Joules = 40;
/** What a helmet is tested with. */
export const helmetJoules: Joules = 5 * gravity * 1;

/** Energy of a mass that has fallen so far. */
export const fallEnergy = (mass: Kilograms, height: Metres): Joules => mass * gravity * height;

/** How bad, by the two. */
export const dropSeverity = (energy: Joules): 'fatal' | 'serious' | 'minor' => {
  if (energy >= helmetJoules) return 'fatal';
  return energy >= recordableJoules ? 'serious' : 'minor';
};
