/** A network with its unknowns numbered (structure.ts) and its values found to mean something. */
import type { Complex } from '../math/complex.ts';
import { areAlike, byCodeUnit, digestOf, type Structure, structureOf } from './structure.ts';
import type { NetworkElement, NetworkFailure } from './types.ts';

export interface Layout extends Structure {
  /** By id. */
  readonly elements: readonly NetworkElement[];
}

const finite = (z: Complex): boolean => Number.isFinite(z.re) && Number.isFinite(z.im);
const isZero = (z: Complex): boolean => z.re === 0 && z.im === 0;

function flawOf(element: NetworkElement): string | undefined {
  switch (element.kind) {
    case 'impedance':
      if (!finite(element.z)) return 'its impedance is not finite';
      return isZero(element.z) ? 'its impedance is zero' : undefined;
    case 'admittance':
      return finite(element.y) ? undefined : 'its admittance is not finite';
    case 'source':
      return finite(element.emf) && finite(element.z) ? undefined : 'its emf or impedance is not finite';
    case 'transformer':
      if (element.windings.length === 0) return 'it has no winding';
      if (element.windings.some((w) => !finite(w.z))) return 'the impedance of a winding is not finite';
      if (element.windings.some((w) => !(w.turns > 0 && Number.isFinite(w.turns)))) {
        return 'the turns of a winding are not a positive number';
      }
      return element.magnetising === undefined || finite(element.magnetising)
        ? undefined
        : 'its magnetising admittance is not finite';
  }
}

const invalid = (element: string, detail: string): NetworkFailure => ({
  ok: false,
  reason: 'invalid',
  element,
  detail,
});

interface Kept {
  readonly elements: readonly NetworkElement[];
  readonly structure: Structure;
}

const KEPT = 256;
/** Structures met last by their digest: most networks differ from one of them in values only. */
const kept = new Map<number, Kept[]>();
let count = 0;

function structureKept(elements: readonly NetworkElement[]): Structure | string {
  const digest = digestOf(elements);
  const known = kept.get(digest);
  const alike = known?.find((each) => areAlike(each.elements, elements));
  if (alike !== undefined) return alike.structure;
  const structure = structureOf(elements);
  if (typeof structure === 'string') return structure;
  if (count === KEPT) {
    kept.clear();
    count = 0;
  }
  kept.set(digest, [{ elements: elements.slice(), structure }, ...(kept.get(digest) ?? [])]);
  count++;
  return structure;
}

/** The layout, or the first element (by id) that means nothing. */
export function layOut(unsorted: readonly NetworkElement[]): Layout | NetworkFailure {
  const structure = structureKept(unsorted);
  const elements =
    typeof structure === 'string'
      ? unsorted.slice().sort((a, b) => byCodeUnit(a.id, b.id))
      : structure.order.map((at) => unsorted[at] as NetworkElement);
  let last: string | undefined;
  for (const element of elements) {
    if (element.id === last) return invalid(element.id, 'its id is used twice');
    last = element.id;
    const flaw = flawOf(element);
    if (flaw !== undefined) return invalid(element.id, flaw);
  }
  if (typeof structure === 'string') throw new Error(`${structure} was said to be used twice`);
  return { ...structure, elements };
}

/** The node or element to which an unknown belongs. */
export function ownerOf({ nodes, elements, branch }: Layout, unknown: number): { node: string } | { element: string } {
  const node = nodes[unknown];
  if (node !== undefined) return { node };
  let owner = '';
  for (const [at, first] of branch.entries()) {
    if (first < 0) continue;
    if (first > unknown) break;
    owner = (elements[at] as NetworkElement).id;
  }
  return { element: owner };
}
