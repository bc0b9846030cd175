/**
 * What the World could become while hands are on it: as it is; each single thing that somebody else may do (the
 * kinds' `othersMay`), unless it is tagged, held by a clearance or whatever else the kind names; and all that the
 * owner of one premises worked, put back together. In each of them a leaking path may flash over at any moment, so
 * each counts twice. Two strangers erring at once, and devices failing by themselves, are left out. Bounded by the
 * number of devices; no list of answers.
 */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { Part, World } from '../world/types.ts';
import { holdingJumpers } from './groundSize.ts';
import { partsWith } from './partsWith.ts';

export interface CredibleState {
  readonly world: World;
  /** Leaking paths at their flashed-over resistance. */
  readonly flashed: boolean;
  /** What has happened, plain words; empty for the present. */
  readonly words: string;
}

/** A change of state by somebody else, and who. */
export interface Change {
  readonly part: Part;
  readonly becomes: Readonly<Record<string, string>>;
  readonly who: string;
}

/** A clearance read back with another circuit's number holds another circuit. */
const misnames = ({ people }: World): boolean =>
  people.some(({ faults }) => faults.some(({ kind }) => faultKind(kind).person?.misnames));

const isCleared = (world: World): boolean => world.orders.clearance?.state === 'held' && !misnames(world);

/** Whether a measure that a kind names keeps others from acting on the part. */
function holds(world: World, part: Part, measure: string): boolean {
  if (measure === 'tagged') return part.tags.length > 0;
  if (measure === 'clearance-held') return isCleared(world);
  throw new Error(`${part.kind} names an unknown measure '${measure}'`);
}

function changesWhile(world: World, part: Part): readonly Change[] {
  return componentKind(part.kind).othersMay.flatMap(({ when, becomes, unless, who }) => {
    const stands = Object.entries(when).every(([name, value]) => part.state[name] === value);
    const held = unless.length > 0 && unless.every((measure) => holds(world, part, measure));
    return stands && !held ? [{ part, becomes, who }] : [];
  });
}

const none: readonly Change[] = [];

interface Changes {
  readonly held?: readonly Change[];
  readonly free?: readonly Change[];
}

// A part is frozen; beside it `holds` reads nothing but whether a clearance holds.
const changesKept = new WeakMap<Part, Changes>();

/** What others may do to the part as it stands and is held. */
export function changesTo(world: World, part: Part): readonly Change[] {
  // Most parts nobody else works, and whether a clearance holds need not be asked for them.
  if (componentKind(part.kind).othersMay.length === 0) return none;
  const name = isCleared(world) ? 'held' : 'free';
  const known = changesKept.get(part);
  const found = known?.[name] ?? changesWhile(world, part);
  if (known?.[name] === undefined) changesKept.set(part, { ...known, [name]: found });
  return found;
}

/** Worked by an owner: some operation of the kind is theirs. */
const isOwners = ({ part }: Change): boolean =>
  part.premises !== null && componentKind(part.kind).operations.some(({ by }) => by === 'owner');

const leaks = (world: World): boolean =>
  world.parts.some(({ faults }) => faults.some(({ kind }) => faultKind(kind).leaks.length > 0));

/** Lists of parts that may come of one, and whether something in it leaks. */
interface Becoming {
  readonly lists: readonly { readonly parts: World['parts']; readonly words: string }[];
  readonly leaks: boolean;
}

function becomingOf(world: World, trusted: ReadonlySet<string>): Becoming {
  const changes = world.parts.filter(({ id }) => !trusted.has(id)).flatMap((part) => changesTo(world, part));
  const owners = [...new Set(changes.filter(isOwners).map(({ part }) => part.premises))].sort();
  const together = owners
    .map((premises) => changes.filter((change) => isOwners(change) && change.part.premises === premises))
    .filter((group) => group.length > 1);
  const lists = [...changes.map((change) => [change]), ...together].map((group) => ({
    parts: group.reduce((parts, { part, becomes }) => partsWith(parts, part.id, becomes), world.parts),
    words: group.map(({ who }) => who).join('; '),
  }));
  return { lists, leaks: leaks(world) };
}

interface Becomings {
  readonly held?: Becoming;
  readonly free?: Becoming;
}

// A list of parts is never changed in place; beside it `changesTo` reads nothing but whether a clearance holds.
const kept = new WeakMap<World['parts'], Becomings>();

function becoming(world: World, trusted: ReadonlySet<string>): Becoming {
  if (trusted.size > 0) return becomingOf(world, trusted);
  const name = isCleared(world) ? 'held' : 'free';
  const known = kept.get(world.parts);
  const found = known?.[name] ?? becomingOf(world, trusted);
  if (known?.[name] === undefined) kept.set(world.parts, { ...known, [name]: found });
  return found;
}

/** The present first, then what may become of it; parts in `trusted` are left as they are. */
export function credibleStates(world: World, trusted: ReadonlySet<string> = new Set()): readonly CredibleState[] {
  const { lists, leaks } = becoming(world, trusted);
  // What comes back burns off a ground that does not carry it.
  const jumpers = lists.length === 0 ? world.jumpers : holdingJumpers(world);
  const worlds = [
    { world, words: '' },
    ...lists.map(({ parts, words }) => ({ world: { ...world, jumpers, parts }, words })),
  ];
  const flashes = leaks ? [false, true] : [false];
  return worlds.flatMap(({ world: each, words }) =>
    flashes.map((flashed) => ({
      world: each,
      flashed,
      words: [...(words === '' ? [] : [words]), ...(flashed ? ['what leaks flashes over'] : [])].join('; '),
    })),
  );
}
