/**
 * Everything that can be reached by acts of some kinds, each state once at the least minutes in which it can be reached
 * (Dial 1969: whole minutes, so a bucket a minute does for a heap). Where a caller knows how many minutes are still to come
 * at least, states come by both together (A*: Hart, Nilsson and Raphael 1968).
 */
import type { Act, ActName } from '../../acts/types.ts';
import { States } from './states.ts';
import type { Taken, Transitions } from './transitions.ts';
import { SIZE, type Tuple } from './tuples.ts';

export interface Reachable {
  /** 'exhausted': these are all; 'stopped': a bound came first; 'found': the caller has what it looked for. */
  readonly end: 'exhausted' | 'stopped' | 'found';
  /** Whatever can be reached in less, `rest` included, was; infinite where these are all. */
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
  /** Whether a step counts. */
  readonly counts?: (act: Act, taken: Taken) => boolean;
  /** More acts to be tried in a state, from which so many minutes may still be spent beside `rest`. */
  readonly adds?: (state: Tuple, spare: number) => readonly Act[];
  /** Minutes still to come at least from a state; a step lessens them by its own minutes at most. */
  readonly rest?: (state: Tuple) => number;
  /** States are left out from which more minutes than these come to an end, `rest` included. */
  readonly most?: number;
  /** Told of each state, by minutes and rest, before its acts are taken; true: it is what was looked for. */
  readonly enter?: (state: Tuple, minute: number, route: () => readonly Act[]) => boolean | undefined;
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
    counts = () => true,
    adds,
    rest = () => 0,
    most = Number.POSITIVE_INFINITY,
    enter,
    visit,
  }: Exploring = {},
): Reachable {
  const states = new States(SIZE);
  const least: number[] = [];
  const rests: number[] = [];
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
  const reach = (tuple: Tuple, minute: number, before: number, act: number): void => {
    const state = states.add(tuple);
    if (minute >= (least[state] ?? Number.POSITIVE_INFINITY)) return;
    const left = rests[state] ?? rest(tuple);
    rests[state] = left;
    if (minute + left > most) return;
    least[state] = minute;
    cameFrom[state] = before;
    cameBy[state] = act;
    const bucket = buckets[minute + left] ?? [];
    bucket.push(state);
    buckets[minute + left] = bucket;
  };
  const routeTo = (state: number): readonly Act[] => {
    const route: Act[] = [];
    for (let at = state; cameFrom[at] !== -1; at = cameFrom[at] as number) {
      route.push(transitions.acts[cameBy[at] as number] as Act);
    }
    return route.reverse();
  };
  const left: boolean[] = [];
  const isLeft = (act: number): boolean => {
    left[act] ??= leaves?.(transitions.acts[act] as Act) ?? false;
    return left[act];
  };
  const ended = (end: Reachable['end'], minutes: number): Reachable => ({
    end,
    minutes,
    states: done,
    transitions: steps,
    runs: transitions.runs - runs,
  });
  reach(transitions.start, 0, -1, -1);
  for (let sum = 0; sum < buckets.length; sum++) {
    const bucket = buckets[sum] ?? [];
    for (let i = 0; i < bucket.length; i++) {
      const state = bucket[i] as number;
      const minute = sum - (rests[state] as number);
      if (least[state] !== minute) continue;
      if (done >= mostStates || transitions.runs - runs >= mostRuns) return ended('stopped', sum);
      done++;
      states.read(state, from);
      if (enter?.(from, minute, () => routeTo(state))) return ended('found', sum);
      const went = (act: number): void => {
        steps++;
        if (!counts(transitions.acts[act] as Act, taken)) return;
        visit?.(from, act, to, taken);
        reach(to, minute + taken.minutes, state, act);
      };
      transitions.offered(from, kinds, acts, isLeft);
      for (const act of acts) if (transitions.takeOffered(from, act, to, taken)) went(act);
      for (const act of adds?.(from, most - sum) ?? []) {
        const number = transitions.numberOf(act);
        if (transitions.take(from, number, to, taken)) went(number);
      }
    }
    delete buckets[sum];
  }
  return ended('exhausted', Number.POSITIVE_INFINITY);
}
