/**
 * What makes a tiled texture a piece of ground: broad patches that break its repetition, snow that lies on it, and on a road the
 * tracks that wheels polish and a worn line along the middle.
 */
import type { MeshStandardMaterial } from 'three';
import { road } from './lie.ts';

/** Colour of snow, linear. */
export const SNOW = '0.78, 0.81, 0.86';

export interface SurfaceLook {
  /** Tiles of the broad patches to one of the texture. */
  readonly broad: number;
  /** Wheels go here, and a broken line is painted where `line` says so. */
  readonly road?: { readonly line: boolean };
}

const metres = (n: number): string => n.toFixed(3);

/** Ten feet of paint to thirty of gap, four inches wide: broken lines of the MUTCD, section 3A (from memory). */
const painted = `
float along = fract(vLie.x / 12.19) * 12.19;
float soft = fwidth(across) + 0.008;
float worn = 0.55 + 0.45 * texture2D(map, vMapUv * 0.61).g / max(0.001, mean.g);
float stroke = smoothstep(0.051 + soft, 0.051 - soft, across) * step(along, 3.05) * clamp(worn - 0.35, 0.0, 0.75);
diffuseColor.rgb = mix(diffuseColor.rgb, vec3(0.62, 0.43, 0.09), stroke);`;

const wheels = (line: boolean): string => `
float across = abs(vLie.y - ${metres(road.middle)});
float track = smoothstep(0.5, 0.1, abs(abs(across - 1.25) - 0.62)) * step(across, 2.4);
diffuseColor.rgb *= 1.0 - 0.13 * track;
${line ? painted : ''}`;

/** A copy of a material that lies on the ground; `lying`: how thick snow does, 0 to 1, shared by all the grounds of a land. */
export const surfaceOf = (
  material: MeshStandardMaterial,
  look: SurfaceLook,
  lying: { value: number },
): MeshStandardMaterial => {
  const copy = material.clone();
  copy.onBeforeCompile = (shader) => {
    shader.uniforms.lying = lying;
    shader.vertexShader = shader.vertexShader
      .replace('#include <common>', '#include <common>\nvarying vec2 vLie;')
      .replace('#include <begin_vertex>', '#include <begin_vertex>\nvLie = position.xy;');
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <common>', '#include <common>\nvarying vec2 vLie;\nuniform float lying;')
      .replace(
        '#include <map_fragment>',
        `#include <map_fragment>
vec3 mean = max(textureLod(map, vec2(0.5), 12.0).rgb, vec3(0.004));
vec3 patches = texture2D(map, vMapUv * ${metres(look.broad)} + 0.37).rgb / mean;
float wave = sin(vLie.x * 0.21 + sin(vLie.y * 0.17) * 1.7) * sin(vLie.y * 0.26 + 0.6) * 0.5 + 0.5;
diffuseColor.rgb *= mix(0.8, 1.16, wave) * mix(vec3(1.0), patches, 0.45);
${look.road ? wheels(look.road.line) : 'float track = 0.0;'}
float deep = lying * (1.0 - track * smoothstep(0.55, 1.25, dot(patches, vec3(0.333)) - 0.3 * wave)) * smoothstep(-0.25, 0.9, dot(patches, vec3(0.333)) + 0.35 * wave);
diffuseColor.rgb = mix(diffuseColor.rgb, vec3(${SNOW}), deep);`,
      );
  };
  copy.customProgramCacheKey = () => `ground ${JSON.stringify(look)}`;
  return copy;
};
