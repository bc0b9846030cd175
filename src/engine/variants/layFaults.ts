/**
 * Faults and look-alikes for a scene: a kind is drawn for what it can lie on, a part of a sort and made of what it asks
 * for, a tool, somebody who is there, the site; one a carrier, in weather and light that it can be there in. Kinds whose leak ends on another part are not drawn, for
 * somebody has to say where. A fault on a tool brings the day of test that it asks for.
 */
import { faultKinds } from '../catalogue/faults.ts';
import type { FaultKind } from '../catalogue/types.ts';
import type { Scenario } from '../scenario/types.ts';
import type { World } from '../world/types.ts';
import type { Draw } from './draw.ts';
import { mayLieIn } from './odd.ts';
import type { Bounds, Range } from './types.ts';
import { carried, datedFor } from './varyCrew.ts';
import { type Group, groupAt, rowsAt } from './written.ts';

/** Something that may carry a fault. */
interface Carrier {
  readonly id: string;
  readonly sort: string;
  readonly words: Readonly<Record<string, string>>;
}

const carriersOf = ({ parts, tools, people }: World): readonly Carrier[] => [
  ...parts.map(({ id, kind, words }) => ({ id, sort: kind, words })),
  ...tools.map(({ id, kind }) => ({ id, sort: `tool:${kind}`, words: {} })),
  // A customer is not among those that a file can lay a fault on.
  ...people
    .filter(({ at, role }) => (at !== null && role !== 'customer') || role === 'dispatcher' || role === 'second')
    .map(({ id, role }) => ({ id, sort: `person:${role}`, words: {} })),
  { id: 'site', sort: 'site', words: {} },
];

const fits = ({ on, only = {} }: FaultKind, { sort, words }: Carrier): boolean =>
  on.includes(sort) && Object.entries(only).every(([name, allowed]) => allowed.includes(words[name] ?? ''));

const isFree = ({ leaks }: FaultKind): boolean => leaks.every(({ elsewhere }) => elsewhere !== true);

const faces = ['road', 'field'] as const;

interface Pool {
  readonly kinds: readonly FaultKind[];
  /** Kinds of the base, drawn more often. */
  readonly often: ReadonlySet<string>;
  readonly ofBase: number;
  readonly count: number;
}

/** Rows of one list; a kind once, on carriers not yet taken, which it marks as taken. */
function rowsOf(draw: Draw, carriers: readonly Carrier[], { kinds, often, ofBase, count }: Pool, taken: Set<string>) {
  const rows: { readonly kind: FaultKind; readonly on: string }[] = [];
  while (rows.length < count) {
    const open = kinds.filter(
      (kind) =>
        rows.every((row) => row.kind !== kind) && carriers.some((each) => !taken.has(each.id) && fits(kind, each)),
    );
    if (open.length === 0) break;
    const kin = open.filter(({ id }) => often.has(id));
    const kind = draw.one(draw.chance(ofBase) && kin.length > 0 ? kin : open);
    const carrier = draw.one(carriers.filter((each) => !taken.has(each.id) && fits(kind, each)));
    taken.add(carrier.id);
    rows.push({ kind, on: carrier.id });
  }
  return rows;
}

/** The side of a part on which it lies; what lies on tools, people and the site has none. */
const sideOf = (draw: Draw, on: string): Group => (on.includes('.') ? { side: draw.one(faces) } : {});

const idsOf = (rows: readonly Group[]): ReadonlySet<string> => new Set(rows.map(({ kind }) => String(kind)));

const size = (draw: Draw, { least, most }: Range): number => draw.whole(least, most);

/** A scene with no faults, read and built. */
export interface Bare {
  readonly scenario: Scenario;
  readonly world: World;
}

/** The varied scene with faults and look-alikes; `bare` is that scene with none. */
export function layFaults(draw: Draw, base: Group, varied: Group, bare: Bare, bounds: Bounds): Group {
  const carriers = carriersOf(bare.world);
  const taken = new Set<string>();
  const { kinds, not, ofBase } = bounds.faults;
  const allowed = (kind: FaultKind): boolean =>
    isFree(kind) &&
    mayLieIn(bare.scenario, kind.id) &&
    !not.includes(kind.id) &&
    (kind.benign || kinds.length === 0 || kinds.includes(kind.id));
  const pool = (benign: boolean, own: readonly Group[], count: number): Pool => ({
    kinds: faultKinds.filter((kind) => kind.benign === benign && allowed(kind)),
    often: idsOf(own),
    ofBase,
    count,
  });
  const faults = rowsOf(draw, carriers, pool(false, rowsAt(base, 'faults'), size(draw, bounds.faults)), taken);
  const likes = rowsOf(draw, carriers, pool(true, rowsAt(base, 'look-alikes'), size(draw, bounds.lookAlikes)), taken);
  const day = String(groupAt(varied, 'call').date);
  return {
    ...varied,
    tools: rowsAt(varied, 'tools').flatMap((tool) => {
      const laid = faults.find(({ on }) => on === tool.id);
      if (laid === undefined) return [tool];
      const others = rowsAt(varied, 'tools').filter(({ kind }) => kind === tool.kind);
      // Whoever lays a bad tool aside must find a good one, or the drill is over before it began.
      const good = others.length > 1 ? [] : [carried(draw, { ...tool, id: `${String(tool.id)}-b` }, day)];
      return [datedFor(draw, tool, laid.kind.id, day), ...good];
    }),
    faults: faults.map(({ kind, on }, i) => ({ id: `fault-${i + 1}`, kind: kind.id, on, ...sideOf(draw, on) })),
    'look-alikes': likes.map(({ kind, on }, i) => ({ id: `like-${i + 1}`, kind: kind.id, on, ...sideOf(draw, on) })),
  };
}
