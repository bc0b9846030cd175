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

const cubeOf = (generateMipmaps: boolean, size = SIZE): WebGLCubeRenderTarget =>
  new WebGLCubeRenderTarget(size, {
    minFilter: LinearMipmapLinearFilter,
    generateMipmaps,
    type: HalfFloatType,
    colorSpace: LinearSRGBColorSpace,
    depthBuffer: false,
  });

export interface Mirror {
  /** Draws the sky's scene and has another mirror it, in steps: each of the generator's shaders is made in one of its own. */
  steps(renderer: WebGLRenderer, sky: Scene, into: Scene): Generator<void>;
  dispose(): void;
}

/** A target for filtered maps down to the roughest of them, or for the roughest alone. */
const filteredOf = (size: number): WebGLCubeRenderTarget => {
  const target = cubeOf(false, size);
  for (let each = size; each >= LEAST; each /= 2) target.texture.mipmaps.push({ width: each, height: each } as never);
  target.texture.isPMREMTexture = true;
  return target;
};

/** Nothing is made until the first drawing; then its shaders are kept. */
export const mirrorOf = (): Mirror => {
  let made: { readonly generator: PMREMGenerator; readonly sky: WebGLCubeRenderTarget } | null = null;
  let filtered: WebGLCubeRenderTarget | null = null;
  return {
    steps: function* (renderer, sky, into) {
      const first = made === null;
      made ??= { generator: new PMREMGenerator(renderer), sky: cubeOf(true) };
      const { generator, sky: cube } = made;
      if (first) {
        generator.compileCubemapShader();
        yield;
      }
      new CubeCamera(0.1, 10, cube).update(renderer, sky);
      yield;
      if (first) {
        // The roughest map has a shader to itself.
        const least = filteredOf(LEAST);
        generator.fromCubemap(cube.texture, least as never);
        least.dispose();
        yield;
      }
      filtered?.dispose();
      filtered = filteredOf(SIZE);
      generator.fromCubemap(cube.texture, filtered as never);
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
