/** The log of a drill: a header that says by what it was made, then act, minute and the hash of the World after. */
import { type KeptTexts, shortHash } from '../math/hash.ts';
import type { World } from '../world/types.ts';
import type { Act, Log } from './types.ts';
import { engineVersion } from './version.ts';

// Parts, tools and people are never changed in place.
const kept: KeptTexts = new WeakMap();

/** Fingerprint of a World, 16 hex digits. */
export const worldHash = (world: World): string => shortHash(world, kept);

/** An empty log for a World fresh from `build`; `par` is the proven par that Service is judged by. */
export const newLog = (world: World, seed: number, par: Log['par'] = null): Log => ({
  format: 'loose-tie-log',
  version: 1,
  scenario: world.scenario,
  scenarioHash: world.scenarioHash,
  ...(world.given.variant === undefined ? {} : { variant: world.given.variant }),
  engine: engineVersion,
  seed,
  par,
  entries: [],
});

/** The log with one more act that led to `after`. */
export const appendEntry = (log: Log, act: Act, after: World): Log => ({
  ...log,
  entries: [...log.entries, { act, minute: after.clock.minute, hash: worldHash(after) }],
});
