/**
 * The world below: renderer, camera, light, land, hardware. Draws one still when asked; knows nothing of time or input. It is made
 * ready a few milliseconds at a time, so that input stays alive meanwhile; until then there is nothing but sky.
 */
import { PerspectiveCamera, Scene, Vector3 } from 'three';
import type { Vec3 } from '../engine/math/vec3.ts';
import { eyeAt } from '../engine/senses/signsFrom.ts';
import type { Aid } from '../engine/senses/types.ts';
import type { World } from '../engine/world/types.ts';
import { installAirlight } from './look/airlight.ts';
import { beamsOf } from './look/beams.ts';
import { swing } from './look/blowout.ts';
import { isSoftware, plainFilters } from './look/quality.ts';
import { ratioFor } from './look/sharpness.ts';
import { type Air, airOf } from './look/sky.ts';
import { streetLightIn } from './look/streetLight.ts';
import { focal, glaze, ICE } from './look/thinWire.ts';
import { directionOf, fieldOf, type Look } from './look/view.ts';
import { weatherOf } from './look/weather.ts';
import { materials } from './materials/materials.ts';
import { type Drawing, drawingOf } from './pictures/drawWorld.ts';
import { finished } from './pictures/finished.ts';
import { joinedOf } from './pictures/joined.ts';
import { type Props, propsOf } from './pictures/props.ts';
import { readying } from './readying.ts';
import { type Held, heldBy, rendererOn } from './renderer.ts';
import { surroundingsOf } from './surroundings.ts';

export interface Stage {
  readonly canvas: HTMLCanvasElement;
  readonly drawing: Drawing;
  readonly props: Props;
  /** Works on getting ready for so many milliseconds; share done, 1 when ready. */
  prepare(ms: number): number;
  /** Takes over a World; true if the picture has changed. */
  follow(world: World, stand: string, brightness: number): boolean;
  /** Sizes the picture in CSS pixels; `share`: of the screen's pixels each way that are drawn. */
  fit(width: number, height: number, share?: number): void;
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
  held(): Held;
  /** Whether pictures are computed on the processor, so that moving ones cost too much. */
  readonly software: boolean;
  lost(): boolean;
  dispose(): void;
}

/** Makes the stage; `onRestore` is called when a lost context has come back. */
export const stageOf = (world: World, onRestore: () => void): Stage => {
  installAirlight();
  const canvas = document.createElement('canvas');
  const renderer = rendererOn(canvas);
  const set = materials();
  const software = isSoftware(renderer);
  const scene = new Scene();
  // What stands still is not looked through in every frame: who moves something carries it over.
  scene.matrixWorldAutoUpdate = false;
  const weather = weatherOf();
  scene.fog = weather.fog;
  const drawing = drawingOf(set);
  const props = propsOf(set);
  const joined = joinedOf();
  const around = surroundingsOf(set);
  const shineDown = streetLightIn(scene);
  const beams = beamsOf(weather.lamp, weather.hand);
  const camera = new PerspectiveCamera(50, 1.6, 0.06, 1200);
  camera.up.set(0, 0, 1);
  const { dome, lights, lamp, hand } = weather;
  scene.add(dome, ...lights, lamp, lamp.target, hand, hand.target, drawing.root, props.root, joined.root, around.root);

  let fresh = true;
  let eye = new Vector3();
  let height = 720;
  let moved = 0;
  let away = false;
  let share = 0;
  let latest = { world, stand: '' };
  const groups = () => [...drawing.groups(), ...props.groups()];
  let work: Generator<number, void> | null = readying({
    renderer,
    scene,
    camera,
    software,
    weather,
    build: function* () {
      const parts = drawing.steps(world);
      for (let step = parts.next(); !step.done; step = parts.next()) yield 0.8 * step.value;
      for (const _ of around.steps(world, drawing.of)) yield 0.85;
      for (const _ of props.steps(latest.world, latest.stand)) yield 0.9;
      for (const _ of joined.steps(groups())) yield 0.95;
      scene.updateMatrixWorld();
    },
  });

  const castAnew = (): void => {
    beams.stale();
    weather.castAnew();
  };
  const soak = (now: World): void => {
    const air = airOf(now.site);
    around.soak(now.site, air, weather.shine(), weather.fog.color, weather.fog.density);
    glaze.value = air.iced ? ICE : 0;
    swing(air.windMs, 0);
  };
  const lose = (event: Event): void => {
    event.preventDefault();
    away = true;
  };
  const restore = (): void => {
    away = false;
    weather.lost();
    castAnew();
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
      latest = { world: now, stand };
      if (work !== null) {
        if (weather.follow(now.site, brightness)) soak(now);
        return true;
      }
      const parts = drawing.follow(now);
      const things = props.follow(now, stand);
      const light = weather.follow(now.site, brightness);
      if (light || fresh) soak(now);
      if (software && (parts || things || fresh)) plainFilters(scene);
      if (parts || things || fresh) joined.follow(groups());
      if (parts || fresh) {
        around.glow(drawing.root);
        shineDown(drawing.root, weather.shine().window);
      }
      if (parts || things || light || fresh) {
        castAnew();
        scene.updateMatrixWorld();
      }
      fresh = false;
      return moved || parts || things || light;
    },
    fit: (width, tall, share = 1) => {
      height = tall;
      const screen = window.devicePixelRatio || 1;
      renderer.setPixelRatio(ratioFor(width, tall, software ? Math.min(1, screen) : screen, share));
      renderer.setSize(width, tall, false);
      camera.aspect = width / Math.max(1, tall);
    },
    face,
    draw: (look, aid, near = 12, spot = null) => {
      if (away) return;
      finished(weather.reflect(renderer, scene));
      face(look);
      beams.point(eye, directionOf(look), aid === 'lamp', near, spot);
      around.face(eye);
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
      swing(air.windMs, moved);
      if (around.drift(seconds, air, lit)) castAnew();
    },
    flash: (strength) => weather.flash(strength),
    stand: (at) => {
      eye = new Vector3(...at);
    },
    held: () => heldBy(renderer, scene, [lamp, ...lights]),
    software,
    lost: () => away,
    dispose: () => {
      canvas.removeEventListener('webglcontextlost', lose);
      canvas.removeEventListener('webglcontextrestored', restore);
      drawing.dispose();
      props.dispose();
      work = null;
      joined.dispose();
      around.dispose();
      weather.dispose();
      renderer.dispose();
      renderer.forceContextLoss();
      canvas.remove();
    },
  };
};
