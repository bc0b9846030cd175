/** What a machine without a graphics processor is spared: anisotropic filtering alone costs it fifty times a frame. */
import type { Mesh, MeshStandardMaterial, Object3D, WebGLRenderer } from 'three';

/** Whether the renderer computes on the processor, as far as it says. */
export const isSoftware = (renderer: WebGLRenderer): boolean => {
  const gl = renderer.getContext();
  const info = gl.getExtension('WEBGL_debug_renderer_info');
  const name = info ? String(gl.getParameter(info.UNMASKED_RENDERER_WEBGL)) : '';
  return /llvmpipe|softpipe|swiftshader|lavapipe|software|basic render/i.test(name);
};

/** Filters the textures of what is drawn the plain way. */
export const plainFilters = (root: Object3D): void => {
  root.traverse((o) => {
    const { map, normalMap } = ((o as Mesh).material ?? {}) as Partial<MeshStandardMaterial>;
    for (const texture of [map, normalMap]) {
      if (texture && texture.anisotropy > 1) {
        texture.anisotropy = 1;
        texture.needsUpdate = true;
      }
    }
  });
};
