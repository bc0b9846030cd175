/**
 * Whether two lists of parts are one to mechanics: poles, conductors, guys and what holds or ties them are the very same
 * parts, the rest stands where it stood with the same faults. So what follows from them outlasts a switch that opens.
 */
import { componentKind } from '../catalogue/components.ts';
import type { Part, World } from '../world/types.ts';

type Parts = World['parts'];

const bears = ({ id, pole, end, kind }: Part): boolean => {
  if (end !== null || id === `${pole}.pole`) return true;
  const { holds, ties } = componentKind(kind);
  return holds !== undefined || ties === true;
};

const areAlike = (a: Part, b: Part): boolean =>
  a === b ||
  (a.id === b.id && a.kind === b.kind && a.pole === b.pole && a.faults === b.faults && !bears(a) && !bears(b));

const KEPT = 4;
/** Met last, the latest first. */
const latest: Parts[] = [];
const kept = new WeakMap<Parts, Parts>();

/** The same list for all that are one to mechanics, as long as few others come in between. */
export function bearingList(parts: Parts): Parts {
  const known = kept.get(parts);
  if (known !== undefined) return known;
  const at = latest.findIndex(
    (list) => list.length === parts.length && list.every((part, i) => areAlike(part, parts[i] as Part)),
  );
  const list = latest[at] ?? parts;
  if (at >= 0) latest.splice(at, 1);
  latest.unshift(list);
  latest.length = Math.min(latest.length, KEPT);
  kept.set(parts, list);
  return list;
}
