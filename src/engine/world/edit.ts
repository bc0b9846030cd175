/** Questions that every room asks a World, and copies of it with one thing changed. */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { Vec3 } from '../math/vec3.ts';
import { calmedFrom, labelledAgain } from './faultEffects.ts';
import { barePlace, bareTerminals, offsetFrom } from './points.ts';
import type { LaidFault, Part, Person, PointId, Stand, Tool, World } from './types.ts';

// A list is never changed in place, so its index may be kept with it.
const indexes = new WeakMap<World['parts'], ReadonlyMap<string, Part>>();

/** Where each id stood in the list last asked about: a guess, which is looked up before it counts. */
type Stood = Map<string, number>;
const stood = { parts: new Map(), tools: new Map(), people: new Map(), stands: new Map() } as const satisfies Record<
  string,
  Stood
>;

interface Named {
  readonly id: string;
}

/** The one with the id where it stood last; ids are unique in a scenario (checkReferences.ts). */
const whereItStood = <T extends Named>(places: Stood, list: readonly T[], id: string): T | null => {
  const place = places.get(id);
  const there = place === undefined ? undefined : list[place];
  return there?.id === id ? there : null;
};

function search<T extends Named>(places: Stood, list: readonly T[], id: string): T | null {
  const known = whereItStood(places, list, id);
  if (known !== null) return known;
  const place = list.findIndex((each) => each.id === id);
  if (place < 0) return null;
  places.set(id, place);
  return list[place] as T;
}

export const findPart = ({ parts }: World, id: string): Part | null => {
  const known = whereItStood(stood.parts, parts, id);
  if (known !== null) return known;
  let index = indexes.get(parts);
  if (index === undefined) {
    const made = new Map<string, Part>();
    for (const [place, part] of parts.entries()) {
      if (made.has(part.id)) continue;
      made.set(part.id, part);
      stood.parts.set(part.id, place);
    }
    index = made;
    indexes.set(parts, made);
  }
  return index.get(id) ?? null;
};

/** The part; throws where it is known to exist. */
export const partById = (world: World, id: string): Part => {
  const part = findPart(world, id);
  if (part === null) throw new Error(`no part ${id}`);
  return part;
};

export const toolById = ({ tools }: World, id: string): Tool | null => search(stood.tools, tools, id);

export const standById = ({ stands }: World, id: string): Stand | null => search(stood.stands, stands, id);

export const personById = ({ people }: World, id: string): Person | null => search(stood.people, people, id);

/** Where the one who drills stood last in the list of people: a guess as well. */
let drills = 0;

/** The one who drills; there is one alone. */
export const trainee = ({ people }: World): Person => {
  const there = people[drills];
  if (there?.role === 'trainee') return there;
  const place = people.findIndex(({ role }) => role === 'trainee');
  if (place < 0) throw new Error('a World without a trainee');
  drills = place;
  return people[place] as Person;
};

export const withPart = (world: World, id: string, change: Partial<Part>): World => ({
  ...world,
  parts: world.parts.map((part) => (part.id === id ? { ...part, ...change } : part)),
});

export const withTool = (world: World, id: string, change: Partial<Tool>): World => ({
  ...world,
  tools: world.tools.map((tool) => (tool.id === id ? { ...tool, ...change } : tool)),
});

export const withPerson = (world: World, id: string, change: Partial<Person>): World => ({
  ...world,
  people: world.people.map((person) => (person.id === id ? { ...person, ...change } : person)),
});

/** Where an offset of a part lies, metres. */
export const placeOn = (part: Part, offset: Vec3): Vec3 => offsetFrom(part.at, offset, part);

/** Splits '<part>/<terminal>'; null if it is no point. */
export const splitPoint = (point: PointId): readonly [part: string, terminal: string] | null => {
  const slash = point.indexOf('/');
  return slash < 1 ? null : [point.slice(0, slash), point.slice(slash + 1)];
};

/** Where a point's bare metal is, metres; null if there is none to reach. */
export const pointAt = (world: World, point: PointId): Vec3 | null => {
  const names = splitPoint(point);
  const part = names && findPart(world, names[0]);
  if (!names || !part) return null;
  return barePlace(part, names[1]);
};

/** Every point with bare metal, in the order of parts and terminals. */
export const pointsOf = (world: World): readonly PointId[] =>
  world.parts.flatMap((part) => bareTerminals(part).map((terminal) => `${part.id}/${terminal}`));

/** Every fault and look-alike laid, with the part, tool or person that it lies on, or the site. */
export const faultsOf = (world: World): readonly { readonly on: string; readonly fault: LaidFault }[] =>
  [...world.parts, ...world.tools, ...world.people, { id: 'site', faults: world.site.faults }].flatMap(
    ({ id, faults }) => faults.map((fault) => ({ on: id, fault })),
  );

/** Somebody as they would be without the fault: trained, there, or of the public and gone. */
const personWithout = (world: World, person: Person, { id, kind }: LaidFault): Person => {
  const { unqualified, absent, present } = faultKind(kind).person ?? {};
  const truck = person.at ?? trainee(world).at;
  return {
    ...person,
    faults: person.faults.filter((fault) => fault.id !== id),
    ...(unqualified ? { qualified: true } : {}),
    ...(absent ? { at: truck } : {}),
    ...(present ? { at: null } : {}),
  };
};

const without = <T extends { readonly faults: readonly LaidFault[] }>(
  list: readonly T[],
  faultId: string,
  change: (item: T, fault: LaidFault) => T,
): readonly T[] => {
  if (!list.some(({ faults }) => faults.some(({ id }) => id === faultId))) return list;
  return list.map((item) => {
    const fault = item.faults.find(({ id }) => id === faultId);
    return fault === undefined ? item : change(item, fault);
  });
};

/** The World as it would be had this fault not been laid: gone, and what it had set back to the kind's ordinary state. */
export const withoutFault = (world: World, faultId: string): World => {
  const ofSite = world.site.faults.find(({ id }) => id === faultId);
  return {
    ...world,
    site: ofSite ? calmedFrom(world.site, ofSite) : world.site,
    people: without(world.people, faultId, (person, fault) => personWithout(world, person, fault)),
    tools: without(world.tools, faultId, (tool, fault) => ({
      ...labelledAgain(tool, fault),
      faults: tool.faults.filter(({ id }) => id !== faultId),
    })),
    parts: without(world.parts, faultId, (part, fault) => {
      const { states } = componentKind(part.kind);
      const set = faultKind(fault.kind).sets ?? {};
      const state = Object.fromEntries(
        Object.entries(part.state).map(([name, value]) => [
          name,
          set[name] === value ? (states[name]?.[0] ?? value) : value,
        ]),
      );
      return { ...part, state, faults: part.faults.filter(({ id }) => id !== faultId) };
    }),
  };
};
