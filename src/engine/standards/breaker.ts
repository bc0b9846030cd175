/**
 * Moulded-case breakers of panels and portable generators: the latest trip and whether an earlier one is possible.
 * UL 489 calibration points: holds 100 %; trips at 135 % within 1 h (50 A and less) and at 200 % within 2 min (30 A and
 * less), read in a published comparison table. The points for larger frames, the 300 % points (NEMA AB 4) and the
 * magnetic band of 5 to 10 times rating are from memory. Thermal band 1.05 to 1.35: one manufacturer's data sheet.
 * Between points log-log; beyond 300 % I2t constant up to the magnetic trip. Hot ambient and preloading are left out.
 */
import type { Amperes, Seconds } from '../units/quantities.ts';
import { interpolateLogLog, type Point } from './interpolate.ts';

/** Highest rating of the frame, and the latest trip at 135, 200 and 300 %. */
type Frame = readonly [Amperes, Seconds, Seconds, Seconds];

const frames: readonly Frame[] = [
  [30, 3600, 120, 50],
  [50, 3600, 240, 80],
  [100, 7200, 360, 140],
  [150, 7200, 480, 200],
  [225, 7200, 600, 230],
];

const magneticLow = 5;
const magneticHigh = 10;
const oneCycle: Seconds = 1 / 60;

/** Latest trip in seconds; Infinity where the breaker need not trip. Throws for a rating above 225 A or not positive. */
export const tripTime = (rating: Amperes, current: Amperes): Seconds => {
  const frame = frames.find(([highest]) => rating <= highest);
  if (!frame || !(rating > 0)) throw new RangeError(`no trip points for a ${rating} A breaker`);
  const multiple = current / rating;
  if (multiple < 1.35) return Number.POSITIVE_INFINITY;
  if (multiple >= magneticHigh) return oneCycle;
  const [, at135, at200, at300] = frame;
  const points: readonly Point[] = [
    [1.35, at135],
    [2, at200],
    [3, at300],
  ];
  return multiple > 3 ? (at300 * 9) / (multiple * multiple) : interpolateLogLog(points, multiple);
};

/** Whether a trip is possible at all: above the low end of the thermal band. */
export const mayTrip = (rating: Amperes, current: Amperes): boolean => current > 1.05 * rating;

/** Whether the breaker may trip at once: at or above the low end of the magnetic band. */
export const mayTripAtOnce = (rating: Amperes, current: Amperes): boolean => current >= magneticLow * rating;
