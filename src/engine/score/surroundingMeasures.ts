/** Measures against weather, traffic, what falls and how the line recloses: each with the World as it would be without it. */
import { toolKind } from '../catalogue/tools.ts';
import { toolById } from '../world/edit.ts';
import type { Guards, Person, World } from '../world/types.ts';

export interface SurroundingMeasure {
  readonly control: string;
  /** The same World where the measure was not taken. */
  readonly undo: (world: World) => World;
}

const unguarded =
  (guard: keyof Guards) =>
  (world: World): World =>
    world.guards[guard] ? { ...world, guards: { ...world.guards, [guard]: false } } : world;

const withPeople = (world: World, change: (person: Person) => Person): World => {
  const people = world.people.map(change);
  return people.every((person, i) => person === world.people[i]) ? world : { ...world, people };
};

const publicRoles: readonly Person['role'][] = ['bystander', 'child'];

/** Those of the roles where they were at the start. */
const backAgain = (start: World, world: World, roles: readonly Person['role'][]): World =>
  withPeople(world, (person) => {
    const at = start.people.find(({ id }) => id === person.id)?.at ?? null;
    return roles.includes(person.role) && person.at !== at ? { ...person, at } : person;
  });

/** Measures as differences from the start. */
export const surroundingMeasures = (start: World): readonly SurroundingMeasure[] => [
  { control: 'traffic-control', undo: unguarded('cones') },
  { control: 'barrier-vehicle', undo: unguarded('barrier') },
  {
    control: 'flagger',
    undo: (world) => withPeople(world, (person) => (person.task === 'flag' ? { ...person, task: null } : person)),
  },
  { control: 'ground-or-barricade-truck', undo: unguarded('truckGround') },
  { control: 'escort-bystanders', undo: (world) => backAgain(start, world, publicRoles) },
  { control: 'restrain-dog', undo: (world) => backAgain(start, world, ['dog']) },
  {
    control: 'block-reclosing',
    undo: (world) => {
      const parts = world.parts.map((part) => {
        const first = start.parts.find(({ id }) => id === part.id)?.state.reclosing;
        return first === undefined || first === part.state.reclosing
          ? part
          : { ...part, state: { ...part.state, reclosing: first } };
      });
      return parts.every((part, i) => part === world.parts[i]) ? world : { ...world, parts };
    },
  },
  {
    control: 'postpone-lightning',
    undo: (world) =>
      world.site.thunderAt === null || world.site.thunderAt === world.clock.minute
        ? world
        : { ...world, site: { ...world.site, thunderAt: world.clock.minute } },
  },
  {
    control: 'postpone-weather',
    undo: (world) => {
      const { windMs, precipitation } = start.site;
      const isSame = windMs <= world.site.windMs && precipitation === world.site.precipitation;
      return isSame ? world : { ...world, site: { ...world.site, windMs, precipitation } };
    },
  },
  {
    control: 'fall-protection',
    undo: (world) =>
      withPeople(world, (person) => {
        const wearing = person.wearing.filter((id) => toolKind(toolById(world, id)?.kind ?? '').wornOn !== 'body');
        return wearing.length === person.wearing.length ? person : { ...person, wearing };
      }),
  },
];
