/** Pole-type tanks by rating, as they are drawn and as they hide what is behind them. */
import type { Vec3 } from '../math/vec3.ts';
import type { PartView, Solid } from './types.ts';

/** Tank sizes by rating, m: typical single-phase pole types, from memory. */
const tanks: readonly (readonly [kva: number, diameter: number, height: number])[] = [
  [10, 0.4, 0.72],
  [15, 0.42, 0.78],
  [25, 0.45, 0.85],
  [37.5, 0.5, 0.92],
  [50, 0.55, 0.98],
  [75, 0.61, 1.08],
  [100, 0.66, 1.15],
];

export interface TankSize {
  readonly kva: number;
  readonly diameter: number;
  readonly height: number;
}

export const tankSize = ({ values }: PartView): TankSize => {
  const kva = (values.va ?? 25000) / 1000;
  const [, diameter, height] = tanks.find(([size]) => size >= kva) ?? [0, 0.7, 1.2];
  return { kva, diameter, height };
};

/** Height of the lid over the tank's mounting, and the pole's side of the tank from there, metres (common practice). */
const LID = 0.425;
const BACK = 0.265;

/** Tank and bushings, so far across on the lid; `back`: the pole's side of the tank from its mounting. */
export const tankSolids = (part: PartView, bushings: readonly number[], back = BACK): readonly Solid[] => {
  const { diameter, height } = tankSize(part);
  const y = back - diameter / 2;
  const upright = (x: number, across: number, from: number, to: number, radius: number): Solid => {
    const at = (z: number): Vec3 => [x, across, z];
    return { shape: 'cylinder', from: at(from), to: at(to), radius };
  };
  return [
    upright(0, y, LID - height, LID, diameter / 2),
    ...bushings.map((x) => upright(x, y + 0.02, LID, LID + 0.26, 0.05)),
  ];
};
