/** What an instructor bounds, and what a variant is. Plain data. */
import type { Proof } from '../proof/types.ts';
import type { Scenario } from '../scenario/types.ts';

export const weathers = ['clear', 'overcast', 'fog', 'drizzle', 'rain', 'snow'] as const;
export type Weather = (typeof weathers)[number];

/** What may be varied, and how far; an empty list or a false leaves it as the base scenario has it. */
export interface Bounds {
  readonly light: readonly ('day' | 'dusk' | 'night')[];
  readonly weather: readonly Weather[];
  /** Swap the mounting sides of each pole, and the side of the road on which premises lie. */
  readonly sides: boolean;
  /** Whole lengths of poles, feet; neighbours differ by one step of the list at most. */
  readonly poleFeet: readonly number[];
  readonly faults: readonly [least: number, most: number];
  readonly lookAlikes: readonly [least: number, most: number];
  /** Load of premises, and a set behind a transfer switch where there is none. */
  readonly premises: boolean;
  /** Tools left in the yard, at most. */
  readonly toolsLess: number;
  /** Minutes until the second worker is there. */
  readonly secondAfter: readonly number[];
}

export const plainBounds: Bounds = {
  light: ['day', 'dusk', 'night'],
  weather: weathers,
  sides: true,
  poleFeet: [35, 40, 45],
  faults: [1, 3],
  lookAlikes: [0, 3],
  premises: true,
  toolsLess: 1,
  secondAfter: [0, 5, 10, 15],
};

/** How hard a scene is, and what that was read from. */
export interface Difficulty {
  readonly grade: 1 | 2 | 3;
  readonly points: number;
  /** Least margin by which a cause is made out with the naked eye from where it is seen best; 0: another aid or act is needed. */
  readonly margin: number;
  /** Ways in which causes may do harm: pairs of cause and mechanism. */
  readonly hazards: number;
  readonly lookAlikes: number;
  /** Acts of par. */
  readonly acts: number;
}

/** Why a draw was thrown away. */
export const rejections = ['parse', 'circuit', 'harmless', 'proof', 'grade', 'twin'] as const;
export type Rejection = (typeof rejections)[number];

export interface Variant {
  readonly id: string;
  /** The scenario file. */
  readonly yaml: string;
  readonly scenario: Scenario;
  readonly difficulty: Difficulty;
  readonly proof: Proof;
}
