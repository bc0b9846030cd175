/**
 * A World as buses and what lies between them, fit to be drawn. Nets that a sound joint makes one are one bus, and so are
 * the two hot legs of a service, as a one-line diagram has them; healthy insulation and stray capacitance are left out.
 * Built once from the World as it was laid: what is opened, mended or grounded later changes no bus.
 */
import { componentKind } from '../../engine/catalogue/components.ts';
import { faultKind } from '../../engine/catalogue/faults.ts';
import type { Branch } from '../../engine/catalogue/types.ts';
import { byId, netAt, netOf } from '../../engine/circuit/elementsOf.ts';
import type { Complex } from '../../engine/math/complex.ts';
import { EARTH } from '../../engine/network/types.ts';
import { placeOn } from '../../engine/world/edit.ts';
import type { Part, PointId, World } from '../../engine/world/types.ts';
import { groupBy } from './groupBy.ts';
import { SHOWN_SIEMENS, type SymbolName, symbolOf, symbolWords } from './symbolOf.ts';

/** Metal at one voltage, or nearly: a bar of the diagram. */
export interface Bus {
  readonly id: string;
  /** Pole or premises. */
  readonly owner: string;
  /** Nets in it; each hot leg is a list of its own. */
  readonly legs: readonly (readonly string[])[];
  /** Every terminal on it, bare ones first. */
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

const size = ({ re, im }: Complex): number => Math.hypot(re, im);

/** A joint that makes two nets one has less than this, ohms. */
const JOINT_OHMS = 0.05;

/** All states that the part may be in. */
export const statesOf = (part: Part): readonly Part['state'][] =>
  Object.entries(componentKind(part.kind).states).reduce<readonly Part['state'][]>(
    (all, [name, values]) => all.flatMap((state) => values.map((value) => ({ ...state, [name]: value }))),
    [{}],
  );

/** A source that drives nothing counts as one that is off. */
export const isWorking = (branch: Branch): boolean => branch.type !== 'source' || size(branch.emf) > 0;

interface Known {
  readonly branch: Branch;
  /** Name of the state that opens it. */
  readonly state: string | null;
}

/** Every branch that the part has in any state, faults apart, and the state that it hangs on. */
export const branchesIn = (part: Part): readonly Known[] => {
  const { branches, states } = componentKind(part.kind);
  const all = statesOf(part).map((state) => ({ state, has: branches({ ...part, state }) }));
  const names = new Set(all.flatMap(({ has }) => has.map(({ name }) => name)));
  return [...names].flatMap((name) => {
    const holds = all.filter(({ has }) => has.some((branch) => branch.name === name && isWorking(branch)));
    const branch = (holds[0] ?? all.find(({ has }) => has.some((each) => each.name === name)))?.has.find(
      (each) => each.name === name,
    );
    const hangsOn = Object.keys(states).filter(
      (state) => new Set(holds.map((each) => each.state[state])).size < (states[state]?.length ?? 0),
    );
    return branch ? [{ branch, state: hangsOn[0] ?? null }] : [];
  });
};

class Unions {
  private readonly parent = new Map<string, string>();
  root(net: string): string {
    const up = this.parent.get(net);
    return up === undefined || up === net ? net : this.root(up);
  }
  join(a: string, b: string): void {
    const [x, y] = [this.root(a), this.root(b)].sort();
    if (x !== y && x !== undefined && y !== undefined) this.parent.set(y, x);
  }
  copy(): Unions {
    const made = new Unions();
    for (const [a, b] of this.parent) made.parent.set(a, b);
    return made;
  }
}

const isJoint = (part: Part, { branch, state }: Known): boolean =>
  branch.type === 'series' &&
  branch.protects === undefined &&
  state === null &&
  part.end === null &&
  size(branch.z) < JOINT_OHMS &&
  !branch.between.includes(EARTH);

const pairKey = (a: string, b: string): string => [a, b].sort().join(' ');

/** Hot legs of one service: terminals numbered alike, unless a winding or a source stands between them. */
const joinLegs = (parts: readonly Part[], unions: Unions): void => {
  const apart = new Set<string>();
  for (const part of parts) {
    for (const { branch } of branchesIn(part)) {
      const pairs =
        branch.type === 'transformer'
          ? branch.windings.map(({ between }) => between)
          : branch.type === 'source'
            ? [branch.between]
            : [];
      for (const [a, b] of pairs) apart.add(pairKey(unions.root(netOf(part, a)), unions.root(netOf(part, b))));
    }
  }
  const before = unions.copy();
  for (const part of parts) {
    const stems = groupBy(
      Object.keys(part.nets).filter((terminal) => /\d$/.test(terminal)),
      (terminal) => terminal.replace(/\d+$/, ''),
    );
    for (const terminals of stems.values()) {
      for (const a of terminals) {
        for (const b of terminals) {
          const nets = [netOf(part, a), netOf(part, b)] as const;
          if (a < b && !apart.has(pairKey(before.root(nets[0]), before.root(nets[1])))) unions.join(...nets);
        }
      }
    }
  }
};

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

const ownerOf = (part: Part): string | null => part.pole ?? part.premises;

interface Draft extends Omit<Edge, 'id' | 'branches'> {
  readonly branch: string;
}

const draftsOf = (part: Part, opened: ReadonlyMap<string, string>): readonly Draft[] => {
  const known = branchesIn(part);
  const drawn = known.filter(({ branch }) => branch.type !== 'shunt' || size(branch.y) >= SHOWN_SIEMENS);
  const only = known.length === 1 && componentKind(part.kind).equipment === true ? known : [];
  return [...drawn, ...only.filter((each) => !drawn.includes(each))].flatMap((each): Draft[] => {
    const { branch, state } = each;
    const fault = opened.get(branch.name) ?? null;
    if (isJoint(part, each) && fault === null) return [];
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
    return branch.windings.map(({ between }, winding) =>
      draft(between, { windings: [winding], symbol: winding === 0 ? 'primary' : 'secondary' }),
    );
  });
};

const leaksOf = (world: World, part: Part): readonly Draft[] =>
  part.faults.flatMap((fault) =>
    faultKind(fault.kind).leaks.map(
      (leak): Draft => ({
        part: part.id,
        owner: ownerOf(part),
        symbol: 'leak',
        words: faultKind(fault.kind).name,
        from: netOf(part, leak.from),
        to: fault.to === null ? netOf(part, leak.to) : netAt(world, fault.to),
        branch: leak.name,
        windings: [],
        state: null,
        fault: fault.id,
        slope: 0,
      }),
    ),
  );

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
        : { ...draft, id, from, to, branches: [branch] },
    );
  }
  return withBuses(parts, [...edges.values()], joints, unions);
};

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
        .map(([terminal]) => ({ id: `${part.id}/${terminal}`, bare: bare(part, terminal) })),
    );
    return [
      {
        id,
        owner: id.split('.')[0] ?? id,
        legs: [...groupBy(members, (net) => joints.root(net)).values()],
        points: [...points.filter((point) => point.bare), ...points.filter((point) => !point.bare)].map((p) => p.id),
      },
    ];
  });
  const busOf = new Map(nets.map((net) => [net, unions.root(net)]));
  return { buses, edges, busOf };
};
