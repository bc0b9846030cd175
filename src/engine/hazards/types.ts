/** Reach stands between acts and hazards: an act knows no mechanism, a mechanism knows no act. */
import type { Mechanism, Severity } from '../catalogue/types.ts';
import type { Vec3 } from '../math/vec3.ts';
import type { PointId } from '../world/types.ts';

/** What stands between a person and what is touched. Ids of tools; preconditions are looked up in World. */
export interface Through {
  readonly stick: string | null;
  readonly gloves: string | null;
}

/** Who comes near what by an act, for how long. */
export interface Reach {
  readonly who: string;
  readonly stand: string;
  /** Feet of the person. */
  readonly at: Vec3;
  readonly aloft: boolean;
  /** Points touched, through what. */
  readonly touches: readonly { readonly point: PointId; readonly through: Through }[];
  /** Contact made or broken by hand or stick. */
  readonly switches: null | {
    readonly part: string;
    readonly makes: readonly [PointId, PointId] | null;
    readonly breaks: readonly [PointId, PointId] | null;
    readonly through: Through;
    /** Clamps of a jumper as they go on, the first one first: each joins its point to the first. */
    readonly clamps?: readonly PointId[];
  };
  /** Strikes, prods or pulls on the pole or a conductor there. */
  readonly disturbs: string | null;
  /** Climbs, goes aloft on or hangs from this pole. */
  readonly climbs: null | { readonly pole: string; readonly by: 'hooks' | 'bucket' };
  /** Works within arm's reach of where the person is (repair, support): hands may move anywhere in it. */
  readonly works: boolean;
  readonly seconds: number;
}

export interface Quantity {
  readonly name: string;
  readonly value: number;
  /** SI or the published unit: 'V', 'A', 'm', 'J', 'cal/cm2'. */
  readonly unit: string;
}

/** A way somebody could be hurt in this World, with the faults whose removal removes or lessens it. */
export interface Hazard {
  /** `<mechanism>:<part>[/<terminal>]`. */
  readonly id: string;
  readonly mechanism: Mechanism;
  readonly part: string;
  readonly point: PointId | null;
  readonly severity: Severity;
  readonly potentiallyFatal: boolean;
  readonly quantities: readonly Quantity[];
  /** Ids of laid faults (causes), by counterfactual; co-causes are listed too. */
  readonly causes: readonly string[];
  readonly words: string;
}

/** An act that put somebody in reach of a hazard not controlled at that moment. */
export interface Exposure {
  readonly hazard: string;
  readonly mechanism: Mechanism;
  readonly part: string;
  readonly who: string;
  readonly severity: Severity;
  readonly potentiallyFatal: boolean;
  /** What would have reached the person at the credible worst, with units. */
  readonly quantities: readonly Quantity[];
  /** What the present state gives, so the debrief shows both. */
  readonly now: readonly Quantity[];
  /** True when the present state really harms: the drill stops. */
  readonly strikes: boolean;
  /** Causes (laid fault ids) of the hazard. */
  readonly causes: readonly string[];
  /** Preconditions of the relied-on control that failed: 'tool-in-test', 'tool-wiped', 'grounded' … */
  readonly failed: readonly string[];
  /** Published threshold or rule that it crossed. */
  readonly limit: string;
  readonly source: string;
}
