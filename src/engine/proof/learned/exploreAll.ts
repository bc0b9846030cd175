/**
 * Everything that can be reached by acts of some kinds, each state once at the least minutes in which it can be reached
 * (Dial 1969: whole minutes, so a bucket a minute does for a heap).
 */
import type { ActName } from '../../acts/types.ts';
import { States } from './states.ts';
import { SIZE, type Taken, type Transitions, type Tuple } from './transitions.ts';

export interface Reachable {
  /** 'exhausted': these are all; 'stopped': the bound came first. */
  readonly end: 'exhausted' | 'stopped';
  readonly states: number;
  readonly transitions: number;
  /** Runs of the engine from which the rest was learned. */
  readonly runs: number;
}

/** Told of each step. */
export type Visit = (from: Tuple, act: number, to: Tuple, taken: Taken) => void;

export function exploreAll(
  transitions: Transitions,
  kinds: readonly ActName[],
  limit = Number.POSITIVE_INFINITY,
  visit?: Visit,
): Reachable {
  const states = new States(SIZE);
  const least: number[] = [];
  const buckets: number[][] = [];
  const from: Tuple = new Int32Array(SIZE);
  const to: Tuple = new Int32Array(SIZE);
  const acts: number[] = [];
  const taken: Taken = { minutes: 0, judged: [], reach: [] };
  const { runs } = transitions;
  let done = 0;
  let steps = 0;
  const reach = (state: number, minute: number): void => {
    if (minute >= (least[state] ?? Number.POSITIVE_INFINITY)) return;
    least[state] = minute;
    const bucket = buckets[minute] ?? [];
    bucket.push(state);
    buckets[minute] = bucket;
  };
  reach(states.add(transitions.start), 0);
  for (let minute = 0; minute < buckets.length; minute++) {
    const bucket = buckets[minute] ?? [];
    for (let i = 0; i < bucket.length; i++) {
      const state = bucket[i] as number;
      if (least[state] !== minute) continue;
      if (done >= limit) return { end: 'stopped', states: done, transitions: steps, runs: transitions.runs - runs };
      done++;
      states.read(state, from);
      transitions.offered(from, kinds, acts);
      for (const act of acts) {
        if (!transitions.take(from, act, to, taken)) continue;
        steps++;
        visit?.(from, act, to, taken);
        reach(states.add(to), minute + taken.minutes);
      }
    }
    delete buckets[minute];
  }
  return { end: 'exhausted', states: done, transitions: steps, runs: transitions.runs - runs };
}
