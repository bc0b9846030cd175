/** Puts a scene into the state that the command line asks for: device states, jumpers, faults mended. */
import { componentKind } from '../../engine/catalogue/components.ts';
import { nearestWord } from '../../engine/units/nearestWord.ts';
import { withoutFault, withPart } from '../../engine/world/edit.ts';
import type { Jumper, Part, World } from '../../engine/world/types.ts';
import { BadUse } from '../io.ts';

/** One state as it was set. */
export interface SetState {
  readonly part: string;
  readonly state: string;
  readonly value: string;
}

const listed = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? 'nothing') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;

const unknown = (what: string, found: string, words: readonly string[]): BadUse => {
  const nearest = nearestWord(found, words);
  const shown = words.length > 12 ? `one of ${words.length} ids` : listed(words);
  return new BadUse(`no ${what} '${found}'; expected ${shown}${nearest ? `; did you mean '${nearest}'?` : ''}`);
};

const statesOf = (part: Part): Readonly<Record<string, readonly string[]>> => componentKind(part.kind).states;

/** Which part, and which state of it if that is written too. */
function findPart(world: World, left: string): { part: Part; state: string | null } {
  const part = world.parts.find(({ id }) => id === left);
  if (part !== undefined) return { part, state: null };
  const dot = left.lastIndexOf('.');
  const owner = world.parts.find(({ id }) => id === left.slice(0, dot));
  if (owner !== undefined) return { part: owner, state: left.slice(dot + 1) };
  const switchable = world.parts.filter((candidate) => Object.keys(statesOf(candidate)).length > 0);
  throw unknown(
    'part',
    left,
    switchable.map(({ id }) => id),
  );
}

function stateFor(part: Part, written: string | null, value: string): string {
  const states = statesOf(part);
  const names = Object.keys(states);
  if (names.length === 0) throw new BadUse(`${part.id} has no states to set`);
  if (written !== null) {
    const values = states[written];
    if (values === undefined) throw unknown(`state of ${part.id}`, written, names);
    if (!values.includes(value)) throw unknown(`${part.id}.${written}`, value, values);
    return written;
  }
  const holders = names.filter((name) => states[name]?.includes(value));
  if (holders.length > 1) {
    throw new BadUse(`'${value}' fits ${listed(holders.map((name) => `${part.id}.${name}`))}; write one of them`);
  }
  const [holder] = holders;
  if (holder === undefined) throw unknown(`state of ${part.id}`, value, Object.values(states).flat());
  return holder;
}

/**
 * Sets one `part=value` or `part.state=value`. The short form puts the part's other states to what they are in service,
 * so that a cutout said to be closed has a sound link; the long form leaves them. Throws BadUse with the nearest word.
 */
export function setState(world: World, text: string): { world: World; set: readonly SetState[] } {
  const equals = text.indexOf('=');
  if (equals < 1) throw new BadUse(`--set ${text}: expected part=value or part.state=value`);
  const value = text.slice(equals + 1);
  const { part, state: written } = findPart(world, text.slice(0, equals));
  const chosen = stateFor(part, written, value);
  const next: Record<string, string> = { ...part.state };
  if (written === null) for (const [name, [usual]] of Object.entries(statesOf(part))) next[name] = usual as string;
  next[chosen] = value;
  const set = Object.entries(next)
    .filter(([name, now]) => name === chosen || now !== part.state[name])
    .map(([state, now]) => ({ part: part.id, state, value: now }));
  return { world: withPart(world, part.id, { state: next }), set };
}

/** Joins points, `part/terminal+part/terminal…`, by a jumper. */
export function ground(world: World, text: string): World {
  const points = text.split('+');
  if (points.length < 2) throw new BadUse(`--ground ${text}: expected two points or more, joined by +`);
  for (const point of points) {
    const [id = '', terminal = ''] = point.split('/');
    const part = world.parts.find((candidate) => candidate.id === id);
    if (part === undefined) {
      throw unknown(
        'part',
        id,
        world.parts.map((candidate) => candidate.id),
      );
    }
    if (part.nets[terminal] === undefined) throw unknown(`terminal of ${id}`, terminal, Object.keys(part.nets));
  }
  const jumper: Jumper = { id: `jumper-${world.jumpers.length + 1}`, tool: 'ground-set', points };
  return { ...world, jumpers: [...world.jumpers, jumper] };
}

/** Takes a laid fault away, and what it had set. */
export function mend(world: World, fault: string): World {
  const laid = world.parts.flatMap((part) => part.faults.map(({ id }) => id));
  if (!laid.includes(fault)) throw unknown('fault', fault, laid);
  return withoutFault(world, fault);
}
