/** Lists of parts with something changed: the very same list for the same change, so that what was derived from it stands. */
import type { Part, World } from '../world/types.ts';

type Parts = World['parts'];

const partsKept = new WeakMap<Part, Map<string, Part>>();
const listsKept = new WeakMap<Parts, Map<string, Parts>>();

function changed(part: Part, becomes: Part['state'], key: string): Part {
  const known = partsKept.get(part) ?? new Map<string, Part>();
  partsKept.set(part, known);
  const found = known.get(key) ?? { ...part, state: { ...part.state, ...becomes } };
  known.set(key, found);
  return found;
}

/** The list kept under a name beside `parts`, or else made now; `make` must follow from both alone. */
export function listKept(parts: Parts, name: string, make: () => Parts): Parts {
  const known = listsKept.get(parts) ?? new Map<string, Parts>();
  listsKept.set(parts, known);
  const found = known.get(name) ?? make();
  known.set(name, found);
  return found;
}

/** The list with one part in another state. */
export function partsWith(parts: Parts, id: string, becomes: Part['state']): Parts {
  const key = JSON.stringify(becomes);
  return listKept(parts, `${id} ${key}`, () =>
    parts.map((part) => (part.id === id ? changed(part, becomes, key) : part)),
  );
}
