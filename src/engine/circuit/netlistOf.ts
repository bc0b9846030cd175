/** The circuit of a World as a SPICE deck: the very elements that are solved, sources at the angle of the replay. */
import { OMEGA } from '../catalogue/components/shared.ts';
import { spiceDeck } from '../network/spiceDeck.ts';
import type { World } from '../world/types.ts';
import { angleOf } from './angleOf.ts';
import { type CircuitOptions, elementsOf } from './elementsOf.ts';

/** Deck text for ngspice; comments name parts and branches. */
export function netlistOf(world: World, options: CircuitOptions = {}): string {
  const title = `${world.scenario}, RMS phasors at 60 Hz`;
  return spiceDeck(elementsOf(world, options), { title, omega: OMEGA, angles: angleOf(world), print: true });
}
