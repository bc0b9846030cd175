/** Lie of the land, metres: the road along x, its verges and ditch, and a slow roll far out. Stands and poles are at zero. */

import { roadEdges } from '../../engine/world/road.ts';

/** The road's edges (y), its middle, and where it ends (x). */
export const road = { ...roadEdges, middle: (roadEdges.near + roadEdges.far) / 2, end: 64 } as const;

const smooth = (a: number, b: number, v: number): number => {
  const t = Math.min(1, Math.max(0, (v - a) / (b - a)));
  return t * t * (3 - 2 * t);
};

/** Drives that cross the ditch on a culvert: middle (x) and the y they lead to. */
export const drives = [
  { x: 17, to: 30 },
  { x: 36, to: -26 },
] as const;

const overDitch = (x: number): number => Math.max(...drives.map((d) => 1 - smooth(2, 3.6, Math.abs(x - d.x))));

/** Height of the ground. */
export const groundAt = (x: number, y: number): number => {
  const ditch = (middle: number): number => smooth(1.5, 0.25, Math.abs(y - middle));
  const dip = 0.5 * ditch(-3.9) * (x < road.end + 4 ? 1 - overDitch(x) : 0);
  const farDip = 0.42 * ditch(-14.2) * (1 - overDitch(x));
  const out = Math.max(0, Math.abs(y + 2) - 42, Math.abs(x) - 85);
  const roll = out * 0.02 * (Math.sin(x * 0.031 + 1) + Math.sin(y * 0.043));
  const rough = 0.03 * Math.sin(x * 1.3 + y * 0.4) * Math.sin(y * 1.7) * smooth(1.2, 4, Math.abs(y - 0.4));
  return roll + (Math.abs(y - road.middle) > 3.4 ? rough : 0) - dip - farDip;
};
