/** What an instructor bounds, and what a variant is. Plain data. */
import type { Proof } from '../proof/types.ts';
import type { Scenario } from '../scenario/types.ts';

export const weathers = ['clear', 'overcast', 'fog', 'drizzle', 'rain', 'snow'] as const;
export type Weather = (typeof weathers)[number];
export const lights = ['day', 'dusk', 'night'] as const;
export type Light = (typeof lights)[number];
export const framings = ['arm', 'armless', 'arm-suspension'] as const;
export const insulators = ['pin', 'post', 'polymer-post'] as const;
export const ties = ['preformed', 'hand'] as const;
export const strings = ['polymer', 'porcelain', 'glass'] as const;
export const bodies = ['porcelain', 'polymer'] as const;
/** How a variant may end at best. */
export const ends = ['any', 'restored', 'handed-over'] as const;

export interface Range {
  readonly least: number;
  readonly most: number;
}

/** What may be varied, and how far; an empty list or a false leaves it as the base scenario has it. */
export interface Bounds {
  readonly light: readonly Light[];
  readonly weather: readonly Weather[];
  /** How lines of several phases are held where they run through. */
  readonly framing: readonly (typeof framings)[number][];
  readonly insulators: readonly (typeof insulators)[number][];
  readonly ties: readonly (typeof ties)[number][];
  readonly strings: readonly (typeof strings)[number][];
  /** What cutouts and arresters are made of. */
  readonly bodies: readonly (typeof bodies)[number][];
  /** Swap the mounting sides of each pole, and the side of the road on which premises lie. */
  readonly sides: boolean;
  /** Whole lengths of poles, feet; neighbours differ by one step of the list at most. */
  readonly poleFeet: readonly number[];
  readonly faults: Range & {
    /** Kinds that may be laid; all if empty. */
    readonly kinds: readonly string[];
    readonly not: readonly string[];
    /** Chance that a fault is of a kind that the base has. */
    readonly ofBase: number;
  };
  readonly lookAlikes: Range;
  /** Load of premises, and a set of their own where there is none. */
  readonly premises: boolean;
  /** Tools left in the yard, and tools more than the base has, at most. */
  readonly toolsLess: number;
  readonly toolsMore: number;
  /** Minutes until the second worker is there. */
  readonly secondAfter: readonly number[];
  readonly end: (typeof ends)[number];
}

export const plainBounds: Bounds = {
  light: lights,
  weather: weathers,
  framing: framings,
  insulators,
  ties,
  strings,
  bodies,
  sides: true,
  poleFeet: [35, 40, 45],
  faults: { least: 1, most: 3, kinds: [], not: [], ofBase: 0.5 },
  lookAlikes: { least: 0, most: 3 },
  premises: true,
  toolsLess: 1,
  toolsMore: 4,
  secondAfter: [0, 5, 10, 15],
  end: 'any',
};

export const grades = [1, 2, 3] as const;
export type Grade = (typeof grades)[number];

/** How hard a scene is, and what that was read from. */
export interface Difficulty {
  readonly grade: Grade;
  readonly points: number;
  /** Least margin by which a cause is made out with the naked eye from where it is seen best; 0: another aid or act is needed. */
  readonly margin: number;
  /** Ways in which causes may do harm: pairs of cause and mechanism. */
  readonly hazards: number;
  readonly lookAlikes: number;
  /** Acts of par. */
  readonly acts: number;
}

/** A scenario that variants are drawn from: text that `parse` found good. */
export interface Base {
  readonly id: string;
  readonly text: string;
}

/** Why a draw was thrown away. */
export const rejections = ['parse', 'odd', 'circuit', 'harmless', 'proof', 'end', 'grade', 'twin'] as const;
export type Rejection = (typeof rejections)[number];

/** A draw that was thrown away, and what was wrong with it in a sentence. */
export interface Rejected {
  readonly is: Rejection;
  readonly why: string;
}

export interface Variant {
  readonly id: string;
  /** Id of the scenario that it was drawn from, and the draw. */
  readonly base: string;
  readonly seed: number;
  readonly number: number;
  /** The scenario file. */
  readonly yaml: string;
  readonly scenario: Scenario;
  readonly hash: string;
  readonly difficulty: Difficulty;
  readonly proof: Proof;
}
