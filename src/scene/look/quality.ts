/** What a machine without a graphics processor is spared: anisotropic filtering alone costs it fifty times a frame. */
import type { MeshStandardMaterial, WebGLRenderer } from 'three';
import type { Materials } from '../materials/materials.ts';

/** Whether the renderer computes on the processor, as far as it says. */
export const isSoftware = (renderer: WebGLRenderer): boolean => {
  const gl = renderer.getContext();
  const info = gl.getExtension('WEBGL_debug_renderer_info');
  const name = info ? String(gl.getParameter(info.UNMASKED_RENDERER_WEBGL)) : '';
  return /llvmpipe|softpipe|swiftshader|lavapipe|software|basic render/i.test(name);
};

/** Filters textures the plain way. */
export const plainFilters = (set: Materials): void => {
  for (const material of Object.values(set) as MeshStandardMaterial[]) {
    for (const texture of [material.map, material.normalMap]) {
      if (texture && texture.anisotropy > 1) {
        texture.anisotropy = 1;
        texture.needsUpdate = true;
      }
    }
  }
};
