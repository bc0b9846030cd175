/**
 * Numbers the unknowns: node voltages in the order of their names, then by element id the branch currents, and for a
 * transformer its volts per turn. The order does not depend on the order of the elements. It follows from names, ends
 * and kinds alone, so networks that differ in their values only share it.
 */
import type { Complex } from '../math/complex.ts';
import { EARTH, type NetworkElement } from './types.ts';

/** What an element ties to, by number; -1 is earth. */
export interface Ends {
  readonly from: number;
  readonly to: number;
}

export interface Structure {
  readonly nodes: readonly string[];
  readonly nodeIndex: ReadonlyMap<string, number>;
  /** Places of the elements in the list as it was given, by id. */
  readonly order: readonly number[];
  /** Place of each id in `order`. */
  readonly rank: ReadonlyMap<string, number>;
  /** Of the element at each place in `order`: its first unknown, -1 for an admittance, and its branches' ends. */
  readonly branch: readonly number[];
  readonly ends: readonly (readonly Ends[])[];
  readonly groups: readonly string[];
  readonly size: number;
  /** The first nodes that no chain of elements ties to earth, empty when all are. */
  readonly island: readonly string[];
}

export const byCodeUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The branches of an element, one a winding. */
const branchesOf = (element: NetworkElement): readonly { readonly from: string; readonly to: string }[] =>
  element.kind === 'transformer' ? element.windings : [element];

function unknownsOf(element: NetworkElement): number {
  if (element.kind === 'admittance') return 0;
  return element.kind === 'transformer' ? element.windings.length + 1 : 1;
}

const isZero = (z: Complex): boolean => z.re === 0 && z.im === 0;
const conducts = (element: NetworkElement): boolean => element.kind !== 'admittance' || !isZero(element.y);

/** The first island (by node number); windings of one core are not tied. */
function islandOf(nodes: readonly string[], tied: readonly (readonly Ends[])[]): readonly string[] {
  // Each node points to one of its island, in the end to that with the lowest number; earth is 0, node i is i + 1.
  const toward = Int32Array.from({ length: nodes.length + 1 }, (_, i) => i);
  const rootOf = (start: number): number => {
    let node = start;
    while (toward[node] !== node) {
      toward[node] = toward[toward[node] as number] as number;
      node = toward[node] as number;
    }
    return node;
  };
  for (const branches of tied) {
    for (const { from, to } of branches) {
      const [a, b] = [rootOf(from + 1), rootOf(to + 1)];
      if (a < b) toward[b] = a;
      else toward[a] = b;
    }
  }
  const first = nodes.findIndex((_, i) => rootOf(i + 1) !== 0);
  return first < 0 ? [] : nodes.filter((_, i) => rootOf(i + 1) === rootOf(first + 1));
}

/** The structure of a network, or the id that is used twice. */
export function structureOf(unsorted: readonly NetworkElement[]): Structure | string {
  const idAt = (at: number): string => (unsorted[at] as NetworkElement).id;
  const order = unsorted.map((_, at) => at).sort((a, b) => byCodeUnit(idAt(a), idAt(b)));
  const elements = order.map((at) => unsorted[at] as NetworkElement);
  const rank = new Map<string, number>();
  const names = new Set<string>();
  const groupNames = new Set<string>();
  for (const [at, element] of elements.entries()) {
    if (rank.has(element.id)) return element.id;
    rank.set(element.id, at);
    for (const { from, to } of branchesOf(element)) names.add(from).add(to);
    if (element.kind === 'source') groupNames.add(element.group);
  }
  names.delete(EARTH);
  const nodes = [...names].sort(byCodeUnit);
  const nodeIndex = new Map(nodes.map((name, i) => [name, i]));
  const numberOf = (name: string): number => nodeIndex.get(name) ?? -1;
  const branch: number[] = [];
  let size = nodes.length;
  for (const element of elements) {
    const unknowns = unknownsOf(element);
    branch.push(unknowns === 0 ? -1 : size);
    size += unknowns;
  }
  const ends = elements.map((element) =>
    branchesOf(element).map(({ from, to }) => ({ from: numberOf(from), to: numberOf(to) })),
  );
  return {
    nodes,
    nodeIndex,
    order,
    rank,
    branch,
    ends,
    groups: [...groupNames].sort(),
    size,
    island: islandOf(
      nodes,
      ends.filter((_, at) => conducts(elements[at] as NetworkElement)),
    ),
  };
}

function isAlike(a: NetworkElement, b: NetworkElement): boolean {
  if (a === b) return true;
  if (a.id !== b.id) return false;
  switch (a.kind) {
    case 'transformer':
      return (
        b.kind === 'transformer' &&
        a.windings.length === b.windings.length &&
        a.windings.every(({ from, to }, w) => from === b.windings[w]?.from && to === b.windings[w]?.to)
      );
    case 'source':
      return b.kind === 'source' && a.group === b.group && a.from === b.from && a.to === b.to;
    default:
      return b.kind === a.kind && conducts(a) === conducts(b) && a.from === b.from && a.to === b.to;
  }
}

/** Whether two lists of elements, in their order, have one structure. */
export const areAlike = (a: readonly NetworkElement[], b: readonly NetworkElement[]): boolean =>
  a.length === b.length && a.every((element, at) => isAlike(element, b[at] as NetworkElement));

const endOf = (text: string): number => 31 * text.length + text.charCodeAt(text.length - 1);

/** A number that lists of one structure share, and few others. */
export function digestOf(elements: readonly NetworkElement[]): number {
  let digest = elements.length;
  for (let i = 0; i < elements.length; i++) {
    const element = elements[i] as NetworkElement;
    const branch = element.kind === 'transformer' ? element.windings[0] : element;
    if (branch === undefined) continue;
    digest = (31 * digest + 7 * endOf(branch.from) + endOf(branch.to) + 3 * endOf(element.id)) | 0;
  }
  return digest;
}
