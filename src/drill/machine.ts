/**
 * The stages of a call as an XState chart. It is thin: `act` changes the World, `stageOf` says where in the call that
 * World stands, and each stage follows it. The last stage is final and its output is the score. Without a judge of its
 * own an ended drill waits until it is handed its score.
 */
import { assign, setup } from 'xstate';
import { appendEntry } from '../engine/acts/log.ts';
import type { Act, ActResult, Log, Replay, Step, WorldEvent } from '../engine/acts/types.ts';
import type { Score } from '../engine/score/types.ts';
import type { World } from '../engine/world/types.ts';
import { type Stage, stages } from './types.ts';

/** The pure functions that the chart calls. */
export interface Rules {
  readonly act: (world: World, act: Act) => ActResult;
  readonly stageOf: (world: World) => Stage;
  /** Null: the score is worked out elsewhere and handed in. */
  readonly score: ((replay: Replay) => Score) | null;
}

export type DrillEvent =
  | { readonly type: 'act'; readonly act: Act }
  | { readonly type: 'judged'; readonly score: Score };

export interface Kept {
  readonly start: World;
  readonly world: World;
  readonly log: Log;
  readonly steps: readonly Step[];
  /** What was perceived by the last act that was not refused. */
  readonly events: readonly WorldEvent[];
  readonly refused: string | null;
  readonly score: Score | null;
}

/** A drill to begin or to go on with: the World at the call, the log so far and the steps that it led through. */
export interface Begun {
  readonly start: World;
  readonly log: Log;
  readonly steps: readonly Step[];
}

const kept = ({ start, log, steps }: Begun): Kept => {
  const last = steps.at(-1);
  return { start, world: last?.after ?? start, log, steps, events: last?.events ?? [], refused: null, score: null };
};

const perform = (rules: Rules, context: Kept, intent: Act): Partial<Kept> => {
  const result = rules.act(context.world, intent);
  if (!result.ok) return { refused: result.reason };
  const { world, events, reach, exposures } = result;
  const log = appendEntry(context.log, intent, world);
  const entry = log.entries[log.entries.length - 1];
  if (entry === undefined) throw new Error('an appended log is empty');
  const step: Step = { entry, before: context.world, after: world, events, reach, exposures };
  return { world, log, steps: [...context.steps, step], events, refused: null };
};

/** All that scoring needs of what was kept. */
export const replayOf = ({ log, start, steps, world }: Kept): Replay => ({ log, start, steps, end: world });

/** The chart of a drill; its input is where it begins, its output the score. */
export const drillMachine = (rules: Rules) => {
  const chart = setup({
    types: {
      context: {} as Kept,
      input: {} as Begun,
      events: {} as DrillEvent,
      output: {} as Score,
    },
    guards: {
      stands: ({ context }, stage: Stage) => rules.stageOf(context.world) === stage,
    },
    actions: {
      perform: assign(({ context, event }) => (event.type === 'act' ? perform(rules, context, event.act) : {})),
      judge: assign(({ context }) => ({ score: context.score ?? rules.score?.(replayOf(context)) ?? null })),
      takeScore: assign(({ event }) => (event.type === 'judged' ? { score: event.score } : {})),
    },
  });
  const following = (here: Stage) => ({
    always: stages
      .filter((stage) => stage !== here)
      .map((stage) => ({
        guard: { type: 'stands' as const, params: stage },
        target: stage === 'debrief' && rules.score === null ? ('unjudged' as const) : stage,
      })),
    on: { act: { actions: 'perform' as const } },
  });
  return chart.createMachine({
    id: 'drill',
    context: ({ input }) => kept(input),
    initial: 'call',
    states: {
      call: following('call'),
      survey: following('survey'),
      briefing: following('briefing'),
      'make-safe': following('make-safe'),
      work: following('work'),
      restore: following('restore'),
      unjudged: { on: { judged: { actions: 'takeScore', target: 'debrief' } } },
      debrief: { type: 'final', entry: 'judge' },
    },
    output: ({ context }) => {
      if (context.score === null) throw new Error('a drill ended unjudged');
      return context.score;
    },
  });
};
