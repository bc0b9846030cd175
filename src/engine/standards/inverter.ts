/**
 * Photovoltaic or battery inverter as a current-limited source. It gives its voltage until its current limit, then its
 * limit: 1.1 to 1.2 times rated (a published application note; 1.2 taken). Trips on volts by the points that OpenDSS
 * carries for IEEE 1547 (0.166 s at half voltage and less, 2 s to 0.9; 2 s from 1.1, 0.166 s from 1.2 per unit),
 * stepwise and so never quicker than printed; an island is left within 2 s (IEEE 1547, same note). `islanding` says that it wrongly
 * stays. Left out: control in the first cycle, power factor under fault, frequency, ride-through settings, filters.
 */
import { abs, type Complex, complex, scale } from '../math/complex.ts';
import type { Amperes, Seconds, VoltAmperes, Volts } from '../units/quantities.ts';

/** An inverter. */
export interface Inverter {
  readonly rating: VoltAmperes;
  readonly volts: Volts;
  /** Current limit over rated current. */
  readonly limit?: number;
  /** Stays on without the system although it should not. */
  readonly islanding?: boolean;
}

/** Limit taken where none is given. */
export const usualCurrentLimit = 1.2;

/** Longest stay on an island that the rule allows. */
export const islandTime: Seconds = 2;

/** Rated amperes. */
export const inverterRated = ({ rating, volts }: Inverter): Amperes => rating / volts;

/** Amperes into a bolted fault at its terminals. */
export const inverterFault = (inverter: Inverter): Amperes =>
  inverterRated(inverter) * (inverter.limit ?? usualCurrentLimit);

/** What it does into an impedance on its own. */
export interface InverterOutput {
  readonly volts: Volts;
  readonly amperes: Amperes;
  /** The limit holds the current; otherwise the voltage is held. */
  readonly limited: boolean;
}

/** Volts and amperes that it drives into `load` before it trips. */
export const inverterInto = (inverter: Inverter, load: Complex): InverterOutput => {
  const limit = inverterFault(inverter);
  const ohms = abs(load);
  const wanted = inverter.volts / ohms;
  return wanted <= limit
    ? { volts: inverter.volts, amperes: wanted, limited: false }
    : { volts: limit * ohms, amperes: limit, limited: true };
};

/** Series impedance, in phase with the load, that makes a stiff source of its voltage give the same current: for a linear solver. */
export const equivalentSource = (inverter: Inverter, load: Complex): { readonly emf: Volts; readonly z: Complex } => {
  const { limited, amperes } = inverterInto(inverter, load);
  if (!limited) return { emf: inverter.volts, z: complex(0) };
  const ohms = abs(load);
  const total = inverter.volts / amperes;
  return { emf: inverter.volts, z: ohms > 0 ? scale(load, (total - ohms) / ohms) : complex(total) };
};

/** Seconds to trip at a terminal voltage in per unit; Infinity inside the band. */
export const voltageTrip = (perUnit: number): Seconds => {
  if (perUnit <= 0.5 || perUnit >= 1.2) return 0.166;
  if (perUnit <= 0.9 || perUnit >= 1.1) return 2;
  return Number.POSITIVE_INFINITY;
};

/** Seconds that it feeds a dead system: volts first, else the island rule; Infinity for one that islands wrongly on a load it can carry. */
export const timeOnIsland = (inverter: Inverter, load: Complex): Seconds => {
  const onVolts = voltageTrip(inverterInto(inverter, load).volts / inverter.volts);
  return Math.min(onVolts, inverter.islanding ? Number.POSITIVE_INFINITY : islandTime);
};
