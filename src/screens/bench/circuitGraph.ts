/**
 * A World as buses and what lies between them, fit to be drawn. Nets that a sound joint makes one are one bus, and so are
 * the two hot legs of a service, as a one-line diagram has them; healthy insulation and stray capacitance are left out.
 * Built once from the World as it was laid: what is opened, mended or grounded later changes no bus.
 */
import { componentKind } from '../../engine/catalogue/components.ts';
import { faultKind } from '../../engine/catalogue/faults.ts';
import { byId, netAt, netOf } from '../../engine/circuit/elementsOf.ts';
import { ELECTRODE } from '../../engine/circuit/localEarth.ts';
import { EARTH } from '../../engine/network/types.ts';
import { placeOn } from '../../engine/world/edit.ts';
import type { Part, PointId, World } from '../../engine/world/types.ts';
import { groupBy } from './groupBy.ts';
import { isJoint, joinCoupled, joinLegs, pairKey, Unions } from './netUnions.ts';
import { branchesIn, isAlongSpan, size } from './partBranches.ts';
import { SHOWN_SIEMENS, type SymbolName, symbolOf, symbolWords } from './symbolOf.ts';

/** Metal at one voltage, or nearly: a bar of the diagram. */
export interface Bus {
  readonly id: string;
  /** Pole or premises. */
  readonly owner: string;
  /** Nets in it; each hot leg is a list of its own. */
  readonly legs: readonly (readonly string[])[];
  /** Every terminal on it, bare ones first, of those the owner's own. */
  readonly points: readonly PointId[];
}

/** A device, a line, a leak or a broken joint between two buses, or a bus and earth. */
export interface Edge {
  readonly id: string;
  readonly part: string;
  readonly owner: string | null;
  readonly symbol: SymbolName;
  readonly words: string;
  readonly from: string;
  readonly to: string;
  /** Branches of the part that it stands for. */
  readonly branches: readonly string[];
  /** Windings of a transformer that it stands for. */
  readonly windings: readonly number[];
  /** State of the part that opens or closes it, if one does. */
  readonly state: string | null;
  /** Laid fault that makes it. */
  readonly fault: string | null;
  /** Which end is higher over the ground: +1 `from`, −1 `to`, 0 not known. */
  readonly slope: -1 | 0 | 1;
}

export interface CircuitGraph {
  readonly buses: readonly Bus[];
  readonly edges: readonly Edge[];
  readonly busOf: ReadonlyMap<string, string>;
}

const heightOf = (part: Part, terminal: string): number | null => {
  const kind = componentKind(part.kind);
  const offset = kind.points[terminal];
  return offset === undefined ? null : placeOn(part, offset)[2];
};

const slopeOf = (part: Part, from: string, to: string): -1 | 0 | 1 => {
  if (part.end !== null) return 0;
  const [a, b] = [heightOf(part, from), heightOf(part, to)];
  return a === null || b === null || a === b ? 0 : a > b ? 1 : -1;
};

const ownerOfNet = (net: string): string => net.split('.')[0] ?? net;

const ownerOf = (part: Part): string | null => part.pole ?? part.premises;

interface Draft extends Omit<Edge, 'id' | 'branches'> {
  readonly branch: string;
}

const draftsOf = (part: Part, opened: ReadonlyMap<string, string>): readonly Draft[] => {
  const known = branchesIn(part);
  // Filters, strays and charging of what is drawn anyway say nothing of their own.
  const bulk = known.some((each) => each.branch.type !== 'shunt' && !isJoint(part, each));
  const drawn = known.filter(
    ({ branch }) =>
      branch.type !== 'shunt' ||
      branch.name === ELECTRODE ||
      (size(branch.y) >= SHOWN_SIEMENS && (!bulk || branch.y.re < 0)),
  );
  const only = known.length === 1 && componentKind(part.kind).equipment === true ? known : [];
  return [...drawn, ...only.filter((each) => !drawn.includes(each))].flatMap((each): Draft[] => {
    const { branch, state } = each;
    const fault = opened.get(branch.name) ?? null;
    if ((isJoint(part, each) && fault === null) || (branch.type === 'transformer' && isAlongSpan(part))) return [];
    const symbol = fault === null ? symbolOf(part, branch, state !== null) : 'gap';
    const draft = (between: readonly [string, string], more: Partial<Draft> = {}): Draft => ({
      part: part.id,
      owner: ownerOf(part),
      symbol,
      words: symbolWords(part, symbol, branch.name),
      from: netOf(part, between[0]),
      to: netOf(part, between[1]),
      branch: branch.name,
      windings: [],
      state,
      fault,
      slope: slopeOf(part, between[0], between[1]),
      ...more,
    });
    if (branch.type !== 'transformer') return [draft(branch.between)];
    // One winding in series with the line, one beside it: drawn as what stands in the line.
    if (symbol === 'regulator') return [draft(['source', 'load'], { windings: [1] })];
    return branch.windings.map(({ between }, winding) =>
      draft(between, { windings: [winding], symbol: winding === 0 ? 'primary' : 'secondary' }),
    );
  });
};

/** Leaks of a fault; what goes on from where another ends, as from a limb down its trunk, is drawn as one with it. */
const leaksOf = (world: World, part: Part): readonly Draft[] =>
  part.faults.flatMap((fault) => {
    const { leaks, name } = faultKind(fault.kind);
    const endOf = (leak: (typeof leaks)[number]): string => {
      const next = leaks.find((each) => each !== leak && each.from === leak.to);
      if (next !== undefined) return endOf(next);
      return fault.to === null ? netOf(part, leak.to) : netAt(world, fault.to);
    };
    return leaks
      .filter((leak) => leaks.every((each) => each === leak || each.to !== leak.from))
      .map(
        (leak): Draft => ({
          part: part.id,
          owner: ownerOf(part),
          symbol: 'leak',
          words: name,
          from: netOf(part, leak.from),
          to: endOf(leak),
          branch: leak.name,
          windings: [],
          state: null,
          fault: fault.id,
          slope: 0,
        }),
      );
  });

/** The one-line's buses and edges, in order of parts. */
export const graphOf = (world: World): CircuitGraph => {
  const parts = [...world.parts].sort(byId);
  const openedIn = new Map(
    parts.map((part) => [
      part.id,
      new Map(part.faults.flatMap((fault) => faultKind(fault.kind).opens.map((name) => [name, fault.id] as const))),
    ]),
  );
  const joints = new Unions();
  for (const part of parts) {
    for (const each of branchesIn(part)) {
      if (!isJoint(part, each) || openedIn.get(part.id)?.has(each.branch.name) || each.branch.type !== 'series')
        continue;
      joints.join(netOf(part, each.branch.between[0]), netOf(part, each.branch.between[1]));
    }
  }
  joinCoupled(parts, joints);
  const unions = joints.copy();
  joinLegs(parts, unions);
  const drafts = parts.flatMap((part) => [
    ...draftsOf(part, openedIn.get(part.id) ?? new Map<string, string>()),
    ...leaksOf(world, part),
  ]);
  const at = (net: string): string => (net === EARTH ? EARTH : unions.root(net));
  const edges = new Map<string, Edge>();
  for (const { branch, ...draft } of drafts) {
    const [from, to] = [at(draft.from), at(draft.to)];
    if (from === to) continue;
    // The halves of a centre-tapped low side are one winding in the drawing.
    const id = `${draft.part} ${draft.symbol} ${pairKey(from, to)}`;
    const had = edges.get(id);
    edges.set(
      id,
      had
        ? { ...had, branches: [...had.branches, branch], windings: [...had.windings, ...draft.windings] }
        : { ...draft, owner: draft.owner ?? sharedOwner(from, to), id, from, to, branches: [branch] },
    );
  }
  return withBuses(parts, acrossOnly(parts, [...edges.values()]), joints, unions);
};

/**
 * Spans drawn across the page: from each bus one toward the source and one toward the load, the straightest; the others
 * hang at their far pole. Of two conductors between the same two buses one is drawn.
 */
const acrossOnly = (parts: readonly Part[], edges: readonly Edge[]): readonly Edge[] => {
  const run = ({ part }: Edge): readonly [number, number] => {
    const found = parts.find(({ id }) => id === part);
    return found?.end ? [found.end[0] - found.at[0], found.end[1] - found.at[1]] : [0, 0];
  };
  const slant = (edge: Edge): number => {
    const [dx, dy] = run(edge);
    return dx === 0 ? Number.POSITIVE_INFINITY : Math.abs(dy / dx);
  };
  const spans = edges.filter(({ symbol, owner }) => symbol === 'line' && owner === null);
  const taken = new Set<string>();
  const hung = new Map<string, Edge | null>();
  for (const edge of [...spans].sort((a, b) => slant(a) - slant(b) || (a.id < b.id ? -1 : 1))) {
    const side = Math.sign(run(edge)[0]);
    const [ends, places] = [pairKey(edge.from, edge.to), [`${edge.from} ${side}`, `${edge.to} ${-side}`]];
    if (taken.has(ends)) hung.set(edge.id, null);
    else if (slant(edge) > 1 || places.some((place) => taken.has(place))) {
      hung.set(edge.id, { ...edge, owner: ownerOfNet(edge.to) });
    } else for (const place of places) taken.add(place);
    taken.add(ends);
  }
  return edges.flatMap((edge) => {
    const now = hung.get(edge.id);
    if (now === null) return [];
    // What is wrong with a span is drawn at its nearer pole.
    return [now ?? (edge.owner === null && edge.symbol !== 'line' ? { ...edge, owner: ownerOfNet(edge.from) } : edge)];
  });
};

/** Whose both ends are: a bond of something that runs from pole to pole belongs to the pole where it is made. */
const sharedOwner = (from: string, to: string): string | null =>
  to !== EARTH && ownerOfNet(from) === ownerOfNet(to) ? ownerOfNet(from) : null;

const withBuses = (parts: readonly Part[], edges: readonly Edge[], joints: Unions, unions: Unions): CircuitGraph => {
  const tied = new Set(edges.flatMap(({ from, to }) => [from, to]));
  const nets = [...new Set(parts.flatMap((part) => Object.values(part.nets)))].filter((net) => net !== EARTH).sort();
  const groups = groupBy(nets, (net) => unions.root(net));
  const bare = (part: Part, terminal: string): boolean => componentKind(part.kind).points[terminal] !== undefined;
  const buses = [...groups].flatMap(([id, members]): Bus[] => {
    if (!tied.has(id)) return [];
    const points = parts.flatMap((part) =>
      Object.entries(part.nets)
        .filter(([, net]) => members.includes(net))
        .map(([terminal]) => ({
          id: `${part.id}/${terminal}`,
          rank: (bare(part, terminal) ? 0 : 2) + (ownerOf(part) === ownerOfNet(id) ? 0 : 1),
        })),
    );
    return [
      {
        id,
        owner: ownerOfNet(id),
        legs: [...groupBy(members, (net) => joints.root(net)).values()],
        points: points.sort((a, b) => a.rank - b.rank).map((point) => point.id),
      },
    ];
  });
  const busOf = new Map(nets.map((net) => [net, unions.root(net)]));
  return { buses, edges, busOf };
};
