/**
 * A World's equivalent circuit: each part's branches between its nets, less what laid faults have opened, plus their
 * leakage paths, the jumpers that are on, and capacitance to earth for every net that no part gives any. Left out:
 * harmonics, transients, iron that saturates; loads are impedances at their rated volts.
 */

import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { Branch } from '../catalogue/types.ts';
import { EARTH, type NetworkElement } from '../network/types.ts';
import { findPart, splitPoint } from '../world/edit.ts';
import { lyingAt } from '../world/lying.ts';
import { terminalNet } from '../world/points.ts';
import type { Jumper, LaidFault, Part, PointId, World } from '../world/types.ts';
import { CircuitDefect } from './circuitDefect.ts';
import { FLOOR_CAPACITANCE, JUMPER } from './impedances.ts';
import { Memo } from './memo.ts';

/** A person or instrument between two points, as a resistance. */
export interface Bridge {
  readonly from: PointId;
  readonly to: PointId | 'earth';
  readonly ohms: number;
}

export interface CircuitOptions {
  /** Leakage paths at their credible worst (flashed over): all, or those of these laid faults. */
  readonly credible?: true | readonly string[];
  /** Bodies and instruments that bridge points now. */
  readonly bridges?: readonly Bridge[];
}

/** Code-unit order. */
export const byId = (a: { readonly id: string }, b: { readonly id: string }): number =>
  a.id < b.id ? -1 : a.id > b.id ? 1 : 0;

const sortedKept = new WeakMap<World['parts'], readonly Part[]>();

const isSorted = (parts: readonly Part[]): boolean =>
  parts.every((part, i) => i === 0 || byId(parts[i - 1] as Part, part) <= 0);

/** Parts in order of id. */
export function partsById({ parts }: World): readonly Part[] {
  const sorted = sortedKept.get(parts) ?? (isSorted(parts) ? parts : [...parts].sort(byId));
  sortedKept.set(parts, sorted);
  return sorted;
}

/** Net of a part's terminal; 'earth' is the reference. */
export function netOf(part: Part, terminal: string): string {
  if (terminal === EARTH) return EARTH;
  const net = terminalNet(part, terminal);
  if (net === undefined) throw new CircuitDefect(part.id, `has no net on terminal '${terminal}'`);
  return net;
}

/** Part and terminal of a point; throws a CircuitDefect if the World has no such part. */
export function partAt(world: World, point: PointId): readonly [part: Part, terminal: string] {
  const names = splitPoint(point);
  const part = names && findPart(world, names[0]);
  if (!names || !part) throw new CircuitDefect(point, 'no such point');
  return [part, names[1]];
}

/** Net of a point of the World; throws a CircuitDefect if it has no such part or terminal. */
export const netAt = (world: World, point: PointId | 'earth'): string =>
  point === EARTH ? EARTH : netOf(...partAt(world, point));

/** Id of the element of a part's branch or a leak of one of its faults. */
export const elementId = (part: string, branch: string): string => `${part}:${branch}`;

// A part is frozen, so what follows from it alone may be kept with it.
const branchesKept = new WeakMap<Part, readonly Branch[]>();

/** Branches of a part as it stands, less those that its faults have opened. */
export function branchesOf(part: Part): readonly Branch[] {
  const kept = branchesKept.get(part);
  if (kept !== undefined) return kept;
  const opened = new Set(part.faults.flatMap((fault) => faultKind(fault.kind).opens));
  const said = part.faults.flatMap((fault) => Object.entries(faultKind(fault.kind).words ?? {}));
  const view = said.length === 0 ? part : { ...part, words: { ...part.words, ...Object.fromEntries(said) } };
  const branches = componentKind(part.kind)
    .branches(view)
    .filter(({ name }) => !opened.has(name));
  branchesKept.set(part, branches);
  return branches;
}

function elementOf(part: Part, branch: Branch): NetworkElement {
  const id = elementId(part.id, branch.name);
  if (branch.type === 'transformer') {
    const windings = branch.windings.map(({ between: [from, to], turns, z }) => ({
      from: netOf(part, from),
      to: netOf(part, to),
      turns,
      z,
    }));
    return { kind: 'transformer', id, windings, magnetising: branch.magnetising };
  }
  const from = netOf(part, branch.between[0]);
  const to = netOf(part, branch.between[1]);
  switch (branch.type) {
    case 'series':
      return { kind: 'impedance', id, from, to, z: branch.z };
    case 'shunt':
      return { kind: 'admittance', id, from, to, y: branch.y };
    case 'source':
      return { kind: 'source', id, from, to, emf: branch.emf, z: branch.z, group: branch.group };
  }
}

const isCredible = (fault: LaidFault, { credible }: CircuitOptions): boolean =>
  credible === true || (credible?.includes(fault.id) ?? false);

/** What leaks of a fault follow from. */
interface Leaks {
  readonly part: Part;
  readonly credible: boolean;
  readonly to: string | null;
  readonly elements: readonly NetworkElement[];
}

const leaksKept = new WeakMap<LaidFault, Leaks>();

function leaksOf(world: World, part: Part, fault: LaidFault, options: CircuitOptions): readonly NetworkElement[] {
  const credible = isCredible(fault, options);
  const to = fault.to === null ? null : netAt(world, fault.to);
  const kept = leaksKept.get(fault);
  if (kept?.part === part && kept.credible === credible && kept.to === to) return kept.elements;
  const kind = faultKind(fault.kind);
  const elements = kind.leaks.flatMap((leak): NetworkElement[] => {
    if (leak.soil && lyingAt(part, leak.from) === null) return [];
    const value = credible ? leak.credibleOhms : leak.ohms;
    const ohms = fault.values[value] ?? kind.values[value]?.default;
    if (ohms === undefined || !(ohms > 0)) throw new CircuitDefect(fault.id, `leak '${leak.name}' has no ${value}`);
    return [
      {
        kind: 'admittance',
        id: elementId(part.id, leak.name),
        from: netOf(part, leak.from),
        to: to ?? netOf(part, leak.to),
        y: { re: 1 / ohms, im: 0 },
      },
    ];
  });
  leaksKept.set(fault, { part, credible, to, elements });
  return elements;
}

function jumperElements(world: World, jumper: Jumper): NetworkElement[] {
  return jumper.points.slice(1).map((point, i) => ({
    kind: 'impedance',
    id: elementId(jumper.id, `${i + 1}`),
    from: netAt(world, jumper.points[i] as PointId),
    to: netAt(world, point),
    z: JUMPER,
  }));
}

function bridgeElements(world: World, bridges: readonly Bridge[]): NetworkElement[] {
  return bridges.map(({ from, to, ohms }, i) => {
    if (!(ohms > 0)) throw new CircuitDefect(from, `a bridge of ${ohms} ohms`);
    return {
      kind: 'admittance',
      id: elementId('bridge', `${i + 1}`),
      from: netAt(world, from),
      to: netAt(world, to),
      y: { re: 1 / ohms, im: 0 },
    };
  });
}

/** Nets that an element ties to. */
export const netsOf = (element: NetworkElement): readonly string[] =>
  element.kind === 'transformer' ? element.windings.flatMap(({ from, to }) => [from, to]) : [element.from, element.to];

const isCapacitance = (element: NetworkElement): boolean =>
  element.kind === 'admittance' && element.y.im > 0 && (element.from === EARTH || element.to === EARTH);

/** Nets that a part ties to, and what they need. */
interface Nets {
  /** Floor susceptance for each, should no part give it any. */
  readonly strays: readonly (readonly [net: string, stray: NetworkElement])[];
  readonly capacitive: readonly string[];
}

/** What a part gives whatever stands beside it. */
interface Own {
  readonly elements: readonly NetworkElement[];
  readonly nets: Nets;
}

const strayOf = (net: string): NetworkElement => ({
  kind: 'admittance',
  id: elementId('stray', net),
  from: net,
  to: EARTH,
  y: FLOOR_CAPACITANCE,
});

// Most changes of a part leave its nets what they were, and the very same object says so.
const netsKept = new Memo<Nets>(4096);

function netsOn(part: Part, elements: readonly NetworkElement[]): Nets {
  const all = [...new Set([...Object.values(part.nets), ...elements.flatMap(netsOf)])].filter((net) => net !== EARTH);
  const capacitive = elements.filter(isCapacitance).flatMap(netsOf);
  return netsKept.get(JSON.stringify([all, capacitive]), () => ({
    strays: all.map((net) => [net, strayOf(net)] as const),
    capacitive,
  }));
}

const ownKept = new WeakMap<Part, Own>();

function ownOf(part: Part): Own {
  const kept = ownKept.get(part);
  if (kept !== undefined) return kept;
  const elements = branchesOf(part).map((branch) => elementOf(part, branch));
  const own = { elements, nets: netsOn(part, elements) };
  ownKept.set(part, own);
  return own;
}

/** Floor susceptances of a list of parts. */
interface Strays {
  readonly of: readonly Nets[];
  readonly elements: readonly NetworkElement[];
  readonly nets: ReadonlySet<string>;
}

/** The floor susceptance for each net that lacks a capacitance to earth; `more` elements are no part's own. */
function straysFor(of: readonly Nets[], more: readonly NetworkElement[]): Strays {
  const lacking = new Map<string, NetworkElement>();
  for (const { strays } of of) for (const [net, stray] of strays) lacking.set(net, stray);
  for (const element of more) {
    for (const net of netsOf(element)) if (net !== EARTH && !lacking.has(net)) lacking.set(net, strayOf(net));
  }
  const nets = new Set(lacking.keys());
  for (const { capacitive } of of) for (const net of capacitive) lacking.delete(net);
  for (const element of more) if (isCapacitance(element)) for (const net of netsOf(element)) lacking.delete(net);
  const elements = [...lacking.keys()].sort().map((net) => lacking.get(net) as NetworkElement);
  return { of, elements, nets };
}

const STRAYS = 8;
/** Met last, the latest first. */
const straysKept: Strays[] = [];

const areSame = (a: readonly Nets[], b: readonly Nets[]): boolean =>
  a.length === b.length && a.every((nets, i) => nets === b[i]);

function straysOf(of: readonly Nets[]): Strays {
  const at = straysKept.findIndex((kept) => areSame(kept.of, of));
  const [first] = straysKept;
  if (at === 0 && first !== undefined) return first;
  const [known] = at < 0 ? [] : straysKept.splice(at, 1);
  const strays = known ?? straysFor(of, []);
  straysKept.unshift(strays);
  straysKept.length = Math.min(straysKept.length, STRAYS);
  return strays;
}

/** Floor susceptances, clamped points included. */
function strayElements(of: readonly Nets[], more: readonly NetworkElement[]): readonly NetworkElement[] {
  const known = straysOf(of);
  const isNew = (net: string): boolean => net !== EARTH && !known.nets.has(net);
  return more.some((element) => isCapacitance(element) || netsOf(element).some(isNew))
    ? straysFor(of, more).elements
    : known.elements;
}

/** The network of a World, in order of parts, then jumpers, bridges and stray capacitance; ids `<part>:<branch>`. */
export function elementsOf(world: World, options: CircuitOptions = {}): NetworkElement[] {
  const parts = partsById(world);
  const more: NetworkElement[] = [];
  for (const part of parts) {
    if (part.faults.length === 0) continue;
    const faults = part.faults.length === 1 ? part.faults : [...part.faults].sort(byId);
    for (const fault of faults) for (const leak of leaksOf(world, part, fault, options)) more.push(leak);
  }
  for (const jumper of [...world.jumpers].sort(byId)) more.push(...jumperElements(world, jumper));
  more.push(...bridgeElements(world, options.bridges ?? []));
  const elements: NetworkElement[] = [];
  const nets: Nets[] = [];
  for (const part of parts) {
    const own = ownOf(part);
    nets.push(own.nets);
    for (const element of own.elements) elements.push(element);
  }
  for (const element of more) elements.push(element);
  for (const stray of strayElements(nets, more)) elements.push(stray);
  return elements;
}
