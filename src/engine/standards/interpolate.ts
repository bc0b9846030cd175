/** Reading between the printed points of a published table or curve. */
import { exp, ln } from '../math/elementary.ts';

/** One printed point: what is entered, what is read. */
export type Point = readonly [number, number];

const segmentAt = (points: readonly Point[], x: number): readonly [Point, Point] => {
  const above = points.findIndex(([entered]) => entered >= x);
  const upper = Math.max(1, above < 0 ? points.length - 1 : above);
  const left = points[upper - 1];
  const right = points[upper];
  if (!left || !right) throw new RangeError('a curve needs two points');
  return [left, right];
};

/** Straight line between points in rising order of x; beyond the ends the end value holds. */
export const interpolate = (points: readonly Point[], x: number): number => {
  const [[x0, y0], [x1, y1]] = segmentAt(points, x);
  const part = Math.min(1, Math.max(0, (x - x0) / (x1 - x0)));
  return y0 + part * (y1 - y0);
};

/** Straight line on log-log paper between points in rising order of x; beyond the ends the end slope goes on. */
export const interpolateLogLog = (points: readonly Point[], x: number): number => {
  const [[x0, y0], [x1, y1]] = segmentAt(points, x);
  if (x === x0) return y0;
  if (x === x1) return y1;
  return exp(ln(y0) + (ln(x / x0) / ln(x1 / x0)) * ln(y1 / y0));
};
