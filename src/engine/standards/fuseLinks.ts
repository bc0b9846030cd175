/**
 * Expulsion fuse links of type K and T: how long a current takes to melt one, and to be cleared, by size. Three points of
 * each size hold the curve (ANSI C37.42, from memory: fuseLinkTables.ts); between them it bends as the coarse curve that
 * was read does (OpenDSS TCC_Curve library), moved over so that it goes through the size's points, and log-log between
 * all of these. Faster than the last, I2t is constant. Nothing melts below 200 % of the rating (notes on a maker's curve
 * sheet for ANSI C37.42 links, read). Cleared: the most amperes of the table, and one cycle of arcing (from memory; half
 * to one cycle is usual). Left out: preload, cold load, ambient, what an earlier shot has warmed up, makers' own curves.
 */
import type { Amperes, Seconds } from '../units/quantities.ts';
import { coarseCurves, type LinkSpeed, linkSizes, meltingPoints } from './fuseLinkTables.ts';
import { interpolateLogLog, type Point } from './interpolate.ts';

export { type LinkSpeed, linkSizes } from './fuseLinkTables.ts';

/** A link, for example 10K. */
export interface FuseLink {
  readonly speed: LinkSpeed;
  readonly rating: Amperes;
}

/** A point of a link's curve, and where it comes from. */
export interface LinkPoint {
  readonly amperes: Amperes;
  readonly seconds: Seconds;
  readonly basis: 'size, from memory' | 'published coarse curve, moved over';
}

const arcing: Seconds = 1 / 60;
/** Part of the rating that a link carries for ever, read. */
const carries = 2;

/** Link from text such as `10K` or `15 T`; undefined for an unknown speed or size. */
export const parseFuseLink = (text: string): FuseLink | undefined => {
  const match = /^(\d{1,3})\s?([KT])$/i.exec(text.trim());
  const rating = linkSizes.find((size) => size === Number(match?.[1]));
  if (!match || rating === undefined) return undefined;
  return { speed: match[2]?.toUpperCase() === 'T' ? 'T' : 'K', rating };
};

const turned = (points: readonly Point[]): readonly Point[] => [...points].reverse().map(([x, y]): Point => [y, x]);

/** Straight over ln x between the nearest two, the end value beyond. */
const blend = (points: readonly Point[], x: number): number => {
  const [first = [1, 1], last = [1, 1]] = [points[0], points.at(-1)];
  const inside = Math.min(last[0], Math.max(first[0], x));
  return inside === first[0] ? first[1] : interpolateLogLog(points, inside);
};

/** Points of a link in rising order of amperes: those of its size, and of the coarse curve between and beyond them. */
export const linkPoints = ({ speed, rating }: FuseLink, which: 'least' | 'most'): readonly LinkPoint[] => {
  const own = meltingPoints(speed, rating, which);
  if (own === undefined) throw new RangeError(`no fuse link of ${rating} A in the table`);
  const coarse = turned(coarseCurves[speed]);
  const multipleAt = (seconds: Seconds): number => blend(coarse, seconds);
  // How far each point of the size lies beside the coarse curve, by its time.
  const beside = turned(own.map(([amperes, seconds]): Point => [amperes / (rating * multipleAt(seconds)), seconds]));
  const bends = coarseCurves[speed].flatMap(([multiple, seconds]): readonly LinkPoint[] => {
    const after = own.findIndex(([, time]) => time < 0.95 * seconds);
    const [[fewer, later], [more]] = [own[after - 1] ?? [0, 0], own[after] ?? [0, 0]];
    const amperes = rating * multiple * blend(beside, seconds);
    // Only what lies truly between two points of the size; 10.1 s is 10 s.
    if (!(seconds < 0.95 * later && amperes > fewer && amperes < more)) return [];
    return [{ amperes, seconds, basis: 'published coarse curve, moved over' }];
  });
  const sized = own.map(([amperes, seconds]): LinkPoint => ({ amperes, seconds, basis: 'size, from memory' }));
  return [...sized, ...bends].sort((a, b) => a.amperes - b.amperes);
};

const curves = new Map<string, readonly Point[]>();

const curveOf = (link: FuseLink, which: 'least' | 'most'): readonly Point[] => {
  const key = `${link.rating}${link.speed} ${which}`;
  const known = curves.get(key);
  if (known !== undefined) return known;
  const points = linkPoints(link, which).map(({ amperes, seconds }): Point => [amperes, seconds]);
  curves.set(key, points);
  return points;
};

const timeOn = (points: readonly Point[], current: Amperes): Seconds => {
  const [first = [0, 0], last = [0, 0]] = [points[0], points.at(-1)];
  if (current < first[0]) return Number.POSITIVE_INFINITY;
  if (current > last[0]) return (last[1] * last[0] * last[0]) / (current * current);
  return interpolateLogLog(points, current);
};

/** Shortest melting time in seconds; Infinity below twice the rating, where the link carries the current. */
export const meltTime = (link: FuseLink, current: Amperes): Seconds =>
  current < carries * link.rating ? Number.POSITIVE_INFINITY : timeOn(curveOf(link, 'least'), current);

/** Longest total clearing time in seconds; Infinity where melting is not certain. */
export const clearTime = (link: FuseLink, current: Amperes): Seconds => timeOn(curveOf(link, 'most'), current) + arcing;

/** Amperes that melt the link in `seconds` at the earliest; for comparison with a curve in print. */
export const meltingCurrent = (link: FuseLink, seconds: Seconds): Amperes => {
  const points = turned(curveOf(link, 'least'));
  const [fastest = [0, 0]] = points;
  return seconds < fastest[0] ? fastest[1] * Math.sqrt(fastest[0] / seconds) : blend(points, seconds);
};
