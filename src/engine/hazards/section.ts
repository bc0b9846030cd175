/** Metal that is one with a point: nets joined by closed contacts, wires, joints and jumpers, earth not crossed. */
import { elementsOf, netAt } from '../circuit/elementsOf.ts';
import type { CircuitSolution } from '../circuit/types.ts';
import { abs } from '../math/complex.ts';
import type { Ohms } from '../units/quantities.ts';
import type { PointId, World } from '../world/types.ts';

type Element = CircuitSolution['elements'][number];

const EARTH = 'earth';
/** What still counts as a ground: a rod or better (common practice). */
const GROUND_OHMS: Ohms = 100;

const elementsIn = new WeakMap<World, readonly Element[]>();

function elements(world: World): readonly Element[] {
  const found = elementsIn.get(world) ?? elementsOf(world);
  elementsIn.set(world, found);
  return found;
}

/** Nets that are one metal with the given ones. */
function grown(world: World, start: Iterable<string>): ReadonlySet<string> {
  const beside = new Map<string, string[]>();
  const join = (from: string, to: string): void => {
    const known = beside.get(from);
    if (known === undefined) beside.set(from, [to]);
    else known.push(to);
  };
  for (const element of elements(world)) {
    if (element.kind !== 'impedance' || element.from === EARTH || element.to === EARTH) continue;
    join(element.from, element.to);
    join(element.to, element.from);
  }
  const section = new Set(start);
  // A set hands out what is added while it is walked.
  for (const net of section) for (const next of beside.get(net) ?? []) section.add(next);
  return section;
}

/** Nets that are one metal with the point's. */
export const sectionOf = (world: World, point: PointId): ReadonlySet<string> => grown(world, [netAt(world, point)]);

function ohmsOf(element: Element): number {
  if (element.kind === 'impedance') return abs(element.z);
  return element.kind === 'admittance' && abs(element.y) > 0 ? 1 / abs(element.y) : Number.POSITIVE_INFINITY;
}

const groundedIn = new WeakMap<World, ReadonlySet<string>>();

/** Nets with a way to earth that holds them there. */
export function groundedNets(world: World): ReadonlySet<string> {
  const known = groundedIn.get(world);
  if (known !== undefined) return known;
  const electrodes = elements(world).flatMap((element) => {
    if (element.kind === 'transformer' || element.kind === 'source' || ohmsOf(element) > GROUND_OHMS) return [];
    if (element.from === EARTH) return [element.to];
    return element.to === EARTH ? [element.from] : [];
  });
  const found = grown(world, electrodes);
  groundedIn.set(world, found);
  return found;
}

/** Whether the metal has a way to earth that holds it there. */
export const isGrounded = (world: World, point: PointId): boolean => groundedNets(world).has(netAt(world, point));
