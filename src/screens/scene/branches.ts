/** The branches of the list: a pole or premises each, its parts from the top down; then the truck and the people. */
import type { Drill, Snapshot } from '../../drill/types.ts';
import { componentKind } from '../../engine/catalogue/components.ts';
import { standById } from '../../engine/world/edit.ts';
import type { Part, World } from '../../engine/world/types.ts';
import { capital } from '../words.ts';

export interface Entry {
  readonly id: string;
  /** What can be told without looking closer: 'in sight', 'not in sight from here'. */
  readonly note: string;
}

export interface Branch {
  readonly id: string;
  readonly name: string;
  readonly entries: readonly Entry[];
}

/** A part that the eye can meet at all. */
const shows = (part: Part): boolean => componentKind(part.kind).features.length > 0;

const topDown = (a: Part, b: Part): number => b.at[2] - a.at[2] || (a.id < b.id ? -1 : 1);

const homeOf = (part: Part): string => part.pole ?? part.premises ?? 'spans';

const branchName = (world: World, home: string): string => {
  const pole = world.parts.find(({ id }) => id === `${home}.pole`);
  if (pole) return capital(pole.words.number === undefined ? pole.name : `pole ${pole.words.number}`);
  const yard = standById(world, `${home}.yard`);
  return yard ? capital(yard.name.replace(/^yard of the /, '')) : 'Between the poles';
};

/** The list of a snapshot, in order of the line and then of ids. */
export const branchesOf = ({ world, stand }: Snapshot, drill: Pick<Drill, 'look'>): readonly Branch[] => {
  const note = (part: Part): string =>
    stand !== '' && drill.look(part.id, 'eyes').visible ? 'in sight' : 'not in sight from here';
  const parts = world.parts.filter(shows);
  const homes = [...new Set(parts.map(homeOf))];
  const poles = homes.filter((home) => parts.some(({ id }) => id === `${home}.pole`));
  const order = [...poles, ...homes.filter((home) => !poles.includes(home) && home !== 'spans'), 'spans'];
  const branches = order
    .map((home) => ({
      id: `branch-${home}`,
      name: branchName(world, home),
      entries: parts
        .filter((part) => homeOf(part) === home)
        .sort(topDown)
        .map((part) => ({ id: part.id, note: note(part) })),
    }))
    .filter(({ entries }) => entries.length > 0);
  const people = world.people
    .filter(({ role, at }) => role !== 'trainee' && at !== null)
    .map(({ id, at }) => ({ id, note: at === stand ? 'beside you' : (standById(world, at ?? '')?.name ?? '') }));
  const truck = {
    id: 'branch-truck',
    name: 'Truck',
    entries: [
      { id: 'truck', note: `engine ${world.truck.engine ? 'runs' : 'off'}` },
      { id: 'guards', note: guardNote(world) },
    ],
  };
  return [...branches, truck, ...(people.length > 0 ? [{ id: 'branch-people', name: 'People', entries: people }] : [])];
};

const guardNote = ({ guards }: World): string => {
  const out = [guards.chocks && 'wheels chocked', guards.cones && 'cones out', guards.keepOut && 'taped off'].filter(
    Boolean,
  );
  return out.length === 0 ? 'none out' : out.join(', ');
};
