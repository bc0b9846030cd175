/**
 * What a builder of hardware is handed and gives back. World axes: x along the line (source to load), y toward the
 * field side, z up; metres. A part's origin is its mounting point, named in the header of its file; parts that stick
 * out of a pole or wall are turned so that outward points at azimuth `side`.
 */
import type { Group, Matrix4 } from 'three';
import type { Materials } from '../materials/materials.ts';

export type Point = readonly [number, number, number];

/** One part to build. Everything but `kind` has a default, listed by the builder. */
export interface PartSpec {
  readonly kind: string;
  /** Condition of the part that changes its shape, one of the builder's `states`. */
  readonly state?: string;
  /** Make of the part, one of the builder's `variants`. */
  readonly variant?: string;
  /** Azimuth of outward (or of the line, for parts on a conductor): radians, 0 = +x, π/2 = field side. */
  readonly side?: number;
  /** Sizes in metres (`kva` in kVA), by the builder's names; unknown names are refused. */
  readonly size?: Readonly<Record<string, number>>;
  /** Course of wires, in the frame of the part's parent. */
  readonly points?: readonly Point[];
  /** What is stencilled, branded or printed on it. */
  readonly text?: string;
  /** Varies grain, bends and wear. */
  readonly seed?: number;
}

/** Outer surface of a body of revolution: `profile` of [radius, height], bottom to top; `frame` carries it to the part. */
export interface MarkSurface {
  readonly profile: readonly (readonly [number, number])[];
  readonly frame: Matrix4;
  /** How far a mark lies off the surface, m. */
  readonly lift: number;
  /** Half width in x and y where the section is a rectangle; the profile then only gives heights. */
  readonly box?: readonly [number, number];
}

/** What `userData` of a built part holds. */
export interface PartData {
  readonly kind: string;
  readonly state: string;
  /** Where wires are made up, in the part's frame. */
  readonly points: Readonly<Record<string, Point>>;
  readonly surface: MarkSurface | null;
  /** Further surfaces by name: `tank`, `bushing` … */
  readonly surfaces: Readonly<Record<string, MarkSurface>>;
}

export interface Builder {
  (spec: PartSpec, materials: Materials): Group;
  readonly kind: string;
  readonly states: readonly string[];
  readonly variants: readonly string[];
  readonly size: Readonly<Record<string, number>>;
}
