/** Where the trainee looks: yaw, pitch, field; the field of view of each aid; moves from one view to another. Angles in radians. */
import type { Vec3 } from '../../engine/math/vec3.ts';
import type { Aid } from '../../engine/senses/types.ts';

export interface Look {
  readonly yaw: number;
  readonly pitch: number;
  /** Magnification against the bare eye's whole view. */
  readonly zoom: number;
}

const degree = Math.PI / 180;
/** Vertical field in a wide window, horizontal field that a tall one keeps. */
const TALL = 60 * degree;
const WIDE = 44 * degree;
const TOP = 80 * degree;

/**
 * How near each aid brings things. The whole view is smaller on a screen than in life; attention makes good for that (3), and a
 * glass of eight multiplies either.
 */
export const zooms: Readonly<Record<Aid, { readonly near: number; readonly far: number; readonly least: number }>> = {
  eyes: { least: 1, far: 1, near: 3 },
  lamp: { least: 1, far: 1, near: 3 },
  glass: { least: 5, far: 8, near: 24 },
};

/** Vertical field of view for a window's width over height and a zoom. */
export const fieldOf = (aspect: number, zoom: number): number => {
  const whole = Math.min(TOP, Math.max(TALL, 2 * Math.atan(Math.tan(WIDE / 2) / aspect)));
  return 2 * Math.atan(Math.tan(whole / 2) / zoom);
};

const wrap = (a: number): number => a - 2 * Math.PI * Math.round(a / (2 * Math.PI));

/** Keeps yaw within a turn and pitch short of the zenith. */
export const kept = (look: Look): Look => ({
  ...look,
  yaw: wrap(look.yaw),
  pitch: Math.min(89.5 * degree, Math.max(-80 * degree, look.pitch)),
});

export const directionOf = ({ yaw, pitch }: Look): Vec3 => [
  Math.cos(pitch) * Math.cos(yaw),
  Math.cos(pitch) * Math.sin(yaw),
  Math.sin(pitch),
];

/** Yaw and pitch from an eye to a place. */
export const anglesTo = (eye: Vec3, place: Vec3): { readonly yaw: number; readonly pitch: number } => {
  const dx = place[0] - eye[0];
  const dy = place[1] - eye[1];
  return { yaw: Math.atan2(dy, dx), pitch: Math.atan2(place[2] - eye[2], Math.hypot(dx, dy)) };
};

/** The view with which somebody arrives: a pole from its top down as far as the field goes, or the horizon if it is far. */
export const arriving = (eye: Vec3, foot: Vec3, top: Vec3, field: number): Look => {
  const { yaw, pitch } = anglesTo(eye, top);
  const low = anglesTo(eye, foot).pitch;
  const level = Math.max(pitch - field / 2 + 0.09, Math.min(0.05, (pitch + low) / 2));
  return kept({ yaw, pitch: Math.min(level, 75 * degree), zoom: 1 });
};

const ease = (t: number): number => t * t * (3 - 2 * t);

/** The view a share of the way from one to another, the short way round. */
export const between = (a: Look, b: Look, t: number): Look => {
  const k = ease(Math.min(1, Math.max(0, t)));
  return kept({
    yaw: a.yaw + wrap(b.yaw - a.yaw) * k,
    pitch: a.pitch + (b.pitch - a.pitch) * k,
    zoom: a.zoom * (b.zoom / a.zoom) ** k,
  });
};
