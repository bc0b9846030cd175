/**
 * Elements of a linear network of RMS phasors at one frequency, in SI units. Currents run from `from` through the element
 * to `to`, in sources as well, so a source that delivers at `from` carries the negative of what it delivers. Left out:
 * whatever is not linear or not steady at that frequency.
 */
import type { Complex } from '../math/complex.ts';

/** The reference node: its voltage is zero. */
export const EARTH = 'earth';

/** A branch whose current is an unknown of its own; z in ohm, not zero. */
export interface ImpedanceElement {
  readonly kind: 'impedance';
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly z: Complex;
}

/** A leakage or capacitance, stamped as it is; y in siemens, zero allowed. */
export interface AdmittanceElement {
  readonly kind: 'admittance';
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly y: Complex;
}

/** Thevenin source: V(from) - V(to) = emf + z I; z may be zero; sources of one group are in step with each other. */
export interface SourceElement {
  readonly kind: 'source';
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly emf: Complex;
  readonly z: Complex;
  readonly group: string;
}

/** V(from) - V(to) = z I + turns times the common volts per turn; only ratios of turns matter, so rated volts will do. */
export interface Winding {
  readonly from: string;
  readonly to: string;
  readonly turns: number;
  readonly z: Complex;
}

/** Windings on one core; ampere-turns sum to what the magnetising admittance across winding 0, behind its z, takes. */
export interface TransformerElement {
  readonly kind: 'transformer';
  readonly id: string;
  readonly windings: readonly Winding[];
  readonly magnetising?: Complex;
}

export type NetworkElement = ImpedanceElement | AdmittanceElement | SourceElement | TransformerElement;

/** Volts and amperes of one state of the network. Asking for a node or element that it lacks throws a RangeError. */
export interface Phasors {
  voltage(node: string): Complex;
  /** V(a) - V(b). */
  voltageBetween(a: string, b: string): Complex;
  /** From `from` to `to` through the element; a transformer needs the winding's place in its list. */
  current(elementId: string, winding?: number): Complex;
}

/** What the rest of the network looks like from two nodes; worst is the open-circuit magnitude at the worst angles. */
export interface Thevenin {
  readonly voc: Complex;
  readonly zth: Complex;
  readonly worst: number;
}

/** All groups at the angles written in their sources, unless asked otherwise. */
export interface NetworkSolution extends Phasors {
  readonly ok: true;
  /** Largest relative residual over all equations and groups. */
  readonly residual: number;
  readonly groups: readonly string[];
  /** This group's sources alone, the others' emf zero. */
  contribution(group: string): Phasors;
  /** Each group turned by its angle in radians; a group not named is not turned, an angle without a group is ignored. */
  at(angles: Readonly<Record<string, number>>): Phasors;
  /** Largest magnitude over all relative angles between groups. */
  worst(node: string): number;
  worstBetween(a: string, b: string): number;
  worstCurrent(elementId: string, winding?: number): number;
  /** Seen from the node against earth. */
  thevenin(node: string): Thevenin;
  theveninBetween(a: string, b: string): Thevenin;
}

export type NetworkFailure =
  /** An element that means nothing: no impedance, not finite, an id used twice. */
  | { readonly ok: false; readonly reason: 'invalid'; readonly element: string; readonly detail: string }
  /** Nodes without a path to earth, or else the unknown at which elimination found nothing left. */
  | {
      readonly ok: false;
      readonly reason: 'singular';
      readonly island: readonly string[];
      readonly node?: string;
      readonly element?: string;
    }
  /** The solution does not satisfy the equations; `at` is the node or element of the worst one. */
  | { readonly ok: false; readonly reason: 'inaccurate'; readonly residual: number; readonly at: string };
