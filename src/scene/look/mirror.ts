/**
 * What metal and glaze mirror, and the light that comes from all round: the sky, filtered for each roughness by the renderer's own
 * generator. The sky is smooth, so 64 texels a face do; the generator's own 256 take twenty times as long.
 */
import {
  CubeCamera,
  HalfFloatType,
  LinearMipmapLinearFilter,
  LinearSRGBColorSpace,
  PMREMGenerator,
  type Scene,
  WebGLCubeRenderTarget,
  type WebGLRenderer,
} from 'three';

const SIZE = 64;
/** The smallest mip of a filtered map, by the generator. */
const LEAST = 8;

const cubeOf = (generateMipmaps: boolean): WebGLCubeRenderTarget =>
  new WebGLCubeRenderTarget(SIZE, {
    minFilter: LinearMipmapLinearFilter,
    generateMipmaps,
    type: HalfFloatType,
    colorSpace: LinearSRGBColorSpace,
    depthBuffer: false,
  });

export interface Mirror {
  /** Draws the sky's scene and has another mirror it. */
  draw(renderer: WebGLRenderer, sky: Scene, into: Scene): void;
  dispose(): void;
}

/** Nothing is made until the first drawing; then its shaders are kept. */
export const mirrorOf = (): Mirror => {
  let made: { readonly generator: PMREMGenerator; readonly sky: WebGLCubeRenderTarget } | null = null;
  let filtered: WebGLCubeRenderTarget | null = null;
  return {
    draw: (renderer, sky, into) => {
      made ??= { generator: new PMREMGenerator(renderer), sky: cubeOf(true) };
      new CubeCamera(0.1, 10, made.sky).update(renderer, sky);
      filtered?.dispose();
      filtered = cubeOf(false);
      for (let size = SIZE; size >= LEAST; size /= 2)
        filtered.texture.mipmaps.push({ width: size, height: size } as never);
      filtered.texture.isPMREMTexture = true;
      made.generator.fromCubemap(made.sky.texture, filtered as never);
      into.environment = filtered.texture;
      into.environmentIntensity = 0.9;
    },
    dispose: () => {
      made?.generator.dispose();
      made?.sky.dispose();
      filtered?.dispose();
      made = null;
      filtered = null;
    },
  };
};
