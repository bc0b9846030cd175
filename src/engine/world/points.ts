/**
 * Bare metal of a part that a hand can be laid on: the terminals that its kind shows, and what its faults have brought
 * within reach, the pieces of a parted conductor and a limb that hangs down.
 */
import { componentKind } from '../catalogue/components.ts';
import { faultKind, faultKinds } from '../catalogue/faults.ts';
import { cos, sin } from '../math/elementary.ts';
import { add, length, scale, type Vec3 } from '../math/vec3.ts';
import { leaned } from './lean.ts';
import { piecesOf } from './lying.ts';
import type { LaidFault, Part } from './types.ts';

/** An offset in a part's own frame (outward is −y), turned by its azimuth, in the axes of the scene. */
export const turned = ([x, y, z]: Vec3, azimuth: number): Vec3 => {
  const c = cos(azimuth);
  const s = sin(azimuth);
  return [x * c - y * s, x * s + y * c, z];
};

/** Where an offset of a part's own frame lies from a place of it, metres in the axes of the scene. */
export const offsetFrom = (from: Vec3, offset: Vec3, { azimuth, lean }: Pick<Part, 'azimuth' | 'lean'>): Vec3 => {
  const way = turned(offset, azimuth);
  return add(from, lean === undefined ? way : leaned(way, lean));
};

/** Bare metal that a fault may bring: the terminal that it belongs to, or null for a net of its own. */
type Brings = ReadonlyMap<string, string | null>;

const bringsKept = new Map<string, Brings>();

/** By kind, whether such a fault is laid or not: a clamp that was put on stays on the same net when the fault is gone. */
function bringsOn(kind: string): Brings {
  const known = bringsKept.get(kind);
  if (known !== undefined) return known;
  const found = new Map<string, string | null>();
  for (const fault of faultKinds.filter(({ on }) => on.includes(kind))) {
    for (const [name, { on = null }] of Object.entries(fault.points ?? {})) found.set(name, on);
    if (fault.mechanical?.breaks === undefined) continue;
    for (const end of ['a', 'b']) for (const name of [`tip-${end}`, `down-${end}`]) found.set(name, end);
  }
  bringsKept.set(kind, found);
  return found;
}

const valueIn = ({ kind, values }: LaidFault, name: string): number =>
  values[name] ?? faultKind(kind).values[name]?.default ?? 0;

function alongAt({ at, end }: Part, along: number, above: number): Vec3 {
  if (end === null) return [at[0], at[1], above];
  const flat: Vec3 = [end[0] - at[0], end[1] - at[1], 0];
  const span = length(flat);
  const foot: Vec3 = [at[0], at[1], above];
  return span > 0 ? add(foot, scale(flat, Math.min(span, along) / span)) : foot;
}

function broughtBy(part: Part): ReadonlyMap<string, Vec3> {
  const found = new Map<string, Vec3>();
  for (const fault of part.faults) {
    for (const [name, { along, above }] of Object.entries(faultKind(fault.kind).points ?? {})) {
      found.set(name, alongAt(part, valueIn(fault, along), above));
    }
  }
  for (const { terminal, foot, free } of piecesOf(part)) {
    found.set(`${foot === null ? 'tip' : 'down'}-${terminal}`, foot ?? free);
  }
  return found;
}

const nothing: ReadonlyMap<string, Vec3> = new Map();
const kept = new WeakMap<Part, ReadonlyMap<string, Vec3>>();

/** Where the bare metal is that faults of the part have brought within reach. */
function brought(part: Part): ReadonlyMap<string, Vec3> {
  if (part.faults.length === 0) return nothing;
  const found = kept.get(part) ?? broughtBy(part);
  kept.set(part, found);
  return found;
}

/** Terminals with bare metal: the kind's, in its order, then those that faults bring. */
export const bareTerminals = (part: Part): readonly string[] => {
  const own = Object.keys(componentKind(part.kind).points);
  const more = brought(part);
  return more.size === 0 ? own : [...own, ...more.keys()];
};

/** Where a terminal's bare metal is, metres; null if there is none to reach. */
export const barePlace = (part: Part, terminal: string): Vec3 | null => {
  const kind = componentKind(part.kind);
  const offset = Object.hasOwn(kind.points, terminal) ? kind.points[terminal] : undefined;
  if (offset === undefined) return brought(part).get(terminal) ?? null;
  const from = part.end !== null && kind.endPoints.includes(terminal) ? part.end : part.at;
  return offsetFrom(from, offset, part);
};

/** Net of a terminal, or of bare metal that a fault may bring; undefined when there is neither. */
export const terminalNet = (part: Part, terminal: string): string | undefined => {
  if (Object.hasOwn(part.nets, terminal)) return part.nets[terminal];
  const on = bringsOn(part.kind).get(terminal);
  if (on === undefined) return undefined;
  return on === null ? `${part.id}.${terminal}` : part.nets[on];
};
