/** The world below: renderer, camera, light, land, hardware. Draws one still when asked; knows nothing of time or input. */
import {
  ACESFilmicToneMapping,
  Box3,
  PCFShadowMap,
  PerspectiveCamera,
  Scene,
  SRGBColorSpace,
  Vector3,
  WebGLRenderer,
} from 'three';
import type { Vec3 } from '../engine/math/vec3.ts';
import { eyeAt } from '../engine/senses/signsFrom.ts';
import type { Aid } from '../engine/senses/types.ts';
import type { World } from '../engine/world/types.ts';
import { installAirlight } from './look/airlight.ts';
import { halosOf } from './look/halo.ts';
import { isSoftware, plainFilters } from './look/quality.ts';
import { focal } from './look/thinWire.ts';
import { directionOf, fieldOf, type Look } from './look/view.ts';
import { weatherOf } from './look/weather.ts';
import { materials } from './materials/materials.ts';
import { type Drawing, drawingOf } from './pictures/drawWorld.ts';
import { type Props, propsOf } from './pictures/props.ts';
import { beyondOf, releaseBeyond } from './place/beyond.ts';
import { grownIn } from './place/grown.ts';
import { landOf } from './place/land.ts';
import { mistOf } from './place/mist.ts';

export interface Stage {
  readonly canvas: HTMLCanvasElement;
  readonly drawing: Drawing;
  readonly props: Props;
  /** Takes over a World; true if the picture has changed. */
  follow(world: World, stand: string, brightness: number): boolean;
  /** Sizes the picture in CSS pixels. */
  fit(width: number, height: number): void;
  /** Turns the camera without drawing, so that `through` and `project` answer for this look. */
  face(look: Look): void;
  /** `near`: metres to what is looked at, to which the eye adapts when the lamp is on. */
  draw(look: Look, aid: Aid, near?: number): void;
  eye(): Vec3;
  /** Unit direction through a point of the window, both in −1 … 1. */
  through(x: number, y: number): Vec3;
  /** Where a place shows, −1 … 1; null when behind. */
  project(place: Vec3): { readonly x: number; readonly y: number } | null;
  /** Lets the mist drift by so many seconds. */
  drift(seconds: number): void;
  /** Moves the eye for the length of a walk; `follow` sets it down again. */
  stand(eye: Vec3): void;
  /** Whether pictures are computed on the processor, so that moving ones cost too much. */
  readonly software: boolean;
  lost(): boolean;
  dispose(): void;
}

/** Whether this browser gives a WebGL context at all. */
export const hasWebGl = (): boolean => {
  const probe = document.createElement('canvas');
  const context = probe.getContext('webgl2');
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
};

const insideOf = (boxes: readonly Box3[]) => (x: number, y: number) =>
  !boxes.some((b) => x > b.min.x - 0.1 && x < b.max.x + 0.1 && y > b.min.y - 0.1 && y < b.max.y + 0.1);

/** Makes the stage; `onRestore` is called when a lost context has come back. */
export const stageOf = (world: World, onRestore: () => void): Stage => {
  installAirlight();
  const canvas = document.createElement('canvas');
  const renderer = new WebGLRenderer({ canvas, antialias: true, powerPreference: 'high-performance' });
  renderer.outputColorSpace = SRGBColorSpace;
  renderer.toneMapping = ACESFilmicToneMapping;
  renderer.toneMappingExposure = 1;
  renderer.shadowMap.enabled = true;
  renderer.shadowMap.type = PCFShadowMap;
  renderer.shadowMap.autoUpdate = false;

  const set = materials();
  const software = isSoftware(renderer);
  const scene = new Scene();
  const weather = weatherOf();
  scene.fog = weather.fog;
  const land = landOf(set);
  const drawing = drawingOf(set);
  const props = propsOf(set);
  drawing.follow(world);
  let fresh = true;
  const houses = world.parts
    .filter((part) => drawing.of(part.id).length > 0 && part.at[2] === 0 && part.pole === null && part.end === null)
    .map((part) => new Box3().setFromObject(drawing.of(part.id)[0] as never));
  const grown = grownIn(set, insideOf(houses), 9000);
  const beyond = beyondOf(world, set);
  const mist = mistOf();
  const halos = halosOf(['windowLit', 'lampLit']);
  const camera = new PerspectiveCamera(50, 1.6, 0.06, 1200);
  camera.up.set(0, 0, 1);
  scene.add(
    weather.dome,
    ...weather.lights,
    weather.lamp,
    weather.lamp.target,
    land.group,
    drawing.root,
    props.root,
    grown.group,
    beyond,
    mist.group,
    halos.group,
  );

  let eye = new Vector3();
  let height = 720;
  let stale = true;
  let away = false;
  const lose = (event: Event): void => {
    event.preventDefault();
    away = true;
  };
  const restore = (): void => {
    away = false;
    stale = true;
    onRestore();
  };
  canvas.addEventListener('webglcontextlost', lose);
  canvas.addEventListener('webglcontextrestored', restore);

  const face = (look: Look): void => {
    const field = fieldOf(camera.aspect, look.zoom);
    const d = directionOf(look);
    camera.fov = (field * 180) / Math.PI;
    camera.position.copy(eye);
    camera.lookAt(eye.x + d[0], eye.y + d[1], eye.z + d[2]);
    camera.updateProjectionMatrix();
    camera.updateMatrixWorld();
    focal.value = (height * renderer.getPixelRatio()) / 2 / Math.tan(field / 2);
  };

  return {
    canvas,
    drawing,
    props,
    follow: (now, stand, brightness) => {
      const at = new Vector3(...eyeAt(now, stand));
      const moved = !at.equals(eye);
      eye = at;
      const parts = drawing.follow(now);
      const things = props.follow(now, stand);
      const light = weather.follow(now.site, brightness);
      if (light) {
        land.soak(set, now.site.wetness);
        const { window: bright, fog } = weather.shine();
        set.windowLit.emissiveIntensity = bright;
        set.lampLit.emissiveIntensity = 2 * bright;
        mist.colour(weather.fog.color, fog);
        halos.shine(1.1 * bright, weather.fog.density);
        stale = true;
      }
      if (software && (parts || things || fresh)) plainFilters(scene);
      if (parts || fresh) halos.follow(drawing.root);
      fresh = false;
      return moved || parts || things || light;
    },
    fit: (width, tall) => {
      height = tall;
      renderer.setPixelRatio(Math.min(software ? 1 : 2, window.devicePixelRatio || 1));
      renderer.setSize(width, tall, false);
      camera.aspect = width / Math.max(1, tall);
    },
    face,
    draw: (look, aid, near = 12) => {
      if (away) return;
      if (stale) {
        weather.reflect(renderer, scene);
        stale = false;
      }
      face(look);
      const d = directionOf(look);
      const { lamp } = weather;
      const lit = aid === 'lamp';
      lamp.visible = lit;
      lamp.intensity = lit ? (lamp.userData.candela as number) * Math.min(1, Math.max(0.05, near / 9)) ** 1.25 : 0;
      if (lit) {
        lamp.position.set(eye.x, eye.y, eye.z + 0.14);
        lamp.target.position.set(eye.x + d[0] * 10, eye.y + d[1] * 10, eye.z + d[2] * 10);
        renderer.shadowMap.needsUpdate = true;
      }
      halos.face(eye);
      renderer.render(scene, camera);
    },
    eye: () => [eye.x, eye.y, eye.z],
    through: (x, y) => {
      const d = new Vector3(x, y, 0.5).unproject(camera).sub(eye).normalize();
      return [d.x, d.y, d.z];
    },
    project: (place) => {
      const p = new Vector3(...place).applyMatrix4(camera.matrixWorldInverse);
      if (p.z > -camera.near) return null;
      p.applyMatrix4(camera.projectionMatrix);
      return { x: p.x, y: p.y };
    },
    drift: mist.drift,
    stand: (at) => {
      eye = new Vector3(...at);
    },
    software,
    lost: () => away,
    dispose: () => {
      canvas.removeEventListener('webglcontextlost', lose);
      canvas.removeEventListener('webglcontextrestored', restore);
      drawing.dispose();
      props.dispose();
      grown.dispose();
      land.dispose();
      releaseBeyond(beyond);
      mist.dispose();
      halos.dispose();
      weather.dispose();
      renderer.dispose();
      renderer.forceContextLoss();
      canvas.remove();
    },
  };
};
