/**
 * Everything that can be reached by acts of some kinds, each state once at the least minutes in which it can be reached
 * (Dial 1969: whole minutes, so a bucket a minute does for a heap).
 */
import type { Act, ActName } from '../../acts/types.ts';
import { States } from './states.ts';
import type { Taken, Transitions } from './transitions.ts';
import { SIZE, type Tuple } from './tuples.ts';

export interface Reachable {
  /** 'exhausted': these are all; 'stopped': a bound came first. */
  readonly end: 'exhausted' | 'stopped';
  /** Whatever can be reached in less was; infinite where these are all. */
  readonly minutes: number;
  readonly states: number;
  readonly transitions: number;
  /** Runs of the engine from which the rest was learned. */
  readonly runs: number;
}

export interface Exploring {
  /** Bounds; both by count, so that the same is explored on every machine. */
  readonly states?: number;
  readonly runs?: number;
  /** Acts of the kinds that are not taken. */
  readonly leaves?: (act: Act) => boolean;
  /** Told of each state, by minutes, before its acts are taken. */
  readonly enter?: (state: Tuple, minute: number, route: () => readonly Act[]) => void;
  /** Told of each step. */
  readonly visit?: (from: Tuple, act: number, to: Tuple, taken: Taken) => void;
}

export function exploreAll(
  transitions: Transitions,
  kinds: readonly ActName[],
  {
    states: mostStates = Number.POSITIVE_INFINITY,
    runs: mostRuns = Number.POSITIVE_INFINITY,
    leaves,
    enter,
    visit,
  }: Exploring = {},
): Reachable {
  const states = new States(SIZE);
  const least: number[] = [];
  const cameFrom: number[] = [];
  const cameBy: number[] = [];
  const buckets: number[][] = [];
  const from: Tuple = new Int32Array(SIZE);
  const to: Tuple = new Int32Array(SIZE);
  const acts: number[] = [];
  const taken: Taken = { minutes: 0, judged: [], reach: [] };
  const { runs } = transitions;
  let done = 0;
  let steps = 0;
  const reach = (state: number, minute: number, before: number, act: number): void => {
    if (minute >= (least[state] ?? Number.POSITIVE_INFINITY)) return;
    least[state] = minute;
    cameFrom[state] = before;
    cameBy[state] = act;
    const bucket = buckets[minute] ?? [];
    bucket.push(state);
    buckets[minute] = bucket;
  };
  const routeTo = (state: number): readonly Act[] => {
    const route: Act[] = [];
    for (let at = state; cameFrom[at] !== -1; at = cameFrom[at] as number) {
      route.push(transitions.acts[cameBy[at] as number] as Act);
    }
    return route.reverse();
  };
  const ended = (end: Reachable['end'], minutes: number): Reachable => ({
    end,
    minutes,
    states: done,
    transitions: steps,
    runs: transitions.runs - runs,
  });
  reach(states.add(transitions.start), 0, -1, -1);
  for (let minute = 0; minute < buckets.length; minute++) {
    const bucket = buckets[minute] ?? [];
    for (let i = 0; i < bucket.length; i++) {
      const state = bucket[i] as number;
      if (least[state] !== minute) continue;
      if (done >= mostStates || transitions.runs - runs >= mostRuns) return ended('stopped', minute);
      done++;
      states.read(state, from);
      enter?.(from, minute, () => routeTo(state));
      transitions.offered(from, kinds, acts);
      for (const act of acts) {
        if (leaves?.(transitions.acts[act] as Act) || !transitions.takeOffered(from, act, to, taken)) continue;
        steps++;
        visit?.(from, act, to, taken);
        reach(states.add(to), minute + taken.minutes, state, act);
      }
    }
    delete buckets[minute];
  }
  return ended('exhausted', Number.POSITIVE_INFINITY);
}
