/** The view on arrival at a standing point. */
import type { Vec3 } from '../../engine/math/vec3.ts';
import type { Aid } from '../../engine/senses/types.ts';
import { findPart, standById } from '../../engine/world/edit.ts';
import type { World } from '../../engine/world/types.ts';
import { anglesTo, arriving, fieldOf, type Look, zooms } from './view.ts';

/** Magnification from which a view counts as through a glass; metres below a pole's top where its gear hangs. */
const GLASSY = 2;
const BELOW_TOP = 1.9;

/** The pole that one came to, from its top down; at a customer's, the wall with the meter. `eye` in metres, `aspect` width over height. */
export const arrivalAt = (world: World, stand: string, eye: Vec3, aid: Aid, aspect: number): Look => {
  const near = standById(world, stand)?.near;
  const job = world.parts.find(({ id, pole }) => pole !== null && world.given.job.restores.includes(id))?.pole;
  const zoom = zooms[aid].far;
  const meter = findPart(world, `${near}.meter`);
  if (meter !== null) return { ...anglesTo(eye, meter.at), zoom };
  const pole = findPart(world, `${near}.pole`) ?? findPart(world, `${job}.pole`);
  const foot: Vec3 = pole?.at ?? [0, 0, 0];
  const top: Vec3 = [foot[0], foot[1], foot[2] + (pole?.values.heightM ?? 8) + 0.4];
  // Glass and lamp go first to what hangs below the top: field and beam would hold nothing but wood at mid-height.
  if (zoom > GLASSY || aid === 'lamp') return { ...anglesTo(eye, [top[0], top[1], top[2] - BELOW_TOP]), zoom };
  return { ...arriving(eye, foot, top, fieldOf(aspect, 1)), zoom };
};
