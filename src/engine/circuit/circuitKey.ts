/**
 * Text that two Worlds share exactly when the circuit reads the same of them: positions, nets, states, values and
 * electrically active faults of the parts, jumpers, soil. Tags, covers, people, paper and chance are not in it.
 */
import { faultKind } from '../catalogue/faults.ts';
import type { LaidFault, Part, World } from '../world/types.ts';
import { byId, partsById } from './elementsOf.ts';

const isElectrical = ({ kind }: LaidFault): boolean => {
  const { opens, leaks, words } = faultKind(kind);
  return opens.length > 0 || leaks.length > 0 || words !== undefined;
};

/** Numbers of the texts met; no number is given twice. */
const numbers = new Map<string, string>();
const NUMBERS = 50_000;
let given = 0;

/** A short word for a text: the same for the same text, unless it was forgotten in between. */
function wordFor(text: string): string {
  const known = numbers.get(text);
  if (known !== undefined) return known;
  if (numbers.size >= NUMBERS) numbers.clear();
  given += 1;
  const word = given.toString(36);
  numbers.set(text, word);
  return word;
}

// A part is frozen, so its word may be kept with it; equal parts still get equal words.
const partKeys = new WeakMap<Part, string>();

function keyOfPart(part: Part): string {
  const known = partKeys.get(part);
  if (known !== undefined) return known;
  const { id, kind, at, end, nets, state, values, words } = part;
  const faults = part.faults
    .filter(isElectrical)
    .sort(byId)
    .map((fault) => ({ id: fault.id, kind: fault.kind, to: fault.to, values: fault.values }));
  const key = wordFor(JSON.stringify([id, kind, at, end, nets, state, values, words, faults]));
  partKeys.set(part, key);
  return key;
}

interface Keys {
  readonly jumpers: World['jumpers'];
  readonly resistivity: number;
  /** By what is asked beside the World. */
  readonly keys: Map<string, string>;
}

const keysKept = new WeakMap<World['parts'], Keys>();

function keysOf({ parts, jumpers, site: { resistivity } }: World): Map<string, string> {
  const kept = keysKept.get(parts);
  if (kept !== undefined && kept.jumpers === jumpers && kept.resistivity === resistivity) return kept.keys;
  const keys = new Map<string, string>();
  keysKept.set(parts, { jumpers, resistivity, keys });
  return keys;
}

function writeKey(world: World): string {
  const parts = partsById(world).map(keyOfPart).join(' ');
  const jumpers = [...world.jumpers].sort(byId).map(({ id, points }) => `${id}=${points.join('+')}`);
  return `${parts}|${jumpers.join(';')}|${world.site.resistivity}`;
}

/** The key of a World with what is asked beside it; its own alone when nothing is. */
export function keyWith(world: World, asked: string): string {
  const keys = keysOf(world);
  const known = keys.get(asked);
  if (known !== undefined) return known;
  const key = asked === '' ? writeKey(world) : `${keyWith(world, '')}|${asked}`;
  keys.set(asked, key);
  return key;
}

/** Structural key of what the circuit reads; the same for any order of the parts. */
export const circuitKey = (world: World): string => keyWith(world, '');
