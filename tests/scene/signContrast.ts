/** How strongly a fault shows in the picture from a standing point: pixels that its presence changes, beside the engine's verdict. */

import { Box3, Vector3 } from 'three';
import { faultKind } from '../../src/engine/catalogue/faults.ts';
import type { Side } from '../../src/engine/catalogue/types.ts';
import { distance } from '../../src/engine/math/vec3.ts';
import { seenOn } from '../../src/engine/senses/signsFrom.ts';
import type { Aid, Sign } from '../../src/engine/senses/types.ts';
import { partById, withPart } from '../../src/engine/world/edit.ts';
import { leaningAgain } from '../../src/engine/world/lean.ts';
import type { Part, World } from '../../src/engine/world/types.ts';
import { anglesTo, kept, zooms } from '../../src/scene/look/view.ts';
import { materials } from '../../src/scene/materials/materials.ts';
import { paintAll } from '../../src/scene/materials/painting.ts';
import { type Stage, stageOf } from '../../src/scene/stage.ts';
import { laid, soundOf } from './everyKind.ts';

/** Heights of the picture's middle that is taken, pixels of 720: about a mark; about a part whose shape has changed, by eye and by glass. */
const CLOSE = 160;
const WIDE = 320;
const WIDEST = 640;
/** Cosine between a side and the way to the eye under which a mark is seen edge on at most: nothing is claimed of those. */
const EDGE_ON = 0.35;
/** Contrast from which a pixel counts, of luminance as shown: a little above the eye's threshold for a patch of a pixel. */
const VISIBLE = 0.06;
/** So many changed pixels show something; beyond so many it can be read. Between them nothing is claimed of what may not be seen. */
const SHOWS = 3;
const READS = 60;
/** Margin under which a sign that is too small, too dark or too far in fog may not be read in the picture. */
const HOPELESS = 0.5;

export interface Shows {
  /** Pixels that differ visibly. */
  readonly pixels: number;
  /** The engine's word: null seen, else why not; and its margin. */
  readonly why: string | null;
  readonly margin: number;
  /** Whether the part bears a mark in the picture; else its shape has changed. */
  readonly marked: boolean;
  /** Whether its side is seen edge on, where picture and verdict may differ by the mark's own width. */
  readonly edgeOn: boolean;
}

/** How picture and verdict disagree: seen but blank, not to be seen but read; null: they agree. */
export const disagreement = ({ pixels, why, margin, edgeOn }: Shows): 'blank' | 'reads' | null => {
  if (edgeOn) return null;
  if (why === null) return pixels < SHOWS ? 'blank' : null;
  const turned = why === 'other side' || why === 'hidden';
  return pixels > READS && (turned || margin < HOPELESS) ? 'reads' : null;
};

/** A stage ready to be photographed. */
export const studioStage = (world: World): Stage => {
  const stage = stageOf(world, () => undefined);
  stage.follow(world, world.stands[0]?.id ?? '', 1);
  return stage;
};

/** Gets it ready at once. */
export const readyNow = async (stage: Stage): Promise<void> => {
  materials();
  paintAll();
  while (stage.prepare(200) < 1) await new Promise((done) => setTimeout(done, 0));
  // Grass, land and what stands beyond change no sign and cost most of a picture.
  const around = stage.drawing.root.parent?.getObjectByName('surroundings');
  if (!around) throw new Error('there are no surroundings to hide');
  around.visible = false;
};

const pixelsOf = (stage: Stage): Uint8ClampedArray => {
  const { width, height } = stage.canvas;
  const copy = document.createElement('canvas');
  copy.width = width;
  copy.height = height;
  const c = copy.getContext('2d', { willReadFrequently: true }) as CanvasRenderingContext2D;
  c.drawImage(stage.canvas, 0, 0);
  return c.getImageData(0, 0, width, height).data;
};

const luminance = (p: Uint8ClampedArray, i: number): number =>
  0.2126 * ((p[i] as number) / 255) ** 2.2 +
  0.7152 * ((p[i + 1] as number) / 255) ** 2.2 +
  0.0722 * ((p[i + 2] as number) / 255) ** 2.2;

/** Middles of the marks drawn on a part: a glass sees no more than a hand's breadth. */
const marksOn = (stage: Stage, id: string): readonly [number, number, number][] => {
  const middles: [number, number, number][] = [];
  for (const object of stage.drawing.of(id)) {
    // What was drawn just now has its place only after a picture.
    object.updateWorldMatrix(true, true);
    object.traverse((o) => {
      if (!o.name.startsWith('mark-')) return;
      const { x, y, z } = new Box3().setFromObject(o).getCenter(new Vector3());
      middles.push([x, y, z]);
    });
  }
  return middles;
};

const outward: Readonly<Partial<Record<Side, readonly [number, number]>>> = { road: [0, -1], field: [0, 1] };

/** Whether a side is seen edge on from an eye. */
const isEdgeOn = (side: Side, at: readonly number[], eye: readonly number[]): boolean => {
  const out = outward[side];
  if (out === undefined) return false;
  const [x, y] = [(eye[0] as number) - (at[0] as number), (eye[1] as number) - (at[1] as number)];
  return Math.abs((out[0] * x + out[1] * y) / Math.hypot(x, y)) < EDGE_ON;
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
  const laidOn = withPart(world, part.id, { state, faults: [fault] });
  const faulty = { ...laidOn, parts: leaningAgain(laidOn.parts, partById(laidOn, part.id)) };
  const sound = withPart(world, part.id, soundOf(part, kind));
  const signs = views.map(({ stand, aid }) => {
    const signs = seenOn(faulty, partById(faulty, part.id), stand, aid);
    const sign = signs.find(({ why }) => why === null) ?? signs[0];
    if (sign === undefined) throw new Error(`${kind} has no sign for the eye`);
    return sign;
  });
  stage.follow(faulty, views[0]?.stand ?? '', 1);
  const marks = marksOn(stage, part.id);
  const edgeOn: boolean[] = [];
  const takeAll = (of: World): readonly Uint8ClampedArray[] =>
    views.map(({ stand, aid }, i) => {
      stage.follow(of, stand, 1);
      const eye = stage.eye();
      const { why, at: said } = signs[i] as Sign;
      const nearest = marks.toSorted((a, b) => distance(eye, a) - distance(eye, b))[0];
      const tall = nearest ? CLOSE : aid === 'glass' ? WIDEST : WIDE;
      // Of several marks the one is looked at that the engine says is seen; else the nearest, for it would show first.
      const at = why === null ? said : (nearest ?? said);
      edgeOn[i] = isEdgeOn(side, at, eye);
      stage.fit(1.5 * tall, tall);
      stage.draw(kept({ ...anglesTo(eye, at), zoom: (zooms[aid].near * 720) / tall }), aid, distance(eye, at));
      return pixelsOf(stage);
    });
  const [bad, good] = [takeAll(faulty), takeAll(sound)];
  return signs.map(({ why, margin }, k): Shows => {
    const [a, b] = [bad[k] as Uint8ClampedArray, good[k] as Uint8ClampedArray];
    let pixels = 0;
    for (let i = 0; i < a.length; i += 4) {
      const [x, y] = [luminance(a, i), luminance(b, i)];
      if (Math.abs(x - y) / Math.max(x, y, 0.004) >= VISIBLE) pixels++;
    }
    return { pixels, why, margin, marked: marks.length > 0, edgeOn: edgeOn[k] === true };
  });
};

/** A clear day, to look by eye and through the glass. */
export const byDay = (world: World): World => ({
  ...world,
  site: { ...world.site, light: 'day', skyLux: 20000, visibilityM: 20000 },
});

/** Stands on the ground that belong to a part's pole or premises; of a span, to the pole from which it comes. */
export const standsBy = (world: World, part: Part): readonly string[] => {
  const [x, y] = part.at;
  const away = ({ at }: Part): number => Math.hypot(at[0] - x, at[1] - y);
  const [foot] = world.parts.filter(({ kind }) => kind === 'pole').sort((a, b) => away(a) - away(b));
  const near = [part.premises, part.pole ?? (part.end === null && part.premises !== null ? null : foot?.pole)];
  return world.stands.filter((stand) => near.includes(stand.near) && stand.aloft === null).map(({ id }) => id);
};

export interface Row extends Shows {
  readonly name: string;
}

/** All rows of a fault: laid on no side in particular and, where it leaves a mark, on two sides. */
export const rowsOf = (
  stage: Stage,
  world: World,
  part: Part,
  kind: string,
  fault: string,
  by: readonly Aid[],
  stands = standsBy(world, part),
): readonly Row[] => {
  const views = stands.flatMap((stand) => by.map((aid): View => ({ stand, aid })));
  const laidOn = (side: Side): readonly Row[] =>
    showsFrom(stage, world, part, fault, side, views).map((shows, i) => ({
      name: `${kind}/${fault}/${side}/${views[i]?.stand}/${views[i]?.aid}`,
      ...shows,
    }));
  const any = laidOn('any');
  return any[0]?.marked ? [...any, ...laidOn('road'), ...laidOn('field')] : any;
};
