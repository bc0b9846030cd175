/** Metal that is one with a point: nets joined by closed contacts, wires, joints and jumpers, earth not crossed. */
import { circuitKey } from '../circuit/circuitKey.ts';
import { branchesOf, elementsOf, netAt, netOf } from '../circuit/elementsOf.ts';
import { Memo } from '../circuit/memo.ts';
import type { CircuitSolution } from '../circuit/types.ts';
import { abs } from '../math/complex.ts';
import type { Ohms } from '../units/quantities.ts';
import type { PointId, World } from '../world/types.ts';

type Element = CircuitSolution['elements'][number];

const EARTH = 'earth';
/** What still counts as a ground: a rod or better (common practice). */
const GROUND_OHMS: Ohms = 100;

/** What is joined in a World. */
interface Joints {
  /** Nets beside each net. */
  readonly beside: ReadonlyMap<string, readonly string[]>;
  readonly grounded: ReadonlySet<string>;
}

/** Lengths of wire that lie in windings, because they act on each other: nets of their ends. */
const wiresIn = ({ parts }: World): readonly (readonly [string, string])[] =>
  parts.flatMap((part) =>
    branchesOf(part).flatMap((branch) =>
      branch.type === 'transformer' && branch.wires
        ? branch.windings.map(({ between: [a, b] }) => [netOf(part, a), netOf(part, b)] as const)
        : [],
    ),
  );

function besideIn(elements: readonly Element[], wires: readonly (readonly [string, string])[]): Joints['beside'] {
  const beside = new Map<string, string[]>();
  const join = (from: string, to: string): void => {
    const known = beside.get(from);
    if (known === undefined) beside.set(from, [to]);
    else known.push(to);
  };
  for (const element of elements) {
    if (element.kind !== 'impedance' || element.from === EARTH || element.to === EARTH) continue;
    join(element.from, element.to);
    join(element.to, element.from);
  }
  for (const [from, to] of wires) {
    join(from, to);
    join(to, from);
  }
  return beside;
}

/** Nets that are one metal with the given ones. */
function grown(beside: Joints['beside'], start: Iterable<string>): ReadonlySet<string> {
  const section = new Set(start);
  // A set hands out what is added while it is walked.
  for (const net of section) for (const next of beside.get(net) ?? []) section.add(next);
  return section;
}

function ohmsOf(element: Element): number {
  if (element.kind === 'impedance') return abs(element.z);
  return element.kind === 'admittance' && abs(element.y) > 0 ? 1 / abs(element.y) : Number.POSITIVE_INFINITY;
}

/** Nets with an electrode of their own. */
const electrodesIn = (elements: readonly Element[]): readonly string[] =>
  elements.flatMap((element) => {
    if (element.kind === 'transformer' || element.kind === 'source' || ohmsOf(element) > GROUND_OHMS) return [];
    if (element.from === EARTH) return [element.to];
    return element.to === EARTH ? [element.from] : [];
  });

const kept = new Memo<Joints>(256);

const jointsOf = (world: World): Joints =>
  kept.get(circuitKey(world), () => {
    const elements = elementsOf(world);
    const beside = besideIn(elements, wiresIn(world));
    return { beside, grounded: grown(beside, electrodesIn(elements)) };
  });

/** Nets that are one metal with the point's. */
export const sectionOf = (world: World, point: PointId): ReadonlySet<string> =>
  grown(jointsOf(world).beside, [netAt(world, point)]);

/** Nets with a way to earth that holds them there. */
export const groundedNets = (world: World): ReadonlySet<string> => jointsOf(world).grounded;

/** Whether the metal has a way to earth that holds it there. */
export const isGrounded = (world: World, point: PointId): boolean => groundedNets(world).has(netAt(world, point));
