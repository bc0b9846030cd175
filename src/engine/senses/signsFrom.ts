/** Which signs of faults and look-alikes are perceivable from a stand with an aid, and why the others are not. */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { Side, SignKind } from '../catalogue/types.ts';
import { add, distance, dot, normalise, scale, sub, type Vec3 } from '../math/vec3.ts';
import { placeOn, standById } from '../world/edit.ts';
import type { LaidFault, Part, Stand, World } from '../world/types.ts';
import { aroundSigns } from './around.ts';
import { heardSigns } from './heardFrom.ts';
import { lacking, type Mark, marginOf } from './light.ts';
import { isHidden, type Obstacles, obstaclesIn } from './solids.ts';
import { asItIs } from './surface.ts';
import type { Aid, Sign } from './types.ts';

const normals: Readonly<Partial<Record<Side, Vec3>>> = {
  road: [0, -1, 0],
  field: [0, 1, 0],
  source: [-1, 0, 0],
  load: [1, 0, 0],
  top: [0, 0, 1],
  under: [0, 0, -1],
};

/** How far round a round body a mark is still seen: 0 to the very edge, 1 only face on. */
const EDGE = 0.15;

/** Eye of somebody at a stand; throws on an unknown stand. */
export const eyeAt = (world: World, stand: string): Vec3 => {
  const found = standById(world, stand);
  if (found === null) throw new Error(`no stand ${stand}`);
  return add(found.feet, [0, 0, found.eye]);
};

/** Whether a face of a part looks toward the eye. */
export const facesEye = (side: Side, place: Vec3, eye: Vec3): boolean => {
  const normal = normals[side];
  if (normal === undefined) return true;
  const way = sub(eye, place);
  const flat: Vec3 = normal[2] === 0 ? [way[0], way[1], 0] : way;
  return dot(normal, normalise(flat)) > EDGE;
};

/** A mark on a side stands out of the body a little, so that its own pole does not hide it. */
const onSurface = (place: Vec3, side: Side): Vec3 => add(place, scale(normals[side] ?? [0, 0, 0], 0.14));

const seenSign = (world: World, part: Part, fault: LaidFault, kind: SignKind, eye: Vec3, aid: Aid): Sign => {
  const feature = componentKind(part.kind).features.find(({ id }) => id === kind.feature);
  const place = onSurface(placeOn(part, feature?.offset ?? [0, 0, 0]), fault.side);
  const far = distance(eye, place);
  const mark: Mark = {
    size: kind.size ?? 0.01,
    shape: kind.shape ?? 'patch',
    contrast: kind.contrast ?? 0.5,
    reflectance: kind.reflectance ?? 0.3,
  };
  const margin = marginOf(mark, far, world.site, aid);
  const faces = facesEye(fault.side, place, eye);
  const hidden = faces && isHidden(world, eye, place, part.id);
  const why = !faces ? 'other side' : hidden ? 'hidden' : margin < 1 ? lacking(mark, far, world.site, aid) : null;
  return {
    id: `${fault.id}/${kind.id}`,
    fault: fault.id,
    part: part.id,
    sense: 'see',
    perceived: why === null,
    margin,
    why,
    words: asItIs(kind.words, world.site),
    at: place,
  };
};

interface Kept {
  readonly obstacles: Obstacles;
  readonly site: string;
  readonly place: Stand;
  readonly signs: readonly Sign[];
}

// A part is never changed in place; with what may hide it, light, air and the eye's place it is all that is seen.
const kept = new WeakMap<Part, Map<string, Kept>>();
const sites = new WeakMap<World['site'], string>();

/** Equal sites have equal text. */
function textOf(site: World['site']): string {
  const text = sites.get(site) ?? JSON.stringify(site);
  sites.set(site, text);
  return text;
}

/** Signs seen on one part, perceivable or not. */
export const seenOn = (world: World, part: Part, stand: string, aid: Aid): readonly Sign[] => {
  const place = standById(world, stand);
  if (place === null) throw new Error(`no stand ${stand}`);
  if (part.faults.length === 0) return [];
  const view = `${aid} ${stand}`;
  const views = kept.get(part) ?? new Map<string, Kept>();
  kept.set(part, views);
  const [obstacles, site] = [obstaclesIn(world), textOf(world.site)];
  const known = views.get(view);
  if (known?.obstacles === obstacles && known.site === site && known.place === place) return known.signs;
  const eye = eyeAt(world, stand);
  const signs = part.faults.flatMap((fault) =>
    faultKind(fault.kind)
      .signs.filter(({ sense }) => sense === 'see')
      .map((kind) => seenSign(world, part, fault, kind, eye, aid)),
  );
  views.set(view, { obstacles, site, place, signs });
  return signs;
};

/** All signs that eye and ear could have from a stand with an aid, in the order of parts. */
export const signsFrom = (world: World, stand: string, aid: Aid): readonly Sign[] => [
  ...world.parts.flatMap((part) => seenOn(world, part, stand, aid)),
  ...heardSigns(world, stand),
  ...aroundSigns(world, stand),
];
