/** Walks the outer surface of a body of revolution: by azimuth seen from above and by height or length along the profile. */
import { Vector3 } from 'three';
import type { MarkSurface, Point } from './types.ts';

export interface Spot {
  readonly at: Vector3;
  readonly normal: Vector3;
  readonly radius: number;
}

/** Lengths along the profile at its points. */
export const runOf = (surface: MarkSurface): number[] => {
  const run = [0];
  surface.profile.forEach((p, i) => {
    const q = surface.profile[i + 1];
    if (q) run.push((run[i] as number) + Math.sqrt((q[0] - p[0]) ** 2 + (q[1] - p[1]) ** 2));
  });
  return run;
};

/** Length along the profile of the point nearest the height `z` of the part, outermost first. */
export const lengthAt = (surface: MarkSurface, azimuth: number, z: number): number => {
  const run = runOf(surface);
  const a = localAzimuth(surface, azimuth);
  let best = Number.POSITIVE_INFINITY;
  let length = 0;
  for (let i = 0; i < surface.profile.length - 1; i++) {
    for (let k = 0; k <= 8; k++) {
      const s = (run[i] as number) + ((run[i + 1] as number) - (run[i] as number)) * (k / 8);
      const spot = spotAt(surface, a, s, run);
      const cost = Math.abs(spot.at.z - z) - 0.05 * spot.radius;
      if (cost < best) {
        best = cost;
        length = s;
      }
    }
  }
  return length;
};

/** Azimuth about the body's own axis of a direction given in the part's frame. */
export const azimuthOf = (surface: MarkSurface, [x, y, z]: Point): number => {
  const d = new Vector3(x, y, z).transformDirection(surface.frame.clone().invert());
  return Math.atan2(d.y, d.x);
};

/** The same of a level direction by its azimuth. */
export const localAzimuth = (surface: MarkSurface, azimuth: number): number =>
  azimuthOf(surface, [Math.cos(azimuth), Math.sin(azimuth), 0]);

/** Length along the profile that comes nearest to a place of the part's frame, at a local azimuth, and how near. */
export const nearestOn = (surface: MarkSurface, azimuth: number, place: Point): { length: number; away: number } => {
  const run = runOf(surface);
  const total = run.at(-1) ?? 0;
  const to = new Vector3(...place);
  const steps = Math.max(60, Math.ceil(total / 0.02));
  let best = { length: 0, away: Number.POSITIVE_INFINITY };
  for (let i = 0; i <= steps; i++) {
    const length = (total * i) / steps;
    const away = spotAt(surface, azimuth, length, run).at.distanceTo(to);
    if (away < best.away) best = { length, away };
  }
  return best;
};

/** Place and outward normal, in the part's frame, at a local azimuth and a length along the profile. */
export const spotAt = (surface: MarkSurface, azimuth: number, length: number, run: readonly number[]): Spot => {
  const last = surface.profile.length - 2;
  let i = 0;
  while (i < last && (run[i + 1] as number) < length) i++;
  const p = surface.profile[i] as readonly [number, number];
  const q = surface.profile[i + 1] as readonly [number, number];
  const l = Math.max(1e-9, (run[i + 1] as number) - (run[i] as number));
  const k = Math.min(1, Math.max(0, (length - (run[i] as number)) / l));
  const r = p[0] + (q[0] - p[0]) * k;
  const z = p[1] + (q[1] - p[1]) * k;
  const nr = (q[1] - p[1]) / l;
  const nz = -(q[0] - p[0]) / l;
  const c = Math.cos(azimuth);
  const s = Math.sin(azimuth);
  if (surface.box) {
    const [hx, hy] = surface.box;
    const out = 1 / Math.max(Math.abs(c) / hx, Math.abs(s) / hy);
    const flat =
      Math.abs(c) / hx >= Math.abs(s) / hy ? new Vector3(Math.sign(c), 0, 0) : new Vector3(0, Math.sign(s), 0);
    const on = new Vector3(out * c, out * s, z).addScaledVector(flat, surface.lift).applyMatrix4(surface.frame);
    return { at: on, normal: flat.transformDirection(surface.frame), radius: out };
  }
  const normal = new Vector3(nr * c, nr * s, nz);
  const at = new Vector3(r * c, r * s, z).addScaledVector(normal, surface.lift).applyMatrix4(surface.frame);
  return { at, normal: normal.transformDirection(surface.frame), radius: r };
};
