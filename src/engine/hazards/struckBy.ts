/**
 * What can come down on somebody. A pole that does not hold what bends it, nobody on it (mechanics/poleBending.ts), may go
 * at any moment: within its height round its foot is its fall zone (geometry). A piece that a fault has loosened falls
 * about straight, onto whoever is below it: energy by standards/droppedObject.ts, fatal beyond what a hard hat is
 * tested with. Crews wear theirs (29 CFR 1910.135(a)(1)); the trainee is bareheaded where the scene lists one and it is not worn
 * or not whole, and so is who is not of the crew. Wood of 750 kg/m3 (treated southern pine, from memory); how far a piece is thrown aside is an estimate. Left out:
 * which way the pole goes, conductors that hold it back or that it brings along (drop.ts), what hits the pole first.
 */
import { faultKind } from '../catalogue/faults.ts';
import { toolKind } from '../catalogue/tools.ts';
import { distance, type Vec3 } from '../math/vec3.ts';
import { bearingList } from '../mechanics/bearing.ts';
import { poleBending } from '../mechanics/poleBending.ts';
import { dropSeverity, fallEnergy, helmetJoules } from '../standards/droppedObject.ts';
import type { Joules, Kilograms, Metres } from '../units/quantities.ts';
import { personById } from '../world/edit.ts';
import type { Part, Role, World } from '../world/types.ts';
import type { Meeting } from './meeting.ts';
import type { Moment } from './moment.ts';
import { failing, precondition } from './readiness.ts';
import type { Reach } from './types.ts';

/** Kilograms per cubic metre. */
const WOOD = 750;
/** Half an arm, and what glances off on the way. */
const ASIDE: Metres = 2;

const aside = (a: Vec3, b: Vec3): Metres => distance([a[0], a[1], 0], [b[0], b[1], 0]);

const kept = new WeakMap<World['parts'], ReadonlyMap<string, readonly Standing[]>>();

interface Standing {
  readonly part: Part;
  readonly height: Metres;
  readonly mass: Kilograms;
  readonly capacity: number;
  readonly demand: number;
  readonly unbalanced: number;
}

/** Mass above ground of a straight taper. */
function massOf({ values }: Part, height: Metres): Kilograms {
  const { topRadiusM: top = 0.1, buttRadiusM: butt = 0.14 } = values;
  return (WOOD * Math.PI * height * (top * top + top * butt + butt * butt)) / 3;
}

/** Poles that do not hold with nobody on them. */
function failingPoles(world: World): readonly Standing[] {
  const wind = world.site.windMs;
  const parts = bearingList(world.parts);
  const known = kept.get(parts);
  const found = known?.get(`${wind}`);
  if (found !== undefined) return found;
  const poles = world.parts.flatMap((part) => {
    if (part.pole === null || part.id !== `${part.pole}.pole`) return [];
    const { capacity, demand, unbalanced } = poleBending(world, part.pole, { wind });
    if (demand <= capacity) return [];
    const { heightM: height = 10.36 } = part.values;
    return [{ part, height, mass: massOf(part, height), capacity, demand, unbalanced }];
  });
  kept.set(parts, new Map([...(known ?? []), [`${wind}`, poles]]));
  return poles;
}

const base = (reach: Reach, world: World, part: Part) =>
  ({
    hazard: `struck-by:${part.id}`,
    mechanism: 'struck-by',
    part: part.id,
    point: null,
    who: reach.who,
    strikes: false,
    failed: failing(world, ['barricaded']),
  }) as const;

function byPole(reach: Reach, world: World, standing: Standing): readonly Meeting[] {
  const { part, height, mass, capacity, demand, unbalanced } = standing;
  const away = aside(reach.at, part.at);
  if (away > height) return [];
  const quantities = [
    { name: 'energy of the pole as it comes down', value: fallEnergy(mass, height / 2), unit: 'J' },
    { name: 'bending the pole withstands', value: capacity, unit: 'N m' },
    { name: 'bending asked of it', value: demand, unit: 'N m' },
    { name: 'of that, pull that nothing takes', value: unbalanced, unit: 'N m' },
    { name: 'distance from its foot', value: away, unit: 'm' },
    { name: 'height of the pole', value: height, unit: 'm' },
  ];
  return [
    {
      ...base(reach, world, part),
      severity: 'fatal',
      potentiallyFatal: true,
      quantities,
      now: quantities,
      limit: 'farther from its foot than the pole is high',
      source: 'strength: ANSI O5.1; wind as in the NESC (from memory); geometry of its height',
      measure: demand / capacity,
      measureNow: demand / capacity,
      words: 'It does not hold by itself and can come down at any moment.',
    },
  ];
}

const crew: readonly Role[] = ['trainee', 'second', 'foreman', 'flagger'];

function isBareheaded(world: World, who: string): boolean {
  const role = personById(world, who)?.role;
  if (role !== 'trainee') return role !== undefined && !crew.includes(role);
  const listed = world.tools.some(({ kind }) => toolKind(kind).wornOn === 'head');
  return listed && !precondition(world, 'hard-hat', { who });
}

const limitOf = (energy: Joules, bareheaded: boolean): string => {
  if (bareheaded) return 'no hard hat: its test energy and the 40 J of a recorded injury take one for granted';
  return energy >= helmetJoules ? '54 J: what a hard hat is tested with' : '40 J: an injury is to be expected';
};

function byPiece(reach: Reach, world: World, part: Part): readonly Meeting[] {
  const drops = part.faults.flatMap(({ kind }) => faultKind(kind).mechanical?.drops ?? []);
  if (drops.length === 0) return [];
  const height = part.at[2] - reach.at[2];
  const away = aside(reach.at, part.at);
  if (height <= 0 || away > ASIDE) return [];
  const bareheaded = isBareheaded(world, reach.who);
  const common = base(reach, world, part);
  return drops.map(({ what, kilograms }) => {
    const energy = fallEnergy(kilograms, height);
    const severity = dropSeverity(energy, bareheaded);
    const quantities = [
      { name: `energy of ${what}`, value: energy, unit: 'J' },
      { name: 'mass', value: kilograms, unit: 'kg' },
      { name: 'height it falls', value: height, unit: 'm' },
      { name: 'distance from below it', value: away, unit: 'm' },
    ];
    return {
      ...common,
      failed: bareheaded ? [...common.failed, 'hard-hat'].sort() : common.failed,
      severity,
      potentiallyFatal: severity === 'fatal',
      quantities,
      now: quantities,
      limit: limitOf(energy, bareheaded),
      source: 'ANSI/ISEA Z89.1 (from memory); DROPS work group, dropped object calculator',
      measure: energy,
      measureNow: energy,
      words: `From there ${what} can come down.`,
    };
  });
}

/** What can come down on the person. */
export const struckBy = (reach: Reach, { world }: Moment): readonly Meeting[] => [
  ...failingPoles(world).flatMap((standing) => byPole(reach, world, standing)),
  ...world.parts.flatMap((part) => (part.faults.length === 0 ? [] : byPiece(reach, world, part))),
];
