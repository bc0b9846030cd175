/**
 * Wires thinner than a pixel: the tube is kept one pixel wide and fades by what it would have covered, so a far conductor is a
 * faint even line and never a row of dots. Method: Humus 2012, "Phone-wire anti-aliasing". Left out: the width that the fog
 * scatters round it.
 */
import type { Material, MeshStandardMaterial } from 'three';
import { sway } from './blowout.ts';

/** Half the height of the picture in pixels over the tangent of half the field of view; shared by all thin wires. */
export const focal = { value: 800 };

/** Radial thickness of ice on every wire, metres; and that of a night of freezing rain (NESC medium loading: 1/4 in; the heavy is 1/2 in). */
export const glaze = { value: 0 };
export const ICE = 0.00635;

const cache = new Map<string, MeshStandardMaterial>();

/** A copy of a wire's material for tubes whose `swing` holds sideways and downward share of the sag, and the radius, metres. */
export const thin = (material: Material): MeshStandardMaterial => {
  const known = cache.get(material.uuid);
  if (known) return known;
  const copy = (material as MeshStandardMaterial).clone();
  copy.transparent = true;
  copy.onBeforeCompile = (shader) => {
    shader.uniforms.focal = focal;
    shader.uniforms.glaze = glaze;
    shader.uniforms.sway = sway;
    shader.vertexShader = shader.vertexShader
      .replace(
        '#include <common>',
        '#include <common>\nuniform float focal;\nuniform float glaze;\nuniform vec2 sway;\nattribute vec4 swing;\nvarying float vCover;',
      )
      .replace(
        '#include <begin_vertex>',
        `vec3 transformed = position;
  float far = length((modelViewMatrix * vec4(position, 1.0)).xyz);
  float coated = swing.w + glaze;
  float kept = max(coated, 0.62 * far / focal);
  vCover = coated / kept;
  transformed += normal * (kept - swing.w);
  // A span swings about the line through its supports, the more the deeper it hangs.
  transformed.xy += swing.xy * sway.x;
  transformed.z += swing.z * sway.y;`,
      );
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <common>', '#include <common>\nvarying float vCover;\nuniform float glaze;')
      .replace(
        '#include <color_fragment>',
        '#include <color_fragment>\ndiffuseColor.rgb = mix(diffuseColor.rgb, vec3(0.62, 0.68, 0.72), glaze > 0.0 ? 0.7 : 0.0);',
      )
      .replace('#include <opaque_fragment>', '#include <opaque_fragment>\ngl_FragColor.a *= min(1.0, vCover * 1.15);');
  };
  copy.customProgramCacheKey = () => 'thin';
  cache.set(material.uuid, copy);
  return copy;
};
