/** What the screens are handed by the app, and what they ask of it. */
import type { ReadonlySignal, Signal } from '@preact/signals';
import type { MountScene } from '../drill/sceneTypes.ts';
import type { Drill, Snapshot } from '../drill/types.ts';
import type { Act, Log } from '../engine/acts/types.ts';
import type { ParFile } from '../engine/proof/parForm.ts';
import type { Progress } from '../engine/proof/prove.ts';
import type { Proof } from '../engine/proof/types.ts';
import type { Scenario } from '../engine/scenario/types.ts';
import type { Aid, Look } from '../engine/senses/types.ts';
import type { UnitSystem } from '../engine/units/formatQuantity.ts';
import type { Photos } from './photos/types.ts';

export interface Settings {
  readonly units: UnitSystem;
  readonly sound: boolean;
  /** Loudness of all sounds, 0 … 1. */
  readonly volume: number;
  readonly lessMotion: boolean;
  /** 0.5 … 2 times as computed. */
  readonly brightness: number;
  /** Single letters as keys of their own. */
  readonly letterKeys: boolean;
  /** Asks how sure one is of a finding. */
  readonly askSure: boolean;
}

/** A drill in the library. */
export interface Offered {
  readonly scenario: Scenario;
  readonly hash: string;
  /** Its file, from which variants are drawn; absent: none can be. */
  readonly text?: string;
  /** Proven par of this very scenario by this engine; absent or null: none. */
  readonly par?: Log['par'];
  /** The route that shows the par, and how far it is from what no route can fall under. */
  readonly route?: Pick<ParFile, 'acts' | 'end' | 'minutes' | 'customerMinutes' | 'atLeast'> | null;
}

export interface Caption {
  readonly id: string;
  readonly text: string;
}

/** Pages beside the drill. */
export type SidePage = 'bench' | 'cards' | 'instructor' | 'proof' | 'qualification' | 'survey';

/** Opens a page beside the drill; of a scenario where it was asked for there. */
export type OpenPage = (page: SidePage, of?: Offered) => void;

/** How far a proof is. */
export type Proving =
  | { readonly is: 'idle' }
  | { readonly is: 'running'; readonly title: string; readonly progress: Progress | null }
  | { readonly is: 'done'; readonly title: string; readonly offered: Offered; readonly proof: Proof }
  | { readonly is: 'failed'; readonly why: string };

/** Proves scenarios beside the page, one at a time. */
export interface Prover {
  readonly state: ReadonlySignal<Proving>;
  start(offered: Offered): void;
  cancel(): void;
}

/** How far the drawing of a variant is; `base` is the hash of what it is drawn from. */
export type Drawing =
  | { readonly is: 'idle' }
  | { readonly is: 'running'; readonly base: string; readonly seed: number; readonly draws: number }
  | { readonly is: 'done'; readonly base: string; readonly seed: number; readonly offered: Offered }
  | { readonly is: 'failed'; readonly base: string; readonly why: string };

/** Draws variants of scenarios beside the page, one at a time; what is drawn lies on the shelf. */
export interface Drawer {
  readonly state: ReadonlySignal<Drawing>;
  start(base: Offered, seed: number): void;
  cancel(): void;
}

export const pages = ['findings', 'briefing', 'acts', 'call'] as const;
export type Page = (typeof pages)[number];

/** A look at a part, from where, with what. */
export interface Looked {
  readonly look: Look;
  readonly aid: Aid;
  readonly stand: string;
}

/** The picture: on its way, there, or not to be had on this device and why. */
export type SceneState =
  | { readonly is: 'loading' }
  | { readonly is: 'ready'; readonly mount: MountScene }
  | { readonly is: 'absent'; readonly why: string };

/** What the hands have taken for the acts that are listed: view only, the act itself names its tools. */
export interface Taken {
  readonly stick: string | null;
  readonly onStick: string | null;
  readonly inHand: string | null;
}

/**
 * How a drill is taken: for its score, as an exam with seed and time set, as practice beside a scored one, or as practice
 * that a proof opened, by whom something of the way through was shown.
 */
export type Way = 'scored' | 'exam' | 'practice' | 'shown';

/** What an instructor sets for an exam. */
export interface Exam {
  readonly seed: number;
  /** Minutes of the drill's clock; when they are over the drill ends where it stands. */
  readonly minutes: number;
}

/** A drill on the screen: the snapshot, and what belongs to the view alone. */
export interface Playing {
  readonly way: Way;
  /** Minute at which the drill ends by itself; null: never. */
  readonly until: number | null;
  readonly drill: Drill;
  readonly snapshot: ReadonlySignal<Snapshot>;
  readonly aid: Signal<Aid>;
  /** Part, tool, person or 'truck' that is pointed at and kept. */
  readonly chosen: Signal<string | null>;
  readonly hovered: Signal<string | null>;
  readonly looked: Signal<Looked | null>;
  readonly page: Signal<Page>;
  readonly sheetOpen: Signal<boolean>;
  readonly listOpen: Signal<boolean>;
  /** Words that the offered acts must contain. */
  readonly actFilter: Signal<string>;
  readonly actBy: Signal<string | null>;
  /** Part, tool or person that the offered acts must concern. */
  readonly actAbout: Signal<string | null>;
  readonly taken: Signal<Taken>;
  readonly dialog: Signal<null | 'keys' | 'hand-over' | 'close-out'>;
  /** Where the picture looks, radians. */
  readonly yaw: Signal<number>;
  readonly captions: ReadonlySignal<readonly Caption[]>;
  /** Takes what is in view as a JPEG data address; null: no picture is mounted. */
  readonly camera: Signal<(() => string | null) | null>;
  readonly photos: Photos;
  /** What the view itself has to say: a photo taken. */
  readonly said: Signal<string | null>;
  send(act: Act): void;
  /** Points at something; a part is looked at with the present aid, which is logged. */
  choose(id: string | null): void;
}

export type OpenedScenario =
  | { readonly ok: true; readonly offered: Offered }
  | { readonly ok: false; readonly problems: readonly string[] };

/** What the app does for the screens. */
export interface Desk {
  /** Absent: nothing can be proved here. */
  readonly prover?: Prover;
  /** Absent: no variants can be drawn here. */
  readonly drawer?: Drawer;
  /** Drawn scenarios kept on this device. */
  readonly shelf: ReadonlySignal<readonly Offered[]>;
  readonly library: readonly Offered[];
  readonly settings: Signal<Settings>;
  readonly playing: ReadonlySignal<Playing | null>;
  readonly scene: ReadonlySignal<SceneState>;
  /** Has the picture fetched where no drill is on the screen. */
  wantScene(): void;
  /** A kept drill that one may go on with, and one line about it. */
  readonly keptDrill: ReadonlySignal<null | { readonly title: string; readonly acts: number; readonly ended: boolean }>;
  /** What went wrong last, in words. */
  readonly problem: Signal<string | null>;
  take(offered: Offered, exam?: Exam): void;
  /** Goes on from the drill on the screen as it stood after so many acts, as practice that is not kept. */
  goOnFrom(acts: number): void;
  /** Back from practice to the drill that it went on from. */
  backToScored(): void;
  goOn(): void;
  forget(): void;
  openLog(file: File): Promise<void>;
  saveLog(): void;
  /** By what weights drills are judged here. */
  readonly weights: ReadonlySignal<{ readonly name: string; readonly isUsual: boolean }>;
  /** An instructor's file of weights. */
  openWeights(file: File): Promise<void>;
  usualWeights(): void;
  /** Reads somebody's own scenario file; what is wrong with it comes back as lines. */
  openScenario(file: File): Promise<OpenedScenario>;
  /** A drill as it stands after acts, as practice that is not kept: to look at what a proof shows. */
  openMoment(offered: Offered, acts: readonly Act[]): void;
  /** Hands the scenario out as a file. */
  saveScenario(offered: Offered): void;
  /** Takes a drawn scenario off the shelf. */
  putAway(offered: Offered): void;
  /** The scenario of the library or the shelf with the hash. */
  offeredWith(hash: string): Offered | undefined;
  /** A number that a variant may be drawn by. */
  someSeed(): number;
  tryAgain(): void;
  leave(): void;
}
