/**
 * A truck as a thing that people touch while its lift works near the line: held by a ground that is whole, or by cones
 * and tape. Left out: step voltage round its wheels and outriggers (step.ts has that of electrodes).
 */
import { toolKind } from '../catalogue/tools.ts';
import type { Volts } from '../units/quantities.ts';
import type { World } from '../world/types.ts';
import { approachDistance, farthestApproach } from './approach.ts';
import { bareMetal } from './bareMetal.ts';
import { liveIn, type Moment } from './moment.ts';
import { handsGap } from './personSpace.ts';
import { faulty } from './readiness.ts';
import type { Reach } from './types.ts';

/** Whether people are kept from it, or it from becoming alive. */
export const isTruckHeld = ({ guards, tools }: World): boolean =>
  guards.cones ||
  guards.keepOut ||
  (guards.truckGround && tools.some((tool) => toolKind(tool.kind).guards === 'truck-ground' && !faulty(tool)));

/** The highest volts that the lift may meet from there. */
export function truckVolts(reach: Reach, moment: Moment): { readonly worst: Volts; readonly now: Volts } {
  const { world } = moment;
  const farthest = farthestApproach(world);
  let [worst, now] = [0, 0];
  for (const { path, ends } of bareMetal(world)) {
    const point = ends[0]?.point;
    if (point === undefined || handsGap(world, reach, path) >= farthest) continue;
    const live = liveIn(moment, point, 300);
    if (live === null || handsGap(world, reach, path) >= approachDistance(world, live.volts) || live.volts <= worst)
      continue;
    const present = moment.present.point(point);
    [worst, now] = [live.volts, present.live ? present.volts : 0];
  }
  return { worst, now };
}
