/**
 * The headlamp, which follows the look, and the flashlight in the hand. The lamp's shadows are drawn a little wider than its cone, and
 * anew only when the cone has turned out of them, the eye has moved or what they fall on has changed.
 */
import type { SpotLight, Vector3 } from 'three';
import type { Vec3 } from '../../engine/math/vec3.ts';

/** How much wider than the cone shadows are drawn, and the turn for which that is enough, radians (cone 0.34 half). */
export const WIDER = 1.25;
const SLACK = 0.34 * (WIDER - 1) * 0.95;

export interface Beams {
  /** Points both lights; out when `lit` is false. `near`: metres to what is looked at; `spot`: which way the flashlight is held. */
  point(eye: Vector3, look: Vec3, lit: boolean, near: number, spot: Vec3 | null): void;
  /** What throws shadows has changed. */
  stale(): void;
}

/** Both lights as they are held at the eye. */
export const beamsOf = (lamp: SpotLight, hand: SpotLight): Beams => {
  const { shadow } = lamp;
  shadow.autoUpdate = false;
  shadow.focus = WIDER;
  const drawn = { eye: lamp.position.clone().setScalar(Number.NaN), look: [0, 0, 0] as Vec3 };
  let stale = true;
  return {
    stale: () => {
      stale = true;
    },
    point: (eye, d, lit, near, spot) => {
      lamp.visible = lit;
      hand.visible = lit;
      lamp.intensity = lit ? (lamp.userData.candela as number) * Math.min(1, Math.max(0.05, near / 9)) ** 1.25 : 0;
      hand.intensity = spot === null ? 0 : 1.6 * lamp.intensity;
      if (!lit) return;
      // Held at the chest, a little to the right.
      hand.position.set(eye.x + 0.2 * d[1], eye.y - 0.2 * d[0], eye.z - 0.3);
      if (spot) hand.target.position.set(eye.x + spot[0] * 14, eye.y + spot[1] * 14, eye.z + spot[2] * 14);
      lamp.position.set(eye.x, eye.y, eye.z + 0.14);
      lamp.target.position.set(eye.x + d[0] * 10, eye.y + d[1] * 10, eye.z + d[2] * 10);
      for (const o of [lamp, lamp.target, hand, hand.target]) o.updateMatrixWorld();
      const cosine = drawn.look[0] * d[0] + drawn.look[1] * d[1] + drawn.look[2] * d[2];
      if (!stale && drawn.eye.equals(eye) && cosine > Math.cos(SLACK)) return;
      stale = false;
      drawn.eye.copy(eye);
      drawn.look = d;
      shadow.needsUpdate = true;
    },
  };
};
