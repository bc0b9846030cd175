/**
 * Numbers the unknowns: node voltages in the order of their names, then by element id the branch currents, and for a
 * transformer its volts per turn. The order does not depend on the order of the elements. It follows from names, ends
 * and kinds alone, so networks that differ in their values only share it.
 */
import type { Complex } from '../math/complex.ts';
import { type Name, Names, sortNames } from './names.ts';
import { fittingInts } from './room.ts';
import { EARTH, type NetworkElement } from './types.ts';

export interface Structure {
  readonly nodes: readonly string[];
  /** Places of the elements in the list as it was given, by id. */
  readonly order: readonly number[];
  /** Of the element at each place in `order`: its first unknown, -1 for an admittance. */
  readonly branch: readonly number[];
  /** From and to of the branches, one after the other, those of a transformer one a winding; -1 is earth. */
  readonly ends: Int32Array;
  readonly groups: readonly string[];
  readonly size: number;
  /** The first nodes that no chain of elements ties to earth, empty when all are. */
  readonly island: readonly string[];
}

export const byCodeUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const isZero = (z: Complex): boolean => z.re === 0 && z.im === 0;
const conducts = (element: NetworkElement): boolean => element.kind !== 'admittance' || !isZero(element.y);

const elementNames = new Names();
const nodeNames = new Names();

// Room for one structure after another.
let tied = new Int32Array(0);
let toward = new Int32Array(0);

function rootOf(start: number): number {
  let node = start;
  while (toward[node] !== node) {
    toward[node] = toward[toward[node] as number] as number;
    node = toward[node] as number;
  }
  return node;
}

/** The first island (by node number) that branches which are tied leave; windings of one core are not tied. */
function islandOf(nodes: readonly string[], ends: Int32Array): readonly string[] {
  // Each node points to one of its island, in the end to that with the lowest number; earth is 0, node i is i + 1.
  toward = fittingInts(toward, nodes.length + 1);
  for (let i = 0; i <= nodes.length; i++) toward[i] = i;
  for (let t = 0; t < ends.length; t += 2) {
    if (tied[t] === 0) continue;
    const a = rootOf((ends[t] as number) + 1);
    const b = rootOf((ends[t + 1] as number) + 1);
    if (a < b) toward[b] = a;
    else toward[a] = b;
  }
  for (let i = 1; i <= nodes.length; i++) {
    const root = rootOf(i);
    if (root !== 0) return nodes.filter((_, other) => rootOf(other + 1) === root);
  }
  return [];
}

/** Ends of the branches in the order of the list, null for earth, and where those of each element begin. */
interface Listed {
  readonly ends: readonly (Name | null)[];
  readonly first: readonly number[];
  /** In the order of their names. */
  readonly elements: readonly Name[];
  readonly nodes: readonly Name[];
}

/** Takes up the names of a list of elements, or says the id that is used twice. */
function listed(list: readonly NetworkElement[]): Listed | string {
  elementNames.begin();
  nodeNames.begin();
  const ends: (Name | null)[] = [];
  const first: number[] = [];
  const elements: Name[] = [];
  const nodes: Name[] = [];
  const end = (node: string): void => {
    const name = node === EARTH ? null : nodeNames.of(node);
    ends.push(name);
    if (name !== null && nodeNames.take(name, -1)) nodes.push(name);
  };
  for (let at = 0; at < list.length; at++) {
    const element = list[at] as NetworkElement;
    const name = elementNames.of(element.id);
    if (!elementNames.take(name, at)) return element.id;
    elements.push(name);
    first.push(ends.length);
    if (element.kind === 'transformer') {
      for (const { from, to } of element.windings) {
        end(from);
        end(to);
      }
    } else {
      end(element.from);
      end(element.to);
    }
  }
  first.push(ends.length);
  sortNames(elements);
  sortNames(nodes);
  for (let i = 0; i < nodes.length; i++) (nodes[i] as Name).index = i;
  return { ends, first, elements, nodes };
}

/** The structure of a network, or the id that is used twice. */
export function structureOf(list: readonly NetworkElement[]): Structure | string {
  const names = listed(list);
  if (typeof names === 'string') return names;
  const { first, elements } = names;
  const nodes = names.nodes.map(({ text }) => text);
  const order: number[] = [];
  const branch: number[] = [];
  const groups: string[] = [];
  const ends = new Int32Array(names.ends.length);
  tied = fittingInts(tied, ends.length);
  let size = nodes.length;
  let t = 0;
  for (let e = 0; e < elements.length; e++) {
    const at = (elements[e] as Name).index;
    const element = list[at] as NetworkElement;
    const isTied = conducts(element) ? 1 : 0;
    const last = first[at + 1] as number;
    order.push(at);
    branch.push(element.kind === 'admittance' ? -1 : size);
    if (element.kind !== 'admittance') size += (last - (first[at] as number)) / 2;
    if (element.kind === 'transformer') size++;
    if (element.kind === 'source' && !groups.includes(element.group)) groups.push(element.group);
    for (let end = first[at] as number; end < last; end++) {
      tied[t] = isTied;
      ends[t++] = names.ends[end]?.index ?? -1;
    }
  }
  return { nodes, order, branch, ends, groups: groups.sort(), size, island: islandOf(nodes, ends) };
}

function isAlike(a: NetworkElement, b: NetworkElement): boolean {
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
export function areAlike(a: readonly NetworkElement[], b: readonly NetworkElement[]): boolean {
  if (a.length !== b.length) return false;
  for (let at = 0; at < a.length; at++) {
    if (a[at] !== b[at] && !isAlike(a[at] as NetworkElement, b[at] as NetworkElement)) return false;
  }
  return true;
}

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
