/**
 * What a look at a part tells: a line a feature, neutral, healthy or not. A sign that is made out takes the place of its feature's
 * ordinary words; what cannot be made out is said so, and why.
 */
import { componentKind } from '../catalogue/components.ts';
import type { Feature } from '../catalogue/types.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { distance, type Vec3 } from '../math/vec3.ts';
import { partById, placeOn } from '../world/edit.ts';
import type { Part, World } from '../world/types.ts';
import { lacking, type Mark, marginOf } from './light.ts';
import { eyeAt, facesEye, seenOn } from './signsFrom.ts';
import { isHidden } from './solids.ts';
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

const markOf = (feature: Feature): Mark => ({ size: feature.size, shape: 'patch', contrast: 0.5, reflectance: 0.3 });

/** Two marks on one feature are one line, so that the number of lines tells nothing. */
const together = (subject: string, lines: readonly string[]): string =>
  `${subject}: ${lines.map((line) => line.slice(subject.length + 2)).join('; ')}`;

const lineFor = (world: World, part: Part, feature: Feature, eye: Vec3, aid: Aid, signs: readonly Sign[]): string => {
  const made = signs.filter(({ perceived }) => perceived).map(({ words }) => words);
  const subject = feature.healthy.split(':')[0] ?? feature.id;
  const mine = made.filter((words) => words.startsWith(`${subject}:`));
  if (mine.length > 0) return together(subject, mine);
  const place = placeOn(part, feature.offset);
  if (!facesEye(feature.side, place, eye)) return `${subject}: on the other side from here`;
  if (isHidden(world, eye, place, part.id)) return `${subject}: hidden from here`;
  const far = distance(eye, place);
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
    visible: lines.some((line) => !/: (on the other side|hidden) /.test(`${line} `)),
    distance: distance(eye, placeOn(part, features[0]?.offset ?? [0, 0, 0])),
  };
};

/** Whether lights burn in a house: its bus stands at something near its voltage. */
export const isLit = (world: World, id: string): boolean => {
  const part = partById(world, id);
  return componentKind(part.kind).features.some(
    ({ live }) => live !== undefined && volts(world, part, live.between) >= live.minVolts,
  );
};
