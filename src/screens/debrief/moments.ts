/** A replayed drill as a run of moments: before the first act, and after each. What picture and one-line show at one of them. */

import type { Snapshot } from '../../drill/types.ts';
import { customersOut } from '../../engine/acts/customersOut.ts';
import { stageOf } from '../../engine/acts/stageOf.ts';
import type { Replay } from '../../engine/acts/types.ts';
import { heardFrom } from '../../engine/senses/heardFrom.ts';
import { trainee, withPerson } from '../../engine/world/edit.ts';
import type { World } from '../../engine/world/types.ts';

/** A place to stand and look from, whatever the drill did. */
export interface Vantage {
  readonly stand: string;
  readonly aid: 'eyes' | 'lamp' | 'glass';
  readonly part: string;
}

/** The World after so many acts. */
export const worldAt = ({ start, steps }: Replay, acts: number): World => steps[acts - 1]?.after ?? start;

/** Somebody at a stand in that World, with the truck out of the way. */
export const standingAt = (world: World, stand: string): World => ({
  ...withPerson(world, trainee(world).id, { at: stand, aloftBy: null }),
  truck: { ...world.truck, place: 'clear', engine: false },
});

/** What the picture is handed for a World of the past. */
export const snapshotOf = (replay: Replay, world: World): Snapshot => {
  const stand = trainee(world).at ?? '';
  return {
    stage: stageOf(world),
    world,
    stand,
    heard: stand === '' ? [] : heardFrom(world, stand),
    events: [],
    journal: [],
    customersOut: customersOut(world),
    refused: null,
    log: replay.log,
    score: null,
  };
};
