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
  Scene,
  ShaderMaterial,
  SphereGeometry,
  SpotLight,
  Vector2,
  type WebGLRenderer,
} from 'three';
import type { Site } from '../../engine/world/types.ts';
import { airlightGlsl, extinction, fogOf } from './airlight.ts';
import { WIDER } from './beams.ts';
import { CASTERS } from './casters.ts';
import { cloudsGlsl, cloudsOf } from './clouds.ts';
import { mirrorOf } from './mirror.ts';
import { airOf } from './sky.ts';
import { followSun, sunWay } from './sun.ts';

/** What of the sky's brightness is left after the eye has adapted, as an exponent. */
const ADAPTED = 0.22;
/** Radiance that stands for a sky of 25 lx. */
const DIM = 0.2;

export interface Weather {
  readonly fog: FogExp2;
  readonly dome: Mesh;
  readonly lights: readonly (HemisphereLight | DirectionalLight)[];
  readonly lamp: SpotLight;
  /** The flashlight in the hand: a narrow spot that goes where one points while the headlamp follows the look. */
  readonly hand: SpotLight;
  /** Takes light and air from the site; returns the environment to be reflected, or null if nothing changed. */
  follow(site: Site, brightness: number): boolean;
  /** How strong a lit window of some 60 lx shows against this sky, and the strength of the fog, 0 to 1. */
  shine(): { readonly window: number; readonly fog: number };
  /** Forgets what was drawn on a context that was lost. */
  lost(): void;
  /** Has the shadows of the sun drawn anew. */
  castAnew(): void;
  /** A flash beyond the horizon, 0 to 1. */
  flash(strength: number): void;
  /** Draws what metals and glaze reflect, if light or air have changed; in steps. */
  reflect(renderer: WebGLRenderer, scene: Scene): Generator<void>;
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
    defines: { CLOUDS: '' },
    side: BackSide,
    depthWrite: false,
    uniforms: {
      base: { value: new Color() },
      clear: { value: 0 },
      night: { value: 0 },
      flash: { value: 0 },
      sunWay: { value: sunWay },
      clouds: { value: new Vector2() },
    },
    vertexShader: `varying vec3 way;
void main() { way = position; gl_Position = projectionMatrix * vec4(mat3(viewMatrix) * position, 1.0); gl_Position.z = gl_Position.w * 0.99999; }`,
    fragmentShader: `uniform vec3 base; uniform float clear; uniform float night; uniform float flash; varying vec3 way; ${airlightGlsl} ${cloudsGlsl}
void main() {
  vec3 d = normalize(way);
  vec3 fogged = airlight(base, d);
  vec3 blue = base * mix(vec3(1.0), mix(vec3(0.4, 0.68, 1.1), vec3(0.62, 0.8, 1.04), night), smoothstep(0.02, 0.6, d.z));
  vec3 c = mix(fogged, blue, clear * smoothstep(0.0, 0.25, d.z));
  // Stars: one in some cells of a grid on the sphere, dimmer toward the horizon.
  vec3 cell = floor(d * 220.0);
  float h = fract(sin(dot(cell, vec3(12.9898, 78.233, 37.719))) * 43758.5453);
  float spot = 1.0 - smoothstep(0.06, 0.3, length(fract(d * 220.0) - 0.5));
  c += night * clear * step(0.985, h) * spot * smoothstep(0.02, 0.4, d.z) * (0.25 + 0.75 * fract(h * 71.0)) * 0.35;
#ifdef CLOUDS
  c = clouded(c, fogged, d);
#endif
  // A flash behind the clouds, low over the field.
  float near = max(dot(d, normalize(vec3(-0.35, 0.92, 0.1))), 0.0);
  c += flash * vec3(0.62, 0.7, 0.95) * (0.1 + 0.9 * pow(near, 5.0)) * (0.35 + 1.3 * thick(d)) * smoothstep(-0.08, 0.12, d.z);
  gl_FragColor = vec4(c, 1.0);
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
  glow.shadow.mapSize.set(2048, 2048);
  glow.shadow.camera.left = -30;
  glow.shadow.camera.right = 30;
  glow.shadow.camera.top = 26;
  glow.shadow.camera.bottom = -26;
  glow.shadow.camera.near = 10;
  glow.shadow.camera.far = 120;
  glow.shadow.autoUpdate = false;
  glow.shadow.camera.layers.set(CASTERS);
  glow.shadow.bias = -0.0006;
  glow.shadow.normalBias = 0.03;
  const lamp = new SpotLight(0xfff3df, 0, 90, 0.34, 0.85, 1.7);
  lamp.castShadow = true;
  lamp.shadow.mapSize.setScalar(1024 * WIDER);
  lamp.shadow.camera.layers.set(CASTERS);
  lamp.shadow.camera.near = 0.4;
  lamp.shadow.camera.far = 40;
  lamp.shadow.bias = -0.0012;
  lamp.shadow.normalBias = 0.012;
  const hand = new SpotLight(0xf1f5ff, 0, 110, 0.07, 0.45, 1.7);
  let known = '';
  let steady = 1;
  let shine = { window: 1, fog: 1 };
  const mirror = mirrorOf();
  /** What light and air were when reflections were drawn last. */
  let mirrored = '';
  const around = new Scene();
  // What is mirrored has no clouds: filtered to 64 texels a face they would be blots on every glaze.
  const bare = material.clone();
  bare.defines = {};
  bare.uniforms = material.uniforms;
  around.add(new Mesh(dome.geometry, bare));
  return {
    fog,
    dome,
    lights: [sky, glow],
    lamp,
    hand,
    follow: (site, brightness) => {
      const air = airOf(site);
      const key = `${air.rain} ${air.snow} ${site.light} ${site.skyLux} ${site.visibilityM} ${brightness}`;
      if (key === known) return false;
      known = key;
      const level = shown(site.skyLux) * brightness;
      const colour = horizon(site.skyLux);
      // Rain clouds are grey at any hour.
      if (air.rain + air.snow > 0) colour.lerp(new Color().setScalar((colour.r + colour.g + colour.b) / 3), 0.6);
      const sun = followSun(site.light);
      glow.position.copy(sun.way).normalize().multiplyScalar(60);
      fog.density = extinction(site.visibilityM);
      fog.color.copy(colour).multiplyScalar(level);
      (material.uniforms.base as { value: Color }).value.copy(fog.color);
      (material.uniforms.clear as { value: number }).value =
        air.rain + air.snow > 0 ? 0 : Math.min(1, Math.max(0, (site.visibilityM - 800) / 8000));
      const { cover, seen } = cloudsOf(site, air);
      (material.uniforms.clouds as { value: Vector2 }).value.set(cover, seen);
      sky.color.copy(colour);
      // Fog sends light from below as well; it is what undersides are seen by.
      sky.groundColor.setRGB(0.62, 0.61, 0.56);
      sky.intensity = 1.7 * level;
      (material.uniforms.night as { value: number }).value = site.light === 'night' ? 1 : 0;
      glow.color.setRGB(...sun.colour);
      // Bare sun in clear air, none through fog or after dark.
      const bare =
        air.rain + air.snow > 0
          ? 0
          : site.light === 'night'
            ? 0.1
            : Math.min(1, Math.max(0, (site.visibilityM - 1500) / 8000));
      const noon = site.skyLux > 4000 ? 1 : 0;
      glow.intensity = (1.1 + 2.6 * bare * noon) * level * (site.light === 'night' ? 0.25 : 1);
      glow.castShadow = bare * noon > 0.3;
      sky.intensity *= 1 - 0.35 * bare * noon;
      steady = sky.intensity;
      // The lamp's candela over the sky's lux, in the picture's units.
      shine = {
        window: (7 * level) / Math.max(1, site.skyLux / 25) ** 0.8,
        fog: Math.min(1, 170 / site.visibilityM),
      };
      lamp.userData.candela = (brightness * DIM * 5200 * (site.skyLux / 25) ** ADAPTED) / Math.max(site.skyLux, 2);
      return true;
    },
    shine: () => shine,
    lost: () => {
      mirrored = '';
      mirror.dispose();
    },
    castAnew: () => {
      glow.shadow.needsUpdate = true;
    },
    flash: (strength) => {
      const lit = 0.55 * strength;
      (material.uniforms.flash as { value: number }).value = lit;
      sky.intensity = steady + 1.1 * lit;
    },
    reflect: function* (renderer, scene) {
      if (mirrored === known) return;
      mirrored = known;
      yield* mirror.steps(renderer, around, scene);
    },
    dispose: () => {
      mirror.dispose();
      dome.geometry.dispose();
      material.dispose();
      bare.dispose();
      lamp.dispose();
      hand.dispose();
    },
  };
};
