/**
 * Melting currents of expulsion fuse links by size, from memory of ANSI C37.42 (the tables of type K and T links): least
 * and most amperes that melt one in 300 s (600 s above 100 A), in 10 s and in 0.1 s. No copy to read was found, of
 * ANSI C37.42-1996, IEC 60282-2:2008 and utilities' specifications after NBR 7282 the first pages only; so every figure
 * here is from memory, and is held against what was read: the rule that a link carries 200 % of its rating, the coarse curves
 * in multiples of the rating of the OpenDSS TCC_Curve library (klink, tlink), and the speed ratios that a public program for
 * coordination studies gives after C37.42 (K 6.0 at 6 A to 8.1 at 200 A, T 10 to 13). Left out: 1, 2 and 3 A links, types N
 * and S, makers' own tolerances.
 */
import type { Amperes, Seconds } from '../units/quantities.ts';
import type { Point } from './interpolate.ts';

/** Link speeds. */
export type LinkSpeed = 'K' | 'T';

/** Sizes in amperes (a published feeder-model script's list). */
export const linkSizes = [6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 65, 80, 100, 140, 200] as const;

/** Least and most amperes of the long time, of 10 s, of 0.1 s. */
type Row = readonly [number, number, number, number, number, number];

const rows: Readonly<Record<LinkSpeed, Readonly<Record<number, Row>>>> = {
  K: {
    6: [12, 14.4, 13.5, 20.5, 72, 86],
    8: [15, 18, 18, 27, 97, 116],
    10: [19.5, 23.4, 22.5, 34, 128, 154],
    12: [25, 30, 29.5, 44, 166, 199],
    15: [31, 37.2, 37, 55, 215, 258],
    20: [39, 47, 48, 71, 273, 328],
    25: [50, 60, 60, 90, 350, 420],
    30: [63, 76, 77.5, 115, 447, 546],
    40: [80, 96, 98, 146, 565, 680],
    50: [101, 121, 126, 188, 719, 862],
    65: [128, 153, 159, 237, 918, 1100],
    80: [160, 192, 205, 307, 1180, 1420],
    100: [200, 240, 258, 388, 1520, 1820],
    140: [310, 372, 430, 650, 2470, 2970],
    200: [480, 576, 760, 1150, 3880, 4650],
  },
  T: {
    6: [12, 14.4, 15.3, 23, 120, 144],
    8: [15, 18, 20.5, 31, 166, 199],
    10: [19.5, 23.4, 26.5, 40, 224, 269],
    12: [25, 30, 34.5, 52, 296, 355],
    15: [31, 37.2, 44.5, 67, 388, 466],
    20: [39, 47, 57, 85, 496, 595],
    25: [50, 60, 73.5, 109, 635, 762],
    30: [63, 76, 93, 138, 812, 975],
    40: [80, 96, 120, 178, 1040, 1240],
    50: [101, 121, 152, 226, 1310, 1570],
    65: [128, 153, 195, 291, 1650, 1975],
    80: [160, 192, 248, 370, 2080, 2500],
    100: [200, 240, 319, 475, 2620, 3150],
    140: [310, 372, 520, 775, 4000, 4800],
    200: [480, 576, 850, 1275, 6250, 7470],
  },
};

const longTime = (rating: Amperes): Seconds => (rating > 100 ? 600 : 300);

/** Amperes and seconds of a size in rising order of amperes, least or most; undefined for a size that is not listed. */
export const meltingPoints = (
  speed: LinkSpeed,
  rating: Amperes,
  which: 'least' | 'most',
): readonly Point[] | undefined => {
  const row = rows[speed][rating];
  if (row === undefined) return undefined;
  const at = which === 'least' ? 0 : 1;
  return [
    [row[at], longTime(rating)],
    [row[at + 2] ?? 0, 10],
    [row[at + 4] ?? 0, 0.1],
  ];
};

/** Seconds against multiples of the rating, one coarse curve for all sizes: as read in the OpenDSS TCC_Curve library. */
export const coarseCurves: Readonly<Record<LinkSpeed, readonly Point[]>> = {
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
