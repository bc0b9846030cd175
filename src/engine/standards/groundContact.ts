/**
 * What a conductor that lies on the ground carries. Staged tests at 12.5 kV (7.2 kV to ground), amperes by surface, as
 * tabulated in papers on downed conductors (IEEE PES tutorial "Detection of downed conductors" 1989, PSRC working group
 * D15 1996; table from memory). On dry asphalt, dry sand and plain concrete next to nothing flowed. Ohms are volts over
 * amperes: the soil is taken as the only resistance, the source as stiff. Arc, moisture that boils off and glazed sand,
 * which make the current wander, are left out.
 */
import type { Amperes, Ohms, Volts } from '../units/quantities.ts';

/** Volts to ground of the tests. */
export const testVolts: Volts = 7200;

/** Amperes of the tests by surface. */
export const groundContactAmperes = {
  'dry-asphalt': 0,
  concrete: 0,
  'dry-sand': 0,
  'wet-sand': 15,
  'dry-sod': 20,
  'dry-grass': 25,
  'wet-sod': 40,
  'wet-grass': 50,
  'reinforced-concrete': 75,
} as const satisfies Readonly<Record<string, Amperes>>;

/** What a conductor may lie on. */
export type GroundSurface = keyof typeof groundContactAmperes;

/** Resistance to remote earth; infinite where nothing flowed. */
export const groundContactOhms = (surface: GroundSurface): Ohms => {
  const amperes = groundContactAmperes[surface];
  return amperes > 0 ? testVolts / amperes : Number.POSITIVE_INFINITY;
};

/** Grass beside a road by how wet everything is. */
export const vergeOhms = (wetness: number): Ohms => groundContactOhms(wetness >= 0.5 ? 'wet-grass' : 'dry-grass');
