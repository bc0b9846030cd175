/**
 * What a look at a part tells: a line a feature, neutral, healthy or not. A sign that is made out takes the place of its feature's
 * ordinary words; what cannot be made out is said so, and why.
 */
import { componentKind } from '../catalogue/components.ts';
import type { Feature } from '../catalogue/types.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { distance, type Vec3 } from '../math/vec3.ts';
import { partById } from '../world/edit.ts';
import { placeOfFeature } from '../world/featurePlace.ts';
import type { Part, World } from '../world/types.ts';
import { type Face, facesOf, middlesOf } from './faces.ts';
import { type View, viewOf } from './inView.ts';
import { lacking, type Mark, marginOf } from './light.ts';
import { eyeAt, seenOn } from './signsFrom.ts';
import { asItIs } from './surface.ts';
import type { Aid, Look, Sign } from './types.ts';

const tooMuch = { 'too dark': 'too dark', fog: 'too much fog', 'too small': 'too far' } as const;

const withAid: Readonly<Record<Aid, string>> = { eyes: 'by eye', lamp: 'by lamp', glass: 'with the glass' };

const volts = (world: World, part: Part, [a, b]: readonly [string, string]): number =>
  solveCircuit(world).between(`${part.id}/${a}`, `${part.id}/${b}`);

/** Ordinary words of a feature in the part's present state. */
const ordinary = (world: World, part: Part, feature: Feature): string => {
  const { live, byState = [] } = feature;
  if (live !== undefined && volts(world, part, live.between) >= live.minVolts) return live.words;
  const said = { ...part.words, ...part.state };
  const now = byState.find(({ when }) => Object.entries(when).every(([name, value]) => said[name] === value));
  return asItIs(now?.words ?? feature.healthy, world.site);
};

/** How much of a feature is looked at, metres: a hand's breadth. */
const ABOUT = 0.1;

// A part is never changed in place, and where its features lie follows from it alone.
const facesKept = new WeakMap<Part, Map<Feature, readonly Face[]>>();

const featureFaces = (part: Part, feature: Feature): readonly Face[] => {
  const kept = facesKept.get(part) ?? new Map<Feature, readonly Face[]>();
  facesKept.set(part, kept);
  const known = kept.get(feature) ?? middlesOf(facesOf(part, { ...feature, feature, extent: ABOUT }));
  kept.set(feature, known);
  return known;
};

const markOf = (feature: Feature): Mark => ({ size: feature.size, shape: 'patch', contrast: 0.5, reflectance: 0.3 });

/** Two marks on one feature are one line, so that the number of lines tells nothing. */
const together = (subject: string, lines: readonly string[]): string =>
  `${subject}: ${lines.map((line) => line.slice(subject.length + 2)).join('; ')}`;

const inView = (world: World, part: Part, feature: Feature, eye: Vec3): View =>
  viewOf(world, part, featureFaces(part, feature), eye, true);

const lineFor = (world: World, part: Part, feature: Feature, eye: Vec3, aid: Aid, signs: readonly Sign[]): string => {
  const made = signs.filter(({ perceived }) => perceived).map(({ words }) => words);
  const subject = feature.healthy.split(':')[0] ?? feature.id;
  const mine = made.filter((words) => words.startsWith(`${subject}:`));
  if (mine.length > 0) return together(subject, mine);
  const view = inView(world, part, feature, eye);
  if (!view.faces) return `${subject}: on the other side from here`;
  if (view.share === 0) return `${subject}: hidden from here`;
  const far = distance(eye, view.at);
  if (marginOf(markOf(feature), far, world.site, aid) < 1) {
    return `${subject}: ${tooMuch[lacking(markOf(feature), far, world.site, aid)]} to tell, ${withAid[aid]}`;
  }
  return ordinary(world, part, feature);
};

/** A look at a part from a stand with an aid; throws on an unknown part or stand. */
export const lookAt = (world: World, id: string, stand: string, aid: Aid): Look => {
  const part = partById(world, id);
  const eye = eyeAt(world, stand);
  const signs = seenOn(world, part, stand, aid);
  const { features } = componentKind(part.kind);
  const lines = features.map((feature) => lineFor(world, part, feature, eye, aid, signs));
  return {
    part: id,
    name: part.name,
    lines,
    seen: signs.filter(({ perceived }) => perceived).map((sign) => sign.id),
    visible: features.some((feature) => inView(world, part, feature, eye).share > 0),
    distance: distance(eye, features[0] ? placeOfFeature(part, features[0]) : part.at),
  };
};

/** Whether lights burn in a house: its bus stands at something near its voltage. */
export const isLit = (world: World, id: string): boolean => {
  const part = partById(world, id);
  return componentKind(part.kind).features.some(
    ({ live }) => live !== undefined && volts(world, part, live.between) >= live.minVolts,
  );
};
