/** A drill as screens and scene get it: a snapshot after each act, and one way to send an act. */
import { createActor } from 'xstate';
import { act } from '../engine/acts/act.ts';
import { customersOut } from '../engine/acts/customersOut.ts';
import { newLog } from '../engine/acts/log.ts';
import { possibleActs } from '../engine/acts/possibleActs.ts';
import { type ReplayProblem, replay } from '../engine/acts/replay.ts';
import { stageOf } from '../engine/acts/stageOf.ts';
import type { Log, OfferedAct } from '../engine/acts/types.ts';
import { score } from '../engine/score/score.ts';
import type { Weights } from '../engine/score/weights.ts';
import { heardFrom } from '../engine/senses/heardFrom.ts';
import { lookAt } from '../engine/senses/lookAt.ts';
import { signsFrom } from '../engine/senses/signsFrom.ts';
import { trainee } from '../engine/world/edit.ts';
import type { World } from '../engine/world/types.ts';
import { type Begun, type DrillEvent, drillMachine, type Kept, replayOf } from './machine.ts';
import type { Drill, Snapshot, Stage } from './types.ts';

/** What a drill is made of. */
export interface DrillParts {
  /** The World at the moment of the call. */
  readonly world: World;
  readonly seed: number;
  readonly par?: Log['par'];
  /** What it is judged by; the usual ones where none are given. */
  readonly weights?: Weights;
  /** A log to go on with. */
  readonly log?: Log;
  /** True: an ended drill waits for `judged`, because working out a score takes seconds. */
  readonly judgedElsewhere?: boolean;
}

export type Created =
  | { readonly ok: true; readonly drill: Drill }
  | { readonly ok: false; readonly problem: ReplayProblem };

const begin = ({ world, seed, par = null, log }: DrillParts): Begun | ReplayProblem => {
  if (log === undefined) return { start: world, log: newLog(world, seed, par), steps: [] };
  const replayed = replay(world, log);
  return replayed.ok ? { start: world, log, steps: replayed.replay.steps } : replayed.problem;
};

/** Once a World, each costly answer: a snapshot is asked for more often than an act is done. */
const once = <Answer>(ask: (world: World) => Answer): ((world: World) => Answer) => {
  const known = new WeakMap<World, { readonly answer: Answer }>();
  return (world) => {
    const have = known.get(world) ?? { answer: ask(world) };
    known.set(world, have);
    return have.answer;
  };
};

/**
 * A new drill, or one that goes on from a log; a log that cannot be replayed is a problem, never thrown. `send` throws
 * what the engine throws: a defect, after which the drill stands still and its log is as it was before.
 */
export const createDrill = (parts: DrillParts): Created => {
  const begun = begin(parts);
  if ('problem' in begun) return { ok: false, problem: begun };
  const standOf = (world: World): string => trainee(world).at ?? '';
  const heard = once((world) => (standOf(world) === '' ? [] : heardFrom(world, standOf(world))));
  const out = once(customersOut);
  const offers = once(possibleActs);
  const actor = createActor(
    drillMachine({ act, stageOf, score: parts.judgedElsewhere ? null : (replay) => score(replay, parts.weights) }),
    {
      input: begun,
    },
  );

  const shown = (stage: Stage, kept: Kept): Snapshot => ({
    stage,
    world: kept.world,
    stand: standOf(kept.world),
    heard: heard(kept.world),
    events: kept.events,
    journal: kept.steps.flatMap(({ entry, events }) => events.map((event) => ({ minute: entry.minute, event }))),
    customersOut: out(kept.world),
    refused: kept.refused,
    log: kept.log,
    score: kept.score,
  });
  const read = (): Snapshot => {
    const { value, context } = actor.getSnapshot();
    return shown(value === 'unjudged' ? 'debrief' : (value as Stage), context);
  };

  let fault: unknown = null;
  actor.subscribe({
    error: (error) => {
      fault = error;
    },
  });
  actor.start();
  let now = read();
  const listeners = new Set<(snapshot: Snapshot) => void>();
  const here = (): string => {
    if (now.stand === '') throw new Error('nobody looks from nowhere');
    return now.stand;
  };
  const tell = (event: DrillEvent): void => {
    actor.send(event);
    if (fault !== null) throw fault;
    now = read();
    for (const listener of [...listeners]) listener(now);
  };
  const drill: Drill = {
    snapshot: () => now,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    send: (intent) => {
      if (actor.getSnapshot().status === 'done') return;
      tell({ type: 'act', act: intent });
    },
    judged: (worked) => {
      if (actor.getSnapshot().status !== 'done') tell({ type: 'judged', score: worked });
    },
    offers: (): readonly OfferedAct[] => offers(now.world),
    look: (part, aid) => lookAt(now.world, part, here(), aid),
    signs: (aid) => signsFrom(now.world, here(), aid),
    replay: () => replayOf(actor.getSnapshot().context),
  };
  return { ok: true, drill };
};
