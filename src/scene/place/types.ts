/** What a setting is made of: plants, pavings, kerbs, buildings, and the room that is left for them. */
import type { Builder, PartSpec, Point } from '../hardware/types.ts';
import type { MaterialName } from '../materials/materials.ts';

/** A plant: place, and how many times its usual size. */
export type Spot = readonly [x: number, y: number, size: number];
export type Plants = Readonly<Record<'broadleaf' | 'conifer' | 'bush', readonly Spot[]>>;

/** A strip along the road from one y to another, its level and what it is made of. */
export interface Paved {
  readonly from: number;
  readonly to: number;
  readonly level: number;
  readonly of: Extract<MaterialName, 'concrete' | 'asphalt' | 'gravel'>;
}

export interface Standing {
  readonly build: Builder;
  readonly spec: PartSpec;
  readonly at: Point;
}

export interface Place {
  readonly plants: Plants;
  readonly standing: readonly Standing[];
  readonly paved: readonly Paved[];
  /** Kerbs along the road: the y of the gutter, and which way the stone lies from it. */
  readonly kerbs?: readonly { readonly at: number; readonly toward: 1 | -1 }[];
  /** Share of the tufts that grow, and how tall for their kind. */
  readonly grass: { readonly many: number; readonly tall: number };
  readonly fieldFence: boolean;
  readonly drives: boolean;
  /** Whether a line is painted along the middle of the road. */
  readonly centreLine: boolean;
}

/** Whether a rectangle is clear of something. */
export type IsFree = (x0: number, y0: number, x1: number, y1: number) => boolean;

export interface Room {
  /** Of houses and of where people stand. */
  readonly free: IsFree;
  /** Of these, and of the sight from the road to what stands at a customer's: the engine knows no backdrop that hides it. */
  readonly clear: IsFree;
  /** Whether something so wide at a place stays off every low line of sight. */
  past(x: number, y: number, reach: number): boolean;
}
