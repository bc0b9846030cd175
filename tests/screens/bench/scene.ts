/** Every scenario as a World, and the first one by name. */
import { builtIn, libraryFrom } from '../../../src/app/library.ts';
import { build } from '../../../src/engine/world/build.ts';
import type { World } from '../../../src/engine/world/types.ts';
import type { Offered } from '../../../src/screens/types.ts';

const models: Readonly<Record<string, string>> = import.meta.glob('../../scenarios/models/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** What the app ships, and the small scenes with every system and connection. */
export const offered: readonly Offered[] = [...builtIn().offered, ...libraryFrom(models).offered];

export const worldOf = ({ scenario, hash }: Offered): World => build(scenario, hash);

export const quarryRoad: Offered = (() => {
  const found = offered.find(({ scenario }) => scenario.id === 'quarry-road-fog');
  if (!found) throw new Error('the first scenario is gone');
  return found;
})();
