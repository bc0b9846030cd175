/**
 * Where the brightest part of the sky is, and how warm: one small array that every fog and sky shader reads. Dawn stands toward
 * the load, dusk toward the source, day high over the road; at night there is no warm side.
 */
import { ShaderLib, Vector3 } from 'three';
import type { Site } from '../../engine/world/types.ts';

/** Direction (x, y, z) and warmth; handed to shaders by reference, so writing it is enough. */
export const sunWay = new Float32Array([0.55, 0.82, 0.16, 1]);

interface Sun {
  readonly way: Vector3;
  readonly warmth: number;
  readonly colour: readonly [number, number, number];
}

const suns: Readonly<Record<Site['light'], Sun>> = {
  dawn: { way: new Vector3(0.55, 0.82, 0.16), warmth: 1, colour: [1, 0.9, 0.76] },
  dusk: { way: new Vector3(-0.8, 0.58, 0.1), warmth: 1.15, colour: [1, 0.74, 0.5] },
  day: { way: new Vector3(-0.36, -0.56, 0.75), warmth: 0.22, colour: [1, 0.96, 0.88] },
  night: { way: new Vector3(-0.4, 0.3, 0.86), warmth: 0, colour: [0.7, 0.82, 1] },
};

/** The sun, or what stands for it, at this hour; sets the shared array. */
export const followSun = (light: Site['light']): Sun => {
  const sun = suns[light];
  const { x, y, z } = sun.way.clone().normalize();
  sunWay.set([x, y, z, sun.warmth]);
  return sun;
};

let known = false;

/** Gives the uniform to the shaders of everything that stands in air; once a page. */
export const installSun = (): void => {
  if (known) return;
  known = true;
  for (const name of ['standard', 'physical', 'basic', 'lambert', 'phong', 'sprite'] as const) {
    const shader = ShaderLib[name];
    if (shader) shader.uniforms.sunWay = { value: sunWay };
  }
};
