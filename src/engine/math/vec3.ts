/** Vectors in space, in metres where they are positions. */

export type Vec3 = readonly [x: number, y: number, z: number];

export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const sub = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (a: Vec3, factor: number): Vec3 => [a[0] * factor, a[1] * factor, a[2] * factor];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const length = (a: Vec3): number => Math.sqrt(dot(a, a));
export const distance = (a: Vec3, b: Vec3): number => {
  const x = a[0] - b[0];
  const y = a[1] - b[1];
  const z = a[2] - b[2];
  return Math.sqrt(x * x + y * y + z * z);
};

/** Unit vector along a; throws a RangeError for the zero vector, which has no direction. */
export function normalise(a: Vec3): Vec3 {
  const size = length(a);
  if (size === 0) throw new RangeError('the zero vector has no direction');
  return scale(a, 1 / size);
}

/** The point a fraction t of the way from a to b. */
export const lerp = (a: Vec3, b: Vec3, t: number): Vec3 => add(a, scale(sub(b, a), t));

/** Shortest distance from a point to the segment from a to b (a = b allowed). Written out: it is asked more often than anything else. */
export function distanceToSegment(point: Vec3, a: Vec3, b: Vec3): number {
  const alongX = b[0] - a[0];
  const alongY = b[1] - a[1];
  const alongZ = b[2] - a[2];
  const squared = alongX * alongX + alongY * alongY + alongZ * alongZ;
  if (squared === 0) return distance(point, a);
  const toward = (point[0] - a[0]) * alongX + (point[1] - a[1]) * alongY + (point[2] - a[2]) * alongZ;
  const t = Math.min(1, Math.max(0, toward / squared));
  const x = point[0] - (a[0] + alongX * t);
  const y = point[1] - (a[1] + alongY * t);
  const z = point[2] - (a[2] + alongZ * t);
  return Math.sqrt(x * x + y * y + z * z);
}
