/** How far the looked-at thing is, for an eye that adapts to what its lamp lights. */
import { componentKind } from '../../engine/catalogue/components.ts';
import { dot, length, sub, type Vec3 } from '../../engine/math/vec3.ts';
import { placeOfFeature } from '../../engine/world/featurePlace.ts';
import type { World } from '../../engine/world/types.ts';

/** Cosine of the half angle that counts as the middle of the view. */
const MIDDLE = Math.cos((16 * Math.PI) / 180);

/** Metres to the nearest feature about the middle of the view; `otherwise` if there is none. */
export const nearestAlong = (world: World, eye: Vec3, direction: Vec3, otherwise = 12): number => {
  let best = otherwise;
  for (const part of world.parts) {
    for (const feature of componentKind(part.kind).features) {
      const way = sub(placeOfFeature(part, feature), eye);
      const far = length(way);
      if (far < best && far > 0.2 && dot(way, direction) > MIDDLE * far) best = far;
    }
  }
  return best;
};
