/** Attention over time: which way the trainee looks, what is pointed at, when to draw and when to let the loop sleep. */
import type { SceneHandle, SceneView } from '../drill/sceneTypes.ts';
import type { Snapshot } from '../drill/types.ts';
import { distance, type Vec3 } from '../engine/math/vec3.ts';
import type { Aid } from '../engine/senses/types.ts';
import { fallsIn } from './layer/falling.ts';
import { type Hands, listenToKeys } from './layer/hands.ts';
import type { Spot } from './layer/hull.ts';
import { type Layer, layerOn } from './layer/layerOn.ts';
import { nameOf, pointedAt } from './layer/pointing.ts';
import { lookAtIt, outlineOf, type Window } from './layer/subject.ts';
import { Aim } from './look/aim.ts';
import { arrivalAt } from './look/arrival.ts';
import { Drift } from './look/drift.ts';
import { nearestAlong } from './look/nearest.ts';
import { photographOf } from './look/photograph.ts';
import { watchPixels } from './look/screen.ts';
import { paceOf } from './look/sharpness.ts';
import { type Air, airOf } from './look/sky.ts';
import { directionOf, fieldOf, type Look, zooms } from './look/view.ts';
import { eyeOn, NEAR, WALK, type Walk } from './look/walk.ts';
import type { Stage } from './stage.ts';

/** Milliseconds of a turn by key and of a look at a part. */
const times = { turn: 160, look: 420 } as const;

/** Milliseconds of a frame given to getting ready. */
const SLICE = 14;

export class Attention {
  private snapshot: Snapshot;
  private aid: Aid;
  private stand = '';
  private readonly aim = new Aim();
  private walk: Walk | null = null;
  /** The view from which a part was brought near, to come back to. */
  private before: Look | null = null;
  private hovered: string | null = null;
  private pointer: Spot | null = null;
  /** The middle of the view points while one looks around by keys or buttons. */
  private byMiddle = false;
  /** Whether one has looked anywhere since one came here. */
  private turned = false;
  /** What has to be drawn again: the world, or only the layer above it. */
  private dirty: 'world' | 'layer' | null = 'world';
  private ready = false;
  private readonly drift = new Drift();
  private readonly layer: Layer;
  private readonly deaf: () => void;
  private readonly unwatch: () => void;
  private readonly pace = paceOf();
  /** Pixels of the screen for each of CSS, as last taken. */
  private screen = 1;
  private readonly host: HTMLElement;
  private readonly above: HTMLElement;
  private readonly stage: Stage;
  private readonly view: SceneView;

  private readonly onPrepare: (share: number) => void;

  constructor(
    host: HTMLElement,
    above: HTMLElement,
    stage: Stage,
    view: SceneView,
    onPrepare: (share: number) => void,
  ) {
    this.onPrepare = onPrepare;
    this.host = host;
    this.above = above;
    this.stage = stage;
    this.view = view;
    this.snapshot = view.snapshot();
    this.aid = view.aid();
    this.layer = layerOn(above, this.window, this.hands, (ms) => this.step(ms));
    this.deaf = listenToKeys(host, this.hands);
    this.unwatch = watchPixels(host, () => this.resize());
    this.resize();
    this.follow(this.snapshot);
  }

  private get window(): Window {
    return { width: Math.max(2, this.host.clientWidth), height: Math.max(2, this.host.clientHeight) };
  }

  private get aspect(): number {
    const { width, height } = this.window;
    return width / height;
  }

  /** Whether nothing may move by itself: asked for, or too dear for this machine. */
  private get calm(): boolean {
    return this.view.reducedMotion || this.stage.software;
  }

  private get air(): Air {
    return airOf(this.snapshot.world.site);
  }

  private resize(): void {
    const { width, height } = this.window;
    this.screen = window.devicePixelRatio;
    this.stage.fit(width, height, this.pace.share);
    this.layer.resize(width, height);
    this.change();
  }

  /** Draws again, waking the loop. */
  change(): void {
    this.again('world');
  }

  private again(what: 'world' | 'layer'): void {
    if (this.dirty !== 'world') this.dirty = what;
    this.drift.wake();
    this.layer.wake();
  }

  private go(to: Look, ms: number): void {
    this.aim.to(to, this.view.reducedMotion ? 0 : ms);
    if (!this.aim.moving) this.view.onTurn(this.aim.look.yaw);
    this.change();
  }

  private arrival(): Look {
    const { world, stand } = this.snapshot;
    return arrivalAt(world, stand, this.stage.eye(), this.aid, this.aspect);
  }

  private hover(id: string | null): void {
    if (id === this.hovered) return;
    this.hovered = id;
    this.view.onHover(id);
    this.above.style.cursor = id === null ? 'grab' : 'pointer';
    this.again('layer');
  }

  private at(x: number, y: number): string | null {
    this.stage.face(this.aim.look);
    return pointedAt(this.stage, this.snapshot.world, x, y);
  }

  private under(spot: Spot): string | null {
    const { width, height } = this.window;
    return this.at((spot.x / width) * 2 - 1, 1 - (spot.y / height) * 2);
  }

  private choose(id: string | null): void {
    if (id !== null) this.view.onChoose(id);
  }

  private readonly hands: Hands = {
    drag: (dx, dy) => {
      const { look } = this.aim;
      const perPixel = fieldOf(this.aspect, look.zoom) / this.window.height;
      this.byMiddle = false;
      this.turned = true;
      this.pointer = null;
      this.before = null;
      this.aim.to({ ...look, yaw: look.yaw + dx * perPixel, pitch: look.pitch + dy * perPixel }, 0);
      this.view.onTurn(this.aim.look.yaw);
      this.hover(null);
      this.change();
    },
    turn: (yaw, pitch) => {
      const { goal } = this.aim;
      const share = 1 / Math.max(1, goal.zoom * 0.6);
      this.byMiddle = true;
      this.turned = true;
      this.pointer = null;
      this.go({ ...goal, yaw: goal.yaw + yaw * share, pitch: goal.pitch + pitch * share }, times.turn);
    },
    nearer: (factor) => {
      const { least, near } = zooms[this.aid];
      const { goal } = this.aim;
      this.go({ ...goal, zoom: Math.min(near, Math.max(least, goal.zoom * factor)) }, times.turn);
    },
    over: (at) => {
      this.byMiddle = false;
      this.pointer = at;
      if (at === null) this.hover(null);
      // The flashlight goes where one points.
      this.again(this.aid === 'lamp' ? 'world' : 'layer');
    },
    press: (x, y) => this.choose(this.under({ x, y })),
    chooseMiddle: () => this.choose(this.at(0, 0)),
    home: () => this.go(this.arrival(), times.look),
  };

  /** Which way the flashlight is held: where one points while one looks with the lamp. */
  private spot(look: Look): Vec3 | null {
    const { pointer, window, stage } = this;
    if (this.aid !== 'lamp' || pointer === null) return null;
    stage.face(look);
    return stage.through((pointer.x / window.width) * 2 - 1, 1 - (pointer.y / window.height) * 2);
  }

  private paint(look: Look): void {
    const { stage, snapshot, aid } = this;
    if (this.walk !== null) stage.stand(eyeOn(this.walk));
    const near = aid === 'lamp' ? nearestAlong(snapshot.world, stage.eye(), directionOf(look)) : undefined;
    stage.draw(look, aid, near, this.spot(look));
    this.paintLayer(look);
  }

  private paintLayer(look: Look): void {
    const { stage, snapshot, aid, hovered, pointer } = this;
    const { site } = snapshot.world;
    const { width, height } = this.window;
    this.layer.show({
      fog: Math.min(1, 160 / site.visibilityM),
      lamp: aid === 'lamp',
      glass: aid === 'glass',
      outline: outlineOf(stage, hovered, this.window),
      label: hovered === null ? null : nameOf(snapshot.world, hovered),
      labelAt: pointer ?? { x: width / 2, y: height / 2 + 84 },
      ring: this.byMiddle,
      falls: fallsIn(this.air, site.skyLux, aid, look, this.aspect),
      seconds: this.drift.takeFall(),
    });
  }

  /** One frame: move on what moves, point, draw if anything changed, else sleep. */
  private step(since: number): void {
    if (!this.ready) {
      this.prepare();
      return;
    }
    const late = !this.stage.software && this.pace.frame(since);
    // Not every browser tells that the window has gone to another screen.
    if (late || window.devicePixelRatio !== this.screen) this.resize();
    const ms = Math.min(since, 100);
    const turned = this.aim.step(ms);
    if (turned) this.view.onTurn(this.aim.look.yaw);
    if (this.walk !== null) this.walk.past += ms;
    if (!this.aim.moving && this.walk === null) {
      if (this.pointer !== null) this.hover(this.under(this.pointer));
      else if (this.byMiddle) this.hover(this.at(0, 0));
    }
    const shaking = this.aid === 'glass' && !this.calm;
    const { moves, goesOn } = this.drift.step(ms, this.stage, this.air, this.snapshot.world.site, this.calm);
    if (this.dirty === 'world' || turned || this.walk !== null || shaking || moves) {
      this.dirty = null;
      this.paint(shaking ? this.drift.shaken(this.aim.look, ms) : this.aim.look);
      if (this.walk !== null && this.walk.past >= WALK) this.walk = null;
    } else if (this.dirty === 'layer') {
      this.dirty = null;
      this.stage.face(this.aim.look);
      this.paintLayer(this.aim.look);
    } else if (!goesOn) this.layer.sleep();
  }

  /** A slice of the work before the first picture; its share is told, and the rest of the frame left to input. */
  private prepare(): void {
    const share = this.stage.prepare(SLICE);
    this.onPrepare(share);
    if (share < 1) return;
    this.ready = true;
    this.stage.follow(this.snapshot.world, this.snapshot.stand, this.view.brightness);
    this.change();
  }

  /** Takes over a snapshot and the aid in hand. */
  private follow(next: Snapshot): void {
    const { stage, view } = this;
    const first = this.stand === '';
    const moved = next.stand !== this.stand;
    const from = stage.eye();
    this.snapshot = next;
    const aid = view.aid();
    const otherAid = aid !== this.aid;
    this.aid = aid;
    stage.follow(next.world, next.stand, view.brightness);
    if (moved) {
      this.stand = next.stand;
      this.turned = false;
      const to = stage.eye();
      const shown = !first && !this.calm && distance(from, to) < NEAR;
      this.before = null;
      this.walk = shown ? { from, to, past: 0 } : null;
      this.pointer = null;
      this.hover(null);
      this.go(this.arrival(), shown ? WALK : 0);
    } else if (otherAid) {
      this.go(this.turned ? { ...this.aim.goal, zoom: zooms[aid].far } : this.arrival(), times.look);
    }
    this.change();
  }

  private lookToward(id: string | null): void {
    const { aim } = this;
    const zoom = zooms[this.aid];
    if (id === null) {
      const { before } = this;
      this.before = null;
      if (before !== null) this.go({ ...before, zoom: zoom.far }, times.look);
      else if (aim.goal.zoom !== zoom.far) this.go({ ...aim.goal, zoom: zoom.far }, times.look);
      return;
    }
    const look = lookAtIt(this.stage, this.snapshot.world, id, this.aspect, zoom);
    if (look === null) return;
    this.before ??= aim.goal;
    this.turned = true;
    this.go(look, times.look);
  }

  readonly handle: SceneHandle = {
    supported: true,
    update: (next) => this.follow(next),
    lookToward: (id) => this.lookToward(id),
    turn: (yaw, pitch) => this.hands.turn(yaw, pitch),
    yaw: () => this.aim.goal.yaw,
    photograph: () => {
      if (!this.ready) return null;
      const { stage, aid, snapshot, aim } = this;
      const near = aid === 'lamp' ? nearestAlong(snapshot.world, stage.eye(), directionOf(aim.look)) : undefined;
      const photo = photographOf(stage, aim.look, aid, near);
      this.change();
      return photo;
    },
    dispose: () => {
      this.deaf();
      this.unwatch();
      this.layer.dispose();
    },
  };
}
