/**
 * Electrodes in uniform soil: resistance of a driven rod, potential of the surface around it, step and touch voltage.
 * Rod: Dwight's formula R = rho/(2 pi L) (ln(8L/d) - 1), flush vertical rod; surface potential of the same rod as a line
 * source (engineering formula; reproduces MIL-HDBK-419A Table 2-7 and its example). Hemisphere: V = rho I/(2 pi x).
 * Tolerable voltages: IEEE Std 80-2013, body 1000 ohm. Layers, frost, salt, neighbours and soil ionisation are left out.
 */
import { ln } from '../math/elementary.ts';
import type { Amperes, Metres, OhmMetres, Ohms, Seconds, Volts } from '../units/quantities.ts';

/** Resistance of one vertical rod (Dwight). */
export const rodResistance = (resistivity: OhmMetres, length: Metres, diameter: Metres): Ohms =>
  (resistivity / (2 * Math.PI * length)) * (ln((8 * length) / diameter) - 1);

/** Resistance of a hemisphere of `radius`. */
export const hemisphereResistance = (resistivity: OhmMetres, radius: Metres): Ohms =>
  resistivity / (2 * Math.PI * radius);

/** Surface potential at `distance` from the centre of a hemisphere, against remote earth. */
export const hemispherePotential = (resistivity: OhmMetres, current: Amperes, distance: Metres): Volts =>
  (resistivity * current) / (2 * Math.PI * distance);

/** Distance from a hemisphere's centre at which a pace farther out meets so many volts: rho I/(2 pi) p/(r (r + p)) = E. */
export const pacesApart = (resistivity: OhmMetres, current: Amperes, volts: Volts, pace: Metres = 1): Metres =>
  (Math.sqrt(pace * pace + (2 * resistivity * current * pace) / (Math.PI * volts)) - pace) / 2;

/** Surface potential at `distance` from a rod of `length`, against remote earth; the distance is at least the rod's radius. */
export const rodPotential = (resistivity: OhmMetres, current: Amperes, length: Metres, distance: Metres): Volts =>
  ((resistivity * current) / (2 * Math.PI * length)) *
  ln((length + Math.sqrt(length * length + distance * distance)) / distance);

/** Step voltage between `distance` and one pace farther from a hemisphere. */
export const hemisphereStep = (resistivity: OhmMetres, current: Amperes, distance: Metres, pace: Metres = 1): Volts =>
  hemispherePotential(resistivity, current, distance) - hemispherePotential(resistivity, current, distance + pace);

/** Step voltage between `distance` and one pace farther from a rod. */
export const rodStep = (
  resistivity: OhmMetres,
  current: Amperes,
  length: Metres,
  distance: Metres,
  pace: Metres = 1,
): Volts =>
  rodPotential(resistivity, current, length, distance) - rodPotential(resistivity, current, length, distance + pace);

/** Step voltage next to the rod with one foot on it: rod potential (Dwight) less the surface one pace away. */
export const rodStepFromRod = (
  resistivity: OhmMetres,
  current: Amperes,
  length: Metres,
  diameter: Metres,
  pace: Metres = 1,
): Volts =>
  current * rodResistance(resistivity, length, diameter) -
  rodPotential(resistivity, current, length, diameter / 2 + pace);

/** Ground under the feet: native soil, and a surface layer if there is one. */
export interface Footing {
  readonly soil: OhmMetres;
  readonly surface?: { readonly resistivity: OhmMetres; readonly depth: Metres };
}

/** IEEE Std 80 surface-layer derating Cs; 1 without a layer. */
export const surfaceDerating = ({ soil, surface }: Footing): number =>
  surface ? 1 - (0.09 * (1 - soil / surface.resistivity)) / (2 * surface.depth + 0.09) : 1;

const tolerable = (footing: Footing, duration: Seconds, kilograms: 50 | 70, feet: number): Volts => {
  const resistivity = footing.surface?.resistivity ?? footing.soil;
  const k = kilograms === 50 ? 0.116 : 0.157;
  return ((1000 + feet * surfaceDerating(footing) * resistivity) * k) / Math.sqrt(duration);
};

/** Tolerable touch voltage, IEEE Std 80 (0.03 to 3 s). */
export const tolerableTouch = (footing: Footing, duration: Seconds, kilograms: 50 | 70 = 50): Volts =>
  tolerable(footing, duration, kilograms, 1.5);

/** Tolerable step voltage, IEEE Std 80 (0.03 to 3 s). */
export const tolerableStep = (footing: Footing, duration: Seconds, kilograms: 50 | 70 = 50): Volts =>
  tolerable(footing, duration, kilograms, 6);
