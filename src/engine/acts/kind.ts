/** What a file of this folder exports for its act: how long, whether possible, what it changes and reaches, what is on offer. */
import type { Reach } from '../hazards/types.ts';
import type { Minutes } from '../units/quantities.ts';
import type { World } from '../world/types.ts';
import type { Act, ActName, OfferedAct, WorldEvent } from './types.ts';

export type ActOf<N extends ActName> = Extract<Act, { act: N }>;

/** What an act changed, what was perceived of it, whom it brought near what. */
export interface Outcome {
  readonly world: World;
  readonly events: readonly WorldEvent[];
  /** Empty: nothing but standing there for the act's minutes. */
  readonly reach: readonly Reach[];
}

export interface ActKind<N extends ActName> {
  /** Whole minutes that the drill's clock runs on. */
  readonly minutes: (world: World, act: ActOf<N>) => Minutes;
  /** Why it is impossible, in half a sentence; null when it can be done, however unwise. */
  readonly refuse: (world: World, act: ActOf<N>) => string | null;
  /** The change itself; called only with what `refuse` let pass, after the clock has run. */
  readonly apply: (world: World, act: ActOf<N>) => Outcome;
  /** Plausible acts of this kind from here, in a fixed order; refused ones are dropped by the caller. */
  readonly offers: (world: World) => readonly Offer<N>[];
}

/** An offer without its minutes, which follow from the act. */
export type Offer<N extends ActName> = Omit<OfferedAct, 'act' | 'minutes'> & { readonly act: ActOf<N> };

/** A change with what was perceived and reached. */
export const outcome = (world: World, events: readonly WorldEvent[] = [], reach: readonly Reach[] = []): Outcome => ({
  world,
  events,
  reach,
});

export const event = (kind: WorldEvent['event'], on: string | null, words: string): WorldEvent => ({
  event: kind,
  on,
  words,
});
