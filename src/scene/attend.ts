/** Attention over time: which way the trainee looks, moves from look to look, when to draw and when to let the loop sleep. */
import * as Phaser from 'phaser';
import { Box3, Vector3 } from 'three';
import type { SceneHandle, SceneView } from '../drill/sceneTypes.ts';
import type { Snapshot } from '../drill/types.ts';
import { componentKind } from '../engine/catalogue/components.ts';
import { distance, type Vec3 } from '../engine/math/vec3.ts';
import { findPart, placeOn } from '../engine/world/edit.ts';
import { type Hands, listenToKeys, listenToPointer } from './layer/hands.ts';
import { hullOf, pointsOf, type Spot, widened } from './layer/hull.ts';
import { Overlay } from './layer/overlay.ts';
import { nameOf, pointedAt } from './layer/pointing.ts';
import { anglesTo, arriving, between, fieldOf, kept, type Look, zooms } from './look/view.ts';
import type { Stage } from './stage.ts';

/** Milliseconds of a turn by key, of a look at a part, of a walk; and how long the wisps drift on when nobody does anything. */
const times = { turn: 160, look: 420, walk: 900, drift: 15000 } as const;
/** Further than this a walk is a moment of dark. */
const NEAR = 26;

interface Attended {
  readonly handle: SceneHandle;
  readonly redraw: () => void;
}

interface Move {
  readonly from: Look;
  readonly to: Look;
  readonly ms: number;
  past: number;
}

/** Runs the layer above a stage in an element. */
export const attend = (host: HTMLElement, above: HTMLElement, stage: Stage, view: SceneView): Attended => {
  let snapshot: Snapshot = view.snapshot();
  let aid = view.aid();
  let stand = '';
  let look: Look = { yaw: 0, pitch: 0, zoom: 1 };
  let move: Move | null = null;
  let walk: { readonly from: Vec3; readonly to: Vec3; past: number } | null = null;
  let hovered: string | null = null;
  let hoverAt: Spot | null = null;
  let byKeys = false;
  let dirty = true;
  let quiet = 0;
  let shaken = 0;
  let layer: Overlay | null = null;
  let gone = false;

  const size = (): { width: number; height: number } => ({
    width: Math.max(2, host.clientWidth),
    height: Math.max(2, host.clientHeight),
  });
  const aspect = (): number => size().width / size().height;
  const still = (): boolean => view.reducedMotion;

  const game = new Phaser.Game({
    type: Phaser.AUTO,
    parent: above,
    ...size(),
    transparent: true,
    banner: false,
    audio: { noAudio: true },
    input: { keyboard: false, gamepad: false, touch: true },
    disableContextMenu: false,
    scale: { mode: Phaser.Scale.NONE },
    render: { antialias: true, antialiasGL: false, powerPreference: 'default' },
    scene: [],
  });

  const wake = (): void => {
    quiet = 0;
    if (layer && !gone && !game.loop.running) game.loop.wake();
  };
  const change = (): void => {
    dirty = true;
    wake();
  };

  const go = (to: Look, ms: number): void => {
    const goal = kept(to);
    if (still() || ms === 0) {
      move = null;
      look = goal;
      view.onTurn(look.yaw);
    } else move = { from: look, to: goal, ms, past: 0 };
    change();
  };
  const goal = (): Look => move?.to ?? look;

  const arrive = (): Look => {
    const { world } = snapshot;
    const job =
      world.parts.find(({ id, pole }) => pole !== null && world.given.job.restores.includes(id))?.pole ?? null;
    const pole = findPart(world, `${job}.pole`) ?? world.parts.find(({ pole: owner }) => owner !== null);
    const foot: Vec3 = pole?.at ?? [0, 0, 0];
    const top: Vec3 = [foot[0], foot[1], foot[2] + (pole?.values.heightM ?? 8) + 0.4];
    const first = arriving(stage.eye(), foot, top, fieldOf(aspect(), 1));
    return { ...first, zoom: zooms[aid].far };
  };

  const toHover = (id: string | null): void => {
    if (id === hovered) return;
    hovered = id;
    view.onHover(id);
    above.style.cursor = id === null ? 'grab' : 'pointer';
    change();
  };

  const bounds = (id: string): Box3 | null => {
    const objects = [...stage.drawing.of(id)];
    const prop = stage.props.named().get(id);
    if (prop) objects.push(prop as never);
    if (objects.length === 0) return null;
    const box = new Box3();
    for (const object of objects) box.expandByObject(object);
    return box;
  };

  const placeOf = (id: string): { readonly at: Vec3; readonly size: number } | null => {
    const part = findPart(snapshot.world, id);
    const box = bounds(id);
    const across = box === null ? 0.3 : box.getSize(new Vector3()).length();
    if (part !== null) {
      const [feature] = componentKind(part.kind).features;
      return { at: placeOn(part, feature?.offset ?? [0, 0, 0]), size: Math.min(across, 1.2) };
    }
    if (box === null) return null;
    const c = box.getCenter(new Vector3());
    return { at: [c.x, c.y, c.z], size: across };
  };

  const toScreen = (spot: { readonly x: number; readonly y: number }): Spot => {
    const { width, height } = size();
    return { x: ((spot.x + 1) / 2) * width, y: ((1 - spot.y) / 2) * height };
  };

  const outline = (): readonly Spot[] => {
    if (hovered === null) return [];
    const prop = stage.props.named().get(hovered);
    const objects = [...stage.drawing.of(hovered), ...(prop ? [prop] : [])];
    const spots = pointsOf(objects).flatMap((p) => {
      const at = stage.project(p);
      return at === null ? [] : [toScreen(at)];
    });
    return widened(hullOf(spots), 4);
  };

  const labelAt = (corners: readonly Spot[]): Spot | null => {
    if (hovered === null) return null;
    if (hoverAt !== null) return { x: hoverAt.x, y: hoverAt.y - 6 };
    const top = corners.reduce<Spot | null>((best, p) => (best === null || p.y < best.y ? p : best), null);
    const { width, height } = size();
    return byKeys ? { x: width / 2, y: height / 2 - 14 } : top;
  };

  const hands: Hands = {
    drag: (dx, dy) => {
      const perPixel = fieldOf(aspect(), look.zoom) / size().height;
      move = null;
      byKeys = false;
      hoverAt = null;
      look = kept({ ...look, yaw: look.yaw + dx * perPixel, pitch: look.pitch + dy * perPixel });
      view.onTurn(look.yaw);
      toHover(null);
      change();
    },
    turn: (yaw, pitch) => {
      byKeys = true;
      hoverAt = null;
      const scale = 1 / Math.max(1, look.zoom * 0.6);
      go({ ...goal(), yaw: goal().yaw + yaw * scale, pitch: goal().pitch + pitch * scale }, times.turn);
    },
    nearer: (factor) => {
      const { least, near } = zooms[aid];
      go({ ...goal(), zoom: Math.min(near, Math.max(least, goal().zoom * factor)) }, times.turn);
    },
    over: (at) => {
      byKeys = false;
      hoverAt = at;
      if (at === null) toHover(null);
      else wake();
      dirty = true;
    },
    press: (x, y) => {
      const { width, height } = size();
      const id = pointedAt(stage, snapshot.world, (x / width) * 2 - 1, 1 - (y / height) * 2);
      if (id !== null) view.onChoose(id);
    },
    chooseMiddle: () => {
      const id = pointedAt(stage, snapshot.world, 0, 0);
      if (id !== null) view.onChoose(id);
    },
    home: () => go(arrive(), times.look),
  };

  const shake = (ms: number): Look => {
    if (aid !== 'glass' || still() || stage.software) return look;
    shaken += ms / 1000;
    const a = 0.0009;
    const t = shaken;
    return {
      ...look,
      yaw: look.yaw + a * (Math.sin(2.1 * t) + 0.6 * Math.sin(5.3 * t + 1)),
      pitch: look.pitch + a * (Math.sin(1.7 * t + 2) + 0.5 * Math.sin(6.1 * t)),
    };
  };

  const paint = (at: Look): void => {
    if (walk !== null) {
      const t = Math.min(1, walk.past / times.walk);
      const k = t * t * (3 - 2 * t);
      const bob = 0.035 * Math.sin(t * Math.PI * 4) * Math.sin(Math.PI * t);
      const { from, to } = walk;
      stage.stand([
        from[0] + (to[0] - from[0]) * k,
        from[1] + (to[1] - from[1]) * k,
        from[2] + (to[2] - from[2]) * k + bob,
      ]);
    }
    stage.draw(at, aid);
    const corners = outline();
    layer?.show({
      fog: Math.min(1, 160 / snapshot.world.site.visibilityM),
      lamp: aid === 'lamp',
      glass: aid === 'glass',
      outline: corners,
      label: hovered === null ? null : nameOf(snapshot.world, hovered),
      labelAt: labelAt(corners),
      ring: byKeys,
      dark: 0,
    });
  };

  const step = (ms: number): void => {
    if (move !== null) {
      move.past += ms;
      look = between(move.from, move.to, move.past / move.ms);
      if (move.past >= move.ms) move = null;
      view.onTurn(look.yaw);
      dirty = true;
    }
    if (walk !== null) {
      walk.past += ms;
      dirty = true;
    }
    const at = shake(ms);
    if (at !== look) dirty = true;
    if (hoverAt !== null && move === null) {
      const { width, height } = size();
      toHover(pointedAt(stage, snapshot.world, (hoverAt.x / width) * 2 - 1, 1 - (hoverAt.y / height) * 2));
    } else if (byKeys && move === null) toHover(pointedAt(stage, snapshot.world, 0, 0));
    const drifting = !still() && !stage.software && quiet < times.drift && snapshot.world.site.visibilityM < 1500;
    if (drifting) stage.drift(ms / 1000);
    if (dirty || drifting) {
      if (dirty) quiet = 0;
      dirty = false;
      paint(at);
      if (walk !== null && walk.past >= times.walk) walk = null;
    } else if (move === null && walk === null && aid !== 'glass') game.loop.sleep();
    else if (aid === 'glass' && at === look && move === null && walk === null) game.loop.sleep();
    quiet += ms;
  };

  const scene = new Overlay(
    (ready) => {
      layer = ready;
      listenToPointer(ready, hands);
      above.style.cursor = 'grab';
      change();
    },
    (ms) => step(Math.min(ms, 100)),
  );
  game.scene.add('overlay', scene, true);

  const resize = (): void => {
    const { width, height } = size();
    stage.fit(width, height);
    if (layer) game.scale.resize(width, height);
    change();
  };
  const watch = new ResizeObserver(resize);
  watch.observe(host);
  const deaf = listenToKeys(host, hands);

  const follow = (next: Snapshot): void => {
    snapshot = next;
    const nextAid = view.aid();
    const moved = next.stand !== stand;
    const from = stage.eye();
    const changed = stage.follow(next.world, next.stand, view.brightness);
    if (moved) {
      const to = stage.eye();
      const near = stand !== '' && distance(from, to) < NEAR && !still() && !stage.software;
      walk = near ? { from, to, past: 0 } : null;
      const first = stand === '';
      stand = next.stand;
      aid = nextAid;
      hoverAt = null;
      toHover(null);
      go(arrive(), first || !near ? 0 : times.walk);
    } else if (nextAid !== aid) {
      aid = nextAid;
      go({ ...goal(), zoom: zooms[aid].far }, times.look);
    }
    if (changed) change();
  };

  resize();
  follow(snapshot);

  return {
    redraw: change,
    handle: {
      supported: true,
      update: (next) => {
        follow(next);
        change();
      },
      lookToward: (id) => {
        if (id === null) {
          if (goal().zoom !== zooms[aid].far) go({ ...goal(), zoom: zooms[aid].far }, times.look);
          return;
        }
        const place = placeOf(id);
        if (place === null) return;
        const eye = stage.eye();
        const { far, near } = zooms[aid];
        const seen = 2 * Math.atan(place.size / 2 / Math.max(0.5, distance(eye, place.at)));
        const wanted = (0.5 * fieldOf(aspect(), 1)) / Math.max(0.02, seen);
        go(
          { ...anglesTo(eye, place.at), zoom: Math.min(near, Math.max(far, aid === 'glass' ? far : wanted)) },
          times.look,
        );
      },
      turn: (yaw, pitch) => hands.turn(yaw, pitch),
      yaw: () => goal().yaw,
      dispose: () => {
        gone = true;
        watch.disconnect();
        deaf();
        game.destroy(true);
        if (!game.loop.running) game.loop.wake();
      },
    },
  };
};
