/** A network with its unknowns numbered (structure.ts) and its values found to mean something. */
import type { Complex } from '../math/complex.ts';
import type { Pattern } from './pattern.ts';
import { areAlike, byCodeUnit, digestOf, type Structure, structureOf } from './structure.ts';
import type { NetworkElement, NetworkFailure } from './types.ts';

export interface Layout extends Structure {
  /** By id. */
  readonly elements: readonly NetworkElement[];
  readonly numbers: Numbers;
  /** Where networks of this structure keep their values, by what is zero; the last met first. */
  readonly patterns: Pattern[];
}

/** Numbers by name, made when first asked for. */
class Numbers {
  private readonly structure: Structure;
  private readonly listed: readonly NetworkElement[];
  private nodes: ReadonlyMap<string, number> | undefined;
  private ranks: ReadonlyMap<string, number> | undefined;

  constructor(structure: Structure, listed: readonly NetworkElement[]) {
    this.structure = structure;
    this.listed = listed;
  }

  /** Of a node; undefined for earth and what the network lacks. */
  ofNode(name: string): number | undefined {
    this.nodes ??= new Map(this.structure.nodes.map((node, i) => [node, i]));
    return this.nodes.get(name);
  }

  /** Place of an element among those in order of id. */
  ofElement(id: string): number | undefined {
    this.ranks ??= new Map(this.structure.order.map((at, rank) => [(this.listed[at] as NetworkElement).id, rank]));
    return this.ranks.get(id);
  }
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
  readonly numbers: Numbers;
  readonly patterns: Pattern[];
  /** The elements by id if they were found to mean something, else none. */
  sound: readonly NetworkElement[];
}

const KEPT = 256;
const ALIKE = 4;
/**
 * Structures met before by their digest, the latest first: most networks differ from one of them in values only. One
 * that is met for the first time may be the last of its kind and leaves only its digest, an empty list.
 */
const kept = new Map<number, Kept[]>();
/** The structures asked for last, the latest first. */
const latest: Kept[] = [];

function latestIs(each: Kept): Kept {
  const at = latest.indexOf(each);
  if (at !== 0) {
    if (at > 0) latest.splice(at, 1);
    latest.unshift(each);
    latest.length = Math.min(latest.length, ALIKE);
  }
  return each;
}

function keptFor(elements: readonly NetworkElement[]): Kept | string {
  for (let i = 0; i < latest.length; i++) {
    const each = latest[i] as Kept;
    if (areAlike(each.elements, elements)) return latestIs(each);
  }
  const digest = digestOf(elements);
  const known = kept.get(digest);
  const alike = known?.find((each) => areAlike(each.elements, elements));
  if (alike !== undefined) return latestIs(alike);
  const structure = structureOf(elements);
  if (typeof structure === 'string') return structure;
  const listed = elements.slice();
  const made = { elements: listed, structure, numbers: new Numbers(structure, listed), patterns: [], sound: [] };
  if (kept.size === KEPT) kept.clear();
  kept.set(digest, known === undefined ? [] : [made, ...known].slice(0, ALIKE));
  return latestIs(made);
}

/** Of the elements that were not found to be sound before: the first, by id, that means nothing. */
function flawIn(elements: readonly NetworkElement[], sound: readonly NetworkElement[]): NetworkFailure | undefined {
  const isMet = sound.length > 0;
  for (let at = 0; at < elements.length; at++) {
    const element = elements[at] as NetworkElement;
    const flaw = isMet && element === sound[at] ? undefined : flawOf(element);
    if (flaw !== undefined) return invalid(element.id, flaw);
  }
  return undefined;
}

/** Of elements in order of id, some of which share one: the first that means nothing, or the second of an id. */
function flawWith(elements: readonly NetworkElement[]): NetworkFailure {
  for (const [at, element] of elements.entries()) {
    if (element.id === elements[at - 1]?.id) return invalid(element.id, 'its id is used twice');
    const flaw = flawOf(element);
    if (flaw !== undefined) return invalid(element.id, flaw);
  }
  throw new Error('no id is used twice');
}

/** The layout, or the first element (by id) that means nothing. */
export function layOut(unsorted: readonly NetworkElement[]): Layout | NetworkFailure {
  const known = keptFor(unsorted);
  if (typeof known === 'string') return flawWith(unsorted.slice().sort((a, b) => byCodeUnit(a.id, b.id)));
  const { structure, numbers, patterns } = known;
  const { nodes, order, branch, ends, groups, size, island } = structure;
  const elements: NetworkElement[] = [];
  for (let e = 0; e < order.length; e++) elements.push(unsorted[order[e] as number] as NetworkElement);
  const failure = flawIn(elements, known.sound);
  if (failure !== undefined) return failure;
  known.sound = elements;
  // Written out: a spread object is much slower to make and to read.
  return { nodes, order, branch, ends, groups, size, island, elements, numbers, patterns };
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
