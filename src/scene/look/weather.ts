/**
 * Light of the hour: sky, air, ambient and dawn from the site's illuminance and visibility, and the headlamp.
 * Method: radiance in proportion to lux, shown through an eye that has adapted to it for the greater part (exponent 0.22 left,
 * chosen by eye), bluer the dimmer (Purkinje). The lamp is in the same units, so it is strong at dawn and nothing at noon.
 */
import {
  BackSide,
  Color,
  DirectionalLight,
  type FogExp2,
  HemisphereLight,
  Mesh,
  PMREMGenerator,
  Scene,
  ShaderMaterial,
  SphereGeometry,
  SpotLight,
  type WebGLRenderer,
} from 'three';
import type { Site } from '../../engine/world/types.ts';
import { airlightGlsl, dawn, extinction, fogOf } from './airlight.ts';

/** What of the sky's brightness is left after the eye has adapted, as an exponent. */
const ADAPTED = 0.22;
/** Radiance that stands for a sky of 25 lx. */
const DIM = 0.2;

export interface Weather {
  readonly fog: FogExp2;
  readonly dome: Mesh;
  readonly lights: readonly (HemisphereLight | DirectionalLight)[];
  readonly lamp: SpotLight;
  /** Takes light and air from the site; returns the environment to be reflected, or null if nothing changed. */
  follow(site: Site, brightness: number): boolean;
  /** How strong a lit window of some 60 lx shows against this sky, and the strength of the fog, 0 to 1. */
  shine(): { readonly window: number; readonly fog: number };
  /** Draws what metals and glaze reflect. */
  reflect(renderer: WebGLRenderer, scene: Scene): void;
  dispose(): void;
}

const shown = (lux: number): number => DIM * (lux / 25) ** ADAPTED;

/** Colour of the horizon: blue-grey before dawn, near white under bright fog. */
const horizon = (lux: number): Color => {
  const t = Math.min(1, Math.max(0, Math.log10(lux / 5) / 3));
  return new Color().setRGB(0.56 + 0.4 * t, 0.76 + 0.22 * t, 1.06 - 0.06 * t);
};

const domeMaterial = (): ShaderMaterial =>
  new ShaderMaterial({
    side: BackSide,
    depthWrite: false,
    uniforms: { base: { value: new Color() }, clear: { value: 0 } },
    vertexShader: `varying vec3 way;
void main() { way = position; gl_Position = projectionMatrix * vec4(mat3(viewMatrix) * position, 1.0); gl_Position.z = gl_Position.w * 0.99999; }`,
    fragmentShader: `uniform vec3 base; uniform float clear; varying vec3 way; ${airlightGlsl}
void main() {
  vec3 d = normalize(way);
  vec3 fogged = airlight(base, d);
  vec3 blue = base * mix(vec3(1.0), vec3(0.55, 0.78, 1.15), smoothstep(0.02, 0.6, d.z));
  gl_FragColor = vec4(mix(fogged, blue, clear * smoothstep(0.0, 0.25, d.z)), 1.0);
  #include <tonemapping_fragment>
  #include <colorspace_fragment>
  // Breaks the steps of an even sky.
  gl_FragColor.rgb += (fract(sin(dot(gl_FragCoord.xy, vec2(12.9898, 78.233))) * 43758.5453) - 0.5) / 170.0;
}`,
  });

/** Lights, air and sky of a scene; nothing is computed until the first `follow`. */
export const weatherOf = (): Weather => {
  const fog = fogOf();
  const material = domeMaterial();
  const dome = new Mesh(new SphereGeometry(1, 32, 20), material);
  dome.frustumCulled = false;
  dome.renderOrder = -10;
  const sky = new HemisphereLight(0xffffff, 0x50503c, 1);
  const glow = new DirectionalLight(0xffffff, 1);
  glow.position.copy(dawn).multiplyScalar(50);
  const lamp = new SpotLight(0xfff3df, 0, 90, 0.34, 0.85, 1.7);
  lamp.castShadow = true;
  lamp.shadow.mapSize.set(1024, 1024);
  lamp.shadow.camera.near = 0.4;
  lamp.shadow.camera.far = 40;
  lamp.shadow.bias = -0.0012;
  lamp.shadow.normalBias = 0.012;
  let known = '';
  let shine = { window: 1, fog: 1 };
  let made: { dispose(): void } | null = null;
  return {
    fog,
    dome,
    lights: [sky, glow],
    lamp,
    follow: (site, brightness) => {
      const key = `${site.skyLux} ${site.visibilityM} ${brightness}`;
      if (key === known) return false;
      known = key;
      const level = shown(site.skyLux) * brightness;
      const colour = horizon(site.skyLux);
      fog.density = extinction(site.visibilityM);
      fog.color.copy(colour).multiplyScalar(level);
      (material.uniforms.base as { value: Color }).value.copy(fog.color);
      (material.uniforms.clear as { value: number }).value = Math.min(1, Math.max(0, (site.visibilityM - 800) / 8000));
      sky.color.copy(colour);
      // Fog sends light from below as well; it is what undersides are seen by.
      sky.groundColor.setRGB(0.62, 0.61, 0.56);
      sky.intensity = 1.7 * level;
      glow.color.setRGB(1, 0.9, 0.76);
      glow.intensity = 1.1 * level;
      // The lamp's candela over the sky's lux, in the picture's units.
      shine = {
        window: (4.4 * level) / Math.max(1, site.skyLux / 25) ** 0.8,
        fog: Math.min(1, 170 / site.visibilityM),
      };
      lamp.userData.candela = (brightness * DIM * 5200 * (site.skyLux / 25) ** ADAPTED) / Math.max(site.skyLux, 2);
      return true;
    },
    shine: () => shine,
    reflect: (renderer, scene) => {
      made?.dispose();
      const around = new Scene();
      const copy = new Mesh(dome.geometry, material);
      around.add(copy);
      const generator = new PMREMGenerator(renderer);
      const target = generator.fromScene(around, 0, 0.1, 10);
      generator.dispose();
      scene.environment = target.texture;
      scene.environmentIntensity = 0.9;
      made = target;
    },
    dispose: () => {
      made?.dispose();
      dome.geometry.dispose();
      material.dispose();
      lamp.dispose();
    },
  };
};
