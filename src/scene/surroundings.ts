/** What stands and lies about the parts: land, growth, backdrop, the line beyond, woods, mist, traffic, the glow of windows. */
import { Box3, type Color, Group, type Object3D, Vector3 } from 'three';
import type { Site, World } from '../engine/world/types.ts';
import { castsItself } from './look/casters.ts';
import { halosOf } from './look/halo.ts';
import { panesIn } from './look/panes.ts';
import type { Air } from './look/sky.ts';
import { spillOn } from './look/spill.ts';
import type { Materials } from './materials/materials.ts';
import { joinedOf } from './pictures/joined.ts';
import { backdropSteps } from './place/backdrop.ts';
import { beyondSteps, releaseBeyond } from './place/beyond.ts';
import { type Grown, grownIn } from './place/grown.ts';
import { horizonOf } from './place/horizon.ts';
import { type Land, landOf } from './place/land.ts';
import { mistOf } from './place/mist.ts';
import { LIT_BELOW, passingOn } from './place/passing.ts';
import { roomOf } from './place/room.ts';
import { placeOf } from './place/setting.ts';

/** Tufts of grass. */
const TUFTS = 9000;

/** Ground about what stands or is mounted low, kept short by whoever goes there: no blade hides a rod or a pole's foot. */
const trodden = (world: World): readonly Box3[] =>
  world.parts
    .filter(({ at, end }) => end === null && at[2] < 1)
    .map(({ at: [x, y] }) => new Box3(new Vector3(x - 0.8, y - 0.8, 0), new Vector3(x + 0.8, y + 0.8, 1)));

const insideOf = (boxes: readonly Box3[]) => (x: number, y: number) =>
  !boxes.some((b) => x > b.min.x - 0.1 && x < b.max.x + 0.1 && y > b.min.y - 0.1 && y < b.max.y + 0.1);

export interface Surroundings {
  readonly root: Group;
  /** Builds them, a piece at a time; `drawn`: the objects of a part. */
  steps(world: World, drawn: (id: string) => readonly Object3D[]): Generator<void>;
  /** Takes over wetness, snow, flood and ice, and how windows and fog shine. */
  soak(
    site: Site,
    air: Air,
    shine: { readonly window: number; readonly fog: number },
    colour: Color,
    density: number,
  ): void;
  /** Finds what glows among objects. */
  glow(root: Object3D): void;
  /** Turns each glow to the eye. */
  face(eye: Vector3): void;
  /** Moves on by so many seconds; true if something that throws a shadow has moved. */
  drift(seconds: number, air: Air, lit: boolean): boolean;
  dispose(): void;
}

export const surroundingsOf = (set: Materials): Surroundings => {
  const root = new Group();
  root.name = 'surroundings';
  const beyond = new Group();
  // By itself, so that it is not gone through again whenever a part changes.
  const joined = joinedOf();
  const mist = mistOf();
  const horizon = horizonOf();
  const passing = passingOn(set);
  const halos = halosOf(['windowLit', 'lampLit'], 'windowLit');
  const spill = spillOn();
  let land: Land | null = null;
  let grown: Grown | null = null;
  root.add(beyond, joined.root, horizon.group, passing.group, mist.group, halos.group, spill.group);
  return {
    root,
    steps: function* (world, drawn) {
      const houses = world.parts
        .filter((part) => drawn(part.id).length > 0 && part.at[2] === 0 && part.pole === null && part.end === null)
        .map((part) => new Box3().setFromObject(drawn(part.id)[0] as Object3D));
      const place = placeOf(world.site.setting ?? 'farmland', roomOf(world, houses), world.site.light !== 'day');
      yield;
      land = landOf(set, place);
      root.add(land.group);
      yield;
      grown = grownIn(set, place, world.site.temperatureC, insideOf([...houses, ...trodden(world)]), TUFTS);
      root.add(grown.group);
      yield;
      // Cars are there before one comes, or it would hold up the frame in which it does.
      passing.step(0, world.site.traffic, world.site.skyLux < LIT_BELOW);
      castsItself(passing.group);
      yield;
      for (const _ of backdropSteps(place.standing, set, beyond)) yield;
      castsItself(beyond);
      for (const _ of beyondSteps(world, set, beyond)) yield;
      for (const _ of joined.steps((beyond.children as Group[]).filter(({ isGroup }) => isGroup))) yield;
    },
    soak: (site, air, { window: bright, fog }, colour, density) => {
      land?.soak(set, site.wetness, air.snow, air.flooded, air.iced);
      grown?.soak(air.iced, air.snow);
      // Lamps are counted against a sky of two lux at least; what a window lights must show as it does against the sky that there is.
      const lit = bright * Math.max(1, 2 / Math.max(0.3, site.skyLux));
      set.windowLit.emissiveIntensity = lit;
      set.lampLit.emissiveIntensity = 2 * bright;
      mist.colour(colour, fog);
      halos.shine(1.1 * lit, density);
      spill.shine(lit, density);
    },
    glow: (from) => {
      halos.follow(from);
      spill.follow(panesIn(from, 'windowLit'));
    },
    face: (eye) => {
      halos.face(eye);
      halos.group.updateMatrixWorld();
    },
    drift: (seconds, air, lit) => {
      mist.drift(seconds);
      mist.group.updateMatrixWorld();
      const moving = passing.step(seconds, air.traffic, lit);
      castsItself(passing.group);
      passing.group.updateMatrixWorld();
      return moving;
    },
    dispose: () => {
      grown?.dispose();
      land?.dispose();
      joined.dispose();
      releaseBeyond(beyond);
      mist.dispose();
      horizon.dispose();
      passing.dispose();
      halos.dispose();
      spill.dispose();
    },
  };
};
