/** What a simulated trainee gets, and what a habit is. A trainee never sees the fault list, only what the engine lets be perceived. */
import type { Act, OfferedAct, WorldEvent } from '../acts/types.ts';
import type { Part as ScorePart } from '../score/types.ts';
import type { Part, Person, Tool, World } from '../world/types.ts';

/** A part as anybody can point at it: no faults, no state, no numbers. */
export type SeenPart = Pick<Part, 'id' | 'kind' | 'name' | 'pole' | 'premises' | 'at' | 'end'>;
export type SeenTool = Pick<Tool, 'id' | 'kind' | 'name'>;

export type SeenPerson = Pick<Person, 'id' | 'role' | 'name' | 'at' | 'premises'>;

/** The scene without what only the engine knows. */
export interface Scene extends Pick<World, 'clock' | 'truck' | 'stands' | 'guards' | 'orders' | 'paper' | 'ended'> {
  readonly site: Pick<World['site'], 'skyLux' | 'visibilityM' | 'wetness' | 'traffic'>;
  readonly parts: readonly SeenPart[];
  readonly tools: readonly SeenTool[];
  readonly people: readonly SeenPerson[];
  /** What was told and tested, in words, without the engine's ids of signs. */
  readonly knowledge: {
    readonly tests: readonly { readonly on: string; readonly result: string }[];
    readonly readings: World['knowledge']['readings'];
  };
}

/** What came of an act: whether it was possible, what was perceived, the scene after. */
export interface Told {
  readonly done: boolean;
  readonly events: readonly WorldEvent[];
  readonly scene: Scene;
}

/** Luck of one trainee, seeded: where attention lapses, in which order things are gone through. */
export interface Dice {
  /** True in that share of cases. */
  chance(share: number): boolean;
  /** One of them; the list is not empty. */
  pick<T>(list: readonly T[]): T;
  /** The same list in another order. */
  shuffled<T>(list: readonly T[]): readonly T[];
}

/** A trainee's mind at work: it yields acts and is told what came of each. */
export type Doing<Answer = void> = Generator<Act, Answer, Told>;

/** What a trainee has to go by besides what it is told: the acts on offer, and its own luck. */
export interface Self {
  readonly scene: () => Scene;
  readonly offers: () => readonly OfferedAct[];
  readonly dice: Dice;
}

export type HabitId =
  | 'careful'
  | 'rushes-obvious'
  | 'stops-after-first'
  | 'never-turns-round'
  | 'calls-everything'
  | 'never-tests'
  | 'over-controls'
  | 'random';

/** Scenes in which a habit can show: told by the scene and its causes, never by how anybody did there. */
export const wheres = [
  'anywhere',
  'a-fatal-cause',
  'a-fatal-cause-in-reach',
  'a-cause',
  'several-causes',
  'a-hidden-cause',
  'a-fuse-to-put-back',
] as const;
export type Where = (typeof wheres)[number];

/** A part of the score that a habit should spoil, and in which scenes it can. */
export interface Spoilt {
  readonly part: ScorePart['name'];
  readonly where: Where;
}

export interface Habit {
  readonly id: HabitId;
  /** What it does, one sentence. */
  readonly words: string;
  /** What it should spoil against a careful one; empty for the careful one. */
  readonly spoils: readonly Spoilt[];
  /** Parts that it should leave as they are. */
  readonly keeps: readonly ScorePart['name'][];
  /** Parts in which it should gain nothing over a careful one. */
  readonly gainsNothingIn: readonly ScorePart['name'][];
  readonly does: (self: Self) => Doing;
}
