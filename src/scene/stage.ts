/**
 * The world below: renderer, camera, light, land, hardware. Draws one still when asked; knows nothing of time or input. It is made
 * ready a few milliseconds at a time, so that input stays alive meanwhile; until then there is nothing but sky.
 */
import {
  ACESFilmicToneMapping,
  Box3,
  Group,
  PCFShadowMap,
  PerspectiveCamera,
  Scene,
  SpotLight,
  SRGBColorSpace,
  Vector3,
  WebGLRenderer,
} from 'three';
import type { Vec3 } from '../engine/math/vec3.ts';
import { eyeAt } from '../engine/senses/signsFrom.ts';
import type { Aid } from '../engine/senses/types.ts';
import type { World } from '../engine/world/types.ts';
import type { PartData } from './hardware/types.ts';
import { installAirlight } from './look/airlight.ts';
import { swing } from './look/blowout.ts';
import { halosOf } from './look/halo.ts';
import { isSoftware, oneOfEach, plainFilters, texturesOf } from './look/quality.ts';
import { type Air, airOf } from './look/sky.ts';
import { focal, glaze, ICE } from './look/thinWire.ts';
import { directionOf, fieldOf, type Look } from './look/view.ts';
import { weatherOf } from './look/weather.ts';
import { materials } from './materials/materials.ts';
import { painted, paintFor } from './materials/painting.ts';
import { type Drawing, drawingOf } from './pictures/drawWorld.ts';
import { type Props, propsOf } from './pictures/props.ts';
import { backdropSteps } from './place/backdrop.ts';
import { beyondSteps, releaseBeyond } from './place/beyond.ts';
import { type Grown, grownIn } from './place/grown.ts';
import { horizonOf } from './place/horizon.ts';
import { type Land, landOf } from './place/land.ts';
import { mistOf } from './place/mist.ts';
import { passingOn } from './place/passing.ts';
import { roomOf } from './place/room.ts';
import { placeOf } from './place/setting.ts';

export interface Stage {
  readonly canvas: HTMLCanvasElement;
  readonly drawing: Drawing;
  readonly props: Props;
  /** Works on getting ready for so many milliseconds; share done, 1 when ready. */
  prepare(ms: number): number;
  /** Takes over a World; true if the picture has changed. */
  follow(world: World, stand: string, brightness: number): boolean;
  /** Sizes the picture in CSS pixels. */
  fit(width: number, height: number): void;
  /** Turns the camera without drawing, so that `through` and `project` answer for this look. */
  face(look: Look): void;
  /** `near`: metres to what is looked at, to which the eye adapts when the lamp is on; `spot`: which way the flashlight is held. */
  draw(look: Look, aid: Aid, near?: number, spot?: Vec3 | null): void;
  eye(): Vec3;
  /** Unit direction through a point of the window, both in −1 … 1. */
  through(x: number, y: number): Vec3;
  /** Where a place shows, −1 … 1; null when behind. */
  project(place: Vec3): { readonly x: number; readonly y: number } | null;
  /** Lets what the air moves move on by so many seconds: mist, wires, traffic; `lit`: with lamps on. */
  drift(seconds: number, air: Air, lit: boolean): void;
  /** Lightning beyond the horizon, 0 to 1. */
  flash(strength: number): void;
  /** Moves the eye for the length of a walk; `follow` sets it down again. */
  stand(eye: Vec3): void;
  /** What is held for drawing: counts, and bytes of textures with their mipmaps, shadow maps among them. */
  held(): { readonly geometries: number; readonly textures: number; readonly textureBytes: number };
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
  // Asking after each shader whether it is sound would wait for it.
  renderer.debug.checkShaderErrors = import.meta.env.DEV;

  const set = materials();
  const software = isSoftware(renderer);
  const scene = new Scene();
  const weather = weatherOf();
  scene.fog = weather.fog;
  const drawing = drawingOf(set, true);
  const props = propsOf(set);
  let fresh = true;
  let land: Land | null = null;
  let grown: Grown | null = null;
  const beyond = new Group();
  const mist = mistOf();
  const horizon = horizonOf();
  const passing = passingOn(set);
  const halos = halosOf(['windowLit', 'lampLit']);
  const camera = new PerspectiveCamera(50, 1.6, 0.06, 1200);
  camera.up.set(0, 0, 1);
  scene.add(
    weather.dome,
    ...weather.lights,
    weather.lamp,
    weather.lamp.target,
    weather.hand,
    weather.hand.target,
    drawing.root,
    props.root,
    beyond,
    horizon.group,
    passing.group,
    mist.group,
    halos.group,
  );

  /** Everything that takes time, in steps: geometry, place, paint, upload, shaders. Yields the share done. */
  const readying = function* (): Generator<number, void> {
    const parts = drawing.steps(world);
    for (let step = parts.next(); !step.done; step = parts.next()) yield 0.4 * step.value;
    const houses = world.parts
      .filter((part) => drawing.of(part.id).length > 0 && part.at[2] === 0 && part.pole === null && part.end === null)
      .map((part) => new Box3().setFromObject(drawing.of(part.id)[0] as never));
    const place = placeOf(world.site.setting ?? 'farmland', roomOf(world, houses), world.site.light !== 'day');
    land = landOf(set, place);
    scene.add(land.group);
    yield 0.42;
    grown = grownIn(set, place, insideOf(houses), 9000);
    scene.add(grown.group);
    yield 0.46;
    for (const _ of backdropSteps(place.standing, set, beyond)) yield 0.48;
    for (const _ of beyondSteps(world, set, beyond)) yield 0.5;
    while (!paintFor(4)) yield 0.5 + 0.35 * painted();
    if (software) plainFilters(scene);
    for (const texture of texturesOf(scene)) {
      renderer.initTexture(texture);
      yield 0.9;
    }
    weather.follow(world.site, 1);
    weather.reflect(renderer, scene);
    yield 0.93;
    // Both with the lamp and without: each is another program of every material.
    for (const lit of [true, false]) {
      weather.lamp.visible = lit;
      weather.hand.visible = lit;
      for (const mesh of oneOfEach(scene)) {
        renderer.compile(mesh, camera, scene);
        yield lit ? 0.94 : 0.96;
      }
    }
    let compiled = false;
    renderer.compileAsync(scene, camera).then(
      () => {
        compiled = true;
      },
      // A context lost meanwhile is drawn when it has come back.
      () => {
        compiled = true;
      },
    );
    while (!compiled) yield 0.97;
  };
  /** The streetlight that burns throws its light on the road; there is one at most. */
  const shineDown = (): void => {
    street?.removeFromParent();
    street?.target.removeFromParent();
    street = null;
    drawing.root.traverse((o) => {
      const data = o.userData as Partial<PartData>;
      const at = data.points?.lamp;
      if (street !== null || data.kind !== 'streetlight' || data.state !== 'lit' || !at) return;
      street = new SpotLight(0xffc88a, 0, 30, 1.1, 0.9, 1.7);
      street.position.set(at[0] + o.position.x, at[1] + o.position.y, at[2] + o.position.z);
      street.target.position.copy(street.position).setZ(0);
      scene.add(street, street.target);
    });
    if (street) (street as SpotLight).intensity = 26 * weather.shine().window;
  };
  let street: SpotLight | null = null;
  let work: Generator<number, void> | null = readying();
  let share = 0;
  const soak = (now: World): void => {
    const air = airOf(now.site);
    land?.soak(set, now.site.wetness, air.snow, air.flooded, air.iced);
    grown?.ice(air.iced);
    glaze.value = air.iced ? ICE : 0;
    swing(air.windMs, 0);
    const { window: bright, fog } = weather.shine();
    set.windowLit.emissiveIntensity = bright;
    set.lampLit.emissiveIntensity = 2 * bright;
    mist.colour(weather.fog.color, fog);
    halos.shine(1.1 * bright, weather.fog.density);
    stale = true;
  };

  let eye = new Vector3();
  let height = 720;
  let moved = 0;
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
    prepare: (ms) => {
      const end = performance.now() + ms;
      while (work !== null && performance.now() < end) {
        const step = work.next();
        if (step.done) work = null;
        else {
          const waits = step.value === share && share > 0.96;
          share = Math.max(share, step.value);
          if (waits) break;
        }
      }
      return work === null ? 1 : share;
    },
    follow: (now, stand, brightness) => {
      const at = new Vector3(...eyeAt(now, stand));
      const moved = !at.equals(eye);
      eye = at;
      if (work !== null) {
        if (weather.follow(now.site, brightness)) soak(now);
        return true;
      }
      const parts = drawing.follow(now);
      const things = props.follow(now, stand);
      const light = weather.follow(now.site, brightness);
      if (light || fresh) soak(now);
      if (software && (parts || things || fresh)) plainFilters(scene);
      if (parts || fresh) {
        halos.follow(drawing.root);
        shineDown();
      }
      if (parts || things || light || fresh) renderer.shadowMap.needsUpdate = true;
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
    draw: (look, aid, near = 12, spot = null) => {
      if (away) return;
      if (stale) {
        weather.reflect(renderer, scene);
        stale = false;
      }
      face(look);
      const d = directionOf(look);
      const { lamp, hand } = weather;
      const lit = aid === 'lamp';
      lamp.visible = lit;
      hand.visible = lit;
      lamp.intensity = lit ? (lamp.userData.candela as number) * Math.min(1, Math.max(0.05, near / 9)) ** 1.25 : 0;
      hand.intensity = spot === null ? 0 : 1.6 * lamp.intensity;
      if (lit) {
        // Held at the chest, a little to the right.
        hand.position.set(eye.x + 0.2 * d[1], eye.y - 0.2 * d[0], eye.z - 0.3);
        if (spot) hand.target.position.set(eye.x + spot[0] * 14, eye.y + spot[1] * 14, eye.z + spot[2] * 14);
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
    drift: (seconds, air, lit) => {
      moved += seconds;
      mist.drift(seconds);
      swing(air.windMs, moved);
      passing.step(seconds, air.traffic, lit);
    },
    flash: (strength) => weather.flash(strength),
    stand: (at) => {
      eye = new Vector3(...at);
    },
    held: () => {
      const { geometries, textures } = renderer.info.memory;
      const shadows = [weather.lamp, ...weather.lights].reduce((sum, light) => {
        const map = 'shadow' in light ? light.shadow?.map : null;
        return sum + (map ? map.width * map.height * 8 : 0);
      }, 0);
      const painted = texturesOf(scene).reduce((sum, { image }) => {
        const { width = 0, height = 0 } = (image ?? {}) as { width?: number; height?: number };
        return sum + width * height * 4 * (4 / 3);
      }, 0);
      return { geometries, textures, textureBytes: painted + shadows };
    },
    software,
    lost: () => away,
    dispose: () => {
      canvas.removeEventListener('webglcontextlost', lose);
      canvas.removeEventListener('webglcontextrestored', restore);
      drawing.dispose();
      props.dispose();
      work = null;
      grown?.dispose();
      land?.dispose();
      releaseBeyond(beyond);
      mist.dispose();
      horizon.dispose();
      passing.dispose();
      halos.dispose();
      weather.dispose();
      renderer.dispose();
      renderer.forceContextLoss();
      canvas.remove();
    },
  };
};
