/** A World as the numbers of its members, one after the other. */
import type { Effects } from './effects.ts';
import { memberNames } from './members.ts';

/** Members of a World. */
export const SIZE = memberNames.length;
export type Tuple = Int32Array;

/** Copies a tuple; for so few numbers a loop is quickest. */
export function copy(from: Tuple, to: Tuple, at: number): void {
  for (let i = 0; i < SIZE; i++) to[at + i] = from[i] as number;
}

/** Writes effects to a tuple. */
export function put(tuple: Tuple, effects: Effects): void {
  for (const { slot, effect } of effects) tuple[slot] = effect.of(tuple[slot] as number);
}
