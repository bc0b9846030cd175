/** The renderer of the world below: how it is made, whether there can be one, and what it holds. */
import {
  ACESFilmicToneMapping,
  type Light,
  PCFShadowMap,
  type Scene,
  type SpotLight,
  SRGBColorSpace,
  WebGLRenderer,
} from 'three';
import { texturesOf } from './look/quality.ts';

/** Whether this browser gives a WebGL context at all. */
export const hasWebGl = (): boolean => {
  const probe = document.createElement('canvas');
  const context = probe.getContext('webgl2');
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
};

/** A renderer on a canvas. */
export const rendererOn = (canvas: HTMLCanvasElement): WebGLRenderer => {
  const renderer = new WebGLRenderer({ canvas, antialias: true, powerPreference: 'high-performance' });
  renderer.outputColorSpace = SRGBColorSpace;
  renderer.toneMapping = ACESFilmicToneMapping;
  renderer.toneMappingExposure = 1;
  renderer.shadowMap.enabled = true;
  renderer.shadowMap.type = PCFShadowMap;
  // Asking after each shader whether it is sound would wait for it.
  renderer.debug.checkShaderErrors = import.meta.env.DEV;
  return renderer;
};

/** What is held for drawing: counts, and bytes of textures with their mipmaps, shadow maps among them. */
export interface Held {
  readonly geometries: number;
  readonly textures: number;
  readonly textureBytes: number;
}

export const heldBy = (renderer: WebGLRenderer, scene: Scene, lights: readonly Light[]): Held => {
  const { geometries, textures } = renderer.info.memory;
  const shadows = lights.reduce((sum, light) => {
    const { shadow } = light as Partial<SpotLight>;
    const map = shadow?.map;
    return sum + (map ? map.width * map.height * 8 : 0);
  }, 0);
  const painted = texturesOf(scene).reduce((sum, { image }) => {
    const { width = 0, height = 0 } = (image ?? {}) as { width?: number; height?: number };
    return sum + width * height * 4 * (4 / 3);
  }, 0);
  return { geometries, textures, textureBytes: painted + shadows };
};
