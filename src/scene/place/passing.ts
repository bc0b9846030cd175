/** Traffic that goes by on the road, as light or heavy as the site says. Gaps between cars: estimates (45 s, 9 s). */
import { Group } from 'three';
import { car } from '../hardware/car.ts';
import type { Materials } from '../materials/materials.ts';
import { stream } from '../materials/noise.ts';
import { road } from './lie.ts';

/** Where cars come into sight and go out of it, m, and how fast they pass, m/s. */
const FAR = 150;
const PACE = 13;

/** Sky light below which cars have their lamps on, lx. */
export const LIT_BELOW = 400;

const gaps: Readonly<Record<string, number>> = { light: 45, heavy: 9 };

export interface Passing {
  readonly group: Group;
  /** Moves on; true while something is on the road. */
  step(seconds: number, traffic: string, lit: boolean): boolean;
  dispose(): void;
}

/** An empty road. */
export const passingOn = (set: Materials): Passing => {
  const group = new Group();
  const next = stream(17);
  let wait = 6;
  let made: { readonly lit: boolean; readonly cars: readonly Group[] } | null = null;
  const release = (): void => {
    for (const one of made?.cars ?? []) {
      one.removeFromParent();
      one.traverse((o) => {
        (o as { geometry?: { dispose(): void } }).geometry?.dispose();
      });
    }
    made = null;
  };
  const build = (lit: boolean): readonly Group[] =>
    [0, Math.PI].map((side) => {
      const one = car({ kind: 'car', side, state: lit ? 'lit' : 'day' }, set);
      const lane = ((road.near - road.far) / 4) * (side === 0 ? -1 : 1);
      one.position.set(side === 0 ? -FAR : FAR, road.middle + lane, 0);
      one.visible = false;
      group.add(one);
      return one;
    });
  return {
    group,
    step: (seconds, traffic, lit) => {
      const gap = gaps[traffic];
      if (gap === undefined) {
        if (made) release();
        return false;
      }
      if (made === null || made.lit !== lit) {
        release();
        made = { lit, cars: build(lit) };
      }
      wait -= seconds;
      const free = made.cars.find(({ visible }) => !visible);
      if (wait <= 0 && free) {
        free.visible = true;
        wait = gap * (0.5 + next());
      }
      let moving = false;
      for (const [i, one] of made.cars.entries()) {
        if (!one.visible) continue;
        moving = true;
        const way = i === 0 ? 1 : -1;
        one.position.x += way * PACE * seconds;
        if (one.position.x * way > Math.min(FAR, i === 0 ? road.end - 4 : FAR)) {
          one.visible = false;
          one.position.x = -way * (i === 0 ? FAR : road.end - 4);
        }
      }
      return moving;
    },
    dispose: release,
  };
};
