/** What a kind of fault or look-alike is: what it shows, does and is called, and what controls it. */
import type { Vec3 } from '../math/vec3.ts';
import type { Mechanism, Severity, Side, Source } from './commonTypes.ts';

/** A sign that can be perceived; sizes in metres. */
export interface SignKind {
  readonly id: string;
  readonly sense: 'see' | 'hear' | 'measure' | 'ask' | 'read' | 'test';
  /** Feature of the component whose words it replaces (sense see). */
  readonly feature?: string;
  /** Neutral words, what is perceived and no diagnosis. */
  readonly words: string;
  /** Smallest dimension to be resolved and longest extent, metres. */
  readonly size?: number;
  readonly extent?: number;
  /**
   * How it lies: a mark on the surface of the part, on its side (the default where the part has a body); the part's own outline,
   * changed, so that it shows round a corner and the part cannot hide it; or a piece that stands by itself, from all round.
   */
  readonly form?: 'mark' | 'outline' | 'piece';
  /** A seam or a run: along the part, and no wider than its size. */
  readonly strip?: true;
  /** That the part leans: seen by how much of it is across the line of sight. */
  readonly aside?: true;
  /** Where it lies, relative to the part's `at` in its own frame; absent: at its feature. */
  readonly place?: Vec3;
  /** A dark line (crack, wire) follows the line rule, a patch the patch rule. */
  readonly shape?: 'line' | 'patch';
  /** Weber contrast, 0..1, and reflectance of the surface it lies on. */
  readonly contrast?: number;
  readonly reflectance?: number;
  /** Level in dB(A) at 1 m; `follows` scales it with the solved leakage current. */
  readonly sound?: {
    readonly sound: string;
    readonly level: number;
    readonly atM: number;
    readonly caption: string;
    readonly follows?: 'leakage';
  };
  /** Which act reveals it (sense test, ask, read): 'sound', 'prod', 'air-test', 'self-test', 'read-tag', 'inspect' … */
  readonly by?: string;
  readonly source: Source;
}

/** What a fault does to what holds, hangs or stands. */
export interface MechanicalEffect {
  /** Legs of a tie lost: its conductor lies loose. */
  readonly supports?: 'lost';
  /** Metres out of plumb for each metre up, toward the fault's side. */
  readonly leans?: number;
  /** Bending strength left, 0..1. */
  readonly strength?: number;
  readonly guy?: 'lost';
  /** A part with two ends that has come down: so many metres of it lie before its end, toward below its `at`. */
  readonly lies?: number;
  /** A conductor has parted so far from its `at`: name of a value in metres. Each piece hangs from its own end, or lies. */
  readonly breaks?: string;
  /** A lead that is held at one terminal only, and what hangs from there, metres. */
  readonly hangs?: { readonly from: string; readonly metres: number };
  /** What may come down from where the part is. */
  readonly drops?: { readonly what: string; readonly kilograms: number };
}

/** A bare point of a fault: so far along the part from its `at` (name of a value), so high above the ground, metres. */
export interface FaultPoint {
  /** Terminal whose metal it is; absent: a net of its own, which the fault's leaks name as they name the point. */
  readonly on?: string;
  readonly along: string;
  readonly above: number;
}

/** Something wrong, or something that only looks wrong (`benign`). */
export interface FaultKind {
  readonly id: string;
  readonly name: string;
  /** Component kinds, tool kinds ('tool:stick'), roles ('person:second') or 'site' on which it can be laid. */
  readonly on: readonly string[];
  /** Side on which it lies where the scenario says none; absent: no side in particular. */
  readonly side?: Side;
  /** Words of the part without which it cannot lie there: porcelain cracks, polymer does not. */
  readonly only?: Readonly<Record<string, readonly string[]>>;
  readonly benign: boolean;
  readonly signs: readonly SignKind[];
  /** Conditions that name it rightly. */
  readonly conditions: readonly string[];
  /** Branch names of the part that it opens. */
  readonly opens: readonly string[];
  /** Leakage paths that it makes: terminals of the part; `to` may be overridden by the scenario's `to` (part.terminal). */
  readonly leaks: readonly {
    readonly name: string;
    readonly from: string;
    readonly to: string;
    readonly ohms: string;
    readonly credibleOhms: string;
    /** It ends on another part: the scenario must say where. */
    readonly elsewhere?: true;
    /** Metal that lies on the ground: no arc over a surface, but an electrode where it lies. */
    readonly soil?: true;
  }[];
  /** State that it is laid with; without the fault the part stands in its kind's default state. */
  readonly sets?: Readonly<Record<string, string>>;
  /** Words that hold for the part as long as the fault lies on it: a link too large. */
  readonly words?: Readonly<Record<string, string>>;
  readonly mechanical?: MechanicalEffect;
  /** Bare points that it brings within reach. */
  readonly points?: Readonly<Record<string, FaultPoint>>;
  /** What it makes of a tool: the name of the value that is its rating, the size of its cable. */
  readonly tool?: { readonly rated?: string; readonly cable?: string };
  /** What it makes of somebody. */
  readonly person?: {
    readonly unqualified?: true;
    readonly absent?: true;
    readonly unfit?: true;
    /** Names another circuit than the one meant. */
    readonly misnames?: true;
    /** Is where nobody should be. */
    readonly present?: true;
    /** An animal that nothing holds. */
    readonly loose?: true;
  };
  /** Preconditions that do not hold as long as it lies there and its part stands as it set it. */
  readonly defeats?: readonly string[];
  /** What it makes of the site; a word that begins with '=' names the value to take. */
  readonly site?: Readonly<Record<string, string | boolean>>;
  /** Chance in a minute that it becomes the other kind by itself. */
  readonly worsens?: { readonly perMinute: number; readonly into: string; readonly words: string };
  readonly values: Readonly<
    Record<string, { readonly default: number; readonly dimension: string; readonly doc: string }>
  >;
  readonly severity: Severity;
  readonly mechanisms: readonly Mechanism[];
  /** Lies beyond the scene: nobody here mends it, it is told to the dispatcher and handed over. */
  readonly beyond?: true;
  /** What it can do to somebody, one plain sentence. */
  readonly harm: string;
  /** Controls that work (ids), and tempting ones that do not with the reason. */
  readonly controls: readonly string[];
  readonly tempting: readonly { readonly what: string; readonly why: string }[];
  /** How to tell it from what looks like it. */
  readonly tellApart: string;
  /** Of a look-alike: conditions that are wrongly called for it. */
  readonly mistakenFor?: readonly string[];
  readonly source: Source;
}

/** A condition in the trade's words, as a trainee may call it. */
export interface ConditionKind {
  readonly id: string;
  readonly label: string;
  /** Means that nothing is wrong. */
  readonly healthy?: boolean;
}
