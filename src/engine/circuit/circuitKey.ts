/**
 * Text that two Worlds share exactly when the circuit reads the same of them: positions, nets, states, values and
 * electrically active faults of the parts, jumpers, soil. Tags, covers, people, paper and chance are not in it.
 */
import { faultKind } from '../catalogue/faults.ts';
import { shortHash } from '../math/hash.ts';
import type { LaidFault, Part, World } from '../world/types.ts';
import { byId } from './elementsOf.ts';

const isElectrical = ({ kind }: LaidFault): boolean => {
  const { opens, leaks, words } = faultKind(kind);
  return opens.length > 0 || leaks.length > 0 || words !== undefined;
};

// A part is frozen, so its text may be kept with it; equal parts still give equal text.
const partKeys = new WeakMap<Part, string>();

function keyOfPart(part: Part): string {
  const known = partKeys.get(part);
  if (known !== undefined) return known;
  const { id, kind, at, end, nets, state, values, words } = part;
  const faults = part.faults
    .filter(isElectrical)
    .sort(byId)
    .map((fault) => ({ id: fault.id, kind: fault.kind, to: fault.to, values: fault.values }));
  const key = shortHash({ id, kind, at, end, nets, state, values, words, faults });
  partKeys.set(part, key);
  return key;
}

const partsKeys = new WeakMap<World['parts'], string>();

function keyOfParts({ parts }: World): string {
  const known = partsKeys.get(parts);
  if (known !== undefined) return known;
  const key = parts.map(keyOfPart).sort().join('');
  partsKeys.set(parts, key);
  return key;
}

/** Structural key of what the circuit reads; the same for any order of the parts. */
export function circuitKey(world: World): string {
  const jumpers = [...world.jumpers].sort(byId).map(({ id, points }) => `${id}=${points.join('+')}`);
  return `${keyOfParts(world)}|${jumpers.join(';')}|${world.site.resistivity}`;
}
