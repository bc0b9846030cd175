/**
 * Stopping sight distance on a level road, AASHTO Green Book: d = V t + V2 / 2a with t = 2.5 s and a = 11.2 ft/s2, here in
 * SI. Its design table rounds up (35 mph: 250 ft, 55 mph: 495 ft); MUTCD uses the same for buffer spaces.
 * Risk that a pedestrian who is struck dies: average of all ages, Tefft 2011 (AAA Foundation): 10 % at 23 mph, 25 % at 32,
 * 50 % at 42, 75 % at 50, 90 % at 58; linear between. Formula and figures from memory. Left out: grades, wet or iced roads.
 */
import type { Metres } from '../units/quantities.ts';

const REACTION = 2.5;
const DECELERATION = 11.2 * 0.3048;

/** Distance in which a driver who sees something stops, from so many metres a second. */
export const stoppingDistance = (metresPerSecond: number): Metres =>
  metresPerSecond * REACTION + (metresPerSecond * metresPerSecond) / (2 * DECELERATION);

const MPH = 0.44704;
const risks: readonly (readonly [mph: number, risk: number])[] = [
  [0, 0],
  [23, 0.1],
  [32, 0.25],
  [42, 0.5],
  [50, 0.75],
  [58, 0.9],
];

/** Share of people struck at that speed who die, 0..0.9. */
export function deathRisk(metresPerSecond: number): number {
  const mph = metresPerSecond / MPH;
  const above = risks.findIndex(([speed]) => speed >= mph);
  const to = risks[above];
  const from = risks[above - 1];
  if (to === undefined) return 0.9;
  if (from === undefined) return 0;
  return from[1] + ((to[1] - from[1]) * (mph - from[0])) / (to[0] - from[0]);
}
