/** Which signs of faults and look-alikes are perceivable from a stand with an aid, and why the others are not. */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { Feature, SignKind } from '../catalogue/types.ts';
import { add, cross, distance, length, type Vec3 } from '../math/vec3.ts';
import { standById } from '../world/edit.ts';
import type { LaidFault, Part, Stand, World } from '../world/types.ts';
import { aroundSigns } from './around.ts';
import { type Face, facesOf, type Lie } from './faces.ts';
import { heardSigns } from './heardFrom.ts';
import { type View, viewOf } from './inView.ts';
import { lacking, type Mark, marginOf } from './light.ts';
import { type Obstacles, obstaclesIn } from './solids.ts';
import { asItIs } from './surface.ts';
import type { Aid, Sign } from './types.ts';

const nowhere: Feature = { id: '', healthy: '', size: 0.01, offset: [0, 0, 0], side: 'any' };

/** Eye of somebody at a stand; throws on an unknown stand. */
export const eyeAt = (world: World, stand: string): Vec3 => {
  const found = standById(world, stand);
  if (found === null) throw new Error(`no stand ${stand}`);
  return add(found.feet, [0, 0, found.eye]);
};

/** A sign as it lies on its part. */
export const lieOf = (part: Part, fault: LaidFault, kind: SignKind): Lie => ({
  feature: componentKind(part.kind).features.find(({ id }) => id === kind.feature) ?? nowhere,
  side: fault.side,
  size: kind.size ?? 0.01,
  extent: kind.extent ?? 0.1,
  ...(kind.form === undefined ? {} : { form: kind.form }),
  ...(kind.strip ? { strip: true } : {}),
  ...(kind.place === undefined ? {} : { place: kind.place }),
});

/** What is seen of a sign from an eye, whatever the light. */
interface InView {
  readonly kind: SignKind;
  readonly fault: LaidFault;
  readonly extent: number;
  readonly view: View;
}

interface Lain {
  readonly kind: SignKind;
  readonly fault: LaidFault;
  readonly lie: Lie;
  readonly faces: readonly Face[];
}

// A part is never changed in place, and where its signs lie follows from it alone.
const lain = new WeakMap<Part, readonly Lain[]>();

const lainOn = (part: Part): readonly Lain[] => {
  const known =
    lain.get(part) ??
    part.faults.flatMap((fault) =>
      faultKind(fault.kind)
        .signs.filter(({ sense }) => sense === 'see')
        .map((kind) => {
          const lie = lieOf(part, fault, kind);
          return { kind, fault, lie, faces: facesOf(part, lie) };
        }),
    );
  lain.set(part, known);
  return known;
};

const inViewOn = (world: World, part: Part, eye: Vec3): readonly InView[] =>
  lainOn(part).map(({ kind, fault, lie, faces }) => {
    const view = viewOf(world, part, faces, eye, lie.form !== 'outline');
    return { kind, fault, extent: lie.extent, view };
  });

/** Share of a lean that lies across the line of sight: toward or from the eye it hardly shows. */
const across = ({ lean }: Part, eye: Vec3, at: Vec3): number => {
  if (lean === undefined) return 0;
  const way: Vec3 = [at[0] - eye[0], at[1] - eye[1], 0];
  const off: Vec3 = [lean[0], lean[1], 0];
  return length(cross(off, way)) / Math.max(1e-9, length(off) * length(way));
};

const signOf = (part: Part, { kind, fault, extent, view }: InView, eye: Vec3, site: World['site'], aid: Aid): Sign => {
  const size = (kind.size ?? 0.01) * (kind.aside ? across(part, eye, view.at) : 1);
  const far = distance(eye, view.at);
  const mark: Mark = {
    // Of what is half covered no more can be resolved than what is left of it; a line stays as fine as it is.
    size: kind.shape === 'line' || view.share === 0 ? size : Math.min(size, view.share * extent),
    shape: kind.shape ?? 'patch',
    contrast: kind.contrast ?? 0.5,
    reflectance: kind.reflectance ?? 0.3,
  };
  const margin = marginOf(mark, far, site, aid);
  const turned = view.faces ? (view.share > 0 ? null : 'hidden') : 'other side';
  const why = turned ?? (margin < 1 ? lacking(mark, far, site, aid) : null);
  return {
    id: `${fault.id}/${kind.id}`,
    fault: fault.id,
    part: part.id,
    sense: 'see',
    perceived: why === null,
    margin,
    why,
    words: asItIs(kind.words, site),
    at: view.at,
  };
};

interface Kept {
  readonly obstacles: Obstacles;
  readonly place: Stand;
  readonly views: readonly InView[];
  /** By aid, with the text of the site for which it holds. */
  readonly signs: Map<Aid, { readonly site: string; readonly signs: readonly Sign[] }>;
}

// A part is never changed in place; with what may hide it and the eye's place it is all that is in view, with light and air all that
// is seen.
const kept = new WeakMap<Part, Map<string, Kept>>();
const sites = new WeakMap<World['site'], string>();

/** Equal sites have equal text. */
function textOf(site: World['site']): string {
  const text = sites.get(site) ?? JSON.stringify(site);
  sites.set(site, text);
  return text;
}

/** What is in view on a part from a stand, worked out anew only where something that hides it has moved. */
const keptFor = (world: World, part: Part, stand: string): Kept => {
  const place = standById(world, stand);
  if (place === null) throw new Error(`no stand ${stand}`);
  const stands = kept.get(part) ?? new Map<string, Kept>();
  kept.set(part, stands);
  const obstacles = obstaclesIn(world);
  const known = stands.get(stand);
  if (known?.obstacles === obstacles && known.place === place) return known;
  const made: Kept = { obstacles, place, views: inViewOn(world, part, eyeAt(world, stand)), signs: new Map() };
  stands.set(stand, made);
  return made;
};

/** Signs seen on one part, perceivable or not. */
export const seenOn = (world: World, part: Part, stand: string, aid: Aid): readonly Sign[] => {
  if (part.faults.length === 0) {
    if (standById(world, stand) === null) throw new Error(`no stand ${stand}`);
    return [];
  }
  const { views, signs } = keptFor(world, part, stand);
  const site = textOf(world.site);
  const known = signs.get(aid);
  if (known?.site === site) return known.signs;
  const eye = eyeAt(world, stand);
  const made = views.map((view) => signOf(part, view, eye, world.site, aid));
  signs.set(aid, { site, signs: made });
  return made;
};

/** All signs that eye and ear could have from a stand with an aid, in the order of parts. */
export const signsFrom = (world: World, stand: string, aid: Aid): readonly Sign[] => [
  ...world.parts.flatMap((part) => seenOn(world, part, stand, aid)),
  ...heardSigns(world, stand),
  ...aroundSigns(world, stand),
];
