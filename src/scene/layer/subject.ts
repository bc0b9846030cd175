/** What is looked at or pointed at: where it is, how large, and its outline on the picture. */
import { Box3, type Object3D, Vector3 } from 'three';
import { componentKind } from '../../engine/catalogue/components.ts';
import { distance, type Vec3 } from '../../engine/math/vec3.ts';
import { findPart } from '../../engine/world/edit.ts';
import { placeOfFeature } from '../../engine/world/featurePlace.ts';
import type { World } from '../../engine/world/types.ts';
import { anglesTo, fieldOf, type Look } from '../look/view.ts';
import type { Stage } from '../stage.ts';
import { hullOf, pointsOf, type Spot, widened } from './hull.ts';

export interface Window {
  readonly width: number;
  readonly height: number;
}

const objectsOf = (stage: Stage, id: string): readonly Object3D[] => {
  const prop = stage.props.named().get(id);
  return [...stage.drawing.outlineOf(id), ...(prop ? [prop] : [])];
};

/** Whatever is larger is looked at as if it were this wide, about its first feature. */
const SPAN = 0.5;

const placeOf = (stage: Stage, world: World, id: string): { readonly at: Vec3; readonly size: number } | null => {
  const part = findPart(world, id);
  const box = new Box3();
  for (const object of objectsOf(stage, id)) box.expandByObject(object);
  const size = box.isEmpty() ? 0.3 : box.getSize(new Vector3()).length();
  if (part !== null) {
    const [feature] = componentKind(part.kind).features;
    return { at: feature ? placeOfFeature(part, feature) : part.at, size: Math.min(size, SPAN) };
  }
  if (box.isEmpty()) return null;
  const c = box.getCenter(new Vector3());
  return { at: [c.x, c.y, c.z], size };
};

/** The look that brings something to the middle, filling half the field as far as the zooms allow; null if it is nowhere. */
export const lookAtIt = (
  stage: Stage,
  world: World,
  id: string,
  aspect: number,
  zooms: { readonly far: number; readonly near: number },
): Look | null => {
  const place = placeOf(stage, world, id);
  if (place === null) return null;
  const eye = stage.eye();
  const seen = 2 * Math.atan(place.size / 2 / Math.max(0.5, distance(eye, place.at)));
  const wanted = (0.5 * fieldOf(aspect, 1)) / Math.max(0.02, seen);
  return { ...anglesTo(eye, place.at), zoom: Math.min(zooms.near, Math.max(zooms.far, wanted)) };
};

/** From −1 … 1 to pixels. */
export const toPixels = (spot: Spot, { width, height }: Window): Spot => ({
  x: ((spot.x + 1) / 2) * width,
  y: ((1 - spot.y) / 2) * height,
});

/** Outline in pixels; empty for nothing, or for what is behind. */
export const outlineOf = (stage: Stage, id: string | null, window: Window): readonly Spot[] => {
  if (id === null) return [];
  const spots = pointsOf(objectsOf(stage, id)).flatMap((p) => {
    const at = stage.project(p);
    return at === null ? [] : [toPixels(at, window)];
  });
  return widened(hullOf(spots), 4);
};
