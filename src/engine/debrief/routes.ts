/**
 * A way through the drill in few rows, to lay the trainee's beside a proven one. The proven route is played here again, so what is
 * shown is what it does in this very scene; one that cannot be played, or that exposes somebody, is not shown.
 */
import { act } from '../acts/act.ts';
import type { Act, Step } from '../acts/types.ts';
import { faultKind } from '../catalogue/faults.ts';
import { laidIn } from '../score/known.ts';
import type { World } from '../world/types.ts';
import { actWords } from './timeline.ts';
import { nameOf } from './words.ts';

/** A route that a proof found, with its par. */
export interface ProvenRoute {
  readonly acts: readonly Act[];
  readonly end: 'restored' | 'handed-over';
  readonly minutes: number;
  readonly customerMinutes: number;
  /** No such route is shorter. */
  readonly atLeast: number;
}

const ends = { restored: 'closes the call out', 'handed-over': 'hands the call over' } as const;

/** What a proven route costs, and what is known of shorter ones. */
export const parWords = ({ end, minutes, customerMinutes, atLeast }: ProvenRoute): string =>
  `It ${ends[end]} after ${minutes} min${customerMinutes > 0 ? ` and ${customerMinutes} customer-minutes` : ''}, and exposes nobody. ${
    atLeast === minutes
      ? 'No safe route is shorter.'
      : `It is the shortest that was found; none can be under ${atLeast} min.`
  }`;

/** A search knows the scene and goes the shortest way; nobody who stands there may. */
export const oneSafeWay =
  'It is one safe way, not the only one, and no model: it looks at no more than it must, and a crew surveys the whole scene first.';

export interface RouteRow {
  readonly minute: number;
  readonly words: string;
}

/** The steps of these acts from a start; null where one is impossible or exposes somebody. */
export const safeSteps = (start: World, acts: readonly Act[]): readonly Step[] | null => {
  const steps: Step[] = [];
  let before = start;
  for (const each of acts) {
    const result = act(before, each);
    if (!result.ok || result.exposures.length > 0) return null;
    const { world: after, events, reach, exposures } = result;
    steps.push({ entry: { act: each, minute: after.clock.minute, hash: '' }, before, after, events, reach, exposures });
    before = after;
  }
  return steps;
};

/** What is wrong and still there when the route ends: it kept out of its way, or held it, which nobody should take for doing away with it. */
export const leftWords = (steps: readonly Step[]): string => {
  const end = steps.at(-1)?.after;
  const left = end === undefined ? [] : laidIn(end).filter(({ fault }) => !faultKind(fault.kind).benign);
  if (end === undefined || left.length === 0) return '';
  const named = left.map(({ fault, on }) => `${faultKind(fault.kind).name} (${nameOf(end, on)})`);
  return `Still there at its end: ${named.join('; ')}. It kept out of reach of that, or held it apart for so long; a crew controls each before it works.`;
};

/** Acts that are told together when they follow one another. */
const together: Partial<Record<Act['act'], (count: number) => string>> = {
  look: (count) => `looked at ${count} things`,
  ask: (count) => `asked ${count} questions`,
  'check-tool': (count) => `checked tools, ${count} checks`,
  'call-finding': (count) => `called ${count} findings`,
  plan: (count) => `planned ${count} controls`,
};

/** An act a row; looks, questions, checks, findings and plans in a run are one. */
export const routeRows = (steps: readonly Step[]): readonly RouteRow[] => {
  const runs: Step[][] = [];
  for (const step of steps) {
    const last = runs.at(-1);
    const name = step.entry.act.act;
    if (last?.[0]?.entry.act.act === name && together[name] !== undefined) last.push(step);
    else runs.push([step]);
  }
  return runs.flatMap((run) => {
    const [first] = run;
    if (first === undefined) return [];
    const words = run.length === 1 ? actWords(first) : (together[first.entry.act.act]?.(run.length) ?? actWords(first));
    return [{ minute: first.before.clock.minute, words }];
  });
};
