/**
 * Line recloser: fast and slow trips, waits between, then lockout. Curves A (fast) and D (slow) in multiples of the
 * pick-up, shots and waits: the defaults of OpenDSS (TCC_Curve.A, TCC_Curve.D; Recloser: four shots, one fast, waits
 * 0.5, 2, 2 s), log-log between the points, the last time beyond them. Generic: a real one has its own curve cards and
 * settings, and ground trips of its own. Left out: interrupting time unless it is given as `delay`, reset,
 * direct-current offset, cold load. Not below the pick-up: it never trips there.
 */
import type { Amperes, Seconds } from '../units/quantities.ts';
import { interpolateLogLog, type Point } from './interpolate.ts';

const curves: Readonly<Record<'fast' | 'slow', readonly Point[]>> = {
  fast: [
    [1, 0.15],
    [2.5, 0.07],
    [4.5, 0.05],
    [8, 0.045],
    [14, 0.045],
  ],
  slow: [
    [1, 6],
    [2.5, 0.7],
    [4.5, 0.2],
    [8, 0.06],
    [14, 0.02],
  ],
};

/** A trip curve. */
export type RecloserCurve = keyof typeof curves;

/** Settings of a recloser. */
export interface RecloserSettings {
  readonly pickUp: Amperes;
  /** Trips on the fast curve before the slow ones. */
  readonly fast: number;
  /** Waits with the contacts open between trips; there is one trip more than waits. */
  readonly waits: readonly Seconds[];
  /** Added to every trip. */
  readonly delay?: Seconds;
}

/** Waits and fast trips that OpenDSS takes where none are given. */
export const usualSequence = { fast: 1, waits: [0.5, 2, 2] } as const satisfies Omit<RecloserSettings, 'pickUp'>;

/** Seconds to trip on a curve; Infinity below the pick-up. */
export const recloserTrip = (curve: RecloserCurve, pickUp: Amperes, current: Amperes): Seconds => {
  const points = curves[curve];
  const multiple = current / pickUp;
  if (!(multiple >= 1)) return Number.POSITIVE_INFINITY;
  const last = points.at(-1) ?? [1, 0];
  return multiple >= last[0] ? last[1] : interpolateLogLog(points, multiple);
};

/** One stay closed on a fault, and what follows it. */
export interface Shot {
  readonly curve: RecloserCurve;
  /** When it was closed, counted from the fault. */
  readonly from: Seconds;
  readonly trips: Seconds;
  /** When it closes again; undefined: locked out. */
  readonly closesAgain: Seconds | undefined;
}

/** Shots on a lasting fault to lockout; none below the pick-up. */
export const recloserSequence = (settings: RecloserSettings, current: Amperes): readonly Shot[] => {
  const shots: Shot[] = [];
  let from = 0;
  for (let k = 0; k <= settings.waits.length; k++) {
    const curve = k < settings.fast ? 'fast' : 'slow';
    const trips = from + recloserTrip(curve, settings.pickUp, current) + (settings.delay ?? 0);
    if (trips === Number.POSITIVE_INFINITY) return [];
    const wait = settings.waits[k];
    const closesAgain = wait === undefined ? undefined : trips + wait;
    shots.push({ curve, from, trips, closesAgain });
    from = closesAgain ?? from;
  }
  return shots;
};

/** Seconds that a lasting fault is fed, all shots together. */
export const timeFed = (shots: readonly Shot[]): Seconds =>
  shots.reduce((sum, { from, trips }) => sum + trips - from, 0);

/** Seconds from the fault to lockout; undefined without a shot. */
export const lockoutTime = (shots: readonly Shot[]): Seconds | undefined => shots.at(-1)?.trips;
