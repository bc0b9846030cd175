/**
 * Numbers the unknowns: node voltages in the order of their names, then by element id the branch currents, and for a
 * transformer its volts per turn. The order does not depend on the order of the elements.
 */
import type { Complex } from '../math/complex.ts';
import { EARTH, type NetworkElement, type NetworkFailure } from './types.ts';

export interface Layout {
  readonly nodes: readonly string[];
  readonly nodeIndex: ReadonlyMap<string, number>;
  readonly elements: readonly NetworkElement[];
  readonly elementOf: ReadonlyMap<string, NetworkElement>;
  /** First unknown of each element that has any. */
  readonly branchIndex: ReadonlyMap<string, number>;
  readonly size: number;
}

const byCodeUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

interface Ends {
  readonly from: string;
  readonly to: string;
}

/** The branches of an element, one a winding. */
export const branchesOf = (element: NetworkElement): readonly Ends[] =>
  element.kind === 'transformer' ? element.windings : [element];

function unknownsOf(element: NetworkElement): number {
  if (element.kind === 'admittance') return 0;
  return element.kind === 'transformer' ? element.windings.length + 1 : 1;
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

/** The layout, or the first element (by id) that means nothing. */
export function layOut(unsorted: readonly NetworkElement[]): Layout | NetworkFailure {
  const elements = unsorted.slice().sort((a, b) => byCodeUnit(a.id, b.id));
  const names = new Set<string>();
  const elementOf = new Map<string, NetworkElement>();
  for (const element of elements) {
    const flaw = elementOf.has(element.id) ? 'its id is used twice' : flawOf(element);
    if (flaw !== undefined) return { ok: false, reason: 'invalid', element: element.id, detail: flaw };
    elementOf.set(element.id, element);
    for (const { from, to } of branchesOf(element)) names.add(from).add(to);
  }
  names.delete(EARTH);
  const nodes = [...names].sort(byCodeUnit);
  const nodeIndex = new Map(nodes.map((name, i) => [name, i]));
  const branchIndex = new Map<string, number>();
  let size = nodes.length;
  for (const element of elements) {
    const unknowns = unknownsOf(element);
    if (unknowns > 0) branchIndex.set(element.id, size);
    size += unknowns;
  }
  return { nodes, nodeIndex, elements, elementOf, branchIndex, size };
}

/** The node or element to which an unknown belongs. */
export function ownerOf(layout: Layout, unknown: number): { node: string } | { element: string } {
  const node = layout.nodes[unknown];
  if (node !== undefined) return { node };
  let owner = '';
  for (const [id, first] of layout.branchIndex) {
    if (first > unknown) break;
    owner = id;
  }
  return { element: owner };
}

const conducts = (element: NetworkElement): boolean => element.kind !== 'admittance' || !isZero(element.y);

/** The first island (by node name) that no chain of elements ties to earth; windings of one core are not tied. */
export function islandOf(layout: Layout): readonly string[] {
  const neighbours = new Map<string, string[]>([[EARTH, []], ...layout.nodes.map((n): [string, string[]] => [n, []])]);
  for (const element of layout.elements) {
    if (!conducts(element)) continue;
    for (const { from, to } of branchesOf(element)) {
      neighbours.get(from)?.push(to);
      neighbours.get(to)?.push(from);
    }
  }
  const reached = new Set<string>();
  const spread = (start: string): void => {
    const open = [start];
    reached.add(start);
    for (let node = open.pop(); node !== undefined; node = open.pop()) {
      for (const next of neighbours.get(node) ?? []) {
        if (reached.has(next)) continue;
        reached.add(next);
        open.push(next);
      }
    }
  };
  spread(EARTH);
  const first = layout.nodes.find((node) => !reached.has(node));
  if (first === undefined) return [];
  const grounded = new Set(reached);
  spread(first);
  return layout.nodes.filter((node) => reached.has(node) && !grounded.has(node));
}
