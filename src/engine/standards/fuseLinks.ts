/**
 * Expulsion fuse links of type K and T: how long a current takes to melt one, and to be cleared.
 * Melting: coarse curves in multiples of the link's rating from the OpenDSS TCC_Curve library (klink, tlink), read
 * there; log-log between the points, I2t constant beyond the last, never below 200 % of rating (ANSI C37.42 notes).
 * One curve serves all sizes; no table by link size was found in print, so none is here.
 * Clearing: melting at the upper current tolerance (20 % above the lower, from memory of ANSI C37.42) plus one cycle of
 * arcing (from memory; half to one cycle is usual). No preloading, no cold-load or ambient factor.
 */
import type { Amperes, Seconds } from '../units/quantities.ts';
import { interpolateLogLog, type Point } from './interpolate.ts';

/** Link speeds. */
export type LinkSpeed = 'K' | 'T';

/** A link, for example 10K. */
export interface FuseLink {
  readonly speed: LinkSpeed;
  readonly rating: Amperes;
}

/** Sizes in amperes (a published feeder-model script's list). */
export const linkSizes = [6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 65, 80, 100, 140, 200] as const;

const curves: Readonly<Record<LinkSpeed, readonly Point[]>> = {
  K: [
    [2, 300],
    [2.2, 20],
    [3, 4],
    [4, 1.3],
    [6, 0.41],
    [30, 0.02],
  ],
  T: [
    [2, 300],
    [2.1, 100],
    [3, 10.1],
    [4, 4],
    [6, 1.4],
    [22, 0.1],
    [50, 0.02],
  ],
};

const upperTolerance = 1.2;
const arcing: Seconds = 1 / 60;

/** Link from text such as `10K` or `15 T`; undefined for an unknown speed or size. */
export const parseFuseLink = (text: string): FuseLink | undefined => {
  const match = /^(\d{1,3})\s?([KT])$/i.exec(text.trim());
  const rating = linkSizes.find((size) => size === Number(match?.[1]));
  if (!match || rating === undefined) return undefined;
  return { speed: match[2]?.toUpperCase() === 'T' ? 'T' : 'K', rating };
};

/** Shortest melting time in seconds; Infinity below twice the rating, where the link carries the current. */
export const meltTime = (link: FuseLink, current: Amperes): Seconds => {
  const points = curves[link.speed];
  const last = points.at(-1) ?? [0, 0];
  const multiple = current / link.rating;
  if (multiple < 2) return Number.POSITIVE_INFINITY;
  if (multiple > last[0]) return (last[1] * last[0] * last[0]) / (multiple * multiple);
  return interpolateLogLog(points, multiple);
};

/** Longest total clearing time in seconds; Infinity where melting is not certain. */
export const clearTime = (link: FuseLink, current: Amperes): Seconds =>
  meltTime(link, current / upperTolerance) + arcing;
