/**
 * The circuit of a World as a SPICE deck: the very elements that are solved, sources at the angle of the replay. Results
 * are asked for by .print lines: batch mode wants them, and a control block would stop an embedded ngspice.
 */
import { OMEGA } from '../catalogue/components/shared.ts';
import { spiceDeck } from '../network/spiceDeck.ts';
import { spiceNode } from '../network/spiceNames.ts';
import { EARTH } from '../network/types.ts';
import type { World } from '../world/types.ts';
import { angleOf } from './angleOf.ts';
import { type CircuitOptions, elementsOf, netsOf } from './elementsOf.ts';
import { limitSources } from './limitedSources.ts';

const END = '.end\n';

/** Deck text for ngspice; comments name parts and branches. */
export function netlistOf(world: World, options: CircuitOptions = {}): string {
  const elements = limitSources(world, elementsOf(world, options));
  const title = `${world.scenario}, RMS phasors at 60 Hz`;
  const deck = spiceDeck(elements, { title, omega: OMEGA, angles: angleOf(world) });
  const nets = new Set(elements.flatMap(netsOf));
  nets.delete(EARTH);
  const prints = [...nets].sort().map((net) => `.print ac v(${spiceNode(net)})\n`);
  return `${deck.slice(0, -END.length)}${prints.join('')}${END}`;
}
