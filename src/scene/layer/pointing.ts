/**
 * What a spot of the picture points at: a part by the engine's own ray, so that picture and engine cannot differ, or a person
 * or the truck by what is drawn of it, if that is nearer.
 */
import { Box3, Raycaster, Vector3 } from 'three';
import { distance } from '../../engine/math/vec3.ts';
import { partAlong } from '../../engine/senses/partAlong.ts';
import { findPart, personById } from '../../engine/world/edit.ts';
import type { World } from '../../engine/world/types.ts';
import type { Stage } from '../stage.ts';

/** Id of what lies in that direction, both −1 … 1 from the middle; null for nothing. */
export const pointedAt = (stage: Stage, world: World, x: number, y: number): string | null => {
  const eye = stage.eye();
  const way = stage.through(x, y);
  const part = partAlong(world, eye, way);
  const found = part === null ? null : findPart(world, part);
  let nearest = found === null ? Number.POSITIVE_INFINITY : distance(eye, found.at);
  let id = part;
  const ray = new Raycaster(new Vector3(...eye), new Vector3(...way));
  for (const [name, object] of stage.props.named()) {
    if (name !== 'truck' && personById(world, name) === null) continue;
    if (!ray.ray.intersectsBox(new Box3().setFromObject(object))) continue;
    const [hit] = ray.intersectObject(object, true);
    if (hit && hit.distance < nearest) {
      nearest = hit.distance;
      id = name;
    }
  }
  return id;
};

/** Plain name for the label on the picture. */
export const nameOf = (world: World, id: string): string => {
  if (id === 'truck') return 'the truck';
  return findPart(world, id)?.name ?? personById(world, id)?.name ?? id;
};
