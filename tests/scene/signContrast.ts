/** How strongly a fault shows in the picture from a standing point: pixels that its presence changes, beside the engine's verdict. */

import { Box3, Group, Vector3 } from 'three';
import { faultKind } from '../../src/engine/catalogue/faults.ts';
import type { Side } from '../../src/engine/catalogue/types.ts';
import { distance } from '../../src/engine/math/vec3.ts';
import { seenOn } from '../../src/engine/senses/signsFrom.ts';
import type { Aid } from '../../src/engine/senses/types.ts';
import { withPart } from '../../src/engine/world/edit.ts';
import type { Part, World } from '../../src/engine/world/types.ts';
import { anglesTo, kept, zooms } from '../../src/scene/look/view.ts';
import { materials } from '../../src/scene/materials/materials.ts';
import { paintAll } from '../../src/scene/materials/painting.ts';
import { type Stage, stageOf } from '../../src/scene/stage.ts';
import { laid } from './everyKind.ts';

const WIDTH = 240;
const HEIGHT = 160;
/** A piece of a picture 720 pixels high, with the same pixels to the radian. */
const CROP = 720 / HEIGHT;
/** Contrast from which a pixel counts, of luminance as shown: a little above the eye's threshold for a patch of a pixel. */
const VISIBLE = 0.06;

export interface Shows {
  /** Pixels that differ visibly, and the sum of their contrasts. */
  readonly pixels: number;
  readonly energy: number;
  /** The engine's word: null seen, else why not; and its margin. */
  readonly why: string | null;
  readonly margin: number;
}

/** A stage ready to be photographed. */
export const studioStage = (world: World): Stage => {
  const stage = stageOf(world, () => undefined);
  stage.follow(world, world.stands[0]?.id ?? '', 1);
  stage.fit(WIDTH, HEIGHT);
  return stage;
};

/** Gets it ready at once. */
export const readyNow = async (stage: Stage): Promise<void> => {
  materials();
  paintAll();
  while (stage.prepare(200) < 1) await new Promise((done) => setTimeout(done, 0));
  // Grass, land and what stands beyond change no sign and cost most of a picture.
  const { root } = stage.drawing;
  for (const object of root.parent?.children ?? []) {
    if (object !== root && object instanceof Group) object.visible = false;
  }
};

const pixelsOf = (stage: Stage): Uint8ClampedArray => {
  const copy = document.createElement('canvas');
  copy.width = WIDTH;
  copy.height = HEIGHT;
  const c = copy.getContext('2d', { willReadFrequently: true }) as CanvasRenderingContext2D;
  c.drawImage(stage.canvas, 0, 0, WIDTH, HEIGHT);
  return c.getImageData(0, 0, WIDTH, HEIGHT).data;
};

const luminance = (p: Uint8ClampedArray, i: number): number =>
  0.2126 * ((p[i] as number) / 255) ** 2.2 +
  0.7152 * ((p[i + 1] as number) / 255) ** 2.2 +
  0.0722 * ((p[i + 2] as number) / 255) ** 2.2;

/** Middle of the marks drawn on a part, null without any: a glass sees no more than a hand's breadth. */
const markOn = (stage: Stage, id: string): [number, number, number] | null => {
  const box = new Box3();
  for (const object of stage.drawing.of(id)) {
    // What was drawn just now has its place only after a picture.
    object.updateWorldMatrix(true, true);
    object.traverse((o) => {
      if (o.name.startsWith('mark-')) box.expandByObject(o);
    });
  }
  if (box.isEmpty()) return null;
  const { x, y, z } = box.getCenter(new Vector3());
  return [x, y, z];
};

/** A standing point and an aid. */
export interface View {
  readonly stand: string;
  readonly aid: Aid;
}

/** Photographs the part with and without the fault from each view, as near as the aid allows, and compares. */
export const showsFrom = (
  stage: Stage,
  world: World,
  part: Part,
  kind: string,
  side: Side,
  views: readonly View[],
): readonly Shows[] => {
  const fault = laid(kind, side);
  const state = { ...part.state, ...faultKind(kind).sets };
  const faulty = withPart(world, part.id, { state, faults: [fault] });
  const sound = withPart(world, part.id, { state, faults: [] });
  const signs = views.map(({ stand, aid }) => {
    const [sign] = seenOn(faulty, { ...part, state, faults: [fault] }, stand, aid);
    if (sign === undefined) throw new Error(`${kind} has no sign for the eye`);
    return sign;
  });
  stage.follow(faulty, views[0]?.stand ?? '', 1);
  const marked = markOn(stage, part.id);
  const takeAll = (of: World): readonly Uint8ClampedArray[] =>
    views.map(({ stand, aid }, i) => {
      stage.follow(of, stand, 1);
      const eye = stage.eye();
      const at = marked ?? signs[i]?.at ?? eye;
      stage.draw(kept({ ...anglesTo(eye, at), zoom: zooms[aid].near * CROP }), aid, distance(eye, at));
      return pixelsOf(stage);
    });
  const [bad, good] = [takeAll(faulty), takeAll(sound)];
  return signs.map(({ why, margin }, k): Shows => {
    const [a, b] = [bad[k] as Uint8ClampedArray, good[k] as Uint8ClampedArray];
    let pixels = 0;
    let energy = 0;
    for (let i = 0; i < a.length; i += 4) {
      const [x, y] = [luminance(a, i), luminance(b, i)];
      const contrast = Math.abs(x - y) / Math.max(x, y, 0.004);
      if (contrast < VISIBLE) continue;
      pixels++;
      energy += contrast;
    }
    return { pixels, energy, why, margin };
  });
};
