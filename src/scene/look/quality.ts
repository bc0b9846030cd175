/** What a machine without a graphics processor is spared: anisotropic filtering alone costs it fifty times a frame. */
import type { Mesh, MeshStandardMaterial, Object3D, Texture, WebGLRenderer } from 'three';

/** Whether the renderer computes on the processor, as far as it says. */
export const isSoftware = (renderer: WebGLRenderer): boolean => {
  const gl = renderer.getContext();
  const info = gl.getExtension('WEBGL_debug_renderer_info');
  const name = info ? String(gl.getParameter(info.UNMASKED_RENDERER_WEBGL)) : '';
  return /llvmpipe|softpipe|swiftshader|lavapipe|software|basic render/i.test(name);
};

/** The textures of what is drawn, each once. */
export const texturesOf = (root: Object3D): readonly Texture[] => {
  const found = new Set<Texture>();
  root.traverse((o) => {
    const { map, normalMap } = ((o as Mesh).material ?? {}) as Partial<MeshStandardMaterial>;
    for (const texture of [map, normalMap]) if (texture) found.add(texture);
  });
  return [...found];
};

/** One mesh for each material in a scene, to have its shaders made. */
export const oneOfEach = (root: Object3D): readonly Mesh[] => {
  const found = new Map<unknown, Mesh>();
  root.traverse((o) => {
    const mesh = o as Mesh;
    if (mesh.isMesh && !found.has(mesh.material)) found.set(mesh.material, mesh);
  });
  return [...found.values()];
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
