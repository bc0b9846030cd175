/**
 * Par as an artefact: what the proof of a scenario found, bound to the scenario's hash and the engine's version, with the
 * route that shows it. Whoever holds it can play the route again (`isShown`) without proving anything.
 */
import { z } from 'zod';
import { act } from '../acts/act.ts';
import { actForm } from '../acts/actForm.ts';
import type { Log } from '../acts/types.ts';
import { engineVersion } from '../acts/version.ts';
import type { World } from '../world/types.ts';
import type { Proof } from './types.ts';

const minutes = z.int().nonnegative();

export const parForm = z.strictObject({
  format: z.literal('loose-tie-par'),
  version: z.literal(1),
  scenario: z.string().describe('Id of the scenario.'),
  scenarioHash: z.string().describe('Hash of the scenario that it holds for.'),
  engine: z.string().describe('Version of the engine that found it.'),
  seed: z.int().describe('Seed with which the route was played.'),
  end: z.enum(['restored', 'handed-over']),
  minutes: minutes.describe('From the call to its end.'),
  customerMinutes: minutes.describe('Customers who can be restored, times the minutes that they are out.'),
  atLeast: minutes.describe('No route can be under this; equal to minutes where par is exact.'),
  acts: z.array(actForm).describe('The route.'),
});

export type ParFile = z.infer<typeof parForm>;

/** The artefact of a proof; null where it has no par. */
export const parFile = ({ scenario, scenarioHash, engine, seed, par }: Proof): ParFile | null =>
  par && {
    format: 'loose-tie-par',
    version: 1,
    scenario,
    scenarioHash,
    engine,
    seed,
    end: par.end,
    minutes: par.minutes,
    customerMinutes: par.customerMinutes,
    atLeast: par.atLeast,
    acts: par.acts.map((each) => actForm.parse(each)),
  };

/** As a log's header names it; null when it was made for another scenario or by another engine. */
export const parFor = (file: ParFile, scenarioHash: string): Log['par'] =>
  file.scenarioHash === scenarioHash && file.engine === engineVersion
    ? { minutes: file.minutes, customerMinutes: file.customerMinutes, scenarioHash, engine: file.engine }
    : null;

/** Plays the route from a World fresh from `build` with its seed: why it does not show what the file says; null when it does. */
export function faultIn(start: World, file: ParFile): string | null {
  if (file.scenarioHash !== start.scenarioHash) return 'made for another scenario, or another version of it';
  if (file.engine !== engineVersion) return `made by engine ${file.engine}, this is ${engineVersion}`;
  let world = start;
  for (const [i, each] of file.acts.entries()) {
    const result = act(world, each);
    const which = `act ${i + 1} (${each.act})`;
    if (!result.ok) return `${which} is impossible: ${result.reason}`;
    const [exposure] = result.exposures;
    if (exposure !== undefined) return `${which} exposes somebody: ${exposure.hazard}`;
    world = result.world;
  }
  if (world.clock.minute !== file.minutes) return `the route takes ${world.clock.minute} minutes, not ${file.minutes}`;
  const ended = file.end === 'restored' ? 'closed-out' : 'handed-over';
  return world.ended === ended ? null : `the route does not end ${file.end}`;
}
