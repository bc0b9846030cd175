/** What each reach with hands on would have met had no measure been taken: what controls held, and what order is asked of. */
import type { Act, Replay, Step } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { exposuresOf, hazardsMet } from '../hazards/exposuresOf.ts';
import type { Hazard, Reach } from '../hazards/types.ts';
import { findPart } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { isHandsOn } from './handsOn.ts';
import { isTaken, type Measure, type Moment, measuresOf, withoutAll } from './measures.ts';

export interface Contact {
  readonly step: Step;
  /** Index of the step. */
  readonly at: number;
  readonly reach: Reach;
  /** A test, a ground, an opening: never too much. */
  readonly precaution: boolean;
  /** Measures that were in place. */
  readonly taken: readonly Measure[];
  /** Hazards as they would have met the person bare, with their causes: none where the work itself brings one. */
  readonly bare: readonly { readonly hazard: string; readonly causes: readonly string[] }[];
}

/** Ids of the hazards that reach somebody at a moment. */
export const met = ([world, reach]: Moment): readonly string[] => hazardsMet(reach, world, world);

/** Testing, grounding, and operations that make no contact: opening, pulling, blanking. */
const isPrecaution = (world: World, act: Act): boolean => {
  if (act.act !== 'operate') return act.act === 'test' || act.act === 'ground';
  const part = findPart(world, act.part);
  const operation = part && componentKind(part.kind).operations.find(({ id }) => id === act.operation);
  return operation?.makes === undefined;
};

/** Causes of a hazard; asked of the moment itself where the scene at the start did not know it. */
const causesIn = (hazards: readonly Hazard[], [world, reach]: Moment, ids: readonly string[]): Contact['bare'] => {
  const known = new Map(hazards.map(({ id, causes }) => [id, causes]));
  const fresh = ids.some((id) => !known.has(id)) ? exposuresOf(reach, world, world) : [];
  for (const { hazard, causes } of fresh) if (!known.has(hazard)) known.set(hazard, causes);
  return ids.map((hazard) => ({ hazard, causes: known.get(hazard) ?? [] }));
};

/** Every hands-on reach of the replay, in order. */
export const contactsOf = (replay: Replay, hazards: readonly Hazard[]): readonly Contact[] => {
  const measures = measuresOf(replay.start);
  return replay.steps.flatMap((step, at) =>
    step.reach.filter(isHandsOn).map((reach): Contact => {
      const moment: Moment = [step.before, reach];
      const taken = measures.filter((measure) => isTaken(measure, moment));
      const bare = withoutAll(taken, moment);
      return {
        step,
        at,
        reach,
        precaution: isPrecaution(step.before, step.entry.act),
        taken,
        bare: causesIn(hazards, bare, met(bare)),
      };
    }),
  );
};
